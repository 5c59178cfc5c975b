"""Kits put through what real print paths are made of; each verdict held against another renderer's picture.

Expected scales are geometry of paper sizes (ISO 216; ANSI/ASME Y14.1) and of the margins asked for; every
measured one is also held against MuPDF's picture of the page, 300 points to the inch, to 0.0005.
"""

from __future__ import annotations

import io
from collections.abc import Callable
from dataclasses import dataclass
from pathlib import Path

import pytest
from reportlab.pdfgen.canvas import Canvas

from templategen.checking import Verdict
from templategen.checking.judging import judge

from . import handling as by
from .kits import SHEETS, kit
from .measuring import bars_seen, pymupdf

TEMPLATES = ("spacing strip", "cut gauge", "loop ladder", "hem gauge card")
"""Four sheets: an even number, so that no page of two holds one alone, which is said besides."""

CLOSE = 5e-4
POINT = 25.4 / 72
LETTER, A4 = (215.9, 279.4), (210.0, 297.0)
LOST = {"preferences-lost", "attachment-lost"}


def fitted(page: tuple[float, float], paper: tuple[float, float], margin: float = 0.0) -> float:
    """The scale at which ``page`` just lies on ``paper`` inside margins, all in mm."""
    return min((there - 2 * margin) / here for here, there in zip(page, paper, strict=True))


@dataclass(frozen=True)
class Path_:
    """A way that a kit went, and what is to be said of it."""

    handled: Callable[[], bytes]
    scale: float
    codes: frozenset[str] | set[str]
    wrong: frozenset[str] | set[str] = frozenset()
    page: int = 0
    turned: bool = False
    """Whether the sheet lies on its side as the page is shown."""


WAYS = {
    "as it was made": Path_(kit, 1, set()),
    "A4": Path_(lambda: kit("a4"), 1, set()),
    # cups-filters' pdftopdf, without a description of the printer: margins of 18 points at the sides, 36 at the foot.
    "queue, as it is": Path_(lambda: by.queued(kit()), 1, set()),
    "queue, A4, fit": Path_(
        lambda: by.queued(kit(), "PageSize=A4 fit-to-page"), fitted(LETTER, A4, 18 * POINT), {"scaled"}, {"scaled"}
    ),
    "queue, A4": Path_(
        lambda: by.queued(kit(), "PageSize=A4"), fitted(LETTER, A4, 18 * POINT), {"scaled"}, {"scaled"}
    ),
    "queue, A4, no scaling": Path_(
        lambda: by.queued(kit(), "PageSize=A4 print-scaling=none"), 1, {"other-paper"}
    ),
    "queue, A4 on letter, fit": Path_(
        lambda: by.queued(kit("a4"), "PageSize=Letter fit-to-page"),
        (279.4 - 72 * POINT) / 297,
        {"scaled"},
        {"scaled"},
    ),
    # 612 of 792 points wide, 11/17 of a letter page's height: half a letter page's width is 396 points of 612.
    "queue, 2 to a page": Path_(
        lambda: by.queued(kit(only=TEMPLATES), "number-up=2"),
        396 / 612,
        {"several-up", "turned"},
        {"several-up"},
        turned=True,
    ),
    "queue, 4 to a page": Path_(
        lambda: by.queued(kit(), "PageSize=A4 number-up=4"),
        fitted(LETTER, A4, 18 * POINT) / 2,
        {"several-up"},
        {"several-up"},
        1,  # the maps of the first page have lines that the other renderer's eye takes for bars at half their size
    ),
    "queue, mirror": Path_(lambda: by.queued(kit(), "mirror"), 1, {"mirrored"}, {"mirrored"}),
    "queue, pages 2 to 4": Path_(lambda: by.queued(kit(), "page-ranges=2-4"), 1, {"missing-pages"}, {"missing-pages"}),
    "queue, twice": Path_(lambda: by.queued(kit(), copies=2), 1, {"doubled-pages"}),
    "queue, last first": Path_(lambda: by.queued(kit(), "outputorder=reverse"), 1, {"order"}),
    "queue, on its side": Path_(lambda: by.queued(kit(), "landscape"), 1, {"turned"}),
    # With the description of a printer whose margins are 12 points: 583 - 12 points of A4's width.
    "printer, A4, fit": Path_(
        lambda: by.queued(kit(), "PageSize=A4 fit-to-page", ppd=True), 571 / 612, {"scaled"}, {"scaled"}
    ),
    "printer, A4": Path_(lambda: by.queued(kit(), "PageSize=A4", ppd=True), 571 / 612, {"scaled"}, {"scaled"}),
    "printer, A4, no scaling": Path_(
        lambda: by.queued(kit(), "PageSize=A4 print-scaling=none", ppd=True), 1, {"other-paper"}
    ),
    "printer, letter": Path_(lambda: by.queued(kit(), "PageSize=Letter", ppd=True), 1, set()),
    "printer, A4, fill": Path_(
        lambda: by.queued(kit(), "PageSize=A4 print-scaling=fill", ppd=True),
        818 / 792,
        {"scaled", "cut-off"},
        {"scaled", "cut-off"},
    ),
    "Ghostscript": Path_(
        lambda: by.ghostscript(kit()), 1, {"preferences-lost", "mixed-ways-up", "turned"}, page=0
    ),
    "Ghostscript, a page it turned": Path_(
        lambda: by.ghostscript(kit()), 1, {"preferences-lost", "mixed-ways-up", "turned"}, page=4, turned=True
    ),
    "Ghostscript, pages as they are": Path_(
        lambda: by.ghostscript(kit(), "-dAutoRotatePages=/None"), 1, {"preferences-lost"}
    ),
    # Ghostscript's A4 is 595 x 842 points.
    "Ghostscript, fitted on A4": Path_(
        lambda: by.ghostscript(kit(), "-sPAPERSIZE=a4", "-dFIXEDMEDIA", "-dPDFFitPage", "-dAutoRotatePages=/None"),
        595 / 612,
        {"scaled", "preferences-lost"},
        {"scaled"},
    ),
    "Ghostscript, on A4": Path_(
        lambda: by.ghostscript(kit(), "-sPAPERSIZE=a4", "-dFIXEDMEDIA", "-dAutoRotatePages=/None"),
        1,
        {"other-paper", "preferences-lost"},
    ),
    "Ghostscript, letters drawn as outlines": Path_(
        lambda: by.ghostscript(kit(only=("cut gauge",)), "-dNoOutputFonts"), 1, {"text-lost", "preferences-lost"}
    ),
    "PostScript and back": Path_(
        lambda: by.postscript(kit()), 1, LOST
    ),
    "poppler": Path_(lambda: by.cairo(kit()), 1, LOST),
    "poppler, on A4": Path_(lambda: by.cairo(kit(), "-paper", "A4"), 595 / 612, LOST | {"scaled"}, {"scaled"}),
    "poppler, on A4, not shrunk": Path_(
        lambda: by.cairo(kit(), "-paper", "A4", "-noshrink"), 1, LOST | {"other-paper"}
    ),
    # A3 of 842 x 1190 points.
    "poppler, grown on A3": Path_(
        lambda: by.cairo(kit(), "-paper", "A3", "-expand"), 842 / 612, LOST | {"scaled"}, {"scaled"}
    ),
    # An A5 page does not hold a letter sheet.
    "poppler, on A5, not shrunk": Path_(
        lambda: by.cairo(kit(), "-paperw", "420", "-paperh", "595", "-noshrink"),
        1,
        LOST | {"text-lost", "cut-off"},
        {"cut-off"},
    ),
    "qpdf, linearised": Path_(lambda: by.qpdf(kit(), "--linearize"), 1, set()),
    "qpdf, packed": Path_(lambda: by.qpdf(kit(), "--object-streams=generate"), 1, set()),
    "qpdf, turned": Path_(lambda: by.qpdf(kit(), "--rotate=+90"), 1, {"turned"}, turned=True),
    "qpdf, one page turned": Path_(
        lambda: by.qpdf(kit(), "--rotate=+90:3"), 1, {"turned", "mixed-ways-up"}, page=2, turned=True
    ),
    "pikepdf": Path_(lambda: by.pikepdf_saved(kit()), 1, set()),
    "PDFium": Path_(lambda: by.pdfium_saved(kit()), 1, set()),
    "PDFium, 2 to a page": Path_(
        lambda: by.pdfium_up(kit(only=TEMPLATES), 2, 1, (792, 612)), 396 / 612, LOST | {"several-up"}, {"several-up"}
    ),
    "pypdf, pages written anew": Path_(lambda: by.pages(kit()), 1, LOST),
    "pypdf, scaled to 90 %": Path_(
        lambda: by.pages(kit(), lambda page: page.scale_by(0.9)), 0.9, LOST | {"scaled"},
        {"scaled"},
    ),
    "pypdf, drawn smaller on the same page": Path_(
        lambda: by.pages(kit(), lambda page: by.transformed(page, 0.97, 0, 0, 0.97, 9, 12)), 0.97,
        LOST | {"scaled"}, {"scaled"},
    ),
    "pypdf, cropped in the margin": Path_(
        lambda: by.pages(kit(), lambda page: by.cropped(page, 20)), 1, LOST | {"other-paper"}
    ),
    "pypdf, cropped": Path_(
        lambda: by.pages(kit(), lambda page: by.cropped(page, 60)), 1, LOST | {"other-paper", "cut-off"}, {"cut-off"}
    ),
    "pypdf, units of 1/36 in": Path_(
        lambda: by.pages(kit(), lambda page: by.user_unit(page, 2)), 2, LOST | {"scaled", "user-unit"},
        {"scaled", "user-unit"},
    ),
    "pypdf, turned by 2 degrees": Path_(
        lambda: by.pages(kit(), lambda page: by.rotated(page, 2)),
        1, LOST | {"askew"},
    ),
}  # fmt: skip


def judged(pdf: bytes, folder: Path) -> Verdict:
    path = folder / "kit.pdf"
    path.write_bytes(pdf)
    return judge(path)


def codes(verdict: Verdict, level: str | None = None) -> set[str]:
    return {finding.code for finding in verdict.findings if level in (None, finding.level)}


@pytest.mark.parametrize("way", WAYS.values(), ids=WAYS)
def test_what_became_of_a_kit_is_said(way: Path_, tmp_path: Path) -> None:
    pdf = way.handled()
    verdict = judged(pdf, tmp_path)
    assert codes(verdict) == way.codes
    assert codes(verdict, "wrong") == way.wrong
    assert verdict.true == (not way.wrong)
    assert verdict.within == 0
    assert verdict.across == pytest.approx(way.scale, abs=CLOSE)
    assert verdict.along == pytest.approx(way.scale, abs=CLOSE)
    if not way.codes & {"cut-off", "askew"}:  # the other renderer needs bars that stand whole and straight
        as_seen(pdf, verdict, way)


def as_seen(pdf: bytes, verdict: Verdict, way: Path_) -> None:
    """The ratios of every sheet on the page are what MuPDF shows; of a smaller bar a smaller part can be seen."""
    seen = bars_seen(pdf, way.page)
    level, upright = (seen.upright, seen.level) if way.turned else (seen.level, seen.upright)
    sheets = [sheet for sheet in verdict.sheets if sheet.page == way.page + 1]
    assert sheets and len(level) == len(upright) == len(sheets)
    for sheet in sheets:
        assert sheet.across is not None and sheet.along is not None
        assert min(abs(sheet.across - ratio) for ratio in level) < CLOSE / min(1, way.scale)
        assert min(abs(sheet.along - ratio) for ratio in upright) < CLOSE / min(1, way.scale)


def test_one_axis_stretched_is_told_from_both(tmp_path: Path) -> None:
    pdf = by.pages(kit(), lambda page: by.transformed(page, 1, 0, 0, 0.96, 0, 0))
    verdict = judged(pdf, tmp_path)
    assert codes(verdict, "wrong") == {"stretched"}
    assert (verdict.across, verdict.along) == (pytest.approx(1, abs=1e-5), pytest.approx(0.96, abs=1e-5))
    seen = bars_seen(pdf)
    assert seen.level[0] == pytest.approx(1, abs=CLOSE) and seen.upright[0] == pytest.approx(0.96, abs=CLOSE)


def test_lines_that_became_filled_bars_are_measured_between_their_ticks(tmp_path: Path) -> None:
    """Some writers of PDF fill what a pen of that width would cover, square ends and all: a line grows by its width."""
    out = io.BytesIO()
    canvas = Canvas(out, pagesize=(612, 792))
    with pymupdf.open(stream=kit(only=("cut gauge",)), filetype="pdf") as document:
        for drawing in document[0].get_drawings():
            half = (drawing["width"] or 0) / 2
            for kind, *points in drawing["items"]:
                if kind == "l":
                    (x1, y1), (x2, y2) = ((point.x, 792 - point.y) for point in points)
                    left, right, low, high = min(x1, x2), max(x1, x2), min(y1, y2), max(y1, y2)
                    canvas.rect(left - half, low - half, right - left + 2 * half, high - low + 2 * half, 0, 1)
    canvas.save()
    verdict = judged(out.getvalue(), tmp_path)
    assert verdict.true and verdict.within == 0
    assert (verdict.across, verdict.along) == (pytest.approx(1, abs=2e-5), pytest.approx(1, abs=2e-5))


def test_a_page_pushed_out_of_square_is_noticed(tmp_path: Path) -> None:
    verdict = judged(by.pages(kit(), lambda page: by.transformed(page, 1, 0, 0.01, 1, 0, 0)), tmp_path)
    assert codes(verdict, "wrong") == {"skewed"}


def test_every_sheet_is_listed_with_its_number_and_its_own_ratios(tmp_path: Path) -> None:
    half = by.pages(kit(), lambda page: page.scale_by(0.5), only=[2])
    verdict = judged(by.appended(by.pages(kit(), only=[0, 1]), half, by.pages(kit(), only=range(3, SHEETS))), tmp_path)
    assert [(sheet.page, sheet.number, sheet.of) for sheet in verdict.sheets] == [
        (number, number, SHEETS) for number in range(1, SHEETS + 1)
    ]
    assert [round(sheet.across or 0, 6) for sheet in verdict.sheets] == [1, 1, 0.5] + [1] * (SHEETS - 3)
    assert (verdict.across, verdict.along) == (pytest.approx(0.5), pytest.approx(0.5))
    (scaled,) = [finding for finding in verdict.findings if finding.code == "scaled"]
    assert scaled.pages == (3,) and "page 3" in scaled.text and "50.00 %" in scaled.text
