"""The page for everybody: axe-core on every state, light and dark; narrow, enlarged, in colours of one's own, on paper.

WCAG 2.2: 1.4.3 contrast, 1.4.4 resize text, 1.4.10 reflow at 320 CSS pixels, 1.4.12 text spacing, 2.4.11 focus not
obscured, 2.5.8 target size, by axe-core's rules and by measuring.
"""

from __future__ import annotations

import os
from collections.abc import Callable
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


def _asked(page: Page) -> None:
    fill(page, "title", "Reading room")
    page.get_by_role("button", name="New", exact=True).click()
    expect(page.locator("#ask")).to_be_visible()


def _troubled(page: Page) -> None:
    page.get_by_role("button", name="Throw it away").click()
    open_spec(page, Path(__file__))
    expect(page.locator("#trouble")).to_be_visible()


def _example(page: Page) -> None:
    page.get_by_role("region", name="See").get_by_role("button", name="Look at an example").click()
    worked_out(page)
    laid_out(page)


def _focused(page: Page) -> None:
    page.locator('[data-path="panel.width"] input').focus()
    expect(page.locator(".guide .lit")).to_have_count(1)


def _unfolded(page: Page) -> None:
    page.evaluate("document.querySelectorAll('details').forEach((each) => { each.open = true; })")


def _enlarged(page: Page) -> None:
    page.locator(".sheet").first.click()
    expect(page.locator("#large img")).to_have_js_property("complete", True)


def _faulty(page: Page) -> None:
    if page.locator("#large").is_visible():
        page.locator("#shut").click()
    page.evaluate("document.querySelectorAll('details').forEach((each) => { each.open = false; })")
    for path, text in {"panel.width": "54 inn", "hem.turn_under": "9 in", "panel.hem": ""}.items():
        page.locator(f'[data-path="{path}"] input').fill(text)
    page.locator("#panel-hem").blur()
    expect(page.locator(".wrong:visible")).to_have_count(2)


def _stopped(page: Page) -> None:
    for path, text in {"panel.width": "54 in", "hem.turn_under": "5/8 in", "panel.hem": "2 in"}.items():
        page.locator(f'[data-path="{path}"] input').fill(text)
    fill(page, "drop.floor_marks", ["-9 in"])
    expect(page.locator(".notices .stop").first).to_be_visible()
    page.get_by_label("Make the kit despite the stop").focus()


def _windows(page: Page) -> None:
    fill(page, "drop.floor_marks", ["13 5/8 in"])
    page.get_by_role("button", name="Add a window").click()
    worked_out(page)


def _all_windows(page: Page) -> None:
    page.get_by_role("button", name="All windows").click()
    worked_out(page)


WALK: tuple[tuple[Callable[[Page], None], str], ...] = (
    (_empty, "body"), (_asked, "#ask"), (_troubled, "#trouble"), (_example, "#see, #print"),
    (_focused, "[data-group=panel]"), (_unfolded, "body"), (_enlarged, "#large"), (_faulty, "#measure, #see"),
    (_stopped, "#see, #print"), (_windows, "#measure"), (_all_windows, "#measure, #see"),
)  # fmt: skip
"""Every state of the page, each gone to from the one before, and what of the page it changes."""


def _objections(page: Page, where: str = "body", **options: Any) -> str:
    found = Axe().run(page, context=where, options={"resultTypes": ["violations"], **options})
    return found.generate_report() if found.violations_count else ""


def test_axe_finds_nothing_in_any_state_in_the_light_and_in_the_dark(chromium: Browser, served: Served) -> None:
    with visiting(chromium, color_scheme="light") as context:
        page = opened(context, served.url)
        for state, where in WALK:
            state(page)
            assert _objections(page, where) == "", state.__name__
            page.emulate_media(color_scheme="dark")  # by which nothing changes but colours
            assert _objections(page, where, runOnly={"type": "tag", "values": ["cat.color"]}) == "", state.__name__
            page.emulate_media(color_scheme="light")


def test_axe_finds_what_is_wrong(chromium: Browser, served: Served) -> None:
    with visiting(chromium) as context:
        page = opened(context, served.url)
        page.evaluate("document.querySelector('label').remove()")
        page.evaluate("document.querySelector('.lead').style.color = '#ccc'")
        assert "label" in _objections(page) and "contrast" in _objections(page)


@pytest.mark.parametrize("look", [{"forced_colors": "active"}, {"reduced_motion": "reduce"}], ids=str)
def test_axe_finds_nothing_in_colours_of_ones_own_or_without_motion(
    chromium: Browser, served: Served, look: dict[str, str]
) -> None:
    with visiting(chromium, **look) as context:
        page = opened(context, served.url)
        for state in (_example, _focused):
            state(page)
        assert _objections(page) == ""


WIDER = "document.documentElement.scrollWidth - document.documentElement.clientWidth"
CUT = """() => [...document.querySelectorAll('button, summary, label, h1, h2, h3, p, li, b, td')].filter((each) => {
  if (!each.checkVisibility() || each.closest('.unseen, .skip')) return false;
  const box = each.getBoundingClientRect();
  return box.right > document.documentElement.clientWidth + 1 || box.left < -1;
}).map((each) => each.outerHTML.slice(0, 80))"""
SMALL = """() => [...document.querySelectorAll('button, summary, [type=text], select')].filter((each) => {
  if (!each.checkVisibility()) return false;
  const box = each.getBoundingClientRect();
  return box.height < 24 && box.width < 400;
}).map((each) => each.outerHTML.slice(0, 100))"""
SPACED = """() => { for (const each of document.querySelectorAll('main *')) {
  each.style.lineHeight = '1.5'; each.style.letterSpacing = '.12em'; each.style.wordSpacing = '.16em';
} }"""


def test_narrow_enlarged_and_widely_spaced_nothing_is_wider_or_cut(chromium: Browser, served: Served) -> None:
    """320 pixels, which is 1280 at 400 % (1.4.10); type of twice the size (1.4.4); line height 1.5, letters 0.12 and
    words 0.16 of the type's size (1.4.12). What is pressed is at least 24 pixels high (2.5.8)."""
    with visiting(chromium, 320) as context:
        page = opened(context, served.url)
        for state in (_empty, _example, _unfolded, _faulty, _stopped, _windows):
            state(page)
            assert page.evaluate(WIDER) <= 0 and page.evaluate(CUT) == [], state.__name__
            assert page.evaluate(SMALL) == [], state.__name__
        _unfolded(page)
        assert _objections(page) == ""
        page.set_viewport_size({"width": 640, "height": 900})
        page.evaluate("document.documentElement.style.fontSize = '200%'")
        assert page.evaluate(WIDER) <= 0 and page.evaluate(CUT) == []
        page.evaluate("document.documentElement.style.fontSize = ''")
        page.set_viewport_size({"width": 360, "height": 900})
        page.evaluate(SPACED)
        assert page.evaluate(WIDER) <= 0 and page.evaluate(CUT) == []


def test_on_paper_the_measurements_and_the_numbers_are_there_and_nothing_to_press(
    chromium: Browser, served: Served
) -> None:
    with visiting(chromium) as context:
        page = opened(context, served.url)
        _example(page)
        page.emulate_media(media="print")
        assert page.locator("button:visible").count() == 0
        expect(page.locator("#panel-width")).to_be_visible()
        expect(page.locator("#seen figure").first).to_be_visible()
        assert page.pdf(format="A4").startswith(b"%PDF")


def test_it_is_read_out_as_it_should_be(chromium: Browser, served: Served) -> None:
    """What a screen reader is given, in its order; `GOLDENS=write` writes it anew."""
    with visiting(chromium) as context:
        page = opened(context, served.url)
        open_spec(page, EAST_WINDOW)
        worked_out(page)
        laid_out(page)
        told = page.locator("body").aria_snapshot() + "\n"
    if os.environ.get("GOLDENS") == "write":
        SNAPSHOT.write_text(told)
    assert told == SNAPSHOT.read_text()
