"""Laws of check lengths: which joins they span, that they are round, and that their ends lie where a rule can reach."""

from __future__ import annotations

from dataclasses import replace
from fractions import Fraction
from itertools import pairwise

import pytest
from hypothesis import Phase, given, settings
from hypothesis import strategies as st

from templategen.drawing import Drawing, Line, LineType, Text
from templategen.layout import Piece, items_of, split
from templategen.layout.checks import CLEAR_OF_A_JOIN, Check, checks_of
from templategen.layout.error_budget import closing_tolerance
from templategen.lengths import Length, Tape
from templategen.writers.kit_json import kit_record
from tests.proof.kits import PANELS, made

from .laws import alike, drawings, kit_of, kit_texts, reaches

often = settings(max_examples=25, derandomize=True, deadline=None, phases=[Phase.explicit, Phase.generate])
TAPES = st.sampled_from([Tape.of("inch"), Tape.of("metric")])


def _long_strip(count: int) -> tuple[Piece, ...]:
    """A strip of so many pieces of 200 mm or so."""
    strip = made(PANELS["120 in, 25 loops, letter"]).kit.drawings[0]
    width = Fraction(196 * count)
    return split(replace(strip, end=width, items=(), marks=(), keep_whole=()), Fraction(215))


def _over_joins(checks: tuple[Check, ...]) -> list[Check]:
    return [check for check in checks if not check.whole]


@pytest.mark.parametrize("count", range(1, 16))
def test_joins_are_taken_two_by_two_and_three_where_one_would_be_left(count: int) -> None:
    pieces = _long_strip(count)
    assert len(pieces) == count
    checks = checks_of(pieces, Tape.of("inch"))
    sizes = [len(check.joins) for check in _over_joins(checks)]
    assert sum(sizes) == count - 1
    if count > 2:
        assert sizes == [2] * (len(sizes) - 1) + [2 if count % 2 else 3]
    assert [check.whole for check in checks] == [False] * len(sizes) + [True] * (count > 1)


@often
@given(drawings(), reaches(), TAPES)
def test_a_check_length_is_round_and_clear_of_the_joins_that_it_spans(
    drawing: Drawing, longest: Fraction, tape: Tape
) -> None:
    """Whole inches, or whole tens of millimetres, as they stand large on a rule."""
    pieces = split(drawing, longest)
    for check in _over_joins(checks_of(pieces, tape)):
        unit = Fraction(254, 10) if tape.units == "inch" else Fraction(10)
        assert (check.length / unit).denominator == 1
        assert check.joins[0].at - check.start >= min(CLEAR_OF_A_JOIN)
        assert check.end - check.joins[-1].at >= min(CLEAR_OF_A_JOIN)
        assert check.first.right is check.joins[0] and check.last.left is check.joins[-1]


@often
@given(drawings(), reaches(), TAPES)
def test_both_ends_of_a_check_length_are_in_sight_once_all_is_taped(
    drawing: Drawing, longest: Fraction, tape: Tape
) -> None:
    pieces = split(drawing, longest)
    for check in checks_of(pieces, tape):
        for at, piece in ((check.start, check.first), (check.end, check.last)):
            assert at >= (piece.left.at if piece.left else piece.start)
            assert at <= (piece.right.at if piece.right else piece.end)


@often
@given(drawings(), reaches(), TAPES)
def test_what_stands_in_the_row_of_check_lengths_does_not_touch(
    drawing: Drawing, longest: Fraction, tape: Tape
) -> None:
    pieces = split(drawing, longest)
    for piece, items in zip(pieces, items_of(pieces, tape), strict=True):
        row = Fraction(drawing.lane.low) + Fraction(13, 5)
        texts = [item for item in items if isinstance(item, Text) and abs(float(item.y) - float(row)) < 1.5]
        marks = [item for item in items if isinstance(item, Line) and item.kind is LineType.MARK]
        ticks = [mark for mark in marks if mark.y1 == row - 2 and mark.y2 == row + 2]
        lines = [item for item in items if isinstance(item, Line) and item.y1 == item.y2 == row]
        upright = [text for text in texts if text.turn == 0]
        touching = [
            (text.text, other)
            for i, text in enumerate(upright)
            for other in [*upright[i + 1 :], *ticks, *lines]
            if text.bounds.meets(other.bounds, 0.5)
        ]
        assert touching == [], piece.number
        assert len(ticks) <= 2 and len(lines) <= 2, piece.number


@often
@given(drawings(), reaches(), TAPES)
def test_the_whole_is_what_the_template_measures(drawing: Drawing, longest: Fraction, tape: Tape) -> None:
    pieces = split(drawing, longest)
    wholes = [check for check in checks_of(pieces, tape) if check.whole]
    assert [(check.start, check.end, check.shown) for check in wholes] == (
        [(drawing.start, drawing.end, tape.show(Length(drawing.length)))] if len(pieces) > 1 else []
    )
    assert all(check.joins == tuple(piece.right for piece in pieces[:-1]) for check in wholes)


def test_closing_tolerance_grows_with_the_joins_and_is_said_in_the_tape_s_own_units() -> None:
    """The error budget's own, whose figures are held against ten thousand tapings in its own tests."""
    pieces = _long_strip(8)
    for tape, rule in ((Tape.of("metric"), Fraction(1, 2)), (Tape.of("inch"), Fraction(254, 320))):
        checks = checks_of(pieces, tape)
        assert [len(check.joins) for check in checks] == [2, 2, 3, 7]
        off = [closing_tolerance(pieces[0].drawing, len(c.joins), 0 if c.whole else c.height, rule) for c in checks]
        shown = Tape(tape.units, Length(rule))
        assert [check.closing for check in checks] == [shown.read(Length(Fraction(each))).plain for each in off]
        assert off == sorted(off)


def test_a_piece_says_what_its_check_length_is_and_where_it_ends() -> None:
    pieces = _long_strip(5)
    first, second, *_ = checks_of(pieces, Tape.of("inch"))
    assert first.said_on(pieces[0])[0] == f"{first.shown} ± 1/32 in from here to the tick on piece 3 (A, B)"
    assert second.said_on(pieces[4])[0] == f"{second.shown} ± 1/32 in from here to the tick on piece 3 (C, D)"
    said = [[item.text for item in items if isinstance(item, Text)] for items in items_of(pieces, Tape.of("inch"))]
    assert first.said_on(pieces[0])[0] in said[0] and first.said_on(pieces[2])[0] in said[2]
    whole = f"taped, from end to end: {Tape.of('inch').show(Length(Fraction(980)))} (± 1/16 in)"
    assert whole in said[0] and whole in said[4]
    assert not any("tick" in text for text in said[1])


def test_a_rule_of_twelve_inches_proves_two_joins_on_letter_paper() -> None:
    """Pieces of a strip on letter paper are 228 mm long at most: 15 mm off for the joins, and 20 mm to stand clear."""
    for name in ("54 in, 8 loops, letter", "84 3/7 in, 10 loops, letter", "108 in, 25 loops, letter"):
        for check in made(PANELS[name]).record["checks"]:
            assert len(check["joins"]) != 2 or check["whole"] or check["nominal_mm"] <= 12 * 25.4


@settings(max_examples=15, derandomize=True, deadline=None, phases=[Phase.explicit, Phase.generate])
@given(kit_texts())
@alike
def test_the_list_puts_both_ends_of_a_check_length_on_the_pieces_that_hold_them(text: str) -> None:
    """As far apart along the template as it says, the printer's correction undone."""
    kit = kit_of(text)
    record = kit_record(kit)
    ratios = float(kit.correction.across), float(kit.correction.along)
    for check in record["checks"]:
        alongs = []
        for end in (check["from"], check["to"]):
            holding = []
            for piece in record["pieces"]:
                (dx, dy), (ix, iy) = piece["direction"], piece["inward"]
                x, y = ((end[k] - piece["datum"][k]) * r for k, r in zip(("x_mm", "y_mm"), ratios, strict=True))
                along, inward = x * dx + y * dy, x * ix + y * iy
                here = (piece["template"], piece["page"]) == (check["template"], end["page"])
                length = piece["along_mm"][1] - piece["along_mm"][0]
                if here and -1e-5 <= along <= length + 1e-5 and 0 < inward < piece["depth_mm"]:
                    holding.append(piece["along_mm"][0] + along)
            assert len(holding) == 1
            alongs += holding
        assert alongs[1] - alongs[0] == pytest.approx(check["nominal_mm"], abs=1e-4)


def test_check_lengths_of_neighbours_do_not_overlap() -> None:
    for count in range(4, 16):
        checks = _over_joins(checks_of(_long_strip(count), Tape.of("metric")))
        assert all(before.end + 20 < after.start for before, after in pairwise(checks))
