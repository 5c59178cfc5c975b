"""Filling in the page as people do: by the names that they read."""

from __future__ import annotations

import json
from collections.abc import Mapping
from pathlib import Path

from playwright.sync_api import BrowserContext, Page, expect

from templategen.form import LABELS
from templategen.spec import FIELDS

EAST_WINDOW = Path(__file__).parents[2] / "out_examples" / "east-window" / "spec.toml"
MEASURED: Mapping[str, str | list[str]] = {
    "title": "Reading room, east window", "cloth": "medium",
    "rod.length": "60 in", "rod.diameter": "3/4 in",
    "panel.count": "4", "panel.width": "54 in", "panel.length": "96 in", "panel.casing": "3 in", "panel.hem": "2 in",
    "panel.turn_under": "3/8 in",
    "drop.floor_marks": ["13 5/8 in"], "drop.hung_by": "casing", "drop.rod_to_floor": "82 in",
    "drop.clearance": "3/4 in",
    "heading.count": "9", "heading.edge_inset": "1 1/4 in", "heading.loop_length": "3 1/4 in",
    "heading.loop_width": "1 1/8 in",
    "hem.depth": "4 in", "hem.turn_under": "5/8 in",
}  # fmt: skip
"""What is measured at the library's east window, in the order of the page."""


def opened(context: BrowserContext, url: str) -> Page:
    page = context.new_page()
    page.goto(url)
    page.wait_for_selector("html[data-ready]")
    return page


def group_of(path: str) -> str:
    from templategen.form import GROUPS

    return next(group.key for group in GROUPS if path in group.paths)


def unfold(page: Page, path: str) -> None:
    """Opens what a field is folded away under."""
    folded = page.locator(f'[data-group="{group_of(path)}"] details.further')
    if folded.count() and folded.get_attribute("open") is None and folded.locator(f'[data-path="{path}"]').count():
        folded.locator("summary").first.click()


def field(page: Page, path: str) -> object:
    return page.locator(f'[data-path="{path}"]')


def fill(page: Page, path: str, value: str | list[str]) -> None:
    """Fills a field in by its name on the page."""
    unfold(page, path)
    part = page.locator(f'[data-path="{path}"]')
    if isinstance(value, list):
        for at, text in enumerate(value):
            if at:
                part.get_by_role("button", name="One more").click()
            part.get_by_role("textbox", name=LABELS[path]).nth(at).fill(text)
    elif FIELDS[path].kind == "choice":
        part.get_by_label(LABELS[path]).select_option(value)
    elif FIELDS[path].kind == "switch":
        part.get_by_label(LABELS[path]).set_checked(value == "true")
    else:
        part.get_by_role("textbox", name=LABELS[path], exact=True).fill(value)


def worked_out(page: Page) -> None:
    """Waits until the job is worked out as it now stands."""
    expect(page.locator("#state .verdict")).to_be_visible()
    expect(page.locator("#seen")).not_to_have_class("old")


def laid_out(page: Page) -> None:
    """Goes to the sheets and waits until they are shown."""
    page.evaluate("document.querySelector('#print').scrollIntoView()")
    expect(page.locator("#take-kit")).to_be_visible(timeout=20_000)
    expect(page.locator(".sheets img").first).to_be_visible()


def open_spec(page: Page, path: Path) -> None:
    with page.expect_file_chooser() as chosen:
        page.get_by_role("button", name="Open", exact=True).click()
    chosen.value.set_files(path)


def taken(page: Page, button: str, folder: Path) -> Path:
    """What a button downloads."""
    with page.expect_download() as download:
        page.locator(button).click()
    path = folder / download.value.suggested_filename
    download.value.save_as(path)
    return path


def record(path: Path) -> dict[str, object]:
    read: dict[str, object] = json.loads(path.read_text())
    return read
