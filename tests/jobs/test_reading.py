"""A job is read window by window over what they share, or refused with every fault where it stands in the file."""

from __future__ import annotations

import time
from pathlib import Path

import pytest
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st

from templategen.errors import Refusal
from templategen.lengths import inches
from templategen.spec import Job, Spec, load_spec_or_job, read_job, read_spec, read_spec_or_job
from templategen.spec.jobs import MOST_WINDOWS, is_job
from templategen.spec.jobs.labels import slug
from tests.strategies import jobs, toml_documents, toml_values

from .building import LIBRARY, SHARED, WINDOWS, changed, faults_of, job, of_windows

ALONE = Path(__file__).parents[2] / "out_examples" / "east-window" / "spec.toml"


def test_a_window_stands_over_what_is_shared_field_by_field() -> None:
    east, north, west, garden = job().windows
    assert [window.spec.panel.count for window in (east, north, west, garden)] == [4, 2, 2, 2]
    assert west.spec.panel.width == inches(42) and west.spec.panel.casing == inches(3)
    assert west.spec.heading.count == 7 and west.spec.rod.diameter == inches("3/4")
    assert len(west.spec.drop.floor_marks) == 3 and west.spec.drop.rod_to_floor == inches(82)
    assert (west.label, west.spec.title) == ("west window", "Children's room, west window")
    assert job().title == job().shared.title == "Village library, the two reading rooms"
    assert job().source == job().shared.source == LIBRARY


def test_tables_below_a_window_say_the_same_as_names_with_dots() -> None:
    tables = changed(("panel.width = \"42 in\"\npanel.length = \"95 1/2 in\"\n", ""))
    tables = tables.replace(
        'drop.floor_marks = ["13 1/8 in", "13 in", "12 7/8 in"]',
        '[window.panel]\ncount = 2\nwidth = "42 in"\nlength = "95 1/2 in"\n'
        '[window.drop]\nfloor_marks = ["13 1/8 in", "13 in", "12 7/8 in"]',
    ).replace('rod.length = "48 in"\npanel.count = 2\n', 'rod.length = "48 in"\n')
    assert read_job(tables).windows == job().windows


def test_an_ordinary_spec_is_read_as_ever() -> None:
    text = ALONE.read_text()
    read = read_spec_or_job(text)
    assert isinstance(read, Spec) and read == read_spec(text) and read.source == text
    assert load_spec_or_job(ALONE) == read


def test_a_job_is_known_by_its_windows(tmp_path: Path) -> None:
    path = tmp_path / "library.toml"
    path.write_text(LIBRARY)
    assert isinstance(load_spec_or_job(path), Job)
    assert is_job({"windows": [{}]}) and is_job({"Window": [{}]}) and is_job({"together": {}})
    assert not is_job({"rod": {}, "hem": [{}], "windows": "none"})


def test_what_a_shared_style_needs_falls_away_where_a_window_chooses_another() -> None:
    windows = job(('rod.length = "48 in"', 'rod.length = "48 in"\nheading.style = "casing"'),
                  ("heading.count = 7\n", "")).windows
    assert [window.spec.heading.style for window in windows] == [*["back loops"] * 2, "casing", "back loops"]


def test_windows_of_one_name_in_two_rooms_are_told_apart_by_the_room() -> None:
    windows = job(("north window", "west window")).windows
    assert [window.label for window in windows] == [
        "east window (Reading room)", "west window (Reading room)",
        "west window (Children's room)", "garden door (Children's room)",
    ]  # fmt: skip


def test_labels_that_would_be_one_in_a_file_name_are_numbers() -> None:
    text = of_windows('name = "a"\nroom = "b"\ndrop.floor_marks = ["13 in"]', 'name = "a"\nroom = "c"',
                      'name = "a b"')
    assert [window.label for window in read_job(text).windows] == ["window 1", "window 2", "window 3"]


FAULTS = [
    (('name = "north window"\n', ""), "window[2].name", "", "missing"),
    (('name = "north window"', 'nmae = "north window"'), "window[2].nmae", '"north window"', "window[2].name"),
    (('name = "north window"', "name = 3"), "window[2].name", "3", "not a text"),
    (('name = "north window"', 'name = " EAST: window"'), "window[2].name", '"EAST: window"', "window 1 is called so"),
    (('name = "north window"', 'name = "../…"'), "window[2].name", '"../…"', "a letter or a figure"),
    (('name = "north window"', f'name = "{"n" * 41}"'), "window[2].name", f'"{"n" * 40}…"', "at most 40"),
    (('room = "Reading room"', 'room = "\\n"'), "window[1].room", '" "', "empty"),
    (('panel.width = "42 in"', 'panel.widht = "42 in"'), "window[3].panel.widht", '"42 in"', "panel.width"),
    (('panel.width = "42 in"', 'panel.width = "-4 in"'), "window[3].panel.width", '"-4 in"', "(west window) a neg"),
    (('"13 in", "12 7/8 in"', '"13 inn", "12 7/8 in"'), "window[3].drop.floor_marks[2]", '"13 inn"', "mark 2"),
    (('panel.width = "42 in"', 'paper.name = "a4"'), "window[3].paper", "a table", "above the first [[window]]"),
    (('panel.width = "42 in"', 'units = "metric"'), "window[3].units", '"metric"', "above the first [[window]]"),
    (('diameter = "3/4 in"', 'diameter = "3/4 inn"'), "rod.diameter", '"3/4 inn"', "not a unit"),
    (("\ncount = 4", "\ncount = 9999"), "panel.count", "9999", "(for east window)"),
    (('clearance = "3/4 in"\n', ""), "drop.clearance", "", "missing"),
    (('title = "Village library, the two reading rooms"\n', ""), "title", "", "missing"),
    (('hem = "2 in"', 'hem = "1/4 in"'), "panel.turn_under", '"3/8 in"', "deeper than the hem"),
    (('keep = "head height"', 'keep = "head hight"'), "together.keep", '"head hight"', '"floor line"'),
    (('keep = "head height"', 'kept = "head height"'), "together.kept", '"head height"', "together.keep"),
    (("[together]", "[togehter]"), "togehter", "a table", "[together]"),
    (("[[window]]", "[[windows]]"), "windows", "a list of 4", "[[window]]"),
    (('keep = "head height"', 'finished_length = "82 in"'), "together.finished_length", '"82 in"', "used only where"),
    (("[together]", "[[together]]"), "together", "a list of 1", "once"),
]


@pytest.mark.parametrize(("change", "field", "read", "right"), FAULTS, ids=[fault[1] for fault in FAULTS])
def test_a_fault_names_the_field_as_it_stands_in_the_file(
    change: tuple[str, str], field: str, read: str, right: str
) -> None:
    (fault,) = dict.fromkeys(fault for fault in faults_of(changed(change)) if fault.field == field)
    assert fault.read == read and right in fault.right


def test_every_fault_is_told_at_once_and_once() -> None:
    text = changed(('width = "54 in"\n', ""), ('"42 in"', '"42 inn"'), ('turn_under = "5/8 in"', 'turn_under = "9 in"'))
    assert [fault.field for fault in faults_of(text)] == [
        "hem.turn_under", *(f"window[{number}].panel.width" for number in range(1, 5)),
    ]  # fmt: skip


def test_a_shared_field_that_every_window_says_anew_is_read_all_the_same() -> None:
    text = changed(('\nlength = "60 in"', '\nlength = "60 inn"'), ('room = "Reading room"', 'rod.length = "60 in"'))
    (fault,) = faults_of(text)
    assert fault.field == "rod.length" and fault.read == '"60 inn"'


@pytest.mark.parametrize("text", ["[together]\n", "window = []\n", "window = 3\n", "window = [3]\n", "[window]\n"])
def test_a_job_without_a_window_is_told_how_to_write_one(text: str) -> None:
    assert any("[[window]]" in fault.right for fault in faults_of(f"{text}{SHARED.replace('[together]', '[x]')}"))


def test_a_shared_table_below_a_window_could_be_meant_for_it() -> None:
    text = of_windows(*WINDOWS, shared=SHARED.replace('[paper]\nname = "letter"\n', "")) + '[paper]\nname = "a4"\n'
    (fault,) = faults_of(text)
    assert fault.field == "paper" and "[window.paper]" in fault.right and "above the first" in fault.right
    (twice,) = faults_of(changed(('panel.width = "42 in"', '[panel]\nwidth = "42 in"')))
    assert twice.field == "line 55" and "[window.panel]" in twice.right
    (single,) = faults_of(changed(("[[window]]", "[window]")))
    assert "double brackets" in single.right


def test_so_many_windows_and_no_more() -> None:
    def windows(count: int) -> str:
        return of_windows(*(f'name = "{i}"\ndrop.floor_marks = ["13 in"]' for i in range(count)))

    assert len(read_job(windows(MOST_WINDOWS)).windows) == MOST_WINDOWS
    (fault,) = faults_of(windows(MOST_WINDOWS + 1))
    assert (fault.field, fault.read) == ("window", "51 windows") and "at most 50" in fault.right


@pytest.mark.parametrize(
    "text",
    ["[[window]]\n" * 40_000, "[[window]]\n" + "\n".join(f"n{i}=1" for i in range(50_000)),
     SHARED + "".join(f"[[window]]\nname='{i}'\n" + "\n".join(f"n{j} = 1" for j in range(300)) + "\n"
                      for i in range(MOST_WINDOWS))],
    ids=["windows", "names", "names in windows"],
)  # fmt: skip
def test_texts_made_to_choke_on_are_refused_in_a_moment(text: str) -> None:
    started = time.process_time()
    assert len(faults_of(text)) < 300
    assert time.process_time() - started < 5


@settings(max_examples=60, suppress_health_check=[HealthCheck.too_slow])
@given(jobs() | toml_documents().map(lambda text: f"{text}\n[[window]]\nname = 'east'\n"), st.data())
def test_any_toml_at_all_is_a_job_or_a_refusal(text: str, data: st.DataObject) -> None:
    slips = [("", ""), ("[[window]]", "[window]"), ("name", "nmae"), ("keep", "kept"), ("[rod]", "[[window]]")]
    text = text.replace(*data.draw(st.sampled_from(slips)))
    if data.draw(st.booleans()):
        field = data.draw(st.sampled_from(["name", "room", "panel", "drop.clearance"]))
        text += f"{field} = {data.draw(toml_values())}\n"
    try:
        read = read_job(text)
    except Refusal as refusal:
        for fault in refusal.faults:
            assert fault.right and str(fault).isprintable()
    else:
        assert read.windows and len({slug(window.label) for window in read.windows}) == len(read.windows)
