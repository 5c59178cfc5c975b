"""Every state of the page, as it is met: windows, files, what is kept and never lost, what comes late or not at all."""

from __future__ import annotations

import json
from pathlib import Path

from playwright.sync_api import Browser, Page, Route, expect

from templategen.form import LABELS
from templategen.spec import read_spec_or_job

from .conftest import Served, visiting
from .driving import EAST_WINDOW, fill, laid_out, open_spec, opened, taken, worked_out


def test_windows_are_copied_changed_and_taken_away(chromium: Browser, served: Served, tmp_path: Path) -> None:
    with visiting(chromium) as context:
        page = opened(context, served.url)
        open_spec(page, EAST_WINDOW)
        worked_out(page)
        page.get_by_role("button", name="Add a window").click()
        fill_name(page, "north window")
        fill(page, "panel.width", "60 in")
        worked_out(page)
        page.get_by_role("button", name="Add a window").click()
        fill_name(page, "west window")
        expect(page.get_by_label("Width", exact=True)).to_have_value("60 in")
        fill(page, "heading.style", "eyelets")
        expect(page.locator("#state")).to_contain_text("Eyelet, inside")
        fill(page, "heading.eyelet_inside", "1 3/8 in")
        worked_out(page)
        page.get_by_role("button", name="All windows").click()
        fill(page, "panel.casing", "4 in")
        page.get_by_role("button", name="north window").click()
        expect(page.locator('[data-path="panel.casing"]')).to_contain_text("as for all windows")
        expect(page.get_by_label("Casing", exact=True)).to_have_value("4 in")
        job = read_spec_or_job(taken(page, "#save", tmp_path).read_text())
        assert [window.name for window in job.windows] == ["first window", "north window", "west window"]  # type: ignore[union-attr]
        assert [window.spec.heading.style for window in job.windows] == ["back loops", "back loops", "eyelets"]  # type: ignore[union-attr]
        page.get_by_role("button", name="Remove this window").click()
        page.get_by_role("button", name="Remove it").click()
        expect(page.get_by_role("button", name="north window")).to_have_count(0)
        worked_out(page)


def fill_name(page: Page, name: str) -> None:
    page.locator('[data-path="window.name"] input').fill(name)


def test_the_newest_answer_stands_whatever_the_order(chromium: Browser, served: Served) -> None:
    """Answers that come later the earlier they were asked for, as from a machine that is busy now and then."""
    with visiting(chromium) as context:
        page = opened(context, served.url)
        open_spec(page, EAST_WINDOW)
        worked_out(page)
        asked: list[str] = []

        def late(route: Route) -> None:
            asked.append(json.loads(route.request.post_data or "{}")["form"]["fields"]["panel.width"])
            page.wait_for_timeout(max(30, 400 - 150 * len(asked)))
            route.continue_()

        page.route("**/api/plan", late)
        line = page.get_by_label("Width", exact=True)
        for width in ("5", "50", "50 ", "50 i", "50 in", "51 in", "52 in"):
            line.fill(width)
        expect(page.locator('[data-path="panel.width"] .said')).to_have_text("= 1321 mm")
        expect(page.locator("#seen .pictures")).to_contain_text("52 in")
        assert asked[-1] == "52 in" and len(asked) < 7


def test_nothing_typed_is_lost(chromium: Browser, served: Served) -> None:
    with visiting(chromium) as context:
        page = opened(context, served.url)
        fill(page, "title", "Reading room")
        fill(page, "panel.width", "fifty")
        asked = []
        page.on("dialog", lambda dialog: (asked.append(dialog.type), dialog.accept()))
        page.reload()
        assert asked == ["beforeunload"]
        page.wait_for_selector("html[data-ready]")
        expect(page.get_by_label("Width", exact=True)).to_have_value("fifty")
        expect(page.locator("#saved")).to_have_text("not saved")
        page.get_by_role("button", name="New", exact=True).click()
        page.get_by_role("button", name="Go on with this job").click()
        expect(page.get_by_label("Width", exact=True)).to_have_value("fifty")
        page.get_by_role("button", name="New", exact=True).click()
        page.get_by_role("button", name="Throw it away").click()
        expect(page.get_by_label("Width", exact=True)).to_have_value("")


def test_the_page_waits_for_a_server_that_has_gone_and_goes_on(chromium: Browser) -> None:
    server = Served()
    with visiting(chromium) as context:
        page = opened(context, server.url)
        assert server.stop() == 0
        fill(page, "rod.length", "60 in")
        expect(page.locator("#trouble")).to_contain_text("start it again: templategen serve")
        again = Served(server.port)
        expect(page.locator("#trouble")).to_be_hidden(timeout=15_000)
        expect(page.locator('[data-path="rod.length"] .said')).to_have_text("= 1524 mm")
        assert again.stop() == 0


def test_markup_is_text(chromium: Browser, served: Served) -> None:
    title = "<img src=x onerror=alert(1)><script>alert(2)</script>\"'&amp;"
    with visiting(chromium) as context:
        page = opened(context, served.url)
        shown: list[str] = []
        page.on("dialog", lambda dialog: (shown.append(dialog.message), dialog.dismiss()))
        open_spec(page, EAST_WINDOW)
        worked_out(page)
        fill(page, "title", title)
        page.get_by_role("button", name="Add a window").click()
        fill_name(page, title[:36])
        worked_out(page)
        expect(page.get_by_role("navigation", name="Windows of the job")).to_contain_text(title[:36])
        assert page.locator("main img[src=x], main script").count() == 0
        assert shown == []


def test_a_file_that_is_no_spec_is_said_so_and_nothing_changes(
    chromium: Browser, served: Served, tmp_path: Path
) -> None:
    broken, picture = tmp_path / "broken.toml", tmp_path / "picture.toml"
    broken.write_text("[panel]\nwidth = 5 3/8 in\n")
    picture.write_bytes(b"\x89PNG\xff\xfe\x00")
    with visiting(chromium) as context:
        page = opened(context, served.url)
        open_spec(page, EAST_WINDOW)
        worked_out(page)
        for path, said in ((broken, "line 2"), (picture, "no text in UTF-8")):
            open_spec(page, path)
            expect(page.locator("#trouble")).to_contain_text(said)
            expect(page.get_by_label("Width", exact=True)).to_have_value("54 in")


def test_a_stop_is_said_and_the_kit_waits_for_leave(chromium: Browser, served: Served, tmp_path: Path) -> None:
    spec = tmp_path / "spec.toml"
    spec.write_text(EAST_WINDOW.read_text().replace('floor_marks = ["13 5/8 in"]', 'floor_marks = ["-9 in"]'))
    with visiting(chromium) as context:
        page = opened(context, served.url)
        open_spec(page, spec)
        expect(page.locator(".notices .stop")).not_to_have_count(0)
        expect(page.locator("#take-kit")).to_have_count(0)
        page.get_by_label("Make the kit despite the stop").check()
        expect(page.locator("#take-kit")).to_be_visible(timeout=20_000)


def test_a_bare_number_keeps_its_length_when_the_units_change(chromium: Browser, served: Served) -> None:
    with visiting(chromium) as context:
        page = opened(context, served.url)
        open_spec(page, EAST_WINDOW)
        worked_out(page)
        bare = {
            "panel.width": "54", "panel.casing": "3 1/2", "hem.turn_under": "½", "panel.hem": "2.5",
            "hem.depth": "4 in",
        }  # fmt: skip
        for path, value in bare.items():
            fill(page, path, value)
        fill(page, "drop.floor_marks", ["13 5/8", "14"])
        fill(page, "units", "metric")
        shown = {path: page.locator(f'[data-path="{path}"] input').first.input_value() for path in bare}
        assert shown == {path: value if "in" in value else f"{value} in" for path, value in bare.items()}
        marks = page.locator('[data-path="drop.floor_marks"] input')
        assert [marks.nth(at).input_value() for at in (0, 1)] == ["13 5/8 in", "14 in"]
        expect(page.locator('[data-path="panel.width"] .said')).to_have_text("1372 mm, a hair under (54 in)")


def test_what_is_typed_as_all_windows_have_it_stays_theirs(chromium: Browser, served: Served, tmp_path: Path) -> None:
    spec = EAST_WINDOW.parents[1] / "reading-rooms" / "spec.toml"
    with visiting(chromium) as context:
        page = opened(context, served.url)
        open_spec(page, spec)
        worked_out(page)
        fill(page, "drop.clearance", "3/4 in")
        expect(page.locator("#saved")).to_have_text("not saved")
        fill(page, "drop.clearance", "1/2 in")
        expect(page.locator('[data-path="drop.clearance"]')).to_contain_text("as for all windows")
        assert taken(page, "#save", tmp_path).read_bytes() == spec.read_bytes()


def test_before_something_is_lost_it_can_be_saved_first(chromium: Browser, served: Served) -> None:
    with visiting(chromium) as context:
        page = opened(context, served.url)
        fill(page, "title", "Reading room")
        page.get_by_role("button", name="New", exact=True).click()
        page.keyboard.press("Escape")
        expect(page.get_by_label(LABELS["title"])).to_have_value("Reading room")
        page.get_by_role("button", name="New", exact=True).click()
        with page.expect_download() as saved:
            page.get_by_role("button", name="Save it first").click()
        assert 'title = "Reading room"' in Path(saved.value.path()).read_text()
        expect(page.get_by_label(LABELS["title"])).to_have_value("")


def test_sheets_are_enlarged_and_turned_over_by_keys(chromium: Browser, served: Served) -> None:
    with visiting(chromium) as context:
        page = opened(context, served.url)
        open_spec(page, EAST_WINDOW)
        laid_out(page)
        page.locator(".sheet").nth(11).click()
        dialog = page.locator("#large")
        for key, number in (("ArrowRight", 13), ("ArrowLeft", 12), ("ArrowLeft", 11)):
            page.keyboard.press(key)
            expect(dialog.get_by_role("heading")).to_have_text(f"Page {number} of 15")
        expect(dialog.locator("img")).to_have_js_property("naturalWidth", 1400)
        page.keyboard.press("Escape")
        expect(dialog).to_be_hidden()


def test_what_is_seen_keeps_up_with_an_uneven_floor_and_a_sill(chromium: Browser, served: Served) -> None:
    """Words of the form follow what the panels hang to."""
    with visiting(chromium) as context:
        page = opened(context, served.url)
        open_spec(page, EAST_WINDOW)
        worked_out(page)
        fill(page, "drop.to", "sill")
        expect(page.get_by_role("heading", name="Where the sill is")).to_be_visible()
        expect(page.get_by_label("Rod to sill")).to_be_visible()
        expect(page.locator("#seen")).to_contain_text("the sill")


def test_where_the_browser_keeps_nothing_the_page_works_and_says_so(chromium: Browser, served: Served) -> None:
    with visiting(chromium) as context:
        context.add_init_script(
            "for (const name of ['localStorage', 'sessionStorage']) Object.defineProperty(window, name, "
            "{ get() { throw new DOMException('denied', 'SecurityError'); } }); delete Crypto.prototype.randomUUID;"
        )
        page = opened(context, served.url)
        fill(page, "rod.length", "60 in")
        expect(page.locator('[data-path="rod.length"] .said')).to_have_text("= 1524 mm")
        expect(page.locator("#trouble")).to_contain_text("keeps nothing")


def test_a_draft_that_cannot_be_read_is_passed_over(chromium: Browser, served: Served) -> None:
    with visiting(chromium) as context:
        page = opened(context, served.url)
        broken = {"a": "{broken", "b": '{"form": {"fields": {"x": 5}, "windows": [4]}, "at": 9e15}'}
        page.evaluate("(all) => Object.entries(all).forEach(([key, text]) => "
                      "localStorage.setItem(`templategen draft ${key}`, text))", broken)  # fmt: skip
        page.goto("about:blank")
        again = context.new_page()
        again.goto(served.url)
        again.wait_for_selector("html[data-ready]")
        fill(again, "rod.length", "60 in")
        expect(again.locator('[data-path="rod.length"] .said')).to_have_text("= 1524 mm")
