"""What the interface answers, as plain functions: the command line's own plan, faults, words and bytes."""

from __future__ import annotations

import io
import json
import zipfile
from pathlib import Path

import pytest
from click.testing import CliRunner
from PIL import Image

from templategen import kit_files
from templategen.cli import commands
from templategen.errors import Refusal, StoppedPlan
from templategen.planning import plan_for
from templategen.serving import answers
from templategen.spec import read_spec_or_job

EXAMPLES = sorted((Path(__file__).parents[2] / "out_examples").glob("*/spec.toml"))
EAST_WINDOW = next(path for path in EXAMPLES if path.parent.name == "east-window")
STOPPED = EAST_WINDOW.read_text().replace('floor_marks = ["13 5/8 in"]', 'floor_marks = ["-9 in"]')


def _form(text: str) -> dict[str, object]:
    form: dict[str, object] = answers.form_in(text)["form"]
    return form


@pytest.mark.parametrize("path", EXAMPLES, ids=lambda path: path.parent.name)
def test_the_plan_is_that_of_the_command_line(path: Path) -> None:
    text = path.read_text()
    answer = answers.plan(text, _form(text))
    told = json.loads(CliRunner().invoke(commands, ["plan", str(path), "--json"]).stdout)
    del told["on_paper"]
    assert answer["plan"] == told
    # A job's plan.json has the notices of each window with that window.
    texts = [notice["text"] for each in (told, *told.get("windows", ())) for notice in each["notices"]]
    assert all(any(notice["text"].endswith(text) for notice in answer["notices"]) for text in texts)
    assert texts and all(any(notice["text"].endswith(text) for text in texts) for notice in answer["notices"])


def test_faults_are_those_of_the_command_line(tmp_path: Path) -> None:
    text = EAST_WINDOW.read_text().replace('width = "54 in"', 'width = "54 inn"').replace('"5/8 in"', '"9 in"')
    path = tmp_path / "spec.toml"
    path.write_text(f"{text}\n[pannel]\nx = 1\n")
    told = CliRunner().invoke(commands, ["plan", str(path)], standalone_mode=False)
    assert isinstance(told.exception, Refusal)
    with pytest.raises(Refusal) as refusal:
        answers.plan(path.read_text(), None)
    assert refusal.value.faults == told.exception.faults and len(refusal.value.faults) == 3
    assert refusal.value.understood["panel.length"] == "96 in (2438 mm)"  # type: ignore[attr-defined]


def test_a_windows_own_numbers_and_pictures_are_answered() -> None:
    text = next(path for path in EXAMPLES if path.parent.name == "reading-rooms").read_text()
    shown = [answers.plan(text, None, window) for window in range(5)]
    assert "pinch pleats" in shown[2]["in_short"]
    assert shown[0]["in_short"] != shown[1]["in_short"]
    assert shown[4]["in_short"] == shown[3]["in_short"], "of one there is not, the last"


def test_the_kit_is_that_of_the_command_line_file_by_file() -> None:
    text = EAST_WINDOW.read_text()
    _, files = kit_files(plan_for(read_spec_or_job(text)))
    told = answers.sheets(text, None)
    assert {file["name"]: file["size"] for file in told["files"]} == {
        **{name: len(content) for name, content in files.items()}, "spec.toml": len(text.encode()),
    }  # fmt: skip
    for name, content in files.items():
        assert answers.kit(text, None, name) == (name, answers.kit(text, None, name)[1], content)
    with zipfile.ZipFile(io.BytesIO(answers.kit(text, None, None)[2])) as archive:
        assert archive.read("kit.pdf") == files["kit.pdf"] and archive.read("spec.toml").decode() == text
    assert answers.kit(text, None, None) == answers.kit(text, None, None)


def test_sheets_are_drawn_as_they_print() -> None:
    text = EAST_WINDOW.read_text()
    told = answers.sheets(text, None)
    assert told["count"] == len(told["pages"]) == 15
    large = Image.open(io.BytesIO(answers.sheet(text, None, 12, 850)))
    assert large.size == (850, 1100)
    assert sum(large.convert("L").histogram()[:80]) > 1_000, "there is ink on it"
    with pytest.raises(Refusal, match="pages 1 to 15"):
        answers.sheet(text, None, 16, 850)


def test_a_stop_stops_the_kit_and_not_the_plan() -> None:
    assert answers.plan(STOPPED, None)["stopped"]
    with pytest.raises(StoppedPlan):
        answers.sheets(STOPPED, None)
    assert answers.sheets(STOPPED, None, True)["count"] > 5


@pytest.mark.parametrize("name", ["../kit.pdf", "/etc/passwd", "kit.pdf/", "", "KIT.PDF"])
def test_a_file_that_the_kit_has_not_is_refused(name: str) -> None:
    with pytest.raises(Refusal, match="no such file"):
        answers.kit(EAST_WINDOW.read_text(), None, name)


@pytest.mark.parametrize(
    ("spoken", "heard"),
    [
        ("the cut line 9 in − above", "the cut line 9 in (a hair under) above"),
        ("It is 82 3/8 in + long.", "It is 82 3/8 in (a hair over) long."),
        ("228 mm +, 5 in −.", "228 mm (a hair over), 5 in (a hair under)."),
        ("−3 in, and 4 in −5", "−3 in, and 4 in −5"),
    ],
)
def test_signs_are_heard_as_what_they_mean(spoken: str, heard: str) -> None:
    assert answers.read_out(spoken) == heard


def test_too_many_marks_or_windows_are_refused_in_the_words_of_the_spec() -> None:
    text = EAST_WINDOW.read_text()
    form = _form(text)
    marks = form | {"fields": {**form["fields"], "drop.floor_marks": ["9 in"] * 201}}  # type: ignore[dict-item]
    with pytest.raises(Refusal, match="write at most 200"):
        answers.plan(text, marks)
    windows = [{"from": None, "name": f"window {n}", "room": "", "fields": {}} for n in range(51)]
    with pytest.raises(Refusal, match="write at most 50"):
        answers.plan(text, form | {"windows": windows})
