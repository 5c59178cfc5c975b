"""The half strip: the left half as it lies, the right half when it has been turned end for end."""

from __future__ import annotations

import os
from fractions import Fraction
from itertools import pairwise
from pathlib import Path

import pytest
from hypothesis import HealthCheck, given, settings

from templategen import Choices, draw_templates, make_plan, read_spec
from templategen.drawing import Drawing, Line, LineType, Text
from templategen.layout.free_places import Care, free_places
from templategen.layout.splitting import split_into
from templategen.planning import Plan
from templategen.spec import Spec
from templategen.templates.strips import BETWEEN_LABELS, DEPTH
from tests.proof.kits import PANELS, spec_text
from tests.strategies import specs, workshop_specs

from .telling import tell

EAST = (Path(__file__).parents[2] / "out_examples" / "east-window" / "spec.toml").read_text()
CROWDED = spec_text(PANELS["3000 mm, 13 loops, A4"]).replace("count = 13", 'count = 245\nloop_width = "6 mm"')
"""Loops some 12 mm apart."""
GOLDENS = Path(__file__).parent / "goldens"
HALF = Choices(half_strip=True)
THOROUGH = settings(max_examples=60, suppress_health_check=[HealthCheck.too_slow, HealthCheck.data_too_large])


def _plan() -> Plan:
    return make_plan(read_spec(EAST))


def _of(text: str, old: str = "", new: str = "") -> tuple[Plan, Drawing]:
    """The plan of a spec with one text put in another's place, and its half strip."""
    assert old in text
    plan = make_plan(read_spec(text.replace(old, new)))
    return plan, _half(plan)


def _half(plan: Plan) -> Drawing:
    (strip,) = draw_templates(plan, ("spacing strip",), HALF)
    return strip


def _ticks(strip: Drawing, edge: Fraction | int) -> dict[Fraction, float]:
    """How far lines for marks reach into the strip from one of its long edges, by where they stand."""
    return {
        Fraction(item.x1): abs(float(item.y2 - item.y1))
        for item in strip.items
        if isinstance(item, Line) and item.kind is LineType.MARK and item.x1 == item.x2 and edge in (item.y1, item.y2)
    }


def _rows(strip: Drawing) -> tuple[list[Text], list[Text]]:
    """Numbers that are read as it lies, and those that are read when it is turned: from left to right both times."""
    bold = [item for item in strip.items if isinstance(item, Text) and item.bold]
    upright = [text for text in bold if text.turn == 0]
    turned = [text for text in bold if text.turn == 180]
    return sorted(upright, key=lambda text: text.bounds.left), sorted(turned, key=lambda text: -text.bounds.right)


def test_the_drawing_is_the_one_agreed_on() -> None:
    """Rewritten with GOLDENS=write; read the difference before it is committed."""
    golden = GOLDENS / "half-strip.txt"
    told = tell(_half(_plan()))
    if os.environ.get("GOLDENS") == "write":
        golden.write_text(told)
    assert told == golden.read_text()


@THOROUGH
@given(specs())
def test_both_long_edges_have_the_marks_of_their_half_and_every_loop_is_listed_once(spec: Spec) -> None:
    """A line at x of the lower edge stands at the panel's width − x when the strip has been turned: geometry."""
    plan = make_plan(spec)
    strip, width = _half(plan), plan.spec.panel.width.mm
    places = [mark.at.mm for mark in plan.heading.marks]
    upper, lower = _ticks(strip, 0), _ticks(strip, -DEPTH)
    assert sorted(upper) == [at for at in places if 2 * at <= width]
    assert sorted(width - x for x in lower) == [at for at in places if 2 * at >= width]
    assert min(*upper.values(), *lower.values()) >= 8
    assert strip.length == width / 2
    _every_loop_is_listed_once_where_its_line_stands(plan, strip)


def _every_loop_is_listed_once_where_its_line_stands(plan: Plan, strip: Drawing) -> None:
    width = plan.spec.panel.width.mm
    listed = {mark.label: mark.at for mark in strip.marks}
    assert len(listed) == len(strip.marks) == plan.heading.count
    for mark in plan.heading.marks:
        assert listed[mark.label] == min(mark.at.mm, width - mark.at.mm)


@THOROUGH
@given(workshop_specs())
def test_labels_stand_at_their_marks_and_leave_room_for_a_join(spec: Spec) -> None:
    plan = make_plan(spec)
    strip, width = _half(plan), float(plan.spec.panel.width.mm)
    places = {mark.label: float(mark.at.mm) for mark in plan.heading.marks}
    for row, turned in zip(_rows(strip), (False, True), strict=True):
        assert [int(text.text) for text in row] == sorted(int(text.text) for text in row)
        beside = [width - places[text.text] if turned else places[text.text] for text in row]
        pitch = float(plan.heading.pitch.mm)
        for text, at in zip(row, beside, strict=True):
            # Beside an end a label stands off its mark, but never nearer to another one.
            assert text.bounds.left - pitch / 2 < at < text.bounds.right + pitch / 2 or len(row) == 1
        for before, after in pairwise(sorted(row, key=lambda text: text.bounds.left)):
            assert after.bounds.left - before.bounds.right >= BETWEEN_LABELS - 0.01


def test_the_ordinary_strip_says_number_and_distance_both_ways() -> None:
    """Distances from one zero, the panel's left edge: 52 3/4 = 54 − 1 1/4, 46 5/16 = 54 − 7 11/16. Arithmetic."""
    texts = [item for item in _half(_plan()).items if isinstance(item, Text)]
    upright = {text.text for text in texts if text.turn == 0}
    turned = {text.text for text in texts if text.turn == 180}
    assert {"1", "· 1 1/4", "2", "· 7 11/16", "5", "· 27", "left edge", "centre of the panel, this edge:"} <= upright
    assert {"9", "· 52 3/4", "8", "· 46 5/16", "5", "· 27", "right edge", "centre of the panel, this edge:"} <= turned
    assert "first: this edge for the left half" in upright and "then, turned: this edge for the right half" in turned


def test_the_middle_mark_of_an_odd_number_is_the_end_itself() -> None:
    strip = _half(_plan())
    assert [mark.at for mark in strip.marks if mark.label == "5"] == [strip.end]
    assert "Its right end is mark 5." in strip.caption
    upright, turned = _rows(strip)
    assert upright[-1].text == turned[0].text == "5"


def test_an_even_number_has_no_mark_on_the_end() -> None:
    _, strip = _of(EAST, "count = 9", "count = 8")
    assert all(mark.at < strip.end for mark in strip.marks) and not any("end is mark" in s for s in strip.caption)
    assert [text.text for text in _rows(strip)[1]] == ["5", "6", "7", "8"]


def test_the_caption_says_what_to_do_in_order() -> None:
    said = " ".join(_half(_plan()).caption)
    order = ["mark the panel's centre", "mark the left half", "end for end", "mark the right half"]
    assert [said.index(words) for words in order] == sorted(said.index(words) for words in order)


@pytest.mark.parametrize("units", ["inch", "metric"])
def test_where_marks_crowd_numbers_stand_alone_and_joins_still_find_a_place(units: str) -> None:
    text = CROWDED if units == "metric" else CROWDED.replace('units = "metric"', 'units = "inch"')
    plan, strip = _of(text)
    assert 11 < plan.heading.pitch.mm < 13
    words = [item for item in strip.items if isinstance(item, Text)]
    assert not any(word.text.startswith("·") for word in words)
    assert all(word.size >= 9.5 for word in words)
    assert not any("Distances" in sentence for sentence in strip.caption)
    pieces = split_into(strip, free_places(strip, plan.tape.step.mm), [Fraction(228)] * 9, Care.FREE)
    assert pieces is not None and all(join.crowded for piece in pieces for join in piece.joins)


def test_distances_that_are_left_out_stand_in_the_work_order_where_it_has_them() -> None:
    _, strip = _of(EAST, "count = 9", 'count = 51\nmax_pitch = "2 in"')
    assert "The distances stand in the work order." in strip.caption
    assert not any("·" in item.text for item in strip.items if isinstance(item, Text))


def test_several_strips_are_numbered_copies() -> None:
    plan = _plan()
    for half, name in ((False, "spacing strip"), (True, "half strip")):
        strips = draw_templates(plan, ("spacing strip",), Choices(half, 3))
        assert [strip.name for strip in strips] == [f"{name} {number}" for number in (1, 2, 3)]
        assert {strip.family for strip in strips} == {name}
        assert {strip.items for strip in strips} == {strips[0].items}
    assert [d.name for d in draw_templates(plan, (), Choices(strips=2))][:3] == [
        "spacing strip 1", "spacing strip 2", "hem gauge card",
    ]  # fmt: skip
