"""Pages missing, doubled, out of order, another's; what a copy has lost; kits corrected for a printer."""

from __future__ import annotations

import io
from pathlib import Path

import pikepdf
import pypdf
import pytest
from pikepdf import Name
from reportlab.pdfgen.canvas import Canvas

from templategen.checking.findings import Verdict, on_pages
from tests.proof.kits import PANELS, made

from . import handling as by
from .kits import PRINTER, SHEETS, kit
from .test_print_paths import LOST, codes, judged


def _cover(size: tuple[float, float] = (612, 792)) -> bytes:
    """A page of somebody's own, with lines of 100 mm and 4 in on it that are no bars."""
    out = io.BytesIO()
    canvas = Canvas(out, pagesize=size)
    canvas.drawString(72, 700, "Village library: for the sewing circle, page 1 of 9")
    for millimetres, y in ((100, 300), (101.6, 305.1)):
        canvas.line(72, y, 72 + millimetres / 25.4 * 72, y)
    canvas.save()
    return out.getvalue()


def _text(verdict: Verdict, code: str) -> str:
    (found,) = [finding for finding in verdict.findings if finding.code == code]
    return found.text


def test_missing_sheets_are_named_by_their_numbers(tmp_path: Path) -> None:
    verdict = judged(by.pages(kit(), only=[0, 1, 3, 7]), tmp_path)
    assert codes(verdict) == LOST | {"missing-pages"} and not verdict.true
    text = _text(verdict, "missing-pages")
    assert f"Sheets 3, 5 to 7 and 9 to {SHEETS} are missing: only 4 of {SHEETS} sheets are there." in text
    assert (verdict.across, verdict.along) == (pytest.approx(1), pytest.approx(1))


def test_a_kit_of_one_template_is_whole(tmp_path: Path) -> None:
    verdict = judged(kit(only=("cut gauge",)), tmp_path)
    assert verdict.true and not verdict.findings and len(verdict.sheets) == 1


def test_a_kit_appended_to_itself_is_true_and_doubled(tmp_path: Path) -> None:
    verdict = judged(by.appended(kit(), kit()), tmp_path)
    assert verdict.true and "doubled-pages" in codes(verdict, "note") and verdict.pages == 2 * SHEETS


def test_sheets_out_of_order_are_true(tmp_path: Path) -> None:
    verdict = judged(by.pages(kit(), only=[*range(4, SHEETS), *range(4)]), tmp_path)
    assert verdict.true and codes(verdict) == LOST | {"order"}


def test_two_kits_on_one_paper_are_told_apart_and_both_must_be_whole(tmp_path: Path) -> None:
    other = kit(title="Reading room, north door")
    verdict = judged(by.appended(kit(), other), tmp_path)
    assert verdict.true and "“Reading room, north door”" in _text(verdict, "several-kits")
    verdict = judged(by.appended(kit(), by.pages(other, only=range(1, SHEETS))), tmp_path)
    assert codes(verdict, "wrong") == {"missing-pages"}
    assert "Sheet 1 of “Reading room, north door” is missing" in _text(verdict, "missing-pages")


def test_kits_on_two_papers_cannot_be_printed_as_one(tmp_path: Path) -> None:
    verdict = judged(by.appended(kit(), kit("a4")), tmp_path)
    assert codes(verdict, "wrong") == {"mixed-sizes"}
    assert "  " not in _text(verdict, "mixed-sizes")


def test_a_page_of_somebodys_own_does_no_harm_unless_it_is_of_other_paper(tmp_path: Path) -> None:
    verdict = judged(by.appended(_cover(), kit()), tmp_path)
    assert verdict.true and _text(verdict, "other-pages").startswith("Without a sheet of a kit: page 1.")
    assert len(verdict.sheets) == SHEETS
    verdict = judged(by.appended(_cover((595.28, 841.89)), kit()), tmp_path)
    assert codes(verdict, "wrong") == {"mixed-sizes"}


def test_a_title_with_a_fraction_in_a_form_is_no_other_kit(tmp_path: Path) -> None:
    """A built fraction is spoken as one text, which readers put anywhere once it stands inside a form."""
    pdf = kit(title="Window 5 3/8 in deep")
    for handled in (pdf, by.queued(pdf, "print-scaling=fit"), by.queued(pdf, "mirror")):
        found = codes(judged(handled, tmp_path))
        assert not found & {"several-kits", "missing-pages", "cut-off", "doubled-pages"}


def test_a_kit_corrected_for_its_printer_is_true_though_its_bars_are_not(tmp_path: Path) -> None:
    """The bars on the page are the reading's inverse: 100 / 99.2 and 100 / 100.6."""
    verdict = judged(kit(more=PRINTER), tmp_path)
    assert verdict.true and codes(verdict) == {"corrected"}
    assert (verdict.across, verdict.along) == (pytest.approx(1 / 0.992, abs=1e-5), pytest.approx(1 / 1.006, abs=1e-5))
    assert "99.20 % across and 100.60 % along" in _text(verdict, "corrected")
    verdict = judged(by.queued(kit(more=PRINTER), "PageSize=A4 fit-to-page"), tmp_path)
    assert codes(verdict, "wrong") == {"scaled"}


def test_what_the_file_asks_of_a_printer_is_read(tmp_path: Path) -> None:
    def both_sides(opened: pikepdf.Pdf) -> None:
        opened.Root.ViewerPreferences.Duplex = Name.DuplexFlipLongEdge

    def nothing(opened: pikepdf.Pdf) -> None:
        del opened.Root.ViewerPreferences

    def no_spec(opened: pikepdf.Pdf) -> None:
        del opened.Root.Names

    for change, code in ((both_sides, "two-sided"), (nothing, "preferences-lost"), (no_spec, "attachment-lost")):
        verdict = judged(by.pikepdf_saved(kit(), change), tmp_path)
        assert verdict.true and codes(verdict) == {code}


def test_a_font_that_is_no_longer_in_the_file_is_named(tmp_path: Path) -> None:
    def without_fonts(opened: pikepdf.Pdf) -> None:
        for page in opened.pages:
            for font in page.Resources.Font.values():
                real = font.DescendantFonts[0] if "/DescendantFonts" in font else font
                if "/FontDescriptor" in real and "/FontFile2" in real.FontDescriptor:
                    del real.FontDescriptor.FontFile2

    verdict = judged(by.pikepdf_saved(kit(), without_fonts), tmp_path)
    assert verdict.true and codes(verdict) == {"fonts"} and "Lato" in _text(verdict, "fonts")


def test_a_file_locked_against_printing_is_no_good(tmp_path: Path) -> None:
    allow = pikepdf.Permissions(print_lowres=False, print_highres=False)
    verdict = judged(by.encrypted(kit(), "", allow=allow), tmp_path)
    assert codes(verdict, "wrong") == {"locked"}
    assert judged(by.encrypted(kit(), ""), tmp_path).true


def test_a_sheet_whose_bars_were_painted_over_with_nothing_is_missed(tmp_path: Path) -> None:
    """One page's lines are taken away, its text is left."""

    def no_lines(page: pypdf.PageObject) -> None:
        content = page.get_contents()
        assert content is not None
        content.operations = [each for each in content.operations if each[1] not in (b"S", b"n", b"l", b"m")]
        page.replace_contents(content)

    gone = by.pages(kit(), no_lines, only=[0])
    verdict = judged(by.appended(gone, by.pages(kit(), only=range(1, SHEETS))), tmp_path)
    assert "bars-missing" in codes(verdict, "wrong")


def test_pages_are_counted_in_words() -> None:
    assert on_pages([3]) == "page 3"
    assert on_pages([4, 3]) == "pages 3 and 4"
    assert on_pages([1, 2, 3, 4, 7]) == "pages 1 to 4 and 7"
    assert on_pages([1, 3, 4, 6, 7, 8], "sheet") == "sheets 1, 3, 4 and 6 to 8"


def test_no_fault_is_found_in_any_of_twelve_kits_as_they_were_made(tmp_path: Path) -> None:
    for panel in PANELS.values():
        verdict = judged(made(panel).files["kit.pdf"], tmp_path)
        assert verdict.true and codes(verdict) <= {"corrected"}
        assert [sheet.number for sheet in verdict.sheets] == list(range(1, verdict.pages + 1))


@pytest.mark.parametrize("paper", ["a5", "legal", "tabloid", "b4-jis", "a0", "ansi-e"])
def test_no_fault_is_found_on_small_or_large_paper(paper: str, tmp_path: Path) -> None:
    verdict = judged(kit(paper, only=("cut gauge",)), tmp_path)
    assert verdict.true and not verdict.findings
