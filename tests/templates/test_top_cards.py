"""The tape card and the casing card: every line so far below the panel's top edge as the plan has it."""

from __future__ import annotations

import re

import pytest
from hypothesis import HealthCheck, given, settings

from templategen import Choices, Options, draw_templates, make_kit, make_plan
from templategen.document.blocks import Step
from templategen.drawing import Drawing, Line, LineType, Text
from templategen.planning import Plan
from templategen.planning.headings.casing import CasingPlan
from templategen.planning.headings.gathering_tape import TapePlan
from templategen.spec import Spec
from tests.planning.tops import casing, tape, top_specs
from tests.proof.crossing import crossed
from tests.work_order.said import words

THOROUGH = settings(max_examples=25, deadline=None, suppress_health_check=[HealthCheck.too_slow])


def card(plan: Plan) -> Drawing:
    (drawing,) = draw_templates(plan, ("tape card", "casing card"))
    return drawing


def below_top(drawing: Drawing) -> dict[str, str]:
    """Every mark, in inches below the card's upper edge."""
    return {mark.label: str((drawing.end - mark.at) * 10 / 254) for mark in drawing.marks}


def test_the_tape_card_has_edges_and_hooks() -> None:
    drawing = card(tape({"heading.pocket": "5/8 in"}))
    assert below_top(drawing) == {
        "top edge": "0", "tape's upper edge": "1", "hooks hold": "13/8", "tape's lower edge": "2",
    }  # fmt: skip
    rows = [item for item in drawing.items if isinstance(item, Line) and item.kind is LineType.STITCH]
    assert [float(drawing.end) - float(row.x1) for row in rows] == pytest.approx([27.4, 48.8])


def test_the_edge_of_the_fold_is_on_the_card_where_the_top_is_folded_anew() -> None:
    assert below_top(card(tape({"heading.top_cut": "3 in"})))["edge of the fold"] == "3/2"
    assert "edge of the fold" not in below_top(card(tape()))


def test_the_casing_card_has_new_rows_and_the_old_ones_that_come_out() -> None:
    plan = casing({"panel.header": "1 in", "panel.casing": "2 in", "heading.header": "1/2 in", "heading.depth": "2 in"})
    assert below_top(card(plan)) == {
        "top edge": "0", "stitch under the header": "1/2", "unpick the old row": "1", "casing's stitch line": "5/2",
    }  # fmt: skip


def test_a_casing_that_stays_as_it_is_has_no_card() -> None:
    assert draw_templates(casing({"heading.depth": "3 in"}), ("casing card",)) == []


@THOROUGH
@given(top_specs())
def test_the_laws_of_templates_hold_for_the_cards(spec: Spec) -> None:
    """Nothing outside, marks 8 mm from the datum edge inward, the lane free, no two texts touching, none crossed."""
    plan = make_plan(spec)
    strip = draw_templates(plan, ("spacing strip",), Choices(half_strip=True))
    for drawing in (*draw_templates(plan, ("tape card", "casing card", "spacing strip")), *strip):
        texts = [item for item in drawing.items if isinstance(item, Text)]
        lines = [item for item in drawing.items if isinstance(item, Line)]
        for item in drawing.items:
            box = item.bounds
            assert drawing.start - 0.01 <= box.left and box.right <= drawing.end + 0.01, (drawing.name, item)
            assert drawing.low - 0.01 <= box.bottom and box.top <= drawing.high + 0.01, (drawing.name, item)
        for mark in drawing.marks:
            from_edge = [line for line in lines if line.x1 == line.x2 == mark.at and 0 in (line.y1, line.y2)]
            assert max(float(line.y1 + line.y2) * drawing.inward for line in from_edge) >= 8, (drawing.name, mark)
        for i, text in enumerate(texts):
            assert text.bounds.top <= drawing.lane.low + 0.3 or text.bounds.bottom >= drawing.lane.high - 0.3, text
            assert not any(text.bounds.meets(other.bounds) for other in texts[i + 1 :]), (drawing.name, text)
            assert not any(text.bounds.meets(line.bounds, -0.15) for line in lines), (drawing.name, text)


@settings(max_examples=6, deadline=None, suppress_health_check=[HealthCheck.too_slow])
@given(top_specs())
def test_nothing_is_crossed_in_a_kit(spec: Spec) -> None:
    plan = make_plan(spec)
    kit = make_kit(plan, Options(despite_stops=True))
    assert list(crossed(kit)) == []
    heading = plan.heading
    assert isinstance(heading, TapePlan) or (isinstance(heading, CasingPlan) and not heading.marks)


def steps(plan: Plan) -> list[str]:
    return [block.text for block in words(plan) if isinstance(block, Step)]


def first(found: list[str], said: str) -> int:
    return next(i for i, step in enumerate(found) if said in step)


def test_the_top_is_let_down_and_folded_before_the_heading_is_made() -> None:
    found = steps(casing({"heading.depth": "4 in"}))
    order = ["press a hem", "Stitch the hem", "let it down", "is turned under", "folded to the back", "casing card",
             "Hang the panel on the rod by its casing"]  # fmt: skip
    assert [first(found, said) for said in order] == sorted(first(found, said) for said in order)
    folding = found[first(found, "folded to the back")]
    assert "line 1 in from the raw edge" in found[first(found, "is turned under")]
    assert "line 8 in from the fold" in folding
    assert "the rows of the new heading hold it" in folding
    finished = casing({"heading.depth": "4 in"}).figures["finished_length"].value
    assert casing().tape.read(finished).plain in folding
    assert not any("folded to the back" in step for step in steps(casing()))


def test_a_top_that_is_cut_is_cut_before_it_is_folded() -> None:
    found = steps(casing({"heading.top_cut": "3 in", "heading.top_turn": "0 in"}))
    assert first(found, "3 in below the panel's top edge") < first(found, "folded to the back")
    assert "line 4 in from the raw edge" in found[first(found, "folded to the back")]
    raw = steps(tape({"heading.top_cut": "3 in", "heading.top_fold": "0 in"}))
    assert any("Bind or zigzag" in step for step in raw)


def test_cords_are_knotted_at_the_leading_edge_and_pulled_from_the_other() -> None:
    """Knotted at the leading edge, loose at the side edge: two sewing guides on heading tapes."""
    usual = " ".join(steps(tape()))
    assert re.search(r"at the end for the leading edge draw the cords out at the back of the tape and knot", usual)
    assert "Pull the cords together from the return edge" in usual
    other = " ".join(steps(tape({"heading.cord_side": "leading"})))
    assert "Pull the cords together from the leading edge" in other and "for the return edge draw the cords" in other


def test_the_tape_is_cut_once_for_all_panels_and_hooks_are_counted() -> None:
    said = " ".join(steps(tape()))
    assert "Cut 2 pieces of tape 55 1/2 in long" in said and "Put 11 hooks in the pockets" in said
    assert "Mark every division." in said and "in 4 equal parts, each 7 1/2 in" in said


def test_old_rows_that_stop_the_rod_are_unpicked_and_rows_that_are_there_are_left() -> None:
    headed = {"panel.header": "1 in", "panel.casing": "2 in"}
    assert any("Unpick the old stitching 1 in" in s for s in steps(casing({**headed, "heading.header": "0 in"})))
    assert any("stitched as it is to be" in step for step in steps(casing({"heading.depth": "3 in"})))
