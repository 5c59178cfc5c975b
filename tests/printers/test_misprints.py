"""What a wrong setting makes of a sheet: worked here from another library's paper sizes, and told apart."""

from __future__ import annotations

from fractions import Fraction
from itertools import permutations

import pytest
from hypothesis import given
from hypothesis import strategies as st
from reportlab.lib import pagesizes

from templategen.misprints import MISPRINTS, TOLERANCE, Misprint, likely_cause, likely_misprints

_POINTS = {
    "a4": pagesizes.A4, "letter": pagesizes.letter, "legal": pagesizes.legal, "a3": pagesizes.A3,
    "tabloid": pagesizes.TABLOID,
}  # fmt: skip
_FITTED = {(each.made_for, each.printed_on): each for each in MISPRINTS if each.printed_on}


def _ratio(text: str) -> Fraction:
    return Fraction(text) / 100


@pytest.mark.parametrize(
    ("made_for", "printed_on", "measured"),
    # Geometry, and the usual figures for these two mistakes: 94.07 % and 97.27 %.
    [("a4", "letter", "94.07"), ("letter", "a4", "97.27")],
)
def test_the_two_that_are_met_most(made_for: str, printed_on: str, measured: str) -> None:
    assert round(_FITTED[made_for, printed_on].ratio * 100, 2) == Fraction(measured)
    cause = likely_cause(_ratio(measured), _ratio(measured))
    assert cause is not None and cause.startswith(f"{measured} % is a")
    assert f"or make the kit for {_said(printed_on)}" in cause


def _said(name: str) -> str:
    return name.upper() if name[1:].isdigit() else name


@pytest.mark.parametrize(("page", "sheet"), list(permutations(_POINTS, 2)))
def test_a_page_fitted_on_a_sheet_is_as_small_as_another_librarys_sizes_make_it(page: str, sheet: str) -> None:
    ratio = min(there / here for here, there in zip(_POINTS[page], _POINTS[sheet], strict=True))
    if ratio == pytest.approx(1, abs=1e-6):
        assert (page, sheet) not in _FITTED  # letter on legal: nothing is scaled
    else:
        found = _FITTED[page, sheet]
        assert float(found.ratio) == pytest.approx(ratio, abs=1e-5)
        assert found in likely_misprints(found.ratio, found.ratio, page)
        assert _said(sheet) in found.what and _said(page) in found.what


@pytest.mark.parametrize(
    ("across", "along", "said"),
    [
        ("94.2", "93.9", "an A4 page fitted on letter paper"),
        ("97.5", "97", "a letter page fitted on A4 paper"),
        ("95.5", "95.5", "shrunk to what the printer reaches"),
        ("101.5", "101.25", "borderless"),
        ("104", "104.25", "borderless"),
        ("102.81", "102.81", "an A4 page fitted on legal paper"),
        ("78.5", "78.5", "a legal page fitted on letter paper"),
        ("141.5", "141.5", "an A4 page fitted on A3 paper"),
    ],
)
def test_readings_to_a_quarter_millimetre_are_recognised(across: str, along: str, said: str) -> None:
    cause = likely_cause(_ratio(across), _ratio(along))
    assert cause is not None and said in cause


@pytest.mark.parametrize(
    ("across", "along"),
    [("100", "100"), ("99.5", "99.75"), ("100.25", "100.5"), ("98.5", "98.5"), ("94.07", "100"), ("97.27", "98.5"),
     ("50", "50"), ("300", "300"), ("101.2", "97.27")],
)  # fmt: skip
def test_what_no_setting_does_has_no_cause(across: str, along: str) -> None:
    """A setting scales both ways alike, and a printer that is a little out is only that."""
    assert likely_cause(_ratio(across), _ratio(along)) is None


def test_a_bar_that_was_not_measured_does_not_count() -> None:
    assert likely_cause(None, None) is None
    assert likely_cause(_ratio("94.07"), None) == likely_cause(None, _ratio("94.07")) == likely_cause(
        _ratio("94.07"), _ratio("94.07")
    )


def test_the_paper_that_the_page_was_made_for_settles_what_it_cannot_have_been() -> None:
    """A letter page cannot be an A4 page fitted on letter; it can be shrunk by as much."""
    reading = _ratio("94.07")
    assert {each.made_for for each in likely_misprints(reading, reading)} == {"a4", "a3"}
    assert [each.what for each in likely_misprints(reading, reading, "a3")] == ["an A3 page fitted on tabloid paper"]
    assert "shrunk" in (likely_cause(reading, reading, "letter") or "")


@given(st.sampled_from(MISPRINTS), st.fractions(-TOLERANCE / 2, TOLERANCE / 2, max_denominator=4000), st.data())
def test_any_misprint_is_found_from_readings_half_a_division_out(
    misprint: Misprint, off: Fraction, data: st.DataObject
) -> None:
    part = data.draw(st.fractions(0, 1, max_denominator=50))
    ratio = misprint.ratio + part * ((misprint.most or misprint.ratio) - misprint.ratio)
    found = likely_misprints(ratio + off, ratio - off, misprint.made_for or None)
    # What follows from the papers' sizes comes before what lies in a range.
    assert found and (misprint in found or found[0].most is None)
