"""Pictures of the page as it is: ``python -m tests.examples.page [FOLDER]``, into out_examples/page without a folder.

With a folder: the whole page at 360, 768 and 1280 pixels, light and dark, empty, filled in and faulty, to be looked at.
"""

from __future__ import annotations

import sys
from pathlib import Path

from playwright.sync_api import Browser, Page

from tests.page.conftest import Served, visiting
from tests.page.driving import EAST_WINDOW, fill, laid_out, open_spec, opened, worked_out
from tests.proof.chromium import browser

SHOWN = Path(__file__).parents[2] / "out_examples" / "page"
WIDTHS = (360, 768, 1280)


def _filled(page: Page) -> None:
    open_spec(page, EAST_WINDOW)
    worked_out(page)
    laid_out(page)


def _faulty(page: Page) -> None:
    _filled(page)
    fill(page, "panel.width", "54 inn")
    fill(page, "hem.turn_under", "9 in")
    page.locator("#hem-turn_under").blur()
    page.wait_for_timeout(800)


def shown(chromium: Browser, url: str) -> None:
    """The three pictures that stand in the README."""
    SHOWN.mkdir(exist_ok=True)
    with visiting(chromium, 1280, 860, color_scheme="light") as context:
        page = opened(context, url)
        _filled(page)
        page.get_by_label("Width", exact=True).focus()
        page.evaluate("scrollTo(0, document.querySelector('[data-group=panel]').offsetTop - 70)")
        page.screenshot(path=SHOWN / "measure-and-see.png")
        page.evaluate("scrollTo(0, document.querySelector('#print').offsetTop - 70)")
        page.evaluate("document.activeElement.blur()")
        page.screenshot(path=SHOWN / "print.png")
    with visiting(chromium, 390, 860, color_scheme="dark") as context:
        page = opened(context, url)
        _filled(page)
        page.evaluate("scrollTo(0, document.querySelector('#see').offsetTop)")
        page.screenshot(path=SHOWN / "on-a-telephone.png")


def looked_at(chromium: Browser, url: str, folder: Path) -> None:
    """Every width, both themes, three states."""
    for scheme in ("light", "dark"):
        for width in WIDTHS:
            for name, state in (("empty", lambda _: None), ("filled", _filled), ("faulty", _faulty)):
                with visiting(chromium, width, 900, color_scheme=scheme) as context:
                    page = opened(context, url)
                    state(page)
                    page.screenshot(path=folder / f"{name}-{width}-{scheme}.png", full_page=True)


def main() -> None:
    server = Served()
    with browser() as chromium:
        if len(sys.argv) > 1:
            looked_at(chromium, server.url, Path(sys.argv[1]))
        else:
            shown(chromium, server.url)
    server.stop()


if __name__ == "__main__":
    main()
