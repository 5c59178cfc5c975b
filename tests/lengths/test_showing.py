"""What a tape shows: the nearest graduation, worked out here a second way, and what rounding took away."""

from __future__ import annotations

from decimal import ROUND_HALF_UP, Decimal
from fractions import Fraction

import pytest
from hypothesis import given
from hypothesis import strategies as st

from templategen.lengths import Length, Tape, inches, millimetres, read_length
from tests.strategies import lengths, tapes

TAPE = Tape.of("inch")
METRIC = Tape.of("metric")


@pytest.mark.parametrize(
    ("exact", "shown"),
    [
        ("0", "0 in"), ("8", "8 in"), ("133/16", "8 5/16 in"), ("5/16", "5/16 in"), ("8/16", "1/2 in"),
        ("-1/2", "−1/2 in"), ("-133/16", "−8 5/16 in"), ("8.32", "8 5/16 in, a hair over"),
        ("8.3", "8 5/16 in, a hair under"), ("1/64", "0 in, a hair over"), ("-1/64", "0 in, a hair under"),
        ("1/32", "1/16 in, a hair under"), ("-1/32", "−1/16 in, a hair over"),
        ("3/32", "1/8 in, a hair under"),
        ("-49/32", "−1 9/16 in, a hair over"), ("-97/64", "−1 1/2 in, a hair under"),
        ("114/29", "3 15/16 in, a hair under"),
    ],
)  # fmt: skip
def test_inches_to_the_nearest_sixteenth_ties_away_from_zero(exact: str, shown: str) -> None:
    assert TAPE.show(inches(exact)) == shown


@pytest.mark.parametrize(
    ("step", "exact", "shown"),
    [("1", "211.4", "211 mm, a hair over"), ("1", "210.5", "211 mm, a hair under"),
    ("1/2", "211.5", "211.5 mm"),
     ("1/2", "-0.5", "−0.5 mm"), ("5", "212.5", "215 mm, a hair under"), ("1", "-3", "−3 mm"),
     ("1", "0", "0 mm")],
)  # fmt: skip
def test_millimetres_to_the_nearest_graduation(step: str, exact: str, shown: str) -> None:
    assert Tape.of("metric", millimetres(step)).show(millimetres(exact)) == shown


def test_the_other_unit_is_rounded_from_the_exact_length_not_from_the_reading() -> None:
    assert TAPE.show_both(inches("8.32")) == "8 5/16 in, a hair over (211 mm)"
    # 8 9/32 in is 210.3 mm; the reading beside it, 8 5/16 in, would be 211.1.
    assert TAPE.show_both(inches("265/32")) == "8 5/16 in, a hair under (210 mm)"
    assert METRIC.show_both(millimetres(211)) == "211 mm (8 5/16 in)"


def test_a_label_has_the_number_and_the_sign_alone() -> None:
    labels = [TAPE.read(inches(exact)).label for exact in ("8.32", "8.3", "133/16")]
    assert labels == ["8 5/16 +", "8 5/16 −", "8 5/16"]


def test_a_tape_has_only_the_graduations_that_tapes_have() -> None:
    assert (TAPE.step, METRIC.step) == (inches("1/16"), millimetres(1))
    assert Tape.of("inch", inches("1/32")).show(inches("1/32")) == "1/32 in"
    with pytest.raises(ValueError, match="no tape in inch units"):
        Tape.of("inch", inches("1/10"))
    with pytest.raises(ValueError, match="no tape in metric units"):
        Tape.of("metric", inches("1/16"))


@given(lengths(), tapes())
def test_reading_what_was_shown_gives_it_back(length: Length, tape: Tape) -> None:
    assert read_length(tape.show(length)) == tape.read(length).value
    assert read_length(tape.read(length).plain) == tape.read(length).value


@given(lengths())
def test_what_is_exact_reads_back_exactly(length: Length) -> None:
    assert read_length(length.exact("mm")) == length
    assert read_length(length.exact("in")) == length


@given(lengths(), tapes())
def test_a_reading_is_within_half_a_graduation_and_its_sign_says_how(length: Length, tape: Tape) -> None:
    reading = tape.read(length)
    assert (reading.value / tape.step).denominator == 1
    assert abs(length - reading.value) * 2 <= tape.step
    assert reading.sign == ("" if length == reading.value else "+" if length > reading.value else "−")


@given(lengths(), tapes())
def test_a_length_and_its_negative_read_alike(length: Length, tape: Tape) -> None:
    assert tape.read(-length).value == -tape.read(length).value


@given(st.integers(-(10**7), 10**7))
def test_rounding_agrees_with_decimal_half_up(thousandths: int) -> None:
    # Decimal's ROUND_HALF_UP takes ties away from zero too, and is worked out in another way.
    exact = Decimal(thousandths) / 1000
    assert METRIC.read(Length(Fraction(exact))).value.mm == int(exact.quantize(Decimal(1), ROUND_HALF_UP))
