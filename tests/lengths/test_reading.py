"""Reading what people type: every form they use, and nothing that could mean something else."""

from __future__ import annotations

import subprocess
import sys
import time
from fractions import Fraction

import pytest
from hypothesis import example, given
from hypothesis import strategies as st

from templategen.errors import LengthError
from templategen.lengths import Length, inches, millimetres, read_length
from templategen.lengths.units import length_of
from tests.strategies import MM_PER, written_compounds, written_lengths

FIVE_AND_THREE_EIGHTHS = [
    "5 3/8 in", "5-3/8 in", "5⅜ in", '5 3/8"', '5 3/8″', "5 3/8”", "5 3/8''", "5 3/8′′", "5 3⁄8 in",
    "5³⁄₈ in",
    "5 ³/₈ in", "5\u20113/8 in", "5–3/8 in", "5\u00a03/8\u2009in", "5 and 3/8 inches", "5 & 3/8 in",
    "5 3/8 IN.",
    "5 3/8inch", "5-3/8-inch", "  5  3/8  in  ", "5 3 / 8 in", "5.375 in", "5,3750 in", "43/8 in",
    "+5 3/8 in",
    "5 6/16 in", "5 3/8 in, a hair over", "5 3/8 in a hair under", "0 ft 5 3/8 in", "05 3/8 ins",
    "5 3/8 in\n",
]  # fmt: skip

SAME = [
    ("6' 2 1/2\"", inches("149/2")), ("6'2½\"", inches("149/2")), ("6'-2 1/2\"", inches("149/2")),
    ("6′ 2 1/2″", inches("149/2")), ("6’2½”", inches("149/2")), ("6'2½''", inches("149/2")),
    ("2 ft 3 in", inches(27)), ("2ft3in", inches(27)), ("2 ft. 3 in.", inches(27)),
    ("2 feet, 3 inches", inches(27)),
    ("2 ft,3 in", inches(27)), ("2 ft and 3 in", inches(27)), ("−2 ft 3 in", inches(-27)),
    ("2 ft .5 in", inches("49/2")),
    ("1 1/2 yd", inches(54)), ("1½ yards", inches(54)), ("1 yd 2 ft 3 in", inches(63)),
    ("1 yd 6 in", inches(42)),
    ("13.7 cm", millimetres(137)), ("13,7 cm", millimetres(137)), ("137 mm", millimetres(137)),
    ("137㎜", millimetres(137)), ("1.37 m", millimetres(1370)), ("1 m 37 cm", millimetres(1370)),
    ("1m37cm", millimetres(1370)), ("2 metres 5 mm", millimetres(2005)), ("2 1/2 cm", millimetres(25)),
    (".5 in", inches("1/2")), (",5 cm", millimetres(5)), ("103/16 in", inches("103/16")),
    ("⅟₁₆ in", inches("1/16")),
    ("- 1/2 in", inches("-1/2")), ("−1/2 in", inches("-1/2")), ("–1/2 in", inches("-1/2")),
    ("0 in", inches(0)),
    ("1.234 mm", millimetres("1.234")), ("1,2345 mm", millimetres("1.2345")),
    ("1234,5 mm", millimetres("1234.5")),
    ("0,500 m", millimetres(500)), ("1234,500 mm", millimetres("1234.5")), ("54-inch", inches(54)),
]  # fmt: skip

REFUSED = [
    ("", "no length here"), (" \n", "no length here"), ("-", "no length here"),
    ("in", "where a number should"),
    ("1,234 mm", "1234 or 1.234"), ("1.234,5 mm", "1234.5"), ("1,234,567 mm", "1234567"),
    ("3.5.2 mm", "more than one"),
    ("1 234 mm", "1234"), ("5 3/0 in", "divides by nothing"), ("3 1/2", "3 1/2 in or 3 1/2 mm"),
    ("9**9**9 mm", "“*” is no part"), ("5 furlong", "not a unit"), ("5 inchs", "did you mean inches?"),
    ("5 centimeter2", "no unit"), ("3 in 2 ft", "write 2 ft 3 in"), ("37 cm 1 m", "write 1 m 37 cm"),
    ("2 ft 2 ft", "twice"), ("2 1/2 ft 3 in", "write 33 in"), ("1.5 ft 3 in", "write 21 in"),
    ("1 3/8 5/8 in", "a second fraction"), ("1.5 1/2 in", "decimals and a fraction"),
    ("1.5/2 in", "decimals in"),
    ("1/2/3 in", "one stroke"), ("5/ in", "its stroke"), ("/8 in", "where a number should"),
    ("5 11/8 in", "written 6 3/8"), ("5 8/8 in", "written 6"),
    ("⅜ ⅝ in", "a second fraction"), ("⅜5 in", "for example"),
    ("2 ft 13 in", "write 37 in"), ("1 yd 3 ft", "write 6 ft"), ("1 yd 40 in", "write 76 in"),
    ("1 m 100 cm", "write 200 cm"), ("1 m 3 in", "mixed"), ("6' 5 cm", "mixed"),
    ("6' 2", "write 6 ft 2 in"),
    ("1 m 37", "write 1 m 37 cm"), ("5-3 in", "range"), ("3/8-1/2 in", "range"), ("5 - 3/8 in", "range"),
    ("5 to 6 in", "range"), ("2 ft - 3 in", "range"), ("5 in-6 in", "range"),
    ("5−3/8 in", "only stand before"),
    ("inf", "not a number"), ("nan mm", "not a number"), ("1e9 mm", "powers of ten"),
    ("1E-3 m", "powers of ten"),
    ("٣ mm", "digits 0 to 9"), ("５ mm", "digits 0 to 9"), ("5² in", "digits 0 to 9"), ("Ⅻ in", "no part"),
    ("5\u200b in", "ZERO WIDTH SPACE"), ("5 in (127 mm)", "“(”"), ("5. in", "a point"),
    ("2 ft.5 in", "a point"),
    ("about 5 in", "not a unit"), ("5 in,", "ends where a number"), ("$5", "“$”"), ("\ud800 in", "no part"),
    ("1'234 mm", "mixed"), ("9" * 16 + " mm", "at most 15 digits"),
    ("1/" + "9" * 16 + " mm", "at most 15 digits"),
    ("half an inch", "not a unit"), ("5, 3/8 in", "for example 5 3/8 in"),
]  # fmt: skip


@pytest.mark.parametrize("text", FIVE_AND_THREE_EIGHTHS)
def test_every_spelling_of_one_length_reads_the_same(text: str) -> None:
    assert read_length(text) == inches("43/8")


@pytest.mark.parametrize(("text", "length"), SAME)
def test_forms_that_people_write(text: str, length: Length) -> None:
    assert read_length(text) == length


@pytest.mark.parametrize(("text", "said"), REFUSED)
def test_what_cannot_be_read_for_certain_is_refused_with_what_would_be_right(text: str, said: str) -> None:
    with pytest.raises(LengthError) as refusal:
        read_length(text)
    message = str(refusal.value)
    assert said in message
    assert len(message) < 200 and message.isprintable()


def test_a_bare_number_takes_the_unit_it_is_given_and_a_unit_overrides_it() -> None:
    assert read_length("3 1/2", "in") == inches("7/2")
    assert read_length("137,5", "mm") == millimetres("137.5")
    assert read_length("2 cm", "in") == millimetres(20)
    with pytest.raises(LengthError, match="6 ft 2 in"):
        read_length("6' 2", "in")


def test_a_text_that_goes_on_and_on_is_refused_at_once_and_not_repeated() -> None:
    started = time.process_time()
    with pytest.raises(LengthError) as refusal:
        read_length("9" * 2000)
    assert time.process_time() - started < 2
    assert "2000 characters" in str(refusal.value) and "at most 100" in str(refusal.value)
    assert "9" * 41 not in str(refusal.value)


@given(written_lengths())
def test_a_length_of_one_unit_is_read_exactly(written: tuple[str, Length]) -> None:
    text, length = written
    assert read_length(text) == length


@given(written_compounds())
def test_a_length_of_two_units_is_read_exactly(written: tuple[str, Length]) -> None:
    text, length = written
    assert read_length(text) == length


@given(st.text(max_size=120) | st.text("0123456789 /.,-'\"inftm½⅜⁄−+e&", max_size=40))
@example("9" * 100)
@example("1" + "/1" * 49)
@example("1'" * 50)
def test_any_text_at_all_is_a_length_or_a_length_error(text: str) -> None:
    started = time.process_time()
    try:
        assert isinstance(read_length(text, "in"), Length)
    except LengthError as error:
        assert str(error)
    assert time.process_time() - started < 2


@pytest.mark.parametrize("unit", sorted(MM_PER))
def test_pint_converts_exactly_as_the_1959_agreement_does(unit: str) -> None:
    # NBS Circular 572, addendum, 1959: 1 yd = 0.9144 m, so 1 ft = 304.8 mm and 1 in = 25.4 mm.
    assert length_of(Fraction(1), unit).mm == MM_PER[unit]  # type: ignore[arg-type]
    assert length_of(Fraction(-7, 11), unit).mm == Fraction(-7, 11) * MM_PER[unit]  # type: ignore[arg-type]


def test_importing_lengths_loads_no_pint() -> None:
    code = "import sys, templategen.lengths; sys.exit('pint' in sys.modules)"
    assert subprocess.run([sys.executable, "-c", code], check=False).returncode == 0
