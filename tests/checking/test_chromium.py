"""Chromium's print path, as far as it can be driven without a screen: pages of a kit shown and saved as PDF."""

from __future__ import annotations

import base64
from collections.abc import Iterator
from pathlib import Path

import pypdfium2
import pytest
from playwright.sync_api import Browser

from tests.proof.chromium import browser

from . import handling as by
from .kits import kit
from .measuring import bars_seen
from .test_print_paths import CLOSE, codes, judged

GAUGE = ("cut gauge",)
LOST = {"preferences-lost", "attachment-lost"}
_PAGE = "<!doctype html><style>@page {{margin: 0}} body {{margin: 0}} img {{display: block; {size}}}</style>{image}"


@pytest.fixture(scope="module")
def opened() -> Iterator[Browser]:
    with browser() as chromium:
        yield chromium


def _printed(opened: Browser, image: str, **options: object) -> bytes:
    """A page that holds one image of letter size, saved as PDF."""
    page = opened.new_page()
    page.set_content(_PAGE.format(size="width: 8.5in; height: 11in", image=image))
    made: bytes = page.pdf(print_background=True, **options)  # type: ignore[arg-type]
    page.close()
    return made


def _image(content: bytes, kind: str) -> str:
    return f'<img src="data:image/{kind};base64,{base64.b64encode(content).decode()}">'


def _png(dpi: int) -> bytes:
    import io

    out = io.BytesIO()
    with pypdfium2.PdfDocument(kit(only=GAUGE)) as document:
        document[0].render(scale=dpi / 72, grayscale=True).to_pil().save(out, "PNG")
    return out.getvalue()


def test_lines_that_chromium_prints_are_read(opened: Browser, tmp_path: Path) -> None:
    """Its own writer of PDF, which cuts a page's coordinates to a 96th of an inch and scales them back."""
    (svg,) = by.svgs(kit(only=GAUGE), 1)
    image = _image(svg.encode(), "svg+xml")
    for options, scale in (
        ({"width": "8.5in", "height": "11in"}, 1.0),
        ({"width": "8.5in", "height": "11in", "scale": 0.9}, 0.9),
    ):
        pdf = _printed(opened, image, **options)
        verdict = judged(pdf, tmp_path)
        assert verdict.across == pytest.approx(scale, abs=CLOSE) and verdict.along == pytest.approx(scale, abs=CLOSE)
        assert verdict.true == (scale == 1)
        seen = bars_seen(pdf)
        assert seen.level[0] == pytest.approx(verdict.across, abs=CLOSE)
        assert seen.upright[0] == pytest.approx(verdict.along, abs=CLOSE)


def test_a_picture_that_chromium_prints_is_measured(opened: Browser, tmp_path: Path) -> None:
    verdict = judged(_printed(opened, _image(_png(200), "png"), width="8.5in", height="11in"), tmp_path)
    assert verdict.true and "picture" in codes(verdict) and verdict.within == pytest.approx(0.127 / 200, rel=0.02)
