"""Laws of splitting for given rooms: where a join may stand, and what it says where there is no free place."""

from __future__ import annotations

from fractions import Fraction
from itertools import pairwise

import pytest
from hypothesis import HealthCheck, Phase, assume, given, settings
from hypothesis import strategies as st

from templategen import make_plan, read_spec
from templategen.drawing import Drawing, Line
from templategen.layout.free_places import CLEAR, Care, free_places
from templategen.layout.pieces import Join, Piece
from templategen.layout.splitting import OVERLAP, fewest_pieces, renumbered, split, split_into
from templategen.templates import draw_templates
from tests.bench.jobs import ORDINARY, with_marks

from .laws import drawings

STEP = Fraction(127, 80)
"""A sixteenth of an inch, in mm."""
often = settings(max_examples=40, derandomize=True, deadline=None, phases=[Phase.explicit, Phase.generate])


def rooms() -> st.SearchStrategy[list[Fraction]]:
    """Room for pieces on a few sheets, some of it short, in mm."""
    return st.lists(st.integers(620, 4000).map(lambda tenths: Fraction(tenths, 10)), min_size=2, max_size=40)


def _nearest_content(drawing: Drawing, join: Join) -> float:
    """From a match line to the nearest mark, label or line across, in mm."""
    stretches = [
        (float(item.bounds.left), float(item.bounds.right))
        for item in drawing.items
        if not (isinstance(item, Line) and item.runs_along)
    ]
    stretches += [(float(mark.at), float(mark.at)) for mark in drawing.marks]
    at = float(join.at)
    return min(max(left - at, at - right, 0.0) for left, right in stretches)


@often
@given(drawings(), rooms())
def test_every_piece_fits_its_room_and_they_cover_the_template(drawing: Drawing, rooms: list[Fraction]) -> None:
    pieces = split_into(drawing, free_places(drawing, STEP), rooms)
    assume(pieces is not None)
    assert pieces is not None
    assert all(piece.length <= room for piece, room in zip(pieces, rooms, strict=True))
    assert pieces[0].start == drawing.start and pieces[-1].end == drawing.end
    assert all(one.right is not None and one.right == other.left for one, other in pairwise(pieces))


@often
@given(drawings(), rooms())
def test_a_join_that_is_not_called_crowded_keeps_8_mm_from_everything(
    drawing: Drawing, rooms: list[Fraction]
) -> None:
    for care in Care:
        for piece in split_into(drawing, free_places(drawing, STEP), rooms, care) or ():
            if piece.right:
                keeps = _nearest_content(drawing, piece.right) >= CLEAR - 1e-9
                assert keeps or piece.right.crowded
                assert keeps or care is not Care.CLEAR


@settings(often, suppress_health_check=[HealthCheck.filter_too_much])
@given(drawings(), st.integers(1080, 4000).map(lambda tenths: Fraction(tenths, 10)))
def test_as_many_rooms_as_the_fewest_pieces_will_do_and_one_less_will_not(drawing: Drawing, longest: Fraction) -> None:
    places = free_places(drawing, STEP)
    fewest = fewest_pieces(drawing, places, longest)
    assume(fewest is not None and fewest > 1)
    assert fewest is not None
    assert split_into(drawing, places, [longest] * fewest) is not None
    assert split_into(drawing, places, [longest] * (fewest - 1)) is None


@pytest.mark.parametrize("short", range(7))
def test_pieces_are_as_nearly_equal_as_their_rooms_allow(short: int) -> None:
    """Six rooms of 228 mm and one of 151: the others are within a loop's width of each other."""
    (strip,) = draw_templates(make_plan(read_spec(ORDINARY)), ("spacing strip",))
    given_rooms = [Fraction(151) if i == short else Fraction(228) for i in range(7)]
    pieces = split_into(strip, free_places(strip, STEP), given_rooms)
    assert pieces is not None
    lengths = [piece.length for i, piece in enumerate(pieces) if i != short]
    assert max(lengths) - min(lengths) < 60


def test_joins_stand_on_whole_steps_of_the_tape_where_marks_leave_room() -> None:
    (strip,) = draw_templates(make_plan(read_spec(ORDINARY)), ("spacing strip",))
    pieces = split_into(strip, free_places(strip, STEP), [Fraction(228)] * 8)
    assert pieces is not None
    assert all((piece.right.at / STEP).denominator == 1 for piece in pieces if piece.right)


def test_where_nothing_is_free_the_join_is_called_crowded() -> None:
    """Loops 2 in apart and 1 1/2 in wide leave 13 mm between two of them, and a join wants 8 mm on either side."""
    text = with_marks(40).replace('style = "back loops"', 'style = "back loops", loop_width = "1 1/2 in"')
    (strip,) = draw_templates(make_plan(read_spec(text)), ("spacing strip",))
    places = free_places(strip, STEP)
    assert fewest_pieces(strip, places, Fraction(228)) is None
    pieces: tuple[Piece, ...] | None = split_into(strip, places, [Fraction(228)] * 12, Care.FREE)
    assert pieces is not None
    assert all(piece.right.crowded for piece in pieces if piece.right)


def test_joins_are_numbered_on_through_a_kit() -> None:
    (strip,) = draw_templates(make_plan(read_spec(ORDINARY)), ("spacing strip",))
    pieces = renumbered(split(strip, Fraction(228)), 5)
    assert [piece.right.number for piece in pieces if piece.right] == [5 + i for i in range(len(pieces) - 1)]
    assert all(one.right == other.left for one, other in pairwise(pieces))
    assert OVERLAP == 16
