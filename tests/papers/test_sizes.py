"""Sizes: every sheet of the catalogue held against tables from outside, and the laws of the standards."""

from __future__ import annotations

import warnings
from fractions import Fraction
from itertools import pairwise

import pytest
from reportlab.lib import pagesizes

from templategen.papers import CATALOGUE, FAMILIES, LONGEST, Paper, paper_named

from .cups import by_ppd

with warnings.catch_warnings():
    warnings.simplefilter("ignore")  # what SWIG's own types say of themselves on import
    import pymupdf

INCH = Fraction(254, 10)

PPD = {
    "letter": "Letter", "legal": "Legal", "tabloid": "Tabloid", "executive": "Executive", "statement": "Statement",
    "government-letter": "8x10", "government-legal": "8x13", "foolscap": "FanFoldGermanLegal", "oficio": "Oficio",
    "super-b": "13x19", "ansi-c": "AnsiC", "ansi-d": "AnsiD", "ansi-e": "AnsiE", "arch-a": "ARCHA",
    "arch-b": "ARCHB", "arch-c": "ARCHC", "arch-d": "ARCHD", "arch-e": "ARCHE", "arch-e1": "30x42",
    **{f"a{size}": f"A{size}" for size in range(7)},
    **{f"b{size}-iso": f"ISOB{size}" for size in range(7)},
    **{f"b{size}-jis": f"B{size}" for size in range(7)},
}  # fmt: skip
"""The names in Adobe's PPD specification, as libcups has them: B0 and so on are the Japanese sizes there."""

DERIVED = {"2a0", "4a0", "letter-or-a4"}
"""Sheets that no table names: held against geometry below."""

SHEETS = [name for name, paper in CATALOGUE.items() if not paper.roll]


def _points(paper: Paper) -> tuple[float, float]:
    return float(paper.width) / 25.4 * 72, float(paper.height) / 25.4 * 72


def test_every_sheet_is_held_against_something_outside() -> None:
    assert set(SHEETS) == set(PPD) | DERIVED


@pytest.mark.parametrize("name", PPD)
def test_a_sheet_is_as_large_and_called_as_the_printing_system_has_it(name: str) -> None:
    """libcups keeps hundredths of a millimetre, cut off."""
    theirs, ours = by_ppd(PPD[name]), CATALOGUE[name]
    assert theirs is not None and theirs.pwg == ours.pwg
    assert 0 <= ours.width - theirs.width < Fraction(1, 100)
    assert 0 <= ours.height - theirs.height < Fraction(1, 100)


THEIR_NAMES = {name: name.removesuffix("-iso") for name in SHEETS if not name.endswith("-jis")} | {
    "statement": "invoice", "tabloid": "ledger",
}  # fmt: skip


@pytest.mark.parametrize("name", [name for name, theirs in THEIR_NAMES.items() if theirs in pymupdf.paper_sizes()])
def test_a_sheet_is_as_large_as_a_second_library_says(name: str) -> None:
    """In points, which PyMuPDF rounds to whole ones."""
    assert pymupdf.paper_size(THEIR_NAMES[name]) == pytest.approx(_points(CATALOGUE[name]), abs=1)


@pytest.mark.parametrize(
    ("name", "theirs"),
    [
        ("letter", pagesizes.LETTER), ("legal", pagesizes.LEGAL), ("tabloid", pagesizes.TABLOID),
        *((f"a{size}", getattr(pagesizes, f"A{size}")) for size in range(7)),
        *((f"b{size}-iso", getattr(pagesizes, f"B{size}")) for size in range(7)),
    ],
)  # fmt: skip
def test_a_sheet_is_as_large_as_a_third_library_says(name: str, theirs: tuple[float, float]) -> None:
    """reportlab's page sizes, in points with all their decimals."""
    assert _points(CATALOGUE[name]) == pytest.approx(theirs, abs=1e-6)


@pytest.mark.parametrize(
    ("largest", "names"),
    [
        ((1682, 2378), ["4a0", "2a0", *(f"a{size}" for size in range(7))]),
        ((1000, 1414), [f"b{size}-iso" for size in range(7)]),
        ((1030, 1456), [f"b{size}-jis" for size in range(7)]),
    ],
)
def test_each_sheet_of_a_series_is_half_of_the_one_before(largest: tuple[int, int], names: list[str]) -> None:
    """ISO 216, clause on the halving principle: the longer side is halved and what is over a millimetre dropped."""
    sheets = [CATALOGUE[name] for name in names]
    assert (sheets[0].width, sheets[0].height) == largest
    for larger, smaller in pairwise(sheets):
        assert (smaller.width, smaller.height) == (larger.height // 2, larger.width)


def test_iso_areas() -> None:
    """ISO 216: A0 has an area of one square metre, and sides as 1 to the root of 2, both to the millimetre."""
    a0 = CATALOGUE["a0"]
    assert float(a0.width * a0.height) == pytest.approx(1_000_000, rel=1e-3)
    assert float(a0.height / a0.width) == pytest.approx(2**0.5, rel=1e-3)


@pytest.mark.parametrize(
    ("name", "wide", "high"),
    [
        ("letter", Fraction(17, 2), 11), ("tabloid", 11, 17), ("ansi-c", 17, 22), ("ansi-d", 22, 34),
        ("ansi-e", 34, 44), ("executive", Fraction(29, 4), Fraction(21, 2)),
        ("oficio", Fraction(17, 2), Fraction(67, 5)),
    ],
)  # fmt: skip
def test_american_sheets_are_exact_in_inches(name: str, wide: Fraction, high: Fraction) -> None:
    """ASME Y14.1, sizes A to E, and PWG 5101.1."""
    assert (CATALOGUE[name].width, CATALOGUE[name].height) == (wide * INCH, high * INCH)


def test_one_page_for_two_sheets_is_the_largest_that_prints_whole_on_either() -> None:
    either = _points(CATALOGUE["letter-or-a4"])
    for sheet in (pagesizes.LETTER, pagesizes.A4):
        assert either[0] <= sheet[0] + 1e-9 and either[1] <= sheet[1] + 1e-9
    assert either == pytest.approx((pagesizes.A4[0], pagesizes.LETTER[1]))


def test_what_the_one_page_leaves_over_on_each_sheet_is_said() -> None:
    page, letter, a4 = (CATALOGUE[name] for name in ("letter-or-a4", "letter", "a4"))
    (family,) = (family for family in FAMILIES if page in family.papers)
    assert f"On letter {float(letter.width - page.width):.1f} mm" in family.note
    assert f"on a4 {float(a4.height - page.height):.1f} mm" in family.note
    assert letter.height == page.height and a4.width == page.width


def test_no_two_papers_are_alike() -> None:
    sizes = [(paper.width, paper.height) for paper in CATALOGUE.values()]
    names = [paper.pwg for paper in CATALOGUE.values()]
    assert len(set(sizes)) == len(sizes) and len(set(names)) == len(names)


@pytest.mark.parametrize("width", [11, 28, 34, 40])
def test_rolls_of_the_drawing_standard(width: int) -> None:
    """ASME Y14.1, roll formats G, H, J and K: 11, 28, 34 and 40 in wide (read in a table of that standard)."""
    assert CATALOGUE[f"roll-{width}in"].width == width * INCH


@pytest.mark.parametrize("width", [24, 30, 36, 42, 44])
def test_rolls_by_the_inch(width: int) -> None:
    """Common practice, no source: widths that plotter paper is sold in."""
    assert CATALOGUE[f"roll-{width}in"].width == width * INCH


@pytest.mark.parametrize(("width", "sheet"), [(297, "a3"), (420, "a2"), (594, "a1"), (841, "a0")])
def test_metric_rolls_are_as_wide_as_a_sheet(width: int, sheet: str) -> None:
    """Sides of ISO 216."""
    assert CATALOGUE[f"roll-{width}mm"].width == CATALOGUE[sheet].width == width


@pytest.mark.parametrize("name", [name for name, paper in CATALOGUE.items() if paper.roll])
def test_a_roll_is_as_long_as_a_page_can_be(name: str) -> None:
    """14,400 units of 1/72 in: ISO 32000-1, Annex C."""
    assert CATALOGUE[name].height == LONGEST == 14_400 * INCH / 72


def test_every_family_names_its_source() -> None:
    words = ("ISO 216", "JIS P 0138", "ASME Y14.1", "PWG 5101.1", "common practice, no source", "geometry")
    assert all(any(word in family.source for word in words) for family in FAMILIES)
    assert all(paper_named(name) is paper for name, paper in CATALOGUE.items() if not paper.roll)
