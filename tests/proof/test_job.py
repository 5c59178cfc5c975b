"""The kit of a job on paper: rendered, cut out, joined by its marks; every strip and every gauge measured."""

from __future__ import annotations

import json
from functools import lru_cache

import pytest

from templategen import Options, kit_files
from templategen.planning import JobPlan
from tests.jobs.building import planned

from .kits import Panel
from .measuring import GAUGE, Sight, nearest_errors, see, strip_errors

TRUE = 0.1
"""Millimetres, over the whole length of a panel, as for the kit of one window."""
STRIPS = {
    "spacing strip, east window and 2 more": Panel("inch", "letter", "54", 9, "1 1/4"),
    "spacing strip, west window": Panel("inch", "letter", "42", 7, "1 1/4"),
}
"""What the library's windows ask for; alike panels share the first."""


@lru_cache(maxsize=1)
def seen() -> tuple[JobPlan, Sight]:
    # With the library's own clearance two lines of a gauge touch, and would be seen as one.
    plan = planned(('clearance = "3/4 in"', 'clearance = "1/2 in"'))
    _, files = kit_files(plan, Options(only=("spacing strip", "cut gauge"), despite_stops=True))
    return plan, see(files["kit.pdf"], json.loads(files["kit.json"]))


def test_there_is_one_strip_for_all_alike_panels() -> None:
    assert {name for name in seen()[1].taped if name.startswith("spacing")} == set(STRIPS)


@pytest.mark.parametrize("name", STRIPS)
def test_every_loop_of_every_window_stands_where_it_belongs(name: str) -> None:
    errors = strip_errors(STRIPS[name], seen()[1].taped[name])
    assert len(errors.marks) == STRIPS[name].count
    assert max(errors.marks) <= TRUE and errors.right_edge <= TRUE and errors.bend <= TRUE
    assert errors.strays == ()


def test_joins_of_one_window_fit_no_strip_of_another() -> None:
    papers = [paper for taped in seen()[1].taped.values() for paper in taped.papers]
    rights = [right for paper in papers if (right := paper.pairs[1]) is not None]
    lefts = [left for paper in papers if (left := paper.pairs[0]) is not None]
    assert len(rights) > 8 and sum(right.meets(left) for right in rights for left in lefts) == len(rights)


def test_the_gauges_of_every_window_show_its_own_lines() -> None:
    plan, sight = seen()
    gauges = 0
    for part, whose in zip(plan.parts, ("east window and 2 more", "west window"), strict=True):
        drop = part.plan.drop
        marks = drop.marks[:1] if drop.level else drop.marks
        for number, mark in enumerate(marks, 1):
            name = f"cut gauge {number}" if len(marks) > 1 else "cut gauge"
            zero = min(mark.cut, mark.finish, mark.floor)
            places = [float((height - zero).mm) for height in (mark.cut, mark.finish, mark.floor)]
            strokes = [stroke for row in sight.taped[f"{name}, {whose}"].strokes(*GAUGE) for stroke in row]
            assert max(nearest_errors(places, strokes)) <= TRUE
            gauges += 1
    assert gauges == 4 == sum(name.startswith("cut gauge") for name in sight.taped)


def test_check_lengths_are_true() -> None:
    checks = seen()[1].checks
    assert len(checks) > 4 and max(check.error for check in checks) <= TRUE
