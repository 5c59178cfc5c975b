"""The first page on paper: its frame on the margins, and its numbers what another engine's fitting makes of a bar."""

from __future__ import annotations

import re
import warnings
from fractions import Fraction
from functools import lru_cache

import pytest
from reportlab.lib import pagesizes

from templategen import kit_files, make_plan, read_spec
from templategen.document.blocks import Findings
from tests.bench.jobs import ORDINARY

from .measuring import bar_lengths
from .seeing import MM_PER_INCH, Pages, Picture, cut_out_bar

with warnings.catch_warnings():
    warnings.simplefilter("ignore")  # what SWIG's own types say of themselves on import
    import pymupdf

_LEFT, _RIGHT, _TOP, _BOTTOM = 12.0, 9.0, 7.0, 21.0
_MARGINS = f'margins = {{ left = "{_LEFT} mm", right = "{_RIGHT} mm", top = "{_TOP} mm", bottom = "{_BOTTOM} mm" }}'
_TRUE = 0.05
"""Half a point of a 600 dpi picture, and a little, in mm."""


@lru_cache(maxsize=4)
def _made(paper: str) -> tuple[bytes, dict[str, tuple[str, ...]], list[dict[str, list[float]]]]:
    """A kit's file, what its first page says of readings, and where that page's bars are."""
    import json

    text = f'{ORDINARY}[paper]\nname = "{paper}"\n{_MARGINS}\n'
    kit, files = kit_files(make_plan(read_spec(text)))
    (findings,) = (block for block in kit.check if isinstance(block, Findings))
    bars = [bar for bar in json.loads(files["kit.json"])["bars"] if bar["page"] == 1]
    return files["kit.pdf"], {row.meaning: row.readings for row in findings.rows}, bars


def _frame_of(page: Picture) -> tuple[float, float, float, float]:
    """The outermost lines: from the sheet's edges inward to the middle of the ink."""
    x, y = page.width / 2, page.height / 2
    top = page.strokes_down(x - 3, 0, x + 3, 20)[0]
    foot = page.strokes_down(x - 3, page.height - 30, x + 3, page.height)[-1]
    left = page.strokes_across(0, y - 3, 20, y + 3)[0]
    right = page.strokes_across(page.width - 20, y - 3, page.width, y + 3)[-1]
    return left.at, page.width - right.at, top.at, page.height - foot.at


@pytest.mark.parametrize("paper", ["letter", "a4"])
def test_the_frame_lies_on_the_margins(paper: str) -> None:
    """As PDFium draws it at 600 dpi."""
    pages = Pages(_made(paper)[0])
    assert _frame_of(pages.page(1)) == pytest.approx((_LEFT, _RIGHT, _TOP, _BOTTOM), abs=_TRUE)
    pages.close()


@pytest.mark.parametrize("paper", ["letter", "a4"])
def test_each_corner_is_heavy_for_eight_millimetres_either_way(paper: str) -> None:
    """A strip that runs along the frame: thick, thin, thick."""
    pages = Pages(_made(paper)[0])
    page = pages.page(1)
    for x in (_LEFT, page.width - _RIGHT):
        for y, inward in ((_TOP, 1), (page.height - _BOTTOM, -1)):
            heavy, thin = sorted((y + inward * 2, y + inward * 6)), sorted((y + inward * 9.5, y + inward * 12))
            (near,) = page.strokes_across(x - 1, heavy[0], x + 1, heavy[1])
            (far,) = page.strokes_across(x - 1, thin[0], x + 1, thin[1])
            assert near.ink == pytest.approx(0.7, abs=0.06) and far.ink == pytest.approx(0.25, abs=0.06)
    pages.close()


def _fitted(pdf: bytes, size: tuple[float, float]) -> bytes:
    """The first page, fitted by MuPDF on paper of this size, in points, as a print dialog does it."""
    with pymupdf.open("pdf", pdf) as source, pymupdf.open() as out:
        page = out.new_page(width=size[0], height=size[1])
        page.show_pdf_page(page.rect, source, 0, keep_proportion=True)
        made: bytes = out.tobytes()
    return made


@pytest.mark.parametrize(
    ("paper", "meaning", "on"),
    [
        ("letter", "Letter fitted on A4", pagesizes.A4),
        ("a4", "A4 fitted on letter", pagesizes.letter),
        ("legal", "Legal fitted on letter", pagesizes.letter),
        ("legal", "Legal fitted on A4", pagesizes.A4),
    ],
)
def test_a_bar_measures_what_the_first_page_says_it_does(
    paper: str, meaning: str, on: tuple[float, float]
) -> None:
    """Fitted by one engine, drawn by a second, measured in the picture: the reading printed for it."""
    pdf, readings, bars = _made(paper)
    (metric,) = (reading for reading in readings[meaning] if reading.endswith("mm"))
    (inches,) = (reading for reading in readings[meaning] if reading.endswith("in"))
    whole, numerator, denominator = re.fullmatch(r"(\d+) (\d+)/(\d+) in", inches).groups()  # type: ignore[union-attr]
    with pymupdf.open("pdf", pdf) as source:
        rect = source[0].rect
    ratio = min(on[0] / rect.width, on[1] / rect.height)
    off = [(side - ratio * own) / 2 / 72 * MM_PER_INCH for side, own in zip(on, (rect.width, rect.height), strict=True)]
    pages = Pages(_fitted(pdf, on))
    for bar in bars:
        ends = {end: [off[i] + ratio * bar[end][i] for i in range(2)] for end in ("from", "to")}
        right, left = bar_lengths(cut_out_bar(pages.page(1), ends))
        assert right == pytest.approx(float(metric.removesuffix(" mm")), abs=0.1)
        seen = left / MM_PER_INCH
        assert seen == pytest.approx(float(int(whole) + Fraction(int(numerator), int(denominator))), abs=1 / 100)
    pages.close()
