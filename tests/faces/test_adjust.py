"""``templategen adjust``: what it says, what it writes, and with what exit status."""

from __future__ import annotations

import json
from pathlib import Path

from .running import Run
from .test_cli import EXAMPLE

HANGS = "left 3/8 in low, middle good, right 1/8 in high"


def test_adjust_says_what_to_do_with_the_least_unpicking(run: Run) -> None:
    status, out, err = run("adjust", EXAMPLE, "--hangs", HANGS, "--stitched")
    assert (status, err) == (0, "")
    first, second = out.index("A second row of stitching at the loops"), out.index("The hem folded again")
    assert first < second and "loop 9: 3/8 in" in out


def test_adjust_as_json_is_all_there_is_on_stdout(run: Run) -> None:
    status, out, _ = run("adjust", EXAMPLE, "--hangs", HANGS, "--json")
    record = json.loads(out)
    assert status == 0 and record["taken"] == "hem" and record["stitched"] is False


def test_adjust_writes_the_strip_as_a_kit_that_will_print_true(run: Run, tmp_path: Path) -> None:
    status, _, err = run("adjust", EXAMPLE, "--hangs", HANGS, "--out", tmp_path / "strip", "--paper", "a4")
    assert (status, err) == (0, "")
    names = {path.name for path in (tmp_path / "strip").iterdir()}
    assert names == {"kit.pdf", "kit.json", "adjusting.txt", "adjusting.html", "hem-adjusting-strip.svg"}
    assert json.loads((tmp_path / "strip" / "kit.json").read_text())["paper"]["name"] == "a4"
    assert run("check", tmp_path / "strip" / "kit.pdf")[0] == 0


def test_what_hangs_well_needs_no_strip(run: Run, tmp_path: Path) -> None:
    status, out, _ = run("adjust", EXAMPLE, "--hangs", "left good, right good", "--out", tmp_path / "strip")
    assert status == 0 and "Nothing is to be done" in out
    assert not list((tmp_path / "strip").glob("*.svg"))


def test_every_fault_is_told_and_nothing_is_written(run: Run, tmp_path: Path) -> None:
    status, out, err = run("adjust", EXAMPLE, "--hangs", "left a bit low; middle right", "--out", tmp_path / "strip")
    assert status == 2 and out == "" and len(err.splitlines()) == 2
    assert not (tmp_path / "strip").exists()
    status, _, err = run("adjust", EXAMPLE, "--hangs", "loop 40 1/4 in low")
    assert status == 2 and "numbered from 1 to 9" in err


JOB = Path(__file__).parents[1] / "jobs" / "library.toml"


def test_one_window_of_a_job_is_adjusted_by_its_name(run: Run) -> None:
    status, out, err = run("adjust", JOB, "--hangs", HANGS, "--window", "West window")
    assert (status, err) == (0, "") and "west window" in out.lower()
    for asked in ([], ["--window", "attic"]):
        status, _, err = run("adjust", JOB, "--hangs", HANGS, *asked)
        assert status == 2 and err.startswith("--window:") and "'west window'" in err
    assert run("adjust", EXAMPLE, "--hangs", HANGS, "--window", "west window")[0] == 2
