"""The plan as text, held against goldens that a person can read.

A golden is changed by hand, or with ``GOLDENS=write`` in the environment and
then read through before it is kept.
"""

from __future__ import annotations

import os
from pathlib import Path
from typing import Any

import pytest

from templategen.planning import tell_plan
from templategen.planning.wording import at_least, at_most, decimal, near, say, term

from .building import length, planned

GOLDENS = Path(__file__).parent / "goldens"
TROUBLE = {
    "title": "Reading room, north window: measured in a hurry",
    "units": "metric",
    "cloth": "heavy",
    "rod.length": "1524 mm",
    "rod.diameter": "35 mm",
    "panel.count": 1,
    "panel.width": "1370 mm",
    "panel.length": "2440 mm",
    "panel.casing": "75 mm",
    "panel.hem": "50 mm",
    "panel.turn_under": "10 mm",
    "drop.floor_marks": ["60 mm", "61 mm", "80 mm", "63 mm", "64 mm"],
    "drop.rod_to_floor": None,
    "drop.clearance": "-10 mm",
    "hem.depth": "60 mm",
    "hem.turn_under": "15 mm",
    "heading.count": 6,
    "heading.edge_inset": "15 mm",
    "heading.loop_length": "60 mm",
    "heading.loop_width": "28 mm",
    "heading.lower_allowance": "10 mm",
    "heading.upper_turn": "15 mm",
}


@pytest.mark.parametrize(("name", "changes"), [("east-window", {}), ("north-window", TROUBLE)])
def test_against_its_golden(name: str, changes: dict[str, Any]) -> None:
    told = tell_plan(planned(changes))
    golden = GOLDENS / f"{name}.txt"
    if os.environ.get("GOLDENS") == "write":
        golden.write_text(told, encoding="utf-8")
    assert told == golden.read_text(encoding="utf-8")


def test_no_line_is_too_long_and_no_number_parted_from_its_unit() -> None:
    lines = tell_plan(planned(TROUBLE)).splitlines()
    assert max(map(len, lines)) <= 96
    assert not any(line.lstrip().startswith(("in ", "mm ", "in,", "mm,", "mm.", "in.")) for line in lines)


def test_two_thousand_loops_are_told() -> None:
    told = tell_plan(planned({"heading.count": 2000}))
    assert "2000: " in told and max(map(len, told.splitlines())) <= 96


def test_a_title_of_any_length() -> None:
    assert tell_plan(planned({"title": "x" * 90})).startswith("x" * 90 + "\n" + "=" * 90)


def test_words_for_lengths() -> None:
    tape, third = planned().tape, length("1/3 in")
    assert say(tape, third) == "5/16 in (a hair over)"
    assert near(tape, third) == "about 5/16 in"
    assert (at_least(tape, third), at_most(tape, third)) == ("3/8 in", "5/16 in")
    assert at_least(tape, length("3/8 in")) == at_most(tape, length("3/8 in")) == "3/8 in"
    assert at_most(tape, length("1/32 in")) == "1/16 in (a hair under)"
    assert term(tape, -1, "hem", length("4 in")) == "− hem 4 in"
    assert term(tape, -1, "hang shift", -length("1/8 in")) == "+ hang shift 1/8 in"
    assert (decimal(3.6), decimal(1.0), decimal(0.966)) == ("3.6", "1", "0.97")


def test_a_line_that_is_longer_than_the_page_goes_on_below() -> None:
    odd_marks = ["-11 3/7 in", "-10 1/3 in", "-11 1/7 in"]
    plan = planned({"drop.floor_marks": odd_marks, "drop.rod_to_floor": None, "drop.clearance": "-78 2/3 in"})
    told = tell_plan(plan)
    assert "at 27 in: finish" in told and all(len(line) <= 96 for line in told.splitlines())
