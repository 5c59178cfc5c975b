"""The proof must be able to fail: kits that are wrong on purpose, each in one way."""

from __future__ import annotations

from dataclasses import replace
from io import BytesIO

import pikepdf
import pytest

from templategen.drawing import Item, Line, LineType, Ring, Text
from templategen.layout import Placed
from templategen.layout.joins import ARM, POINT, TOOTH

from .joining import Lying, NoFit, beside
from .kits import PANELS, Made, made
from .measuring import Missing, Sight, bar_errors, see, sight, strip_errors
from .redrawing import seen_redrawn

PANEL = PANELS["42 in, 4 loops, letter"]
_TOO_FAR = 0.1


@pytest.fixture(scope="module")
def kit() -> Made:
    return made(PANEL)


def _stretched(file: bytes, across: float, along: float) -> bytes:
    """The file as a program writes it that scales what it prints."""
    with pikepdf.open(BytesIO(file)) as opened:
        for page in opened.pages:
            page.contents_add(f"q {across} 0 0 {along} 0 0 cm".encode(), prepend=True)
            page.contents_add(b"Q")
        out = BytesIO()
        opened.save(out)
    return out.getvalue()


def _worst(seen: Sight) -> float:
    return strip_errors(PANEL, seen.taped["spacing strip"]).worst


def _strip_is_true(seen: Sight) -> bool:
    try:
        return _worst(seen) <= _TOO_FAR
    except Missing:
        return False


def test_redrawing_alone_changes_nothing(kit: Made) -> None:
    seen = seen_redrawn(kit, lambda placed, item: item)
    assert _worst(seen) <= _TOO_FAR


@pytest.mark.parametrize(("across", "along"), [(1.003, 1), (1, 1.003)])
def test_an_axis_stretched_by_three_in_a_thousand_is_seen(kit: Made, across: float, along: float) -> None:
    seen = see(_stretched(kit.files["kit.pdf"], across, along), kit.record)
    lies_along = {tuple(piece["direction"]) for piece in kit.record["pieces"] if piece["template"] == "spacing strip"}
    assert lies_along == {(0, 1)}
    assert _strip_is_true(seen) == (along == 1)
    assert max(bar_errors(seen)) > 0.25


def test_one_mark_moved_by_three_tenths_of_a_millimetre_is_seen(kit: Made) -> None:
    third = kit.plan.heading.marks[2].at.mm

    def move(placed: Placed, item: Item) -> Item:
        if isinstance(item, Line) and item.kind is LineType.MARK and item.x1 == item.x2 == third:
            return replace(item, x1=item.x1 + 0.3, x2=item.x2 + 0.3)
        return item

    seen = seen_redrawn(kit, move)
    errors = strip_errors(PANEL, seen.taped["spacing strip"])
    assert [error > _TOO_FAR for error in errors.marks] == [False, False, True, False]


def test_a_mark_left_out_is_missed(kit: Made) -> None:
    third = kit.plan.heading.marks[2].at.mm

    def lose(placed: Placed, item: Item) -> Item | None:
        return None if isinstance(item, Line) and item.x1 == item.x2 == third else item

    seen = seen_redrawn(kit, lose)
    with pytest.raises(Missing):
        _worst(seen)


def test_a_right_edge_left_out_is_missed(kit: Made) -> None:
    def lose(placed: Placed, item: Item) -> Item | None:
        drawing = placed.piece.drawing
        return None if isinstance(item, Line) and item.x1 == item.x2 == drawing.end else item

    assert _worst(seen_redrawn(kit, lose)) > _TOO_FAR


def test_a_join_moved_on_one_of_its_pieces_is_seen(kit: Made) -> None:
    """Its marks, sign and match line drawn 0.3 mm off on the second piece."""

    def move(placed: Placed, item: Item) -> Item:
        join = placed.piece.left
        if join is None or placed.piece.number != 2 or placed.piece.drawing.name != "spacing strip":
            return item
        if not (join.at - ARM <= item.bounds.left and item.bounds.right <= join.at + TOOTH + POINT):
            return item
        if isinstance(item, Line):
            return replace(item, x1=item.x1 + 0.3, x2=item.x2 + 0.3)
        assert isinstance(item, Ring | Text)
        return replace(item, x=item.x + 0.3)

    assert _worst(seen_redrawn(kit, move)) > _TOO_FAR


def test_a_wrong_neighbour_does_not_fit(kit: Made) -> None:
    papers = sight(PANEL).taped["spacing strip"].papers
    for i, left in enumerate(papers[:-1]):
        for j, right in enumerate(papers[1:], 1):
            pairs = left.pairs[1], right.pairs[0]
            assert pairs[0] is not None and pairs[1] is not None
            if j == i + 1:
                beside(pairs[0], Lying(), pairs[1])
            else:
                with pytest.raises(NoFit):
                    beside(pairs[0], Lying(), pairs[1])


def test_a_tooth_left_out_keeps_a_piece_from_joining(kit: Made) -> None:
    def lose(placed: Placed, item: Item) -> Item | None:
        join = placed.piece.left
        tooth = isinstance(item, Line) and item.runs_along and item.kind is LineType.MARK
        if tooth and join is not None and placed.piece.number == 3 and item.bounds.left == join.at - TOOTH:
            return None
        return item

    with pytest.raises(NoFit):
        seen_redrawn(kit, lose)
