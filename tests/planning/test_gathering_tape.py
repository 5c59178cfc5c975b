"""Gathering tape: where it lies, how much of it, how far it is drawn up, and what can be wrong with it."""

from __future__ import annotations

from fractions import Fraction
from itertools import pairwise
from typing import Any

import pytest
from hypothesis import HealthCheck, given, settings

from templategen.errors import Refusal
from templategen.lengths import NOTHING, Length, inches
from templategen.planning import make_plan
from templategen.planning.headings import HEADINGS
from templategen.planning.headings.gathering_tape import TapePlan
from templategen.spec import Spec

from .building import codes, length, notice
from .tops import tape, tape_job, top_specs

few = settings(max_examples=40, deadline=None, suppress_health_check=[HealthCheck.too_slow])

PUBLISHED = [
    # cut the tape to the width of the curtain and 4 cm; turn 2 cm under at either end: a sewing guide's pages on
    # heading tapes and hand-made headings ("Curtains: Heading Tapes & Handmade Headings")
    ({"units": "metric", "panel.width": "120 cm", "heading.tape_turn": "2 cm"}, "tape_length", "124 cm"),
    # the tape on the panel's top edge less 1 in: 1 to 2 in below the top for a frill ("How to Choose a Heading Tape")
    ({}, "tape_top", "1 in"),
    # just below the top, 1/4 in: sewing guides, for pencil pleats
    ({"heading.tape_width": "3 in"}, "tape_top", "1/4 in"),
    # 4 cm (1 1/2 in) is folded to the back at the top, the tape just below it: a household guide ("How to make
    # curtains"); here 1 1/2 in to 1 3/4 in
    ({}, "tape_fold", "1 1/2 in"),
    ({"heading.tape_width": "3 in"}, "tape_fold", "1 3/4 in"),
]


@pytest.mark.parametrize(("changes", "key", "value"), PUBLISHED)
def test_published_measures(changes: dict[str, Any], key: str, value: str) -> None:
    assert tape(changes).figures[key].value == length(value)


def test_a_hook_about_every_3_in_of_the_gathered_heading() -> None:
    """About one every 3 in (7.5 cm): a household manual's page on hems and headings. 30 in: 10 spaces, 11 hooks."""
    plan = tape()
    assert plan.counts["hooks"] == 11 and plan.counts["hooks_needed"] == 22
    assert plan.figures["hook_pitch"].value == inches(3)
    assert tape({"heading.gathered_width": "30 1/16 in"}).counts["hooks"] == 12


def test_where_it_hangs() -> None:
    """checks.md: hooks set h below the top edge, on gliders of drop p: + p - h. 1 1/4 - 1 1/2 = - 1/4 in."""
    spec = tape_job()
    assert HEADINGS["gathering tape"].hang(spec, spec.heading).offset == inches("-1/4")
    lower_row = tape_job({"heading.pocket": "7/8 in"})
    assert HEADINGS["gathering tape"].hang(lower_row, lower_row.heading).offset == inches("-5/8")


def test_a_panel_that_came_with_tape_hangs_by_what_was_measured() -> None:
    old = {
        "panel.heading.style": "gathering tape",
        "panel.heading.drop": "1 in",
        "panel.heading.set_below": "2 in",
        "drop.hung_by": "old heading",
    }
    plan = tape(old)
    assert plan.drop.hang_shift == inches("-1") - inches("-1/4")
    assert "while it hung by its gathering tape" in notice(plan, "hang_shift").text


def test_drawn_up_alike_between_the_marks() -> None:
    """Quarters of the panel come to quarters of its share of the rod."""
    plan = tape({"rod.overlap": "3 in", "rod.returns": "3 1/2 in"})
    heading = plan.heading
    assert isinstance(heading, TapePlan)
    assert [mark.at for mark in heading.marks] == [inches("27/2"), inches(27), inches("81/2")]
    assert heading.gathered == inches(35) and heading.gathered_division == inches("35/4")
    assert heading.fullness == Fraction(54, 35)


CASES: list[tuple[str, str, dict[str, Any], dict[str, Any]]] = [
    # the tape runs from 1 in to 2 in below the top edge
    ("hooks_off_tape", "stop", {"heading.set_below": "2 1/16 in"}, {"heading.set_below": "2 in"}),
    ("hooks_off_tape", "stop", {"heading.set_below": "15/16 in"}, {"heading.set_below": "1 in"}),
    ("tape_misses_fold", "warning", {"heading.top_fold": "1 in", "heading.top_cut": "3 in"},
     {"heading.top_fold": "17/16 in", "heading.top_cut": "3 in"}),
    ("tape_misses_fold", "warning", {"panel.casing": "3 in", "heading.tape_top": "3 in", "heading.top_fold": "1 in"},
     {"panel.casing": "3 in", "heading.tape_top": "2 15/16 in", "heading.top_fold": "1 in"}),
    ("tape_at_edge", "note", {"heading.tape_top": "1/16 in"}, {"heading.tape_top": "1/8 in"}),
    ("frill_flops", "note", {"heading.tape_top": "1 9/16 in"}, {"heading.tape_top": "1 1/2 in"}),
    ("frill_flops", "note", {"heading.tape_top": "2 1/16 in", "cloth": "heavy"},
     {"heading.tape_top": "2 in", "cloth": "heavy"}),
    ("gathered_too_wide", "stop", {"heading.gathered_width": "54 1/16 in"}, {"heading.gathered_width": "54 in"}),
    ("gathered_short", "warning", {"heading.gathered_width": "29 15/16 in"}, {"heading.gathered_width": "30 in"}),
    # an ordinary tape 1 1/2 to 1, a wide one 2 to 1
    ("gathers_thin", "warning", {"heading.gathered_width": "36 1/16 in"}, {"heading.gathered_width": "36 in"}),
    ("gathers_thin", "warning", {"heading.tape_width": "3 in", "heading.gathered_width": "27 1/16 in"},
     {"heading.tape_width": "3 in", "heading.gathered_width": "27 in"}),
    ("gathers_crowded", "warning", {"heading.gathered_width": "17 15/16 in"}, {"heading.gathered_width": "18 in"}),
    ("hooks_far", "warning", {"heading.count": 8}, {"heading.count": 9}),
    ("hooks_far", "warning", {"heading.max_pitch": "2 in", "heading.count": 15},
     {"heading.max_pitch": "2 in", "heading.count": 16}),
]  # fmt: skip


@pytest.mark.parametrize(("code", "level", "beyond", "inside"), CASES)
def test_every_notice(code: str, level: str, beyond: dict[str, Any], inside: dict[str, Any]) -> None:
    assert notice(tape(beyond), code).level == level
    assert code not in codes(tape(inside))


def test_the_number_that_a_notice_gives_puts_it_right() -> None:
    assert "9 hooks would do" in notice(tape({"heading.count": 8}), "hooks_far").text
    assert "comes to 36 in" in notice(tape({"heading.gathered_width": "40 in"}), "gathers_thin").text
    assert "which is 18 in" in notice(tape({"heading.gathered_width": "10 in"}), "gathers_crowded").text
    assert "30 in each would cover" in notice(tape({"heading.gathered_width": "20 in"}), "gathered_short").text


def test_thin_gathers_of_the_whole_job_are_told_once() -> None:
    """Where nothing but the panels makes them thin, the fullness has said so."""
    assert {"fullness_low", "gathers_thin"} & codes(tape({"rod.length": "84 in"})) == {"fullness_low"}


@pytest.mark.parametrize(
    ("changes", "field"),
    [
        ({"heading.pocket": "1 1/16 in"}, "heading.pocket"),
        ({"heading.pocket": "1/2 in", "heading.set_below": "1 1/2 in"}, "heading.pocket"),
        ({"heading.drop": None}, "heading.drop"),
        ({"heading.cord_side": "left"}, "heading.cord_side"),
        ({"heading.tape_width": "0 in"}, "heading.tape_width"),
        ({"heading.depth": "2 in"}, "heading.depth"),
    ],
)
def test_bad_input_is_refused_by_name(changes: dict[str, Any], field: str) -> None:
    with pytest.raises(Refusal) as refused:
        tape_job(changes)
    assert [fault.field for fault in refused.value.faults] == [field]


def test_a_pocket_on_the_tapes_very_edge_is_taken() -> None:
    assert tape_job({"heading.pocket": "1 in"}).heading.pocket == inches(1)


@few
@given(top_specs())
def test_marks_divide_the_panel_and_the_rod_alike(spec: Spec) -> None:
    plan = make_plan(spec)
    heading = plan.heading
    if not isinstance(heading, TapePlan):
        return
    places = [NOTHING, *(mark.at for mark in heading.marks), plan.width]
    assert {right - left for left, right in pairwise(places)} == {heading.pitch}
    assert len(heading.marks) % 2 == 1 and heading.pitch <= inches(24)
    assert Length(heading.gathered_division.mm * (len(heading.marks) + 1)) == heading.gathered
    assert heading.tape_length - 2 * spec.heading.tape_turn == plan.width
    assert heading.hook_pitch * (heading.hooks - 1) == heading.gathered


@few
@given(top_specs())
def test_what_it_hung_by_does_not_change_where_it_ends(spec: Spec) -> None:
    """Worked from the rod, a panel ends its clearance above the floor, whatever the floor was worked out by."""
    ends = set()
    for hung_by in ("casing", "new heading"):
        drop = spec.drop.model_copy(update={"hung_by": hung_by, "floor_marks": (), "rod_to_floor": inches(80)})
        ends.add(make_plan(spec.model_copy(update={"drop": drop})).figures["finished_length"].value)
    offset = HEADINGS[spec.heading.style].hang(spec, spec.heading).offset
    assert ends == {inches(80) - offset - spec.drop.clearance}
