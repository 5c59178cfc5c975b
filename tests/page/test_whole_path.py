"""From an empty form to a kit on paper that is true, by mouse and by keyboard alone."""

from __future__ import annotations

import json
import zipfile
from pathlib import Path

from playwright.sync_api import Browser, Page, expect

from templategen import kit_files
from templategen.planning import plan_for
from templategen.spec import read_spec, read_spec_or_job

from ..proof.kits import Panel
from ..proof.measuring import see, strip_errors
from .conftest import Served, visiting
from .driving import EAST_WINDOW, MEASURED, fill, laid_out, open_spec, opened, taken, worked_out

TRUE = 0.1
"""Millimetres, over the whole length of a panel."""


def test_a_newcomer_gets_from_an_empty_form_to_a_kit_that_is_true(
    chromium: Browser, served: Served, tmp_path: Path
) -> None:
    with visiting(chromium) as context:
        page = opened(context, served.url)
        expect(page.locator("#state")).to_contain_text("Still to fill in")
        expect(page.locator(".faulty")).to_have_count(0)
        for path, value in MEASURED.items():
            fill(page, path, value)
        worked_out(page)
        expect(page.locator("#see figure")).to_have_count(3)
        laid_out(page)
        expect(page.locator("#printing")).to_contain_text("15 sheets of letter paper")
        everything = taken(page, "#take-all", tmp_path)
        kit = taken(page, "#take-kit", tmp_path)
        saved = taken(page, "#save", tmp_path)
        expect(page.locator("#saved")).to_have_text("spec.toml")
    # The very bytes of the command line, from the spec that was saved.
    assert read_spec(saved.read_text()) == read_spec(EAST_WINDOW.read_text())
    _, files = kit_files(plan_for(read_spec_or_job(saved.read_bytes().decode())))
    assert kit.read_bytes() == files["kit.pdf"]
    with zipfile.ZipFile(everything) as archive:
        assert {name: archive.read(name) for name in archive.namelist()} == files | {"spec.toml": saved.read_bytes()}
    # And the paper is true: rendered, cut out, joined by its marks alone, measured.
    sight = see(kit.read_bytes(), json.loads(files["kit.json"]))
    errors = strip_errors(Panel("inch", "letter", "54", 9, "1 1/4"), sight.taped["spacing strip"])
    assert len(errors.marks) == 9 and errors.strays == ()
    assert max(*errors.marks, errors.right_edge, errors.bend) <= TRUE
    assert max(check.error for check in sight.checks) <= TRUE
    assert all(abs(long - 100) <= TRUE and abs(other - 101.6) <= TRUE for long, other in sight.bars)


def test_a_file_saved_closed_and_opened_gives_everything_back(
    chromium: Browser, served: Served, tmp_path: Path
) -> None:
    noted = tmp_path / "measured on tuesday.toml"
    noted.write_text(EAST_WINDOW.read_text().replace("[rod]", "[rod]  # above the frame"))
    with visiting(chromium) as context:
        page = opened(context, served.url)
        open_spec(page, noted)
        worked_out(page)
        expect(page.locator("#saved")).to_have_text(noted.name)
        unchanged = taken(page, "#save", tmp_path / "unchanged")
        fill(page, "panel.width", "52 1/2 in")
        worked_out(page)
        changed = taken(page, "#save", tmp_path / "changed")
    assert unchanged.read_bytes() == noted.read_bytes()
    assert changed.read_text() == noted.read_text().replace('width = "54 in"', 'width = "52 1/2 in"')
    with visiting(chromium) as context:
        page = opened(context, served.url)
        open_spec(page, changed)
        worked_out(page)
        expect(page.get_by_label("Width", exact=True)).to_have_value("52 1/2 in")
        assert taken(page, "#save", tmp_path / "again").read_bytes() == changed.read_bytes()


def test_a_job_of_several_windows_is_opened_and_its_kit_is_that_of_the_command_line(
    chromium: Browser, served: Served, tmp_path: Path
) -> None:
    spec = EAST_WINDOW.parents[1] / "reading-rooms" / "spec.toml"
    with visiting(chromium) as context:
        page = opened(context, served.url)
        open_spec(page, spec)
        worked_out(page)
        laid_out(page)
        kit = taken(page, "#take-kit", tmp_path)
    _, files = kit_files(plan_for(read_spec_or_job(spec.read_text())))
    assert kit.read_bytes() == files["kit.pdf"]


UNCOVERED = """() => {
  const box = document.activeElement.getBoundingClientRect();
  return document.elementFromPoint(box.x + box.width / 2, box.y + box.height / 2) === document.activeElement;
}"""
"""Nothing lies over what has the focus: WCAG 2.2, 2.4.11."""


def _tab_to(page: Page, name: str) -> None:
    """Presses Tab until what is called so has the focus."""
    seen = []
    for _ in range(150):
        page.keyboard.press("Tab")
        called = page.evaluate(
            "(document.activeElement.labels?.[0] || document.activeElement).textContent.trim()"
            " || document.activeElement.getAttribute('aria-label')"
        )
        seen.append(called)
        if called == name or (called or "").startswith(name):
            return
    raise AssertionError(f"{name} is not reached; passed {seen}")


def test_by_keyboard_alone(chromium: Browser, served: Served, tmp_path: Path) -> None:
    """Nothing is pressed but keys, and the focus is always to be seen."""
    from templategen.form import LABELS

    with visiting(chromium) as context:
        page = opened(context, served.url)
        page.keyboard.press("Tab")
        assert page.evaluate("document.activeElement.className") == "skip"
        page.keyboard.press("Enter")
        for path, value in MEASURED.items():
            if path.startswith("heading.") and path == "heading.count":
                _tab_to(page, "Kind of heading")
                _tab_to(page, "More (optional)")
                page.keyboard.press("Enter")
            if path in ("cloth", "panel.count", "drop.hung_by"):
                continue  # as they are
            _tab_to(page, LABELS[path]) if path != "drop.floor_marks" else _tab_to_marks(page)
            page.keyboard.press("ControlOrMeta+A")
            page.keyboard.type(value if isinstance(value, str) else value[0])
            page.wait_for_function(UNCOVERED, timeout=2_000)
        worked_out(page)
        laid_out(page)
        _tab_to(page, "Download the kit to print")
        with page.expect_download() as download:
            page.keyboard.press("Enter")
        download.value.save_as(tmp_path / "kit.pdf")
        page.keyboard.press("Control+s")
        expect(page.locator("#saved")).to_have_text("spec.toml")
        _tab_to(page, "Each file by itself")
        page.keyboard.press("Enter")
        _tab_to(page, "spacing-strip.svg")
        with page.expect_download() as strip:
            page.keyboard.press("Enter")
        assert strip.value.suggested_filename == "spacing-strip.svg"
    assert (tmp_path / "kit.pdf").read_bytes().startswith(b"%PDF")


def _tab_to_marks(page: Page) -> None:
    for _ in range(60):
        page.keyboard.press("Tab")
        if page.evaluate("document.activeElement.getAttribute('aria-label')") == "Marks at the floor, 1":
            return
    raise AssertionError("the marks are not reached")
