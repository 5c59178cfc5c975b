"""Pictures set: every word has a place of its own, whatever is to be shown, at any width and size of type."""

from __future__ import annotations

from dataclasses import replace
from itertools import pairwise

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from templategen.document.columns import spread
from templategen.document.rails import PAD, Measured, on_rails
from templategen.document.setting import set_view
from templategen.document.shapes import hatched, meets_line
from templategen.document.view import Hatch, Heights, Label, Note, Rise, Running, Span, Stroke, Symbol, View, Within
from templategen.drawing import Bounds, Line, LineType, Solid, Text

from .laws import outside, touching

thorough = settings(max_examples=60, deadline=None)


@st.composite
def views(draw: st.DrawFn) -> View:
    """A plate with lines across it at any heights, and something to be said of each."""
    wide, high = draw(st.floats(5, 8000)), draw(st.floats(5, 8000))
    heights = draw(st.lists(st.floats(0, high), max_size=6))
    places = sorted(draw(st.lists(st.floats(0, wide), min_size=1, max_size=41)))
    figures = st.sampled_from(["3/4 in", "13 5/8 in −", "137.5 mm", "10 9/16 in +"])
    notes: list[Note] = [Label(f"line number {i}", (wide, y)) for i, y in enumerate(heights)]
    notes.append(Heights(0, tuple((y, draw(figures)) for y in heights), 0))
    notes.append(Span(draw(figures), 0, wide, 0))
    for low, high_end in pairwise(places[:3]):
        if high_end > low:
            notes.append(Span(draw(figures), low, high_end, high, "above"))
    notes.append(Running(tuple((x, str(i)) for i, x in enumerate(places, 1)), high))
    notes.append(Within("cut away", (0, 0), (wide, heights[0] if heights else high)))
    if draw(st.booleans()):
        notes.append(Rise(draw(figures), 0, high, wide, "right"))
    plate = Stroke(LineType.CUT, ((0, 0), (wide, 0), (wide, high), (0, high), (0, 0)))
    lines = [Stroke(LineType.FOLD, ((0, y), (wide, y))) for y in heights]
    area = [Hatch(((0, 0), (wide, 0), (wide, heights[0]), (0, heights[0])))] if heights else []
    return View("A plate", "A plate.", (plate, *lines, *area), tuple(notes), draw(st.booleans()))


@thorough
@given(views(), st.sampled_from([(92.0, 9.0), (185.0, 9.0), (185.0, 18.0), (130.0, 8.2)]))
def test_no_word_touches_anything_and_nothing_sticks_out(view: View, room: tuple[float, float]) -> None:
    setting = set_view(view, *room)
    assert setting.width <= room[0] + 0.01
    assert outside(setting) == []
    assert touching(setting.items) == []


@thorough
@given(views())
def test_everything_that_is_to_be_said_is_said(view: View) -> None:
    """Words may be broken into lines; of names along an edge some may be left out, of all else nothing."""
    said = " ".join(item.text for item in set_view(view, 185.0, 9.0).items if isinstance(item, Text))
    for note in view.notes:
        if isinstance(note, Label | Span | Rise | Within):
            for word in note.text.split():
                assert word in said.replace("\N{NO-BREAK SPACE}", " ")


def test_type_changes_the_size_of_words_and_never_what_is_drawn_of_the_thing() -> None:
    view = View("A bar", "A bar.", (Stroke(LineType.CUT, ((0, 0), (1000, 0), (1000, 500))),), (), to_scale=True)
    assert set_view(view, 100, 9).items == set_view(view, 100, 18).items
    assert set_view(view, 100, 9).scale == "1 : 10"


def test_the_law_can_fail() -> None:
    text = Text(0, 0, "words", 9)
    assert touching([text, Line(LineType.THIN, 1, -5, 1, 5)])
    assert touching([text, replace(text, x=2)])
    assert not touching([text, Line(LineType.THIN, -5, 5, 5, 5)])


def test_a_scale_that_is_told_is_one_of_a_few() -> None:
    plate = Stroke(LineType.CUT, ((0, 0), (1370, 0), (1370, 2440), (0, 2440), (0, 0)))
    setting = set_view(View("A plate", "", (plate,), (), to_scale=True), 92, 9)
    assert setting.scale == "1 : 25"  # 2440 / 25 = 97.6 mm is the tallest that 110 mm hold
    assert setting.height == pytest.approx(97.6)


@given(st.lists(st.tuples(st.floats(0, 100), st.floats(0.5, 20)), min_size=1, max_size=12))
def test_spread_keeps_order_and_distance_and_moves_the_least(pairs: list[tuple[float, float]]) -> None:
    wanted, heights = sorted(p[0] for p in pairs), [p[1] for p in pairs]
    middles = spread(wanted, heights)
    for i in range(len(middles) - 1):
        assert middles[i + 1] - middles[i] >= (heights[i] + heights[i + 1]) / 2 - 1e-9
    # The least sum of squares is found by no small move of a whole stretch: its gradient balances in every pool.
    moved = np.array(middles) - np.array(wanted)
    total = float((moved**2).sum())
    for start in range(len(middles)):
        for end in range(start + 1, len(middles) + 1):
            for by in (0.01, -0.01):
                tried = np.array(middles)
                tried[start:end] += by
                gaps = np.diff(tried) - (np.array(heights[:-1]) + np.array(heights[1:])) / 2
                if (gaps >= -1e-9).all():
                    assert ((tried - np.array(wanted)) ** 2).sum() >= total - 1e-9


@given(st.lists(st.tuples(st.floats(0, 80), st.floats(0.1, 80), st.floats(3, 25)), min_size=1, max_size=8))
def test_figures_on_rails_stand_where_no_extension_line_passes(raw: list[tuple[float, float, float]]) -> None:
    dimensions = [Measured(a, a + b, room) for a, b, room in raw]
    railed = on_rails(dimensions, (), 1.0)
    lines = [place for each in dimensions for place in (each.start, each.end)]
    for each, at in zip(dimensions, railed, strict=True):
        assert not any(at.centre - each.room / 2 < x < at.centre + each.room / 2 for x in lines)
    for i, a in enumerate(railed):
        for b in railed[i + 1 :]:
            assert a.rail != b.rail or a.line[1] + PAD <= b.line[0] + 1e-9 or b.line[1] + PAD <= a.line[0] + 1e-9


def test_the_shorter_dimension_lies_nearer() -> None:
    short, long = on_rails([Measured(0, 30, 10), Measured(0, 60, 10)], (), 1.0)
    assert (short.rail, long.rail) == (0, 1)
    assert short.centre == 15 and long.centre == 30 - 5 - PAD  # as near to its middle as the other's line lets it
    assert on_rails([Measured(0, 2, 10)], (), 1.0)[0].outside


def test_slanting_lines_leave_words_alone() -> None:
    words = Bounds(20, 4, 40, 8)
    lines = list(hatched(Hatch(((0, 0), (60, 0), (60, 12), (0, 12))), 1.0, [words]))
    assert lines and not any(meets_line(words, line, 0.4) for line in lines)
    assert all(0 <= float(n) <= 60 for line in lines for n in (line.x1, line.x2))


def test_symbols_keep_their_size_whatever_the_scale() -> None:
    def pin(scale: float) -> list[float]:
        shapes = (Stroke(LineType.CUT, ((0, 0), (scale, 0))), Symbol("pin", (scale / 2, 0), 90))
        (head,) = (i for i in set_view(View("", "", shapes), 80, 9).items if isinstance(i, Solid))
        return [float(n) for x, y in head.points for n in (x - head.bounds.left, y - head.bounds.bottom)]

    assert pin(100) == pytest.approx(pin(5000), abs=1e-6)


def test_a_picture_too_wide_by_what_floats_round_is_not_tried_for_ever() -> None:
    """Here it comes out 1.4e-14 mm too wide: a scale that is so little smaller is the same float."""
    side = 2938.2098932099175
    plate = Stroke(LineType.CUT, ((0, 0), (side, 0), (side, side), (0, side), (0, 0)))
    places = Running(((0.0, "1"), (0.0, "2"), (0.0, "3"), (863.8228059935559, "4")), side)
    notes = (Heights(0, (), 0), Span("3/4 in", 0, side, 0), places, Within("cut away", (0, 0), (side, side)))
    assert set_view(View("A plate", "A plate.", (plate,), notes), 92.0, 9.0).width == pytest.approx(92)


def test_only_a_place_that_is_marked_is_named_though_there_are_thousands() -> None:
    places = tuple((i * 30.0, str(i)) for i in range(2000))
    plate = Stroke(LineType.CUT, ((0, 0), (60000, 0), (60000, 2400), (0, 2400), (0, 0)))
    setting = set_view(View("A plate", "A plate.", (plate,), (Running(places, 2400),)), 180.0, 9.0)
    named = [item.x for item in setting.items if isinstance(item, Text)]
    marked = [item.x1 for item in setting.items if isinstance(item, Line) and item.kind is LineType.MARK]
    assert len(named) > 5 and len(marked) < 250
    assert all(min(abs(x - mark) for mark in marked) < 1.7 for x in named)


def test_a_picture_a_hair_too_wide_is_set_all_the_same() -> None:
    """What it is too wide by may be less than the scale's own last digit."""
    wide = 142.41666666666666
    low = -41.016
    plate = Stroke(LineType.CUT, ((0, low), (0, 0), (wide, 0), (wide, low)))
    boxes = [Stroke(LineType.MARK, ((-14.52222222222222, 0), (132.93888888888887, low / 2)))]
    notes = (
        Span("142 mm +", 0, wide, low),
        Span("1 mm", 0, 1.0, 0, "above"),
        Span("25 mm", wide - 25, wide, 0, "above"),
    )
    setting = set_view(View("", "", (plate, *boxes), notes), 185.0, 18.0, 124.0)
    assert setting.width <= 185.01
