"""Chromium as a second judge: a true-size SVG on the screen of a browser, read point by point."""

from __future__ import annotations

import os
import shutil
from collections.abc import Iterator
from contextlib import contextmanager

import cv2
import numpy as np
from playwright.sync_api import Browser, Page, Route, sync_playwright

from .seeing import DPI, MM_PER_INCH, Picture, Stroke

_CSS_DPI = 96
"""A CSS pixel is 1/96 in: CSS Values and Units Level 3, 5.2."""
_TILE, _LAP, _HIGH = 1920, 16, 32
"""Width of a tile, how far tiles overlap, height of a tile, in CSS pixels; all land on whole device pixels."""
_ADDRESS = "http://library.invalid/strip.svg"


@contextmanager
def browser() -> Iterator[Browser]:
    """Debian's Chromium, or the one that CHROMIUM names; it gets nothing from any network."""
    found = os.environ.get("CHROMIUM") or shutil.which("chromium")
    assert found, "these tests need Chromium: install it, or name it in CHROMIUM"
    with sync_playwright() as playwright:
        opened = playwright.chromium.launch(
            executable_path=found, args=["--no-sandbox", "--disable-gpu", "--hide-scrollbars"]
        )
        yield opened
        opened.close()


@contextmanager
def screen(opened: Browser) -> Iterator[Page]:
    """A screen of 600 points to the inch, for one document after another."""
    context = opened.new_context(
        viewport={"width": _TILE + _LAP, "height": _HIGH}, device_scale_factor=DPI / _CSS_DPI
    )
    yield context.new_page()
    context.close()


def show(page: Page, svg: bytes) -> None:
    """Opens the SVG as a document of its own."""

    def answer(route: Route) -> None:
        if route.request.url == _ADDRESS:
            route.fulfill(body=svg, content_type="image/svg+xml")
        else:
            route.abort()

    page.unroute_all()
    page.route("**/*", answer)
    page.goto(_ADDRESS)


def strokes_along(page: Page, length: float, low: float, high: float) -> list[Stroke]:
    """Upright lines between two heights from the top of the document, over its whole ``length`` in mm."""
    step = MM_PER_INCH / DPI
    css = MM_PER_INCH / _CSS_DPI
    seen: list[Stroke] = []
    last = page.evaluate("Math.floor(document.documentElement.scrollWidth - window.innerWidth)")
    last -= last % 4 == 2  # half a device pixel, which might be rounded either way
    for tile in range(int(length / css // _TILE) + 1):
        left = min(tile * _TILE, last)
        page.evaluate("left => window.scrollTo(left, 0)", left)
        scrolled = round(left * css / step) * step
        shot = cv2.imdecode(np.frombuffer(page.screenshot(), np.uint8), cv2.IMREAD_GRAYSCALE)
        assert shot is not None
        picture = Picture(np.asarray(255 - shot, np.uint8), step, step)
        for stroke in picture.strokes_across(0, low, picture.width, high):
            at = stroke.at + scrolled
            if not seen or at > seen[-1].at + 0.2:
                seen.append(Stroke(at, stroke.ink))
    return seen
