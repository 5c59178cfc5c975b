"""Eyelet card: what it shows, and that nothing on it is outside, touched or crossed, whatever the rings."""

from __future__ import annotations

from fractions import Fraction
from typing import Any

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from templategen import Choices, draw_templates
from templategen.drawing import Drawing, Line, LineType, Ring, Text
from templategen.planning import Plan
from tests.planning.building import planned
from tests.planning.test_eyelets import EYELETS, eyelets, moved

few = settings(max_examples=30, deadline=None)


@st.composite
def plans(draw: st.DrawFn) -> Plan:
    """Rings from the smallest to the widest, in either unit, as near to the edge as they fit or far from it."""
    inside = draw(st.integers(12, 120))
    outside = inside + draw(st.integers(4, 60))
    changes: dict[str, Any] = moved(
        eyelet_inside=f"{inside} mm",
        eyelet_outside=f"{outside} mm",
        cut_circle=f"{draw(st.integers(inside // 2, outside - 1))} mm",
        eyelet_centre=draw(st.none() | st.integers(outside // 2 + 1, 150).map(lambda down: f"{down} mm")),
        edge_inset=draw(st.none() | st.integers(20, 200).map(lambda inset: f"{inset} mm")),
    )
    return planned(EYELETS | changes | {"units": draw(st.sampled_from(["inch", "metric"])), "panel.width": "1501 mm"})


def card(plan: Plan) -> Drawing:
    (drawing,) = draw_templates(plan, ("eyelet card",))
    return drawing


@few
@given(plans())
def test_circles_stand_at_their_places_at_full_size(plan: Plan) -> None:
    drawing, heading = card(plan), plan.heading
    (mark,) = drawing.marks
    rings = {ring.kind: ring for ring in drawing.items if isinstance(ring, Ring)}
    assert {(ring.x, ring.y) for ring in rings.values()} == {(mark.at, -heading.centre.mm)}
    assert rings[LineType.CUT].radius == heading.cut_circle.mm / 2
    assert rings[LineType.THIN].radius == heading.outside.mm / 2


@few
@given(plans())
def test_nothing_is_outside_touched_or_crossed(plan: Plan) -> None:
    drawing = card(plan)
    texts = [item for item in drawing.items if isinstance(item, Text)]
    for item in drawing.items:
        box = item.bounds
        assert drawing.start - 0.01 <= box.left and box.right <= drawing.end + 0.01, item
        assert drawing.low - 0.01 <= box.bottom and box.top <= 0.01, item
        frame = isinstance(item, Line) and item.kind is LineType.CUT
        assert frame or box.bottom >= drawing.lane.high, item
        for text in texts:
            assert item is text or frame or not text.bounds.meets(box, 0.3), (item, text)


@few
@given(plans())
def test_the_line_to_lay_on_the_mark_is_8_mm_long_from_the_edge(plan: Plan) -> None:
    """Common practice, no source: 8 mm can be seen."""
    drawing = card(plan)
    lines = [item for item in drawing.items if isinstance(item, Line) and item.x1 == item.x2 == drawing.marks[0].at]
    assert min(line.y2 for line in lines if line.y1 == 0) <= -8


def test_leaders_do_not_cross() -> None:
    """Three lines between the same two uprights cross only if their ends change order."""
    for centre in ("1 in", "1 1/2 in", "5 in"):
        leaders = [
            item
            for item in card(eyelets(moved(eyelet_centre=centre))).items
            if isinstance(item, Line) and item.kind is LineType.THIN
        ]
        assert len(leaders) == 3
        assert sorted(leaders, key=lambda line: line.y1) == sorted(leaders, key=lambda line: line.y2)


def test_it_says_how_large_and_how_far_down_and_how_far_to_the_next() -> None:
    said = [item.text for item in card(eyelets()).items if isinstance(item, Text)]
    assert said[0::2] == ["2", "1 1/2", "1 1/8", "7 3/16"]
    assert said[1::2] == ["ring, outside", "centre, below the edge", "circle to cut", "to the next centre, a hair over"]


def test_there_is_none_for_another_heading() -> None:
    assert draw_templates(planned(), ("eyelet card",)) == []


def test_a_ring_that_runs_over_the_top_is_not_drawn_off_the_card() -> None:
    """Rings 2 in wide outside: the plan stops it, and what is made despite that has no card."""
    over = eyelets(moved(eyelet_centre="15/16 in"))
    assert over.stops and draw_templates(over, ("eyelet card",)) == []
    assert card(eyelets(moved(eyelet_centre="1 in")))


@pytest.mark.parametrize("half", [False, True])
def test_the_strip_shows_the_circles_edges_and_says_so(half: bool) -> None:
    plan = eyelets()
    (strip,) = draw_templates(plan, ("spacing strip",), Choices(half_strip=half))
    assert "Short lines: the edges of the circles to cut." in strip.caption
    assert "Their centres: 1 1/2 in below the panel's top edge." in strip.caption
    edges = {item.x1 for item in strip.items if isinstance(item, Line) and item.kind is LineType.THIN and item.y1 == 0}
    centres = [mark.at.mm for mark in plan.heading.marks if mark.at.mm < strip.end]
    radius = Fraction(9, 16) * Fraction(254, 10)
    assert {at + side for at in centres for side in (-radius, radius)} <= edges
