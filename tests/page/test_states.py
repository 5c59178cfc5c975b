"""Every state of the page, as it is met: faults, windows, headings, what is kept, what is never lost."""

from __future__ import annotations

import json
from collections.abc import Iterator
from pathlib import Path

import pytest
from playwright.sync_api import Browser, Page, Route, expect

from templategen.form import GROUPS, LABELS
from templategen.form.groups import WITH
from templategen.spec import FIELDS, read_spec_or_job

from .conftest import Served, visiting
from .driving import EAST_WINDOW, fill, open_spec, opened, taken, worked_out

STYLES = {path: FIELDS[path].choices for path in ("heading.style", "hem.style", "panel.heading.style")}
NONSENSE = "about so much"


@pytest.fixture(scope="module")
def example(chromium: Browser, served: Served) -> Iterator[Page]:
    """The example, with everything unfolded: one page that several tests go on with."""
    with visiting(chromium) as context:
        page = opened(context, served.url)
        page.get_by_role("region", name="See").get_by_role("button", name="Look at an example").click()
        worked_out(page)
        yield page


def _unfold_all(page: Page) -> None:
    page.evaluate("document.querySelectorAll('details.further').forEach((each) => { each.open = true; })")


def _choose(page: Page, path: str, value: str) -> None:
    _unfold_all(page)
    page.locator(f'[data-path="{path}"] select').select_option(value)


def _shown(page: Page) -> set[str]:
    _unfold_all(page)
    return set(page.evaluate(
        "[...document.querySelectorAll('[data-path]')].filter((e) => e.checkVisibility()).map((e) => e.dataset.path)"
    ))  # fmt: skip


@pytest.mark.parametrize("chooser", STYLES)
def test_only_the_fields_of_what_is_chosen_are_there(example: Page, chooser: str) -> None:
    table = chooser.rpartition(".")[0]
    before = example.locator(f'[data-path="{chooser}"] select').input_value()
    for style in STYLES[chooser]:
        _choose(example, chooser, style)
        wanted = {
            path for path, field in FIELDS.items()
            if field.table == table and path != chooser and style in (field.styles or (style,)) and path not in WITH
        }  # fmt: skip
        seen = {path for path in _shown(example) if FIELDS[path].table == table and path != chooser}
        assert seen - set(WITH) == wanted - set(WITH), style
    _choose(example, chooser, before)


def _faults(page: Page, paths: list[str]) -> dict[str, str]:
    """What is said of each field while all of them hold nonsense; they are put back afterwards."""
    said = {}
    lines = {path: page.locator(f'[data-path="{path}"] input[type=text]').first for path in paths}
    before = {path: line.input_value() for path, line in lines.items()}
    for line in lines.values():
        line.fill(NONSENSE)
        line.blur()
    for path, line in lines.items():
        wrong = page.locator(f'[data-path="{path}"] .wrong')
        expect(wrong).to_be_visible()
        said[path] = wrong.inner_text()
        expect(line).to_have_attribute("aria-invalid", "true")
        assert wrong.get_attribute("id") in (line.get_attribute("aria-describedby") or "")
    for path, line in lines.items():
        line.fill(before[path])
    for path, words in said.items():
        expect(page.locator(f'[data-path="{path}"] .wrong')).not_to_have_text(words)
    return said


def test_every_field_says_its_fault_beside_itself(example: Page) -> None:
    """Nonsense in every field of every style, one after the other: the fault stands beside that field, in words that
    the command line has too."""
    told: dict[str, str] = {}
    _unfold_all(example)
    for chooser, styles in {"": ("",), **STYLES}.items():
        before = example.locator(f'[data-path="{chooser}"] select').input_value() if chooser else ""
        for style in styles:
            if chooser:
                _choose(example, chooser, style)
            paths = [
                path for path, field in FIELDS.items()
                if field.kind in ("length", "lengths", "count", "quantity") and field.chooser == chooser
                and style in (field.styles or ("",)) and path not in told and path not in WITH
            ]  # fmt: skip
            told |= _faults(example, paths)
        if chooser:
            _choose(example, chooser, before)
    assert len(told) == sum(
        field.kind in ("length", "lengths", "count", "quantity") and path not in WITH for path, field in FIELDS.items()
    )
    for path, said in told.items():
        with pytest.raises(Exception, match=r"(?s).+") as refusal:
            _command_line(path)
        mine = [fault for fault in refusal.value.faults if fault.field.partition("[")[0] == path]  # type: ignore[attr-defined]
        assert mine and mine[0].right.lower()[:40] in said.lower(), path


def _command_line(path: str) -> None:
    """The fault that the same nonsense has in a file."""
    from templategen.form import Form, tables_of, text_of
    from templategen.form.entries import form_of

    form = form_of(tables_of(EAST_WINDOW.read_text(), None))
    fields = dict(form.fields)
    field = FIELDS[path]
    if field.chooser:
        fields[field.chooser] = field.styles[0]
    fields[path] = (NONSENSE,) if field.kind == "lengths" else NONSENSE
    read_spec_or_job(text_of("", Form(fields)))


def test_what_is_folded_in_with_another_field_comes_with_it(example: Page) -> None:
    for path in ("sides.finished_width", "lining.cut_shorter", "weights.every", "fabric.shrinkage", "fabric.repeat"):
        coming = {other for other, needs in WITH.items() if path in needs}
        assert not coming & _shown(example)
        fill(example, path, "40 in" if FIELDS[path].kind == "length" else "3 %")
        assert coming <= _shown(example), path
        fill(example, path, "")
        assert not coming & _shown(example)


def test_what_was_typed_for_another_heading_is_there_again(example: Page) -> None:
    fill(example, "heading.loop_width", "1 3/16 in")
    for style in ("eyelets", "tabs", "back loops"):
        _choose(example, "heading.style", style)
    expect(example.get_by_label(LABELS["heading.loop_width"])).to_have_value("1 3/16 in")
    fill(example, "heading.loop_width", "")


def test_the_picture_lights_what_the_field_measures(example: Page) -> None:
    for path in ("panel.width", "panel.turn_under", "rod.diameter", "drop.clearance", "hem.depth"):
        example.locator(f'[data-path="{path}"] input').first.focus()
        lit = example.locator(f'[data-group="{path.partition(".")[0]}"] .guide .lit')
        expect(lit).to_have_count(1)
        assert lit.get_attribute("data-about") == path
        expect(example.locator(f'[data-group="{path.partition(".")[0]}"] .measuring')).to_contain_text(
            FIELDS[path].about.measure or FIELDS[path].about.meaning[1:]
        )


def test_several_marks_come_and_go(example: Page) -> None:
    part = example.locator('[data-path="drop.floor_marks"]')
    part.get_by_role("button", name="One more").click()
    part.get_by_role("textbox").nth(1).fill("14 1/8 in")
    expect(part.locator(".said").nth(1)).to_have_text("= 359 mm")
    expect(example.locator("#seen")).to_contain_text("cut line at mark 2", ignore_case=True)
    part.get_by_role("textbox").nth(1).fill("low")
    part.get_by_role("textbox").nth(1).press("Tab")
    expect(part.locator(".wrong")).to_contain_text("mark 2 from the left")
    part.get_by_role("button", name="Remove Marks at the floor, 2").click()
    expect(part.get_by_role("textbox")).to_have_count(1)
    worked_out(example)


def test_a_number_says_how_it_came_about_when_it_is_pressed(example: Page) -> None:
    row = example.locator("#seen details").filter(has_text="Cut line").first
    expect(row.locator("p")).to_be_hidden()
    row.locator("summary").press("Enter")
    expect(row.locator("p")).to_contain_text("finish line")
    fill(example, "hem.depth", "4 1/2 in")
    expect(row.locator("p")).to_contain_text("hem 4 1/2 in")
    fill(example, "hem.depth", "4 in")


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


def test_groups_stand_in_the_order_of_measuring(example: Page) -> None:
    order = example.evaluate("[...document.querySelectorAll('#groups [data-group]')].map((each) => each.dataset.group)")
    assert order == [group.key for group in GROUPS if group.key != "paper"]
