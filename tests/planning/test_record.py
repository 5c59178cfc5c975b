"""plan.json, as the contract has it."""

from __future__ import annotations

import json
from fractions import Fraction
from typing import Any

import pytest

from templategen.lengths import read_length
from templategen.planning import plan_record

from .building import planned
from .test_figures import PROMISED


def record(changes: dict[str, Any] | None = None) -> Any:
    return json.loads(json.dumps(plan_record(planned(changes))))


def test_the_promised_parts() -> None:
    found = record()
    promised = {"lengths", "counts", "ratios", "marks", "cut_lines", "notices"}
    assert promised <= found.keys()
    assert set(PROMISED) <= found["lengths"].keys()
    assert {"loops", "loops_needed", "loops_available", "panels"} <= found["counts"].keys()
    assert found["ratios"]["fullness"] == pytest.approx(3.6)
    assert [mark["label"] for mark in found["marks"]["casing"]] == [str(n) for n in range(1, 10)]
    assert len(found["cut_lines"]) == 2
    assert found["title"] == "Reading room, east window" and found["units"] == "inch"
    assert found["working"].keys() == found["lengths"].keys()


def test_a_length_three_ways() -> None:
    pitch = record()["lengths"]["loop_pitch"]
    assert pitch == {"mm": pytest.approx(163.5125, abs=1e-9), "exact": "103/16 in", "shown": "6 7/16 in"}
    metric = record({"units": "metric"})["lengths"]["loop_pitch"]
    assert metric == {
        "mm": pytest.approx(163.5125, abs=1e-9),
        "exact": "13081/80 mm",
        "shown": "164 mm, a hair under",
    }


@pytest.mark.parametrize("units", ["inch", "metric"])
def test_mm_and_exact_are_one_length(units: str) -> None:
    for entry in record({"units": units})["lengths"].values():
        number, unit = entry["exact"].split()
        exact = Fraction(number) * (Fraction(127, 5) if unit == "in" else 1)
        assert entry["mm"] == pytest.approx(float(exact), abs=1e-6)


def test_what_is_shown_reads_back_within_a_graduation() -> None:
    for entry in record()["lengths"].values():
        shown = read_length(entry["shown"])
        assert abs(float(shown.mm) - entry["mm"]) <= 25.4 / 32 + 1e-9


def test_cut_lines_across_the_width() -> None:
    marks = {"drop.floor_marks": ["13 in", "13 1/8 in", "13 1/4 in"], "drop.hung_by": "new heading"}
    lines = record(marks)["cut_lines"]
    assert [line["at"]["shown"] for line in lines] == ["0 in", "27 in", "54 in"]
    assert [line["height"]["exact"] for line in lines] == ["73/8 in", "37/4 in", "75/8 in"]


def test_notices_have_code_level_and_text() -> None:
    for entry in record()["notices"]:
        assert entry.keys() == {"code", "level", "text"}
        assert entry["level"] in {"stop", "warning", "note"}
