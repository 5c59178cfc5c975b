"""The record to keep: every field that was given, blanks for what is measured, and the command."""

from __future__ import annotations

import json
import shlex
import tomllib
from collections.abc import Iterator
from typing import Any

import pytest
from hypothesis import given

from templategen.document.blocks import Blanks, Block, Heading, Lines, Numbers, Paragraph
from templategen.fingerprint import fingerprint_of
from templategen.lengths import inches
from templategen.planning import JobPlan, Plan, as_job, make_job_plan, make_plan
from templategen.planning.lines import line_of
from templategen.spec import FIELDS, Spec, read_job, read_spec
from templategen.work_order.again import command
from templategen.work_order.record import TITLE, floor_at, gap_at, in_short, record
from tests.jobs.building import LIBRARY
from tests.planning.building import planned
from tests.strategies import kind_specs

SPEC = """
title = "Reading room, east window"
units = "inch"
cloth = "medium"
[rod]
length = 60
diameter = "1,9 cm"
[panel]
count = 4
width = "4 ft 6 in"
length = "96 in"
casing = "3 in"
hem = "2 in"
turn_under = "3/8 in"
[drop]
floor_marks = ["13 5/8 in", "13 1/2 in"]
clearance = "3/4 in"
[hem]
depth = "4 in"
turn_under = "5/8 in"
[heading]
style = "back loops"
[fabric]
shrinkage = "3 per cent"
[paper]
half_strip = true
"""


def of(text: str) -> JobPlan:
    return as_job(make_plan(read_spec(text)))


def kept(text: str, options: dict[str, Any] | None = None) -> list[Block]:
    carried = {"spec.toml": text} | ({"make.json": json.dumps(options)} if options else {})
    return record(of(text), carried)


def told(text: str) -> dict[str, tuple[str, str]]:
    ((_, rows),) = in_short(of(text))
    return {row.label: (row.value, row.working) for row in rows}


def paths(tables: dict[str, Any], before: str = "") -> Iterator[str]:
    """Every value of a document by its path, in the order of the file."""
    for name, value in tables.items():
        if isinstance(value, dict):
            yield from paths(value, f"{before}{name}.")
        else:
            yield f"{before}{name}"


def blanks(plan: Plan) -> list[dict[str, str]]:
    found = [block for block in record(as_job(plan), {}) if isinstance(block, Blanks)]
    return [{row.label: row.value for row in block.rows} for block in found]


def test_lengths_as_the_tape_shows_them_and_as_they_were_typed() -> None:
    """1.9 cm is 0.748 in, a hair under 3/4; 4 ft 6 in is 54 in; 60 is in inches here."""
    found = told(SPEC)
    assert found["rod.diameter"] == ("3/4 in, a hair under", "the thickness of the rod; typed 1,9 cm")
    assert found["panel.width"][0] == "54 in" and found["panel.width"][1].endswith("; typed 4 ft 6 in")
    assert found["rod.length"] == ("60 in", "the length from bracket to bracket; typed 60")
    assert found["drop.floor_marks"][0] == "13 5/8 in; 13 1/2 in" and "typed" not in found["drop.floor_marks"][1]
    assert found["fabric.shrinkage"][0] == "3 %" and found["paper.half_strip"][0] == "yes"


@given(kind_specs())
def test_every_field_that_was_given_stands_there_once_in_the_words_of_the_catalogue(spec: Spec) -> None:
    ((_, rows),) = in_short(as_job(make_plan(spec)))
    assert [row.label for row in rows] == list(paths(tomllib.loads(spec.source)))
    for row in rows:
        meaning = FIELDS[row.label].about.meaning
        if row.label.startswith("drop."):  # "floor" in the catalogue is whatever the panels hang to
            meaning = meaning.replace("the floor", line_of(spec).the)
        assert row.working.startswith(meaning) and row.value


def test_a_job_tells_what_is_shared_and_what_each_window_says_itself() -> None:
    tables = dict(in_short(make_job_plan(read_job(LIBRARY))))
    shared, west = tables["What was given"], tables["What was given for west window"]
    assert {row.label: row.value for row in shared}["together.keep"] == "head height"
    assert {row.label: row.value for row in shared}["panel.count"] == "4"
    assert [row.label for row in west] == ["rod.length", "panel.count", "panel.width", "panel.length",
                                           "heading.count", "drop.floor_marks"]  # fmt: skip
    assert {row.label for row in tables["What was given for north window"]} == {"panel.count", "drop.floor_marks"}


def test_what_is_shared_is_told_as_it_was_given_though_the_first_window_says_otherwise() -> None:
    mark = 'drop.floor_marks = ["13 5/8 in"]'
    changed = LIBRARY.replace(mark, f"panel.count = 7\n{mark}", 1)
    tables = dict(in_short(make_job_plan(read_job(changed))))
    assert {row.label: row.value for row in tables["What was given"]}["panel.count"] == "4"
    assert {row.label: row.value for row in tables["What was given for east window"]}["panel.count"] == "7"


def test_a_spec_that_no_text_gave_is_told_by_its_values_and_not_made_again() -> None:
    plan = as_job(planned())
    ((_, rows),) = in_short(plan)
    values = {row.label: row.value for row in rows}
    assert values["panel.width"] == "54 in" and values["heading.count"] == "9" and "panel.lots" not in values
    assert not [block for block in record(plan, {}) if isinstance(block, Paragraph)]


def test_the_blocks_in_order() -> None:
    blocks = kept(SPEC)
    kinds = [type(block) for block in blocks]
    assert kinds == [Heading, Numbers, Heading, Blanks, Blanks, Lines, Numbers, Paragraph]
    assert isinstance(blocks[0], Heading) and blocks[0].text == TITLE


def test_the_floor_between_marks_lies_on_a_straight_line() -> None:
    """13 1/2 at the left, 13 1/4 in the middle, 13 at the right: halfway between two marks their mean."""
    plan = planned({"drop.floor_marks": ["13 1/2 in", "13 1/4 in", "13 in"], "drop.rod_to_floor": None})
    before, after = blanks(plan)
    assert list(before.values()) == ["13 1/2 in", "13 1/4 in", "13 in"]
    assert floor_at(plan, inches("27/2")) == inches("107/8")
    assert set(after.values()) == {"3/4 in"}, "the hem follows the marks"


def test_a_level_hem_over_stairs_hangs_higher_where_the_floor_is_lower() -> None:
    marks = {"drop.floor_marks": ["13 1/2 in", "13 in"], "drop.rod_to_floor": None, "drop.follows": "highest"}
    plan = planned(marks)
    assert (gap_at(plan, inches(0)), gap_at(plan, inches(54))) == (inches("3/4"), inches("5/4"))
    _, after = blanks(planned({**marks, "sides.split": 2}))
    assert set(after.values()) == {""}, "of split panels nobody knows which is where"
    _, narrower = blanks(planned({**marks, "sides.finished_width": "27 in", "sides.cut_edge": "left"}))
    assert list(narrower.values()) == ["1 in", "1 1/8 in", "1 1/4 in"], "its right half stays"


def test_a_tuck_is_reckoned_with() -> None:
    plan = planned({"fabric.shrinkage": "3 %", "fabric.shrinkage_in": "tuck"})
    assert plan.drop.tuck and gap_at(plan, inches(10)) == inches("3/4")


# --- the command -------------------------------------------------------------------------------------


@pytest.mark.parametrize(
    ("options", "typed"),
    [
        ({}, []),
        ({"paper": "a4", "only": []}, ["--paper", "a4"]),
        ({"paper": None, "only": ["cut gauge", "work order"]}, ["--only", "cut gauge", "--only", "work order"]),
        (
            {"paper": None, "only": [], "orientation": "least", "half_strip": False, "strips": 2},
            ["--orientation", "least", "--whole-strip", "--strips", "2"],
        ),
        (
            {"paper": None, "only": [], "printer": {"along": {"reads": "4 1/32 in", "bar": "4 in"}}},
            ["--printer-along", "4 1/32 in", "--printer-bar", "4 in"],
        ),
    ],
)
def test_the_command_has_the_options_that_were_used(options: dict[str, Any], typed: list[str]) -> None:
    carried = {"spec.toml": SPEC} | ({"make.json": json.dumps(options)} if options else {})
    words = shlex.split(command(carried, "my spec.toml", "the kit"))
    mark = fingerprint_of(carried)
    assert words == ["templategen", "make", "my spec.toml", "--out", "the kit", *typed, "--fingerprint", mark]


def test_readings_of_two_bars_are_taken_from_the_kit_itself() -> None:
    """The command line says one bar for both readings."""
    readings = {"across": {"reads": "99.5 mm"}, "along": {"reads": "4 1/32 in", "bar": "4 in"}}
    carried = {"spec.toml": SPEC, "make.json": json.dumps({"paper": None, "only": [], "printer": readings})}
    assert shlex.split(command(carried))[2] == "kit.pdf" and "--printer-across" not in command(carried)


def test_a_kit_made_despite_a_stop_says_so() -> None:
    assert "--despite-stops" in command({"job.toml": "x"}, despite_stops=True)
    assert command({"job.toml": "x"}).split()[2] == "job.toml"
    assert command({}) == ""
