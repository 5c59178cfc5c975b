"""The page for everybody: axe-core on every state, light and dark; narrow, enlarged, in colours of one's own, on paper.

WCAG 2.2: 1.4.3 contrast, 1.4.4 resize text, 1.4.10 reflow at 320 CSS pixels, 1.4.12 text spacing, 2.4.11 focus not
obscured, 2.5.8 target size, by axe-core's rules and by measuring.
"""

from __future__ import annotations

from collections.abc import Callable, Iterator
from contextlib import contextmanager
from pathlib import Path
from typing import Any

import pytest
from axe_playwright_python.sync_playwright import Axe
from playwright.sync_api import Browser, Page, expect

from .conftest import Served, visiting
from .driving import EAST_WINDOW, fill, laid_out, open_spec, opened, worked_out

SNAPSHOT = Path(__file__).with_name("read-out.txt")


def _empty(page: Page) -> None:
    expect(page.locator("#state")).to_contain_text("Still to fill in")


def _example(page: Page) -> None:
    page.get_by_role("region", name="See").get_by_role("button", name="Look at an example").click()
    worked_out(page)


def _focused(page: Page) -> None:
    _example(page)
    page.get_by_label("Width", exact=True).focus()
    expect(page.locator(".guide .lit")).to_have_count(1)


def _unfolded(page: Page) -> None:
    _example(page)
    laid_out(page)
    page.evaluate("document.querySelectorAll('details').forEach((each) => { each.open = true; })")


def _faulty(page: Page) -> None:
    _example(page)
    fill(page, "panel.width", "54 inn")
    fill(page, "hem.turn_under", "9 in")
    fill(page, "panel.hem", "")
    page.locator("#panel-hem").blur()
    expect(page.locator(".wrong:visible")).to_have_count(2)


def _windows(page: Page) -> None:
    _example(page)
    page.get_by_role("button", name="Add a window").click()
    worked_out(page)


def _all_windows(page: Page) -> None:
    _windows(page)
    page.get_by_role("button", name="All windows").click()
    worked_out(page)


def _stopped(page: Page) -> None:
    _example(page)
    fill(page, "drop.floor_marks", ["-9 in"])
    expect(page.locator(".notices .stop").first).to_be_visible()
    page.get_by_label("Make the kit despite the stop").focus()


def _enlarged(page: Page) -> None:
    _example(page)
    laid_out(page)
    page.locator(".sheet").first.click()
    expect(page.locator("#large img")).to_have_js_property("complete", True)


def _asked(page: Page) -> None:
    fill(page, "title", "Reading room")
    page.get_by_role("button", name="New", exact=True).click()
    expect(page.locator("#ask")).to_be_visible()


def _troubled(page: Page) -> None:
    page.evaluate("localStorage.clear()")
    open_spec(page, Path(__file__))
    expect(page.locator("#trouble")).to_be_visible()


STATES: dict[str, Callable[[Page], None]] = {
    "empty": _empty, "focused": _focused, "unfolded": _unfolded, "faulty": _faulty,
    "windows": _windows, "all windows": _all_windows, "stopped": _stopped, "enlarged": _enlarged, "asked": _asked,
    "troubled": _troubled,
}  # fmt: skip
LOOKS: dict[str, dict[str, Any]] = {
    "light": {"color_scheme": "light"}, "dark": {"color_scheme": "dark"},
    "forced colours": {"forced_colors": "active"}, "still": {"reduced_motion": "reduce"},
}  # fmt: skip


@contextmanager
def _state(chromium: Browser, served: Served, name: str, width: int = 1280, **look: Any) -> Iterator[Page]:
    with visiting(chromium, width, **look) as context:
        page = opened(context, served.url)
        STATES[name](page)
        yield page


def _objections(page: Page, **options: Any) -> str:
    found = Axe().run(page, options={"resultTypes": ["violations"], **options})
    return found.generate_report() if found.violations_count else ""


@pytest.mark.parametrize("name", STATES)
def test_axe_finds_nothing_in_the_light_and_in_the_dark(chromium: Browser, served: Served, name: str) -> None:
    with _state(chromium, served, name, color_scheme="light") as page:
        assert _objections(page) == ""
        page.emulate_media(color_scheme="dark")  # by which nothing changes but colours
        assert _objections(page, runOnly={"type": "tag", "values": ["cat.color"]}) == ""


def test_axe_finds_what_is_wrong(chromium: Browser, served: Served) -> None:
    with _state(chromium, served, "empty") as page:
        page.evaluate("document.querySelector('label').remove()")
        page.evaluate("document.querySelector('.lead').style.color = '#ccc'")
        assert "label" in _objections(page) and "contrast" in _objections(page)


@pytest.mark.parametrize("look", ["forced colours", "still"])
def test_axe_finds_nothing_in_colours_of_ones_own_or_without_motion(
    chromium: Browser, served: Served, look: str
) -> None:
    with _state(chromium, served, "focused", **LOOKS[look]) as page:
        assert _objections(page) == ""


WIDER = "document.documentElement.scrollWidth - document.documentElement.clientWidth"
CUT = """() => [...document.querySelectorAll('button, summary, label, h1, h2, h3, p, li, b, td')].filter((each) => {
  if (!each.checkVisibility() || each.closest('.unseen, .skip')) return false;
  const box = each.getBoundingClientRect();
  return box.right > document.documentElement.clientWidth + 1 || box.left < -1;
}).map((each) => each.outerHTML.slice(0, 80))"""


@pytest.mark.parametrize("name", ["unfolded", "faulty", "windows", "stopped"])
def test_at_320_pixels_nothing_is_wider_or_cut(chromium: Browser, served: Served, name: str) -> None:
    """1280 pixels at 400 %; and the same with type of twice the size, as at 200 % of text alone."""
    with _state(chromium, served, name, 320) as page:
        assert page.evaluate(WIDER) <= 0 and page.evaluate(CUT) == []
        assert _objections(page) == ""
        page.set_viewport_size({"width": 640, "height": 900})
        page.evaluate("document.documentElement.style.fontSize = '200%'")
        assert page.evaluate(WIDER) <= 0 and page.evaluate(CUT) == []


def test_with_wide_spacing_nothing_is_cut(chromium: Browser, served: Served) -> None:
    """WCAG 2.2, 1.4.12: line height 1.5, between paragraphs 2, letters 0.12, words 0.16 of the type's size."""
    with _state(chromium, served, "unfolded", 360) as page:
        page.evaluate("""() => { for (const each of document.querySelectorAll('main *')) {
          each.style.lineHeight = '1.5'; each.style.letterSpacing = '.12em'; each.style.wordSpacing = '.16em';
        } }""")
        assert page.evaluate(WIDER) <= 0 and page.evaluate(CUT) == []


SMALL = """() => [...document.querySelectorAll('button, summary, input, select')].filter((each) => {
  if (!each.checkVisibility()) return false;
  const box = each.getBoundingClientRect();
  return box.height < 24 && box.width < 400;
}).map((each) => each.outerHTML.slice(0, 100))"""


def test_what_is_pressed_is_large_enough(chromium: Browser, served: Served) -> None:
    """WCAG 2.2, 2.5.8: 24 by 24 CSS pixels; a tick box counts with its label."""
    with _state(chromium, served, "unfolded", 360) as page:
        assert [each for each in page.evaluate(SMALL) if "checkbox" not in each] == []


def test_on_paper_the_measurements_and_the_numbers_are_there_and_nothing_to_press(
    chromium: Browser, served: Served
) -> None:
    with _state(chromium, served, "focused") as page:
        page.emulate_media(media="print")
        assert page.locator("button:visible").count() == 0
        expect(page.get_by_label("Width", exact=True)).to_be_visible()
        expect(page.locator("#seen figure").first).to_be_visible()
        assert page.pdf(format="A4").startswith(b"%PDF")


def test_it_is_read_out_as_it_should_be(chromium: Browser, served: Served) -> None:
    """What a screen reader is given, in its order; `GOLDENS=write` writes it anew."""
    import os

    with visiting(chromium) as context:
        page = opened(context, served.url)
        open_spec(page, EAST_WINDOW)
        worked_out(page)
        laid_out(page)
        told = page.locator("body").aria_snapshot() + "\n"
    if os.environ.get("GOLDENS") == "write":
        SNAPSHOT.write_text(told)
    assert told == SNAPSHOT.read_text()
