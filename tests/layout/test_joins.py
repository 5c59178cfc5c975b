"""Laws of what is printed at a join: signs, registration marks, distances, and that all of it is on the paper."""

from __future__ import annotations

from dataclasses import replace
from fractions import Fraction
from itertools import pairwise

import pytest
from hypothesis import Phase, given, settings

from templategen import draw_templates, make_plan, read_spec
from templategen.drawing import Drawing, Line, LineType, Outline, Ring, Text, path
from templategen.layout import Join, Piece, items_of, split
from templategen.layout.joins import ARM, PITCH, TOOTH, links_of, tooth_places
from templategen.lengths import Length, Tape, inches
from tests.proof.kits import CROWDED, PANELS, made, spec_text

from .laws import drawings, reaches

often = settings(max_examples=25, derandomize=True, deadline=None, phases=[Phase.explicit, Phase.generate])
TAPE = Tape.of("inch")
DEEP = ("5", "5 1/2", "6")
"""Depths of hem, in inches, whose gauge card is longer than letter paper: twice the depth is 254 mm and more."""


def _card(depth: str) -> Drawing:
    """A hem gauge card."""
    panel = replace(PANELS["54 in, 8 loops, letter"], hem=depth)
    (card,) = draw_templates(make_plan(read_spec(spec_text(panel))), ("hem gauge card",))
    return card


def _cards_pieces(depth: str) -> tuple[Drawing, tuple[Piece, ...]]:
    card = _card(depth)
    pieces = split(card, Fraction(228))
    assert len(pieces) == 2
    return card, pieces


@often
@given(drawings())
def test_no_tooth_of_a_piece_turned_about_meets_any_tooth(drawing: Drawing) -> None:
    """Mark on mark, every place for a tooth falls midway between two others; edge to edge it is clear of them too."""
    places = tooth_places(drawing)
    low, high = sorted(Fraction(y) for y in drawing.registration)
    for one in places:
        assert min(abs(low + high - one - other) for other in places) >= PITCH / 2
        if not drawing.quarter_turns:
            edges = Fraction(drawing.low) + Fraction(drawing.high)
            assert min(abs(edges - one - other) for other in places) >= 1


@often
@given(drawings())
def test_registration_marks_of_a_piece_turned_about_miss_each_other(drawing: Drawing) -> None:
    """By a ring's radius, near enough: 2.4 mm. A card with stairs is no longer itself when it is turned about."""
    low, high = sorted(float(y) for y in drawing.registration)
    bottom = drawing.lane.low if drawing.name == "hem gauge card" else drawing.low
    assert abs((low - float(bottom)) - (float(drawing.high) - high)) >= 2.3


@often
@given(drawings())
def test_a_sign_is_of_two_links_or_more_none_higher_than_three_pitches(drawing: Drawing) -> None:
    for number in range(40):
        links = links_of(drawing, number)
        assert len(links) >= 2
        assert all(PITCH <= link.high - link.low <= 3 * PITCH for link in links)
        assert all(after.low - before.high >= PITCH for before, after in pairwise(links))


@pytest.mark.parametrize("number", range(4))
def test_signs_of_the_first_twenty_joins_differ_by_four_teeth_and_neighbours_by_six(number: int) -> None:
    drawing = made(PANELS["42 in, 4 loops, letter"]).kit.drawings[number]
    teeth = [frozenset(tooth for link in links_of(drawing, join) for tooth in link) for join in range(20)]
    assert min(len(one ^ other) for i, one in enumerate(teeth) for other in teeth[:i]) >= 4
    assert min(len(one ^ other) for one, other in pairwise(teeth)) >= 6


def test_the_two_halves_of_a_sign_close_every_figure_once() -> None:
    """On the side that stays in sight the left-hand piece ends it square, the right-hand piece with a point."""
    strip = made(PANELS["54 in, 8 loops, letter"]).kit.drawings[0]
    pieces = split(strip, Fraction(228))
    left, right = items_of(pieces[:2], TAPE)
    join = pieces[0].right
    assert join is not None
    for low, high in links_of(strip, join.number):
        middle = (low + high) / 2
        square = Line(LineType.MARK, join.at - TOOTH, low, join.at - TOOTH, high)
        assert square in left and square not in right
        slanted = [line for line in right if isinstance(line, Line) and line.x1 != line.x2 and line.y1 != line.y2]
        tips = [line for line in slanted if middle in (line.y1, line.y2)]
        assert len(tips) == 2 and all(max(line.x1, line.x2) > join.at + TOOTH for line in tips)
        assert not any(line in left for line in tips)


@often
@given(drawings(), reaches())
def test_a_join_says_on_both_its_pieces_how_far_it_is_from_the_zero(drawing: Drawing, longest: Fraction) -> None:
    for tape in (TAPE, Tape.of("metric")):
        pieces = split(drawing, longest)
        for piece, items in zip(pieces, items_of(pieces, tape), strict=True):
            said = [item.text for item in items if isinstance(item, Text)]
            for join in piece.joins:
                reading = tape.read(Length(join.at))
                assert f"at {reading.plain} {reading.sign}".rstrip() in said
                assert join.label in said


def test_a_join_on_a_whole_step_of_the_tape_bears_no_sign() -> None:
    strip = made(PANELS["54 in, 8 loops, letter"]).kit.drawings[0]
    join = Join(0, inches("125/4").mm, False)
    pieces = (Piece(strip, 1, 2, None, join), Piece(strip, 2, 2, join, None))
    for items in items_of(pieces, TAPE):
        assert "at 31 1/4 in" in [item.text for item in items if isinstance(item, Text)]


@often
@given(drawings(), reaches())
def test_trim_line_on_the_right_hand_piece_alone_and_glue_on_the_left(drawing: Drawing, longest: Fraction) -> None:
    pieces = split(drawing, longest)
    for piece, items in zip(pieces, items_of(pieces, TAPE), strict=True):
        trims = {item.x1 for item in items if isinstance(item, Line) and item.kind is LineType.TRIM}
        assert trims == ({piece.left.at} if piece.left else set())
        said = " ".join(item.text for item in items if isinstance(item, Text))
        assert (f"glue: piece {piece.number + 1} lies on this" in said) == bool(piece.right)
        assert ("cut off" in said) == bool(piece.left)


@pytest.mark.parametrize("depth", DEEP)
def test_a_join_of_a_card_with_stairs_is_drawn_as_far_as_the_paper_reaches(depth: str) -> None:
    """The stairs, worked out here: steps of 14 mm at the turn-under, the depth, and both; the card is 134 mm deep
    where there are none left."""
    card, pieces = _cards_pieces(depth)
    under, deep = inches("5/8").mm, inches(_number(depth)).mm
    steps = [under, deep, deep + under]
    for piece, items in zip(pieces, items_of(pieces, TAPE), strict=True):
        for join in piece.joins:
            reach = -134 - 14 * sum(step > join.at for step in steps)
            kinds = (LineType.TRIM, LineType.MATCH)
            (line,) = [item for item in items if isinstance(item, Line) and item.kind in kinds]
            assert {line.y1, line.y2} == {0, reach}
            rings = [item for item in items if isinstance(item, Ring)]
            assert len(rings) == 2 and all(reach + ARM < ring.y < -ARM for ring in rings)
        for item in items:
            at = min(max(Fraction(item.bounds.left), card.start), card.end)
            span = card.outline.span(at)
            assert span is not None
            assert item.bounds.bottom >= span[0] - 1e-6, (depth, piece.number, item)


def _number(text: str) -> Fraction:
    return sum((Fraction(part) for part in text.split()), Fraction(0))


def test_a_riser_in_the_glue_zone_is_part_of_the_outline_of_both_pieces() -> None:
    card, _ = _cards_pieces("5 1/2")
    join = Join(0, inches("11/2").mm - 5, False)
    pieces = (Piece(card, 1, 2, None, join), Piece(card, 2, 2, join, None))
    riser = next(line for line in card.outline.lines if line.x1 == line.x2 == inches("11/2").mm)
    left, right = items_of(pieces, TAPE)
    assert riser in left and riser in right
    (end,) = [line for line in left if isinstance(line, Line) and line.x1 == line.x2 == pieces[0].end]
    assert (end.y1, end.y2) == (-134 - 14, 0)


class TestOfAnOutline:
    STAIRS = Outline(path(LineType.CUT, [(0, 0), (0, -30), (10, -30), (10, -20), (40, -20), (40, 0), (0, 0)]))

    @pytest.mark.parametrize(("x", "span"), [(0, (-30, 0)), (5, (-30, 0)), (25, (-20, 0)), (40, (-20, 0))])
    def test_it_reaches_as_far_as_its_lines(self, x: int, span: tuple[int, int]) -> None:
        assert self.STAIRS.span(x) == span

    def test_at_a_riser_it_reaches_up_to_either_side(self) -> None:
        assert self.STAIRS.span(10) == (-30, 0)

    @pytest.mark.parametrize("x", [-1, 41])
    def test_beyond_its_ends_there_is_none(self, x: int) -> None:
        assert self.STAIRS.span(x) is None

    def test_a_sloping_edge_is_followed(self) -> None:
        slope = Outline(path(LineType.CUT, [(0, 0), (0, -10), (40, -30), (40, 0), (0, 0)]))
        assert slope.span(Fraction(10)) == (-15, 0)

    def test_other_lines_are_no_outline(self) -> None:
        assert Outline.among([Line(LineType.FOLD, 0, 0, 9, 0), Text(1, 1, "base edge", 10)]).lines == ()


def test_crowding_is_said_and_heeded_join_by_join() -> None:
    """A piece with a crowded join on its left and a free one on its right."""
    strip = made(next(iter(CROWDED.values()))).kit.drawings[0]
    marks = [mark.at for mark in strip.marks]
    crowded = Join(0, (marks[40] + marks[41]) / 2, True)
    free = Join(1, (marks[70] + marks[71]) / 2, False)
    pieces = (Piece(strip, 1, 3, None, crowded), Piece(strip, 2, 3, crowded, free), Piece(strip, 3, 3, free, None))
    said = [" ".join(item.text for item in items if isinstance(item, Text)) for items in items_of(pieces, TAPE)]
    assert "Marks stand close at join A:" in said[0] and "Marks stand close at join A:" in said[1]
    assert "Marks stand close" not in said[2]
    shown = [{mark.at for mark in piece.marks} for piece in pieces]
    assert shown[0] & shown[1] == {at for at in marks if -6 <= at - crowded.at <= 10}
    assert shown[1] & shown[2] == set()
