"""One kit for a job: its files, its sheets, the command that makes it, and the kit made again from itself."""

from __future__ import annotations

import json
from io import BytesIO
from pathlib import Path
from typing import Any

import pytest
from pypdf import PdfReader

from templategen import Options, kit_files, make_plan
from templategen.errors import Refusal, StoppedPlan
from templategen.planning import make_job_plan
from templategen.spec import read_job
from templategen.spec.jobs import starting_job
from tests.faces.conftest import configuration, run
from tests.faces.running import Run

from .building import LIBRARY, WINDOWS, changed, of_windows, planned

__all__ = ["configuration", "run"]
SVGS = {
    "spacing-strip--east-window-and-2-more.svg", "spacing-strip--west-window.svg", "hem-gauge-card.svg",
    "cut-gauge--east-window-and-2-more.svg", "cut-gauge-1--west-window.svg", "cut-gauge-2--west-window.svg",
    "cut-gauge-3--west-window.svg", "loop-ladder.svg",
}  # fmt: skip


@pytest.fixture
def library(tmp_path: Path) -> Path:
    path = tmp_path / "library.toml"
    path.write_text(LIBRARY)
    return path


def record_of(folder: Path) -> Any:
    return json.loads((folder / "kit.json").read_text())


def test_make_writes_one_kit_for_all_windows_and_check_passes_it(run: Run, library: Path, tmp_path: Path) -> None:
    folder = tmp_path / "kit"
    status, out, err = run("make", library, "--out", folder)
    assert (status, err) == (0, "")
    assert "warning: west window: The floor is marked" in out
    words = {"work-order.txt", "work-order.html"}
    assert {path.name for path in folder.iterdir()} == {"kit.pdf", "kit.json", *words, *SVGS}
    held = [name for page in record_of(folder)["pages"] for name in page["holds"]]
    assert {"print check", "work order", "spacing strip, west window", "loop ladder"} <= set(held)
    assert run("check", folder / "kit.pdf")[0] == 0
    text = (folder / "work-order.txt").read_text()
    assert text.count("Part 1: east window, north window and garden door") == 1 == text.count("Blades:")


def test_a_kit_of_a_job_is_made_again_from_its_own_pdf(run: Run, library: Path, tmp_path: Path) -> None:
    assert run("make", library, "--out", tmp_path / "a", "--paper", "a4", "--half-strip")[0] == 0
    assert run("make", tmp_path / "a" / "kit.pdf", "--out", tmp_path / "b")[0] == 0
    for path in (tmp_path / "a").iterdir():
        assert (tmp_path / "b" / path.name).read_bytes() == path.read_bytes()
    attached = PdfReader(BytesIO((tmp_path / "a" / "kit.pdf").read_bytes())).attachments
    assert attached["job.toml"][0].decode() == LIBRARY and "spec.toml" not in attached


def test_plan_tells_and_records_every_window(run: Run, library: Path) -> None:
    status, out, err = run("plan", library)
    assert (status, err) == (0, "") and out.count("From the floor to the cut") == 4 and "On paper" in out
    record = json.loads(run("plan", library, "--json")[1])
    assert [window["label"] for window in record["windows"]] == [
        "east window", "north window", "west window", "garden door",
    ]  # fmt: skip
    assert record["on_paper"]["sheets"]["with_templates"] == 7


def test_faults_of_windows_and_of_arguments_are_told_together(run: Run, library: Path, tmp_path: Path) -> None:
    library.write_text(changed(('"42 in"', '"42 inn"'), ("12 7/8 in", "12 7/8 inn")))
    status, out, err = run("make", library, "--out", tmp_path / "kit", "--paper", "letre")
    assert (status, out) == (2, "") and not (tmp_path / "kit").exists()
    assert [line.partition(":")[0] for line in err.splitlines()] == [
        "window[3].panel.width", "window[3].drop.floor_marks[3]", "--paper",
    ]  # fmt: skip


def test_a_name_that_the_font_lacks_is_refused_by_its_field() -> None:
    with pytest.raises(Refusal) as refused:
        kit_files(planned(("north window", "north 窓"), ('room = "Children', 'room = "子供 Children')))
    assert [fault.field for fault in refused.value.faults] == ["window[2].name", "window[3].room", "window[4].room"]


def test_a_stop_at_one_window_stops_the_kit_and_names_it() -> None:
    plan = planned(("panel.casing = \"3 in\"", 'rod.diameter = "3 in"'))
    with pytest.raises(StoppedPlan) as stopped:
        kit_files(plan)
    assert all(text.startswith("garden door: ") for text in stopped.value.texts)
    assert kit_files(plan, Options(despite_stops=True))[1]


def test_the_kit_of_one_window_has_the_sheets_of_its_spec() -> None:
    read = read_job(of_windows(WINDOWS[2]))
    (whole, files), (alone, own) = (kit_files(plan) for plan in (make_job_plan(read), make_plan(read.windows[0].spec)))
    assert whole.drawings == alone.drawings and whole.budgets == alone.budgets
    assert [sheet.placed for sheet in whole.sheets if sheet.placed] == [
        sheet.placed for sheet in alone.sheets if sheet.placed
    ]
    assert {name: files[name] for name in files if name.endswith(".svg")} == {
        name: own[name] for name in own if name.endswith(".svg")
    }


def test_the_order_of_windows_changes_no_number_of_sheets_or_pieces() -> None:
    """Of the templates; the work order tells the parts in another order, and its pages end elsewhere."""

    def told(windows: list[str]) -> tuple[int, dict[str, int]]:
        kit, files = kit_files(make_job_plan(read_job(of_windows(*windows))))
        pieces = json.loads(files["kit.json"])["pieces"]
        own = {drawing.name: (drawing.own_name, drawing.length) for drawing in kit.drawings}
        counts: dict[str, int] = {}
        for piece in pieces:
            counts[str(own[piece["template"]])] = piece["of"]
        return kit.with_templates, counts

    assert told(WINDOWS) == told(WINDOWS[::-1])


def test_a_later_kit_takes_away_the_templates_of_windows_that_are_no_more(
    run: Run, library: Path, tmp_path: Path
) -> None:
    run("make", library, "--out", tmp_path / "kit")
    library.write_text(of_windows(*WINDOWS[:2]))
    assert run("make", library, "--out", tmp_path / "kit")[0] == 0
    assert {path.name for path in (tmp_path / "kit").glob("*.svg")} == {
        "spacing-strip.svg", "hem-gauge-card.svg", "cut-gauge.svg", "loop-ladder.svg",
    }  # fmt: skip


def test_only_some_templates_of_a_job(run: Run, library: Path, tmp_path: Path) -> None:
    assert run("make", library, "--out", tmp_path, "--only", "cut gauge")[0] == 0
    assert {path.name for path in tmp_path.glob("*.svg")} == {name for name in SVGS if name.startswith("cut-gauge")}


@pytest.mark.parametrize("units", ["inch", "metric"])
@pytest.mark.parametrize("heading", ["back loops", "casing"])
def test_new_writes_a_job_to_start_from(run: Run, tmp_path: Path, units: str, heading: str) -> None:
    path = tmp_path / "job.toml"
    status, out, err = run("new", path, "--job", "--units", units, "--heading", heading)
    assert (status, err) == (0, "") and f"templategen plan {path}" in out
    first, second = read_job(path.read_text()).windows
    assert first.spec.heading.style == second.spec.heading.style == heading
    assert first.spec.drop.floor_marks != second.spec.drop.floor_marks
    assert run("plan", path)[0] == 0
    assert max(map(len, starting_job().splitlines())) <= 120


def test_every_note_of_the_starting_job_can_be_filled_in() -> None:
    """The fields of [together] and a window's room stand in it as notes or as values that are read."""
    text = starting_job().replace("# [together]", "[together]").replace("# keep =", "keep =")
    text = text.replace("# finished_length =", "finished_length =").replace('"head height"\n', '"finished length"\n')
    read = read_job(text)
    assert read.together.keep == "finished length" and read.together.finished_length
    assert {window.room for window in read.windows} == {"Reading room"}


def test_a_job_to_start_from_needs_a_file(run: Run) -> None:
    status, _, err = run("new", "--job")
    assert status == 2 and "FILE" in err and "--job" in err
