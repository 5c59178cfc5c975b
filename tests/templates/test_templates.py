"""Every template at full scale, as data: nothing outside it, every mark in its place, the lane free."""

from __future__ import annotations

import os
from fractions import Fraction
from pathlib import Path

import pytest
from hypothesis import HealthCheck, given, settings

from templategen import Choices, draw_templates, make_plan, read_spec
from templategen.drawing import LARGE, USUAL, Drawing, Item, Line, Look, Text
from templategen.drawing.lettering import Bounds
from templategen.lengths import inches
from templategen.planning import Plan
from templategen.spec import Spec
from tests.document.laws import meeting
from tests.strategies import kind_specs, specs, workshop_specs

from .telling import tell

EXAMPLES = Path(__file__).parents[2] / "out_examples"
GOLDENS = Path(__file__).parent / "goldens"
_SLOW = [HealthCheck.too_slow, HealthCheck.data_too_large]
THOROUGH = settings(max_examples=60, suppress_health_check=_SLOW)
QUICK = settings(max_examples=40, suppress_health_check=_SLOW)


def _plan(name: str) -> Plan:
    return make_plan(read_spec((EXAMPLES / name / "spec.toml").read_text()))


def _drawings(spec: Spec, look: Look = USUAL) -> list[Drawing]:
    """Every template there can be: both the whole strip and the half one."""
    plan = make_plan(spec)
    half = Choices(half_strip=True, look=look)
    return [*draw_templates(plan, (), Choices(look=look)), *draw_templates(plan, ("spacing strip",), half)]


@pytest.mark.parametrize("name", ["spacing strip", "hem gauge card", "cut gauge", "loop ladder"])
def test_the_drawing_is_the_one_agreed_on(name: str) -> None:
    """Rewritten with GOLDENS=write; read the difference before it is committed."""
    (drawing,) = draw_templates(_plan("east-window"), (name,))
    golden = GOLDENS / f"{drawing.file_name}.txt"
    if os.environ.get("GOLDENS") == "write":
        golden.parent.mkdir(exist_ok=True)
        golden.write_text(tell(drawing))
    assert tell(drawing) == golden.read_text()


@QUICK
@given(specs())
def test_however_odd_the_curtain_every_template_is_whole(spec: Spec) -> None:
    """Nothing is drawn outside it, every mark is there, and the lane is free; texts may touch where marks crowd."""
    for drawing in _drawings(spec):
        _is_whole(drawing)


@THOROUGH
@given(workshop_specs() | kind_specs())
def test_every_template_is_whole_and_no_text_of_it_is_touched_in_large_print_too(spec: Spec) -> None:
    """The same laws in both looks, of one spec, which takes the most to be drawn.

    In large print no text is smaller than 18 points, and every mark and edge of the datum stays where it was.
    """
    for usual, large in zip(_drawings(spec), _drawings(spec, LARGE), strict=True):
        for drawing in (usual, large):
            _is_whole(drawing)
            _no_text_is_touched(drawing)
        assert all(item.size >= 18 for item in large.items if isinstance(item, Text)), large.name
        assert (large.name, large.registration) == (usual.name, usual.registration)
        assert _from_the_datum(large) == _from_the_datum(usual), large.name


def _is_whole(drawing: Drawing) -> None:
    _nothing_is_drawn_outside(drawing)
    _every_mark_is_a_line_of_8_mm_from_the_datum_edge_inward(drawing)
    _the_lane_is_left_free_of_all_but_lines_along_and_the_ends(drawing)


def _nothing_is_drawn_outside(drawing: Drawing) -> None:
    left, right = float(drawing.start) - 0.01, float(drawing.end) + 0.01
    low, high = float(drawing.low) - 0.01, float(drawing.high) + 0.01
    for item in drawing.items:
        box = item.bounds
        assert left <= float(box.left) and float(box.right) <= right, (drawing.name, item)
        assert low <= float(box.bottom) and float(box.top) <= high, (drawing.name, item)


def _every_mark_is_a_line_of_8_mm_from_the_datum_edge_inward(drawing: Drawing) -> None:
    """Common practice, no source: 8 mm can be seen, and transferred with chalk."""
    drawn: dict[Fraction, float] = {}
    for item in drawing.items:
        if isinstance(item, Line) and item.x1 == item.x2 and 0 in (item.y1, item.y2):
            reach = float(item.y1 + item.y2) * drawing.inward
            drawn[Fraction(item.x1)] = max(drawn.get(Fraction(item.x1), 0.0), reach)
    for mark in drawing.marks:
        assert drawn[mark.at] >= 8, (drawing.name, mark)


def _the_lane_is_left_free_of_all_but_lines_along_and_the_ends(drawing: Drawing) -> None:
    low, high = (float(edge) for edge in drawing.lane)
    ends = {drawing.start, drawing.end}
    for item in drawing.items:
        box = item.bounds
        if float(box.top) <= low + 0.3 or float(box.bottom) >= high - 0.3:
            continue
        assert isinstance(item, Line) and (item.runs_along or {item.x1, item.x2} <= ends), (drawing.name, item)


def _from_the_datum(drawing: Drawing) -> list[tuple[str, Fraction]]:
    """Every mark by its name, measured from where the template is laid to: its end, where its top edge is there."""
    zero = drawing.end if drawing.marks[-1].label == "top edge" else drawing.start
    return [(mark.label, mark.at - zero) for mark in drawing.marks]


def _no_text_is_touched(drawing: Drawing) -> None:
    """By no other text, and by no line or circle that runs through it."""
    boxes = [Bounds(*map(float, item.bounds)) for item in drawing.items]
    texts = [i for i, item in enumerate(drawing.items) if isinstance(item, Text)]
    for i, near in meeting(texts, boxes, 0.0):
        for other in (drawing.items[j] for j in near):
            touched = isinstance(other, Text) or _crosses(other, boxes[i])
            assert not touched, (drawing.name, drawing.items[i], other)


def _crosses(item: Item, box: Bounds) -> bool:
    """Whether a mark runs through the inside of a box; a line aslant where it runs, anything else as far as it goes."""
    low, high = (box.left + 0.15, box.bottom + 0.15), (box.right - 0.15, box.top - 0.15)
    if not isinstance(item, Line):
        through = item.bounds
        return (
            through.left < high[0] and through.right > low[0] and through.bottom < high[1] and through.top > low[1]
        )
    # The stretch of the line that lies between either pair of sides: Liang and Barsky's clipping.
    first, last = 0.0, 1.0
    for start, end, least, most in zip(
        (float(item.x1), float(item.y1)), (float(item.x2), float(item.y2)), low, high, strict=True
    ):
        if start == end:
            if not least < start < most:
                return False
            continue
        near, far = sorted(((least - start) / (end - start), (most - start) / (end - start)))
        first, last = max(first, near), min(last, far)
    return first < last


def test_spacing_strip_shows_the_marks_of_the_plan() -> None:
    plan = _plan("local-history-room")
    (strip,) = draw_templates(plan, ("spacing strip",))
    assert [(mark.label, mark.at) for mark in strip.marks] == [
        (mark.label, mark.at.mm) for mark in plan.heading.marks
    ]
    assert strip.length == plan.spec.panel.width.mm


def test_hem_gauge_card_draws_the_guide_lines_of_the_single_edge_hem() -> None:
    """FM 10-16, General Fabric Repair, HQ Dept of the Army, 24 May 2000: a guide line 1 in from the raw edge gives a
    1/2 in turn, a line 2 in from that fold a 1 in hem; the allowance is 1 1/2 in."""
    text = (EXAMPLES / "east-window" / "spec.toml").read_text()
    text = text.replace('depth = "4 in"', 'depth = "1 in"').replace('turn_under = "5/8 in"', 'turn_under = "1/2 in"')
    (card,) = draw_templates(make_plan(read_spec(text)), ("hem gauge card",))
    at = {mark.label: mark.at for mark in card.marks}
    assert at["fold-to line 1"] == inches(1).mm
    assert at["fold-to line 2"] == inches(2).mm
    assert at["hem + turn-under"] == inches("3/2").mm


def test_cut_gauge_is_drawn_once_for_a_level_floor_and_once_for_each_mark_of_an_uneven_one() -> None:
    assert [d.name for d in draw_templates(_plan("east-window"), ("cut gauge",))] == ["cut gauge"]
    uneven = draw_templates(_plan("childrens-corner"), ("cut gauge",))
    assert [d.name for d in uneven] == ["cut gauge 1", "cut gauge 2", "cut gauge 3"]
    assert len({d.caption for d in uneven}) == 3


def test_cut_gauge_measures_finish_and_cut_line_from_the_floor_mark() -> None:
    plan = _plan("east-window")
    (gauge,) = draw_templates(plan, ("cut gauge",))
    at = {mark.label: mark.at for mark in gauge.marks}
    mark = plan.drop.marks[0]
    assert at["floor mark"] - at["finish line"] == (mark.floor - mark.finish).mm
    assert at["finish line"] - at["cut line"] == plan.hem.allowance.mm


def test_loop_ladder_has_rungs_one_cut_length_apart() -> None:
    plan = _plan("east-window")
    (ladder,) = draw_templates(plan, ("loop ladder",))
    steps = {after.at - before.at for before, after in zip(ladder.marks, ladder.marks[1:], strict=False)}
    assert steps == {plan.heading.length.mm}
