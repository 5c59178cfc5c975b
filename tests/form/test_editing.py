"""A form over the text it was opened from: nothing is lost either way."""

from __future__ import annotations

import tomllib
from dataclasses import replace
from pathlib import Path

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from templategen.errors import Refusal
from templategen.form import EMPTY, Form, WindowEntry, form_of, form_record, from_record, tables_of, text_of
from templategen.form.entries import filled, value_of
from templategen.spec import FIELDS, read_spec, read_spec_or_job, starting_job, starting_spec
from tests.strategies import jobs, kind_literals, spec_texts, toml_text

EXAMPLES = sorted((Path(__file__).parents[2] / "out_examples").glob("*/spec.toml"))
NOTED = """\
# Reading room: measured on Tuesday
title = 'Reading room'   # as on the door
units = "inch"

[panel] # all four
width = 54        # at the top
length = "96 in"
casing = "3 in"
hem = "2 in"
turn_under = "3/8 in"

[rod]
length = "60 in"
diameter = "3/4 in"
[drop]
floor_marks = [
  "13 5/8 in",  # left
  13.5,
]
clearance = "3/4 in"
[hem]
depth = "4 in"
turn_under = "5/8 in"
[heading]
style = "back loops"
"""


def _opened(text: str) -> Form:
    return form_of(tables_of(text, None))


@pytest.mark.parametrize("path", EXAMPLES, ids=lambda path: path.parent.name)
def test_an_example_opened_and_saved_is_the_same_to_the_last_byte(path: Path) -> None:
    text = path.read_text()
    assert text_of(text, _opened(text)) == text


@pytest.mark.parametrize("text", [starting_spec("inch"), starting_spec("metric"), starting_job("inch"), NOTED])
def test_a_file_with_notes_opened_and_saved_is_the_same_to_the_last_byte(text: str) -> None:
    assert text_of(text, _opened(text)) == text
    windows = text.replace("\n", "\r\n")
    assert text_of(windows, _opened(windows)) == windows


def test_one_change_is_one_line() -> None:
    form = _opened(NOTED)
    text = text_of(NOTED, replace(form, fields={**form.fields, "panel.width": "52 1/2 in"}))
    assert text == NOTED.replace('width = 54        # at the top', 'width = "52 1/2 in"        # at the top')


def test_what_is_added_stands_in_its_table_and_what_is_emptied_is_gone() -> None:
    form = _opened(NOTED)
    fields = {**form.fields, "panel.header": "1 in", "paper.large_print": True, "panel.length": "", "panel.count": "4"}
    text = text_of(NOTED, replace(form, fields=fields))
    kept = [line for line in NOTED.splitlines() if line and not line.startswith("length = \"96")]
    assert [line for line in text.splitlines() if line in kept] == kept
    tables = tomllib.loads(text)
    assert tables["panel"]["header"] == "1 in" and tables["panel"]["count"] == 4
    assert tables["paper"] == {"large_print": True} and "length" not in tables["panel"]


def test_a_table_of_which_nothing_is_left_is_gone() -> None:
    text = f'{NOTED}[printer]\nacross = "99 mm"\n'
    form = _opened(text)
    fields = {path: each for path, each in form.fields.items() if path != "printer.across"}
    assert "printer" not in text_of(text, replace(form, fields=fields))


def test_what_a_form_knows_nothing_of_stays_and_is_still_refused() -> None:
    text = f'{NOTED}\n[pannel]\nwidth = "54 in"\n'
    form = _opened(text)
    changed = text_of(text, replace(form, fields={**form.fields, "title": "Other"}))
    assert '[pannel]\nwidth = "54 in"' in changed
    with pytest.raises(Refusal, match="pannel"):
        read_spec(changed)


def test_a_value_of_another_kind_is_written_as_its_field_has_it() -> None:
    text = NOTED.replace("width = 54 ", 'count = "4"\nwidth = 54 ').replace(
        'floor_marks = [\n  "13 5/8 in",  # left\n  13.5,\n]', 'floor_marks = "13 5/8 in"'
    )
    form = _opened(text)
    assert form.fields["panel.count"] == "4" and form.fields["drop.floor_marks"] == ("13 5/8 in",)
    read = read_spec(text_of(text, form))
    assert read.panel.count == 4 and len(read.drop.floor_marks) == 1


def test_text_that_is_no_toml_is_refused_by_its_line() -> None:
    with pytest.raises(Refusal, match="line 2"):
        text_of('title = "a"\nwidth = 5 3/8 in\n', EMPTY)


def test_windows_come_go_and_change_their_places() -> None:
    path = next(path for path in EXAMPLES if path.parent.name == "reading-rooms")
    text = path.read_text()
    form = _opened(text)
    first, second, _third, fourth = form.windows
    copied = replace(first, name="copy", fields={**first.fields, "panel.width": "51 in"})
    new = WindowEntry(None, "new", "", {"panel.width": "40 in", "drop.floor_marks": ("9 in",)})
    wanted = replace(form, windows=(fourth, copied, second, new))
    written = text_of(text, wanted)
    assert [window["name"] for window in tomllib.loads(written)["window"]] == [
        "window seat", "copy", "north window", "new",
    ]  # fmt: skip
    again = _opened(written)
    assert again.windows == tuple(replace(w, came_from=i) for i, w in enumerate(wanted.windows))
    assert written.startswith(text.partition("[[window]]")[0])
    assert "\n\n\n" not in written.partition("[[window]]")[2]


def test_the_last_window_gone_leaves_a_spec() -> None:
    text = starting_job("inch")
    form = _opened(text)
    alone = replace(form, windows=(), fields={**form.fields, **form.windows[0].fields})
    assert read_spec(text_of(text, alone)).panel.width == read_spec_or_job(text).windows[0].spec.panel.width  # type: ignore[union-attr]


@settings(max_examples=60)
@given(spec_texts())
def test_opening_and_saving_gives_the_text_back(text: str) -> None:
    assert text_of(text, _opened(text)) == text


@settings(max_examples=30)
@given(jobs())
def test_opening_and_saving_gives_a_job_back(text: str) -> None:
    form = _opened(text)
    assert text_of(text, form) == text
    assert from_record(form_record(form)) == form


@settings(max_examples=60)
@given(kind_literals(), kind_literals())
def test_any_form_over_any_text_says_what_the_form_says(before: dict[str, str], after: dict[str, str]) -> None:
    """Whatever was opened: the text that is saved is read as the form alone would be, and so is the plan's."""
    base, wanted = toml_text(before), _opened(toml_text(after))
    written = text_of(base, wanted)
    assert tomllib.loads(written) == tables_of(base, wanted)
    # A switch that a text says is off is left out of a new one.
    assert filled(_opened(written).fields) == filled(wanted.fields) == filled(_opened(text_of("", wanted)).fields)


@settings(max_examples=60)
@given(st.dictionaries(st.sampled_from(sorted(FIELDS)), st.text(max_size=20), max_size=12))
def test_whatever_is_typed_is_kept(typed: dict[str, str]) -> None:
    fields = {
        path: (True if FIELDS[path].kind == "switch" else (text,) if FIELDS[path].kind == "lengths" else text)
        for path, text in typed.items()
        if text.strip() and "\x00" not in text
    }
    form = Form({path: each for path, each in fields.items() if value_of(FIELDS[path], each) is not None})
    saved = _opened(text_of("", form))
    for path, each in form.fields.items():
        if FIELDS[path].kind == "text":
            assert saved.fields[path] == each
        elif isinstance(each, str):
            again = saved.fields[path]
            assert again == each.strip() or str(int(each.strip())) == again
        else:
            assert saved.fields[path] == (tuple(e.strip() for e in each) if isinstance(each, tuple) else each)
