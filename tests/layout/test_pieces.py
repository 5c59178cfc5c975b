"""Laws of splitting: pieces rejoin to their template, and no mark is lost or cut at a join."""

from __future__ import annotations

from fractions import Fraction
from itertools import combinations, pairwise

import pytest
from hypothesis import Phase, given, settings
from hypothesis import strategies as st

from templategen.drawing import Drawing, Line, LineType
from templategen.layout import items_of, split
from templategen.layout.joins import links_of
from templategen.layout.pieces import TONGUE, TRIMMED
from templategen.lengths import Tape
from tests.proof.kits import PANELS, made

from .laws import drawings, reaches

TAPE = Tape.of("inch")

often = settings(max_examples=25, derandomize=True, deadline=None, phases=[Phase.explicit, Phase.generate])


@often
@given(drawings(), reaches())
def test_pieces_cover_their_template_once(drawing: Drawing, longest: Fraction) -> None:
    """From edge or match line to the next: what lies beyond a match line is glued under, or cut off."""
    pieces = split(drawing, longest)
    seen = [(p.left.at if p.left else drawing.start, p.right.at if p.right else drawing.end) for p in pieces]
    assert seen[0][0] == drawing.start
    assert seen[-1][1] == drawing.end
    assert all(before[1] == after[0] for before, after in pairwise(seen))
    assert all(low < high for low, high in seen)
    assert [(p.number, p.of) for p in pieces] == [(i, len(pieces)) for i in range(1, len(pieces) + 1)]


@often
@given(drawings(), reaches())
def test_no_piece_is_longer_than_the_sheet(drawing: Drawing, longest: Fraction) -> None:
    assert all(piece.length <= longest for piece in split(drawing, longest))


@often
@given(drawings(), reaches())
def test_neighbours_overlap_by_a_tongue_and_a_trimming(drawing: Drawing, longest: Fraction) -> None:
    for left, right in pairwise(split(drawing, longest)):
        assert left.right is not None and left.right == right.left
        assert left.end - left.right.at >= TONGUE
        assert left.right.at - right.start >= TRIMMED


@often
@given(drawings(), reaches())
def test_both_pieces_bear_the_match_line_at_the_same_place(drawing: Drawing, longest: Fraction) -> None:
    pieces = split(drawing, longest)
    sliced = items_of(pieces, TAPE)
    for piece, items in zip(pieces, sliced, strict=True):
        lines = {
            (item.kind, item.x1)
            for item in items
            if isinstance(item, Line) and item.kind in (LineType.MATCH, LineType.TRIM)
        }
        expected = {(LineType.TRIM, piece.left.at)} if piece.left else set()
        expected |= {(LineType.MATCH, piece.right.at)} if piece.right else set()
        assert lines == expected


@often
@given(drawings(), reaches())
def test_every_line_across_is_whole_on_a_piece_that_shows_it(drawing: Drawing, longest: Fraction) -> None:
    """On the piece that stays in sight there, from its match line to the next."""
    pieces = split(drawing, longest)
    across = [item for item in drawing.items if isinstance(item, Line) and not item.runs_along]
    for piece, items in zip(pieces, items_of(pieces, TAPE), strict=True):
        low = piece.left.at if piece.left else drawing.start
        high = piece.right.at if piece.right else drawing.end
        printed = set(items)
        assert all(line in printed for line in across if low <= line.x1 <= high and low <= line.x2 <= high)


@often
@given(drawings(), reaches())
def test_every_mark_is_listed_on_a_piece_that_shows_it(drawing: Drawing, longest: Fraction) -> None:
    pieces = split(drawing, longest)
    assert {mark for piece in pieces for mark in piece.marks} == set(drawing.marks)
    assert all(piece.start <= mark.at <= piece.end for piece in pieces for mark in piece.marks)


@often
@given(drawings(), reaches())
def test_a_match_line_keeps_clear_of_every_mark_unless_it_says_otherwise(drawing: Drawing, longest: Fraction) -> None:
    for piece in split(drawing, longest):
        if piece.right and not piece.right.crowded:
            assert all(abs(mark.at - piece.right.at) >= Fraction(2, 5) for mark in drawing.marks)


@pytest.mark.parametrize("number", range(4))
def test_no_two_joins_of_the_longest_template_share_a_key(number: int) -> None:
    """60 m of strip, the widest panel there can be, has under 300 joins on letter paper."""
    drawing = made(PANELS["42 in, 4 loops, letter"]).kit.drawings[number]
    signs = [links_of(drawing, join) for join in range(300)]
    teeth = [frozenset(tooth for link in sign for tooth in link) for sign in signs]
    assert len(set(signs)) == len(set(teeth)) == 300
    assert all(len(one ^ other) >= 2 for one, other in combinations(teeth, 2))


def _label(number: int) -> str:
    """The letter of a kit's join ``number``."""
    (strip, *_) = made(PANELS["42 in, 4 loops, letter"]).kit.drawings
    left, _ = split(strip, strip.length * 2 / 3, number)
    assert left.right is not None
    return left.right.label


@settings(max_examples=40, deadline=None)
@given(st.integers(0, 700))
def test_letters_of_joins_run_on_without_i_and_o(number: int) -> None:
    labels = [_label(n) for n in (number, number + 1)]
    assert labels[0] != labels[1]
    assert all("I" not in label and "O" not in label and label.isalpha() for label in labels)
    assert len(labels[0]) <= len(labels[1])


def test_letters_of_the_first_joins_and_of_the_twenty_fifth() -> None:
    labels = [_label(n) for n in range(26)]
    assert "".join(labels[:24]) == "ABCDEFGHJKLMNPQRSTUVWXYZ"
    assert labels[24:] == ["AA", "AB"]
