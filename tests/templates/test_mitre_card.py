"""Mitre cards: which corner has which fold, and the fold at true size."""

from __future__ import annotations

from typing import Any

import pytest

from templategen.document.blocks import Step
from templategen.drawing import Drawing, Line, LineType
from templategen.lengths import inches
from templategen.templates.mitre_card import draw
from tests.planning.building import planned
from tests.work_order.said import words

MITRE = {"sides.mitre": True, "sides.hem": "1 in", "sides.turn_under": "1 in", "hem.turn_under": "1 in"}
OLD = {"sides.old_hem": "1/2 in", "sides.old_turn_under": "1/4 in"}


def _fold(drawing: Drawing) -> tuple[float, float]:
    """How far the fold goes beside the corner and up, by its ends."""
    (line,) = [item for item in drawing.items if isinstance(item, Line) and item.kind is LineType.FOLD]
    return float(line.x2 - line.x1), float(line.y2 - line.y1)


def _cards(changes: dict[str, Any]) -> dict[str, tuple[Drawing, float]]:
    """By corner, the card and the depth of its hem over that of its side hem."""
    cards = {}
    for drawing in draw(planned(changes)):
        beside, up = _fold(drawing)
        corner = drawing.name.removeprefix("mitre card for the ").removesuffix(" corner")
        assert (beside < 0) is corner.endswith("left"), "the side hem lies outside, seen from the back"
        cards[corner] = drawing, up / abs(beside)
    return cards


def _slopes(changes: dict[str, Any]) -> dict[str, float]:
    return {corner: slope for corner, (_, slope) in _cards(changes).items()}


def test_one_pair_of_cards_where_all_corners_are_alike() -> None:
    """H = 4, S = 1: 4 up for 1 beside (derived; tests/planning/test_hems.py folds it)."""
    assert _slopes(MITRE) == pytest.approx({"left": 4, "right": 4})
    assert draw(planned()) == []


@pytest.mark.parametrize(("cut", "new", "old"), [("right", "left", "right"), ("left", "right", "left")])
def test_the_edge_that_stays_has_the_fold_of_its_own_side_hem(cut: str, new: str, old: str) -> None:
    """What is right as seen from the front lies left with the back towards you. Old: S = 1/2, allowance 3/4."""
    cards = _cards({**MITRE, **OLD, "sides.finished_width": "40 in", "sides.cut_edge": cut})
    assert {corner: slope for corner, (_, slope) in cards.items()} == pytest.approx({new: 4, old: 8})
    for corner, allowance in ((new, inches(2)), (old, inches("3/4"))):
        drawing = cards[corner][0]
        (raw,) = [mark.at for mark in drawing.marks]
        from_corner = drawing.end - raw if corner == "left" else raw
        assert from_corner == allowance.mm


def test_panels_that_are_split_have_corners_of_both_kinds() -> None:
    slopes = _slopes({**MITRE, **OLD, "sides.split": 2})
    assert slopes == pytest.approx({"new left": 4, "new right": 4, "old left": 8, "old right": 8})


def test_a_box_for_every_panel_bought_until_it_is_split_and_for_every_one_made_after() -> None:
    steps = [block for block in words(planned({"sides.split": 2})) if isinstance(block, Step)]
    boxes = {block.title: block.boxes for block in steps}
    assert (boxes["Split"], boxes["Cut"], boxes["Turn-under"]) == (4, 4, 8)
    split = next(i for i, block in enumerate(steps) if block.title == "Split")
    assert {block.boxes for block in steps[:split]} == {1, 4}
