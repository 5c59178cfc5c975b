"""The fields: which are there, what each says back, its fault beside it, the picture of what it measures."""

from __future__ import annotations

from collections.abc import Iterator

import pytest
from playwright.sync_api import Browser, Page, expect

from templategen.form import GROUPS, LABELS
from templategen.form.groups import WITH
from templategen.spec import FIELDS, read_spec_or_job

from .conftest import Served, visiting
from .driving import EAST_WINDOW, fill, opened, worked_out

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


FILLED = """(texts) => { for (const [path, text] of Object.entries(texts)) {
  const line = document.querySelector(`[data-path="${path}"] input[type=text]`);
  line.focus();
  line.value = text;
  line.dispatchEvent(new Event('input', { bubbles: true }));
  line.blur();
} }"""
"""Types into many fields, as fast as nobody can."""
TOLD = """(paths) => Object.fromEntries(paths.map((path) => {
  const part = document.querySelector(`[data-path="${path}"]`);
  const [line, wrong] = [part.querySelector('input[type=text]'), part.querySelector('.wrong')];
  const beside = line.getAttribute('aria-invalid') === 'true' && wrong.checkVisibility()
    && line.getAttribute('aria-describedby').split(' ').includes(wrong.id);
  return [path, beside ? wrong.textContent : ''];
}))"""
"""What is said beside each of them, where it is in sight and the field is said to be wrong and described by it."""


def _faults(page: Page, paths: list[str]) -> dict[str, str]:
    """What is said of each field while all of them hold nonsense; they are put back afterwards."""
    before = {path: page.locator(f'[data-path="{path}"] input[type=text]').first.input_value() for path in paths}
    page.evaluate(FILLED, dict.fromkeys(paths, NONSENSE))
    page.wait_for_function(f"(paths) => Object.values(({TOLD})(paths)).every(Boolean)", arg=paths)
    said: dict[str, str] = page.evaluate(TOLD, paths)
    page.evaluate(FILLED, before)
    page.wait_for_function(
        f"([paths, said]) => Object.entries(({TOLD})(paths)).every(([path, now]) => now !== said[path])",
        arg=[paths, said],
    )
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


def test_groups_stand_in_the_order_of_measuring(example: Page) -> None:
    order = example.evaluate("[...document.querySelectorAll('#groups [data-group]')].map((each) => each.dataset.group)")
    assert order == [group.key for group in GROUPS if group.key != "paper"]


def test_a_fault_speaks_of_fields_as_the_page_does_and_leads_to_them(example: Page) -> None:
    fill(example, "hem.turn_under", "9 in")
    example.locator('[data-path="hem.turn_under"] input').blur()
    wrong = example.locator('[data-path="hem.turn_under"] .wrong')
    expect(wrong).to_contain_text(f"write at most “{LABELS['hem.depth']}”")
    example.locator("#state").get_by_role("link", name=LABELS["hem.turn_under"]).click()
    expect(example.locator('[data-path="hem.turn_under"] input')).to_be_focused()
    fill(example, "hem.turn_under", "5/8 in")
    worked_out(example)


