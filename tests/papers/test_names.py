"""Names: those of PWG 5101.1 against the printing system's own reader, custom ones exactly, and refusals."""

from __future__ import annotations

import re
from fractions import Fraction

import pytest
from hypothesis import given
from hypothesis import strategies as st

from templategen.lengths import Length
from templategen.papers import CATALOGUE, LEAST, LONGEST, Paper, paper_named, roll_of, sheet_of, unknown_paper
from tests.strategies import written_lengths

from .cups import by_pwg

_MM_PER = {"in": Fraction(254, 10), "mm": Fraction(1)}
_LIMITS = {unit: (int(LEAST * 1000 / one) + 1, int(LONGEST * 1000 / one)) for unit, one in _MM_PER.items()}


def _named(name: str) -> Paper:
    paper = paper_named(name)
    assert paper is not None, unknown_paper(name)
    return paper


@st.composite
def sides(draw: st.DrawFn, unit: str) -> str:
    """A side within the limits, as PWG 5101.1 writes one: no nought that says nothing."""
    whole, part = divmod(draw(st.integers(*_LIMITS[unit])), 1000)
    return f"{whole}.{part:03}".rstrip("0").rstrip(".")


@st.composite
def custom_names(draw: st.DrawFn) -> tuple[str, Fraction, Fraction]:
    """A self-describing name of a size of one's own, and that size in mm."""
    unit = draw(st.sampled_from(["in", "mm"]))
    wide, high = draw(sides(unit)), draw(sides(unit))
    label = draw(st.from_regex(r"[a-z0-9][a-z0-9.-]{0,20}", fullmatch=True))
    return f"custom_{label}_{wide}x{high}{unit}", Fraction(wide) * _MM_PER[unit], Fraction(high) * _MM_PER[unit]


@given(custom_names())
def test_a_custom_name_is_read_exactly(custom: tuple[str, Fraction, Fraction]) -> None:
    name, width, height = custom
    paper = _named(name)
    assert (paper.width, paper.height, paper.pwg, paper.roll) == (width, height, name, False)
    assert _named(name.upper()) == paper


@given(custom_names())
def test_a_custom_name_is_read_as_the_printing_system_reads_it(custom: tuple[str, Fraction, Fraction]) -> None:
    """libcups keeps hundredths of a millimetre. It finds a size it knows where it is half a millimetre away or less."""
    name, width, height = custom
    theirs = by_pwg(name)
    assert theirs is not None
    assert abs(theirs.width - width) < Fraction(52, 100) and abs(theirs.height - height) < Fraction(52, 100)


@given(custom_names())
def test_a_size_written_as_a_name_reads_back_exactly(custom: tuple[str, Fraction, Fraction]) -> None:
    sheet = sheet_of(custom[1], custom[2])
    assert sheet.pwg is not None
    again = _named(sheet.pwg)
    assert (again.width, again.height) == (sheet.width, sheet.height)


def test_a_size_whose_decimals_do_not_end_has_no_such_name() -> None:
    assert sheet_of(Fraction(1000, 3), Fraction(400)).pwg is None
    assert sheet_of(12 * _MM_PER["in"], 18 * _MM_PER["in"]).pwg == "custom_12x18in_12x18in"
    assert sheet_of(Fraction(300), Fraction(450)).pwg == "custom_300x450mm_300x450mm"


@pytest.mark.parametrize("name", [name for name, paper in CATALOGUE.items() if paper.pwg])
def test_the_standards_name_means_the_same_paper_in_any_case(name: str) -> None:
    paper = CATALOGUE[name]
    assert paper.pwg is not None
    assert paper_named(paper.pwg) == paper_named(paper.pwg.upper()) == paper_named(f" {name.upper()} ") == paper


@pytest.mark.parametrize("name", [n for n, p in CATALOGUE.items() if p.pwg and n != "letter-or-a4"])
def test_the_printing_system_reads_the_standards_name_as_we_do(name: str) -> None:
    paper = CATALOGUE[name]
    theirs = by_pwg(paper.pwg or "")
    assert theirs is not None and abs(theirs.width - paper.width) < Fraction(1, 100)
    assert theirs.height == 0 if paper.roll else abs(theirs.height - paper.height) < Fraction(1, 100)


NAMES = [
    ("iso_a4_210x297mm", 210, 297), ("na_letter_8.5x11in", "215.9", "279.4"), ("jis_b4_257x364mm", 257, 364),
    ("na_arch-c_18x24in", "457.2", "609.6"), ("na_ledger_11x17in", "279.4", "431.8"),
    ("na_letter_8.50x11.0in", "215.9", "279.4"), ("iso_a4x3_297x630mm", 297, 630), ("asme_f_28x40in", "711.2", 1016),
    ("om_folio_210x330mm", 210, 330), ("custom_12x18in_12x18in", "304.8", "457.2"),
    ("custom_banner_300x1200mm", 300, 1200), ("custom_wide_1200x300mm", 1200, 300),
    ("custom_least_90x90mm", 90, 90), ("custom_most_200x200in", 5080, 5080), ("roll_cut_24x36in", "609.6", "914.4"),
    ("choice_iso_a4_210x297mm_na_letter_8.5x11in", 210, "279.4"),
    ("choice_na_letter_8.5x11in_iso_a4_210x297mm", 210, "279.4"),
]  # fmt: skip


@pytest.mark.parametrize(("name", "width", "height"), NAMES)
def test_names_after_the_standard(name: str, width: str, height: str) -> None:
    """Forms of the grammar of PWG 5101.1-2023, section 5; catalogue or no."""
    paper = _named(name)
    assert (paper.width, paper.height) == (Fraction(width), Fraction(height))


REFUSED = [
    ("custom_12x18in", "write class, name, width x height and unit"),
    ("custom_banner_300x1200", "custom_banner_300x1200mm"),
    ("custom_banner_300mmx1200mm", "custom_banner_300x1200mm"),
    ("custom_banner_300x1200cm", "write class, name"),
    ("custom_banner_300x12e9mm", "write class, name"),
    ("custom__300x1200mm", "write class, name"),
    ("custom_a_b_300x1200mm", "write class, name"),
    ("custom_x_300x１200mm", "write class, name"),
    ("custom_small_89.99x450mm", "90 mm (about 3 1/2 in) to 5080 mm (200 in)"),
    ("custom_none_0x450mm", "a side of 0 mm is too short"),
    ("custom_large_300x5080.01mm", "longer than a page can be"),
    ("custom_large_300x200.1in", "longer than a page can be"),
    ("custom_banner_24x0in", "write roll_banner_24x0in"),
    ("paper_own_300x450mm", "write custom_own_300x450mm"),
    ("iso_a4_210x298mm", "write iso_a4_210x297mm, or custom_a4-own_210x298mm"),
    ("iso_a4_297x210mm", "write iso_a4_210x297mm"),
    ("na_letter_8x11in", "write na_letter_8.5x11in"),
    ("iso_long_8x30in", "in millimetres"),
    ("na_long_210x630mm", "in inches"),
    ("iso_a4_210x297", "did you mean iso_a4_210x297mm?"),
    ("roll_wide_5081x0mm", "longer than a page can be"),
    ("lettre", "did you mean letter?"),
    ("a44", "did you mean a4?"),
    ("iso-letter", "did you mean"),
    ("jis-a4", "no paper is known by that name"),
    ("b4", "write b4-iso (250 x 353 mm) or b4-jis (257 x 364 mm)"),
    ("", "“templategen papers” lists them"),
    ("x" * 5000, "5000 characters"),
    ("roll", "write roll 24 in"),
    ("roll 24", "write 24 in or 24 mm"),
    ("roll wide", "not the width of a roll"),
    ("roll -24 in", "too short"),
    ("roll 24 x 36 in", "not the width of a roll"),
    ("roll 89 mm", "too short"),
    ("roll 6 m", "longer than a page can be"),
]


@pytest.mark.parametrize(("name", "said"), REFUSED)
def test_a_name_that_no_paper_has_is_refused_with_what_would_be_right(name: str, said: str) -> None:
    assert paper_named(name) is None
    assert said in unknown_paper(name)
    assert len(unknown_paper(name)) < 400


@pytest.mark.parametrize("name", ["custom_large_300x450mm", "custom_a4-own_210x298mm", "custom_own_300x450mm"])
def test_what_a_refusal_says_would_be_right_is_right(name: str) -> None:
    assert paper_named(name) is not None


_NEARLY = r"(custom|iso|na|roll)_[a-z0-9]*_?[0-9.]*x[0-9.]*(in|mm|)"


@given(st.text(max_size=130) | st.from_regex(_NEARLY, fullmatch=True))
def test_any_text_is_a_paper_within_the_limits_or_is_refused_in_a_line(text: str) -> None:
    paper = paper_named(text)
    if paper is None:
        assert len(unknown_paper(text).splitlines()) == 1
    else:
        assert all(LEAST <= side <= LONGEST for side in (paper.width, paper.height))


@pytest.mark.parametrize(
    ("name", "meant"),
    [
        ("ansi-a", "letter"), ("ANSI B", "tabloid"), ("ledger", "tabloid"), ("invoice", "statement"),
        ("Government Letter", "government-letter"), ("jis-b4", "b4-jis"), ("JIS B4", "b4-jis"), ("B4 JIS", "b4-jis"),
        ("iso-b5", "b5-iso"), ("iso-a3", "a3"), ("ISO A3", "a3"), ("A4 or Letter", "letter-or-a4"), ("A3+", "super-b"),
    ],
)  # fmt: skip
def test_other_names_in_use(name: str, meant: str) -> None:
    assert paper_named(name) is CATALOGUE[meant]


@given(written_lengths())
def test_a_roll_of_any_width_that_can_be_read(written: tuple[str, Length]) -> None:
    text, length = written
    paper = paper_named(f"roll {text}")
    if LEAST <= length.mm <= LONGEST:
        assert paper is not None and (paper.width, paper.height, paper.roll) == (length.mm, LONGEST, True)
    else:
        assert paper is None


@given(st.fractions(LEAST, LONGEST, max_denominator=10_000))
def test_a_rolls_name_reads_back_exactly(width: Fraction) -> None:
    roll = roll_of(width)
    assert paper_named(roll.name) == roll
    assert roll.pwg is None or paper_named(roll.pwg) == roll


@pytest.mark.parametrize(
    "text", ["roll-24in", "roll 24 in", 'Roll 24"', "roll-2-ft", "ROLL 609.6 mm", "roll_24_24x0in"]
)
def test_one_roll_has_one_name(text: str) -> None:
    assert _named(text) == CATALOGUE["roll-24in"]


@pytest.mark.parametrize(
    ("name", "said"),
    [
        ("letter", "letter paper"), ("letter-or-a4", "letter or A4 paper"), ("roll-610mm", "roll paper 610 mm wide"),
        ("roll 24 1/2 in", "roll paper 24.5 in wide"),
    ],
)  # fmt: skip
def test_a_paper_in_a_sentence(name: str, said: str) -> None:
    assert _named(name).said == said


def test_the_message_for_an_unknown_name_speaks_of_families_and_not_of_every_paper() -> None:
    named = set(re.findall(r"[\w.+-]+", unknown_paper("nothing like it")))
    assert len(named & set(CATALOGUE)) < 20 < len(CATALOGUE)
