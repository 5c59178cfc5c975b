"""What a kit of any heading shows and says where the numbers are extreme, and that it speaks of its own work."""

from __future__ import annotations

from itertools import pairwise
from typing import Any

import pytest

from templategen import Choices, draw_templates
from templategen.document.blocks import Blanks, Step
from templategen.drawing import Bounds, Drawing, Text
from templategen.errors import Refusal
from templategen.planning import Plan, make_plan
from tests.planning.building import READING_ROOM, job
from tests.work_order.said import words

LEFT_OUT = {path: None for path in READING_ROOM if path.startswith("heading.")}
HOOKS = {"heading.drop": "1 1/2 in", "heading.set_below": "1 in"}


def of(style: str, changes: dict[str, Any] | None = None) -> Plan:
    """The first window with another heading."""
    return make_plan(job({**LEFT_OUT, "heading.style": style, **(changes or {})}))


def steps(plan: Plan) -> list[Step]:
    return [block for block in words(plan, Choices()) if isinstance(block, Step)]


def said(plan: Plan) -> str:
    return " ".join(step.text for step in steps(plan))


def inside(drawing: Drawing) -> None:
    frame = Bounds(drawing.start, drawing.low, drawing.end, drawing.high)
    for item in drawing.items:
        box = item.bounds
        assert frame.left <= box.left and box.right <= frame.right, item
        assert frame.bottom <= box.bottom and box.top <= frame.top, item


@pytest.mark.parametrize(
    ("changes", "stop"),
    [({"panel.count": 1, "rod.length": "60 in"}, "nothing_to_pleat"),
     ({"heading.finished_width": "3 in"}, "no_room_for_pleats")],
)  # fmt: skip
def test_there_is_no_pleat_strip_without_pleats(changes: dict[str, Any], stop: str) -> None:
    plan = of("pinch pleats", {**HOOKS, **changes})
    assert stop in {notice.code for notice in plan.notices}
    assert draw_templates(plan, ("pleat strip",)) == []
    assert len(draw_templates(of("pinch pleats", HOOKS), ("pleat strip",))) == 2


def test_labels_of_pleats_close_to_an_end_or_the_centre_stay_on_the_strip_and_clear() -> None:
    plan = of("pinch pleats", {**HOOKS, "heading.pleats": 40, "heading.last_back": "1/16 in", "panel.count": 2})
    left, right = draw_templates(plan, ("pleat strip",))
    for strip in (left, right):
        inside(strip)
        labels = [item for item in strip.items if isinstance(item, Text) and item.turn == 90 and item.bold]
        assert len(labels) > 20 and all(b.x - a.x > 10 for a, b in pairwise(labels))


def test_eyelets_that_are_wider_than_their_ring_stay_on_their_card() -> None:
    holes = {"heading.eyelet_inside": "1 in", "heading.cut_circle": "3 in"}
    (card,) = draw_templates(of("eyelets", {**holes, "heading.eyelet_centre": "2 in"}), ("eyelet card",))
    inside(card)
    assert draw_templates(of("eyelets", {**holes, "heading.eyelet_centre": "1 in"}), ("eyelet card",)) == []


@pytest.mark.parametrize("side", ["3/4 in", "1 in", "1 1/2 in", "4 in"])
@pytest.mark.parametrize("depth", ["1 in", "4 in", "8 in"])
def test_words_stay_on_the_mitre_card(side: str, depth: str) -> None:
    sides = {"sides.mitre": True, "sides.hem": side, "sides.turn_under": side, "hem.depth": depth}
    left, right = draw_templates(make_plan(job(sides)), ("mitre card",))
    inside(left)
    inside(right)


@pytest.mark.parametrize("width", range(40, 120, 4))
def test_the_words_of_a_half_strip_do_not_meet(width: int) -> None:
    changes = {"panel.width": f"{width} in", "heading.count": 5}
    (strip,) = draw_templates(make_plan(job(changes)), ("spacing strip",), Choices(half_strip=True))
    texts = [item for item in strip.items if isinstance(item, Text)]
    assert not any(a.bounds.meets(b.bounds) for i, a in enumerate(texts) for b in texts[i + 1 :])


def test_a_top_that_is_folded_anew_has_a_step_that_says_so() -> None:
    """By the fold law twice what is folded (FM 10-16)."""
    deeper = said(of("casing", {"heading.depth": "4 in"}))
    assert "Unpick the stitching of the old top" in deeper and "Draw a line 8 in from the fold" in deeper
    cut = said(of("casing", {"heading.depth": "2 in", "heading.top_cut": "3 in", "heading.top_turn": "0 in"}))
    assert "Draw a line right across 3 in below the panel's top edge" in cut and "4 in from the raw edge" in cut
    kept = said(of("casing", {"heading.depth": "2 in"}))
    assert "Unpick the stitching of the old top" not in kept and "folded to the back" not in kept


@pytest.mark.parametrize(
    ("style", "changes", "strip"),
    [("pinch pleats", HOOKS, "pleat strips together by its own letters"),
     ("gathering tape", HOOKS, "Tape the spacing strip"),
     ("casing", {}, "Tape together what is in pieces")],
)  # fmt: skip
def test_the_work_order_names_the_strip_that_there_is(style: str, changes: dict[str, Any], strip: str) -> None:
    text = said(of(style, changes))
    assert strip in text and "every mark." not in text


def test_what_is_done_before_a_panel_is_split_is_done_on_panels_as_bought() -> None:
    plan = make_plan(job({"sides.split": 2, "panel.count": 3, "heading.count": 5}))
    (checks,) = (block for block in words(plan) if isinstance(block, Blanks))
    assert checks.times == 3 and checks.rows[0].value == "54 in"
    boxes = {step.title: step.boxes for step in steps(plan)}
    assert (boxes["On the rod"], boxes["Split"], boxes["Turn-under"]) == (6, 3, 6)
    lay = next(step for step in steps(plan) if step.text.startswith("Lay the panel flat"))
    assert lay.boxes == 3


def test_floor_marks_stand_on_the_panel_as_it_was_bought() -> None:
    """They are made, and the cloth is cut along them, before the panel is split."""
    plan = make_plan(job({"sides.split": 2, "heading.count": 5, "drop.floor_marks": ["13 in", "13 1/4 in"]}))
    assert plan.drop.marks[-1].at == plan.spec.panel.width


def test_a_split_that_leaves_nothing_is_refused_and_the_inset_is_held_against_what_is_made() -> None:
    with pytest.raises(Refusal, match=r"sides\.split: .* nothing is left of panel\.width"):
        job({"sides.split": 20})
    job({"sides.split": 14, "sides.hem": "1 in", "sides.turn_under": "0 in", "heading.edge_inset": "1/2 in"})
    for sides, what in (
        ({"sides.split": 8}, "once it is split in 8"),
        ({"sides.finished_width": "5 in"}, r"sides\.finished_width"),
    ):
        with pytest.raises(Refusal, match=rf"heading\.edge_inset: .* half of .*{what}"):
            job({**sides, "heading.edge_inset": "2 1/2 in"})


def test_one_space_is_one_and_a_sill_is_no_floor() -> None:
    plan = of("box pleats", {**HOOKS, "heading.pleats": 2, "drop.to": "sill", "drop.hung_by": "new heading"})
    assert "÷ 1 space" in plan.figures["pleat_space"].working and "spaces" not in plan.figures["pleat_space"].working
    assert plan.figures["hang_shift"].working == "none: the sill was marked while the panel hung by its new heading"


def test_a_top_edge_level_with_the_rod_is_said_to_be() -> None:
    plan = of("pinch pleats", {"heading.drop": "1 in", "heading.set_below": "1 in"})
    (text,) = (notice.text for notice in plan.notices if notice.code == "hang_shift")
    assert "by its pleats, its top edge lies level with the top of the rod" in text
