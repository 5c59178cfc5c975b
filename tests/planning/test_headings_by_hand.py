"""Headings worked by hand and by handbooks: where they hang, how they are divided, and when they are remarked on."""

from __future__ import annotations

from typing import Any

import pytest

from templategen.lengths import NOTHING, Length, inches, read_length
from templategen.planning import Plan
from templategen.planning.headings import HEADINGS
from templategen.planning.headings.pleats import PleatPlan
from templategen.planning.headings.tape import TapePlan

from .building import codes, planned

LOOPS = dict.fromkeys(
    ("count", "edge_inset", "loop_length", "loop_width", "lower_allowance", "upper_turn"), None
)  # fmt: skip


def with_heading(style: str, changes: dict[str, Any] | None = None, **fields: Any) -> Plan:
    """The first window with another heading; fields of it by name, others by path in ``changes``."""
    heading: dict[str, Any] = {f"heading.{name}": value for name, value in (LOOPS | fields).items()}
    return planned(heading | {"heading.style": style} | (changes or {}))


TABS = {"gap": "2 in"}
HOOKS = {"carrier_drop": "1 1/2 in", "hook_set": "1/2 in"}
EYELETS = {"eyelet_inside": "1 in", "eyelet_outside": "1 3/4 in", "eyelet_centre": "1 3/8 in"}
PLEATS = {**HOOKS, "heading_depth": "3 in"}
TAPE = {**HOOKS, "tape_width": "1 in"}


def offset(plan: Plan) -> Length:
    heading = plan.spec.heading
    return HEADINGS[heading.style].hang(plan.spec, heading).offset


def test_offsets_are_those_of_the_trade() -> None:
    """checks.md, "How a hung panel behaves" (derived): tabs + D + g; eyelets - (e - r); rings + p; hooks + p - h."""
    assert offset(with_heading("tabs", **TABS)) == inches("11/4")
    assert offset(with_heading("eyelets", **EYELETS)) == -inches("7/8")
    assert offset(with_heading("rings", drop="1 1/2 in")) == inches("3/2")
    assert offset(with_heading("rings", drop="1 1/2 in", set_below="1 in")) == inches("1/2")
    assert offset(with_heading("hooks", drop="1 1/2 in", set_below="1/2 in")) == inches(1)
    assert offset(with_heading("pinch pleats", **PLEATS)) == inches(1)
    assert offset(with_heading("gathering tape", **TAPE)) == inches(1)


PLEATED = {
    "rod.length": "98 in", "rod.overlap": "2 in", "rod.returns": "3 in", "panel.width": "144 in", "panel.count": 2,
}  # fmt: skip


def test_the_pleats_of_the_booklet() -> None:
    """How to Make Draperies (booklet, undated): half-opening 49 + return 3 + overlap 1 = 53 in finished; flat 144;
    144 - 53 = 91; 7 in a pleat, 13 pleats; first at the return corner, last 2 in from the leading edge; spaces 4 in."""
    plan = with_heading("pinch pleats", PLEATED, **PLEATS, last_back="2 in")
    pleats = plan.heading
    assert isinstance(pleats, PleatPlan)
    assert (pleats.finished, pleats.flat - pleats.finished) == (inches(53), inches(91))
    assert (pleats.pleats, pleats.pleat, pleats.space) == (13, inches(7), inches(4))
    assert pleats.first == inches(3)
    assert pleats.first + 13 * pleats.pleat + 12 * pleats.space + pleats.last == inches(144)
    assert pleats.marks[-1].at == inches(144 - 3), "from the back, a left panel's return edge is on the right"


def test_a_box_as_wide_as_its_space_takes_three_to_one() -> None:
    """Stephenson, Cutting and Draping, 1905: 3 ft of cloth to 1 ft. So many pleats and spaces that the ends, which
    are not pleated, weigh little."""
    plan = with_heading(
        "box pleats", {"panel.width": "50 m", "panel.count": 1}, **PLEATS, finished_width="16667 mm", pleats=169,
    )  # fmt: skip
    pleats = plan.heading
    assert isinstance(pleats, PleatPlan)
    assert float(pleats.pleat / 2 / pleats.space) == pytest.approx(1, rel=0.01)


def test_pairs_get_a_strip_for_either_side_and_single_panels_one() -> None:
    pair, single = (
        with_heading("pinch pleats", PLEATED | {"panel.leading_edge": edge}, **PLEATS) for edge in ("pair", "right")
    )
    assert isinstance(pair.heading, PleatPlan) and pair.heading.mirrored
    assert isinstance(single.heading, PleatPlan) and not single.heading.mirrored
    # Leading edge on the right as seen from the front: on the left from the back, where the last pleat then is.
    assert single.heading.marks[0].at == single.heading.last


def test_tape_covers_the_raw_edge_and_is_long_enough_for_its_turns() -> None:
    plan = with_heading("gathering tape", **TAPE)
    tape = plan.heading
    assert isinstance(tape, TapePlan)
    assert tape.tape == inches(55) and tape.tape_top < tape.fold_over < tape.tape_bottom
    assert [mark.at for mark in tape.marks] == [inches(9 * i) for i in range(1, 6)]


NOTICES: list[tuple[str, str, dict[str, Any], dict[str, Any], dict[str, Any], dict[str, Any]]] = [
    # code, style, fields, rest, fields just inside, rest just inside
    ("nothing_to_pleat", "pinch pleats", {**PLEATS, "finished_width": "54 in"}, {},
     {**PLEATS, "finished_width": "53 in"}, {}),
    ("no_room_for_pleats", "pinch pleats", {**PLEATS, "finished_width": "4 in"}, {},
     {**PLEATS, "finished_width": "4 1/16 in"}, {}),
    ("pleats_thin", "pinch pleats", {**PLEATS, "finished_width": "24 in", "pleats": 11}, {},
     {**PLEATS, "finished_width": "24 in", "pleats": 10}, {}),
    ("pleats_thick", "pinch pleats", {**PLEATS, "finished_width": "26 in", "pleats": 3}, {},
     {**PLEATS, "finished_width": "26 in", "pleats": 4}, {}),
    ("boxes_overlap", "box pleats", {**PLEATS, "finished_width": "18 in", "pleats": 5}, {},
     {**PLEATS, "finished_width": "18 1/2 in", "pleats": 5}, {}),
    ("pleat_fullness", "pinch pleats", {**PLEATS, "finished_width": "27 1/16 in"}, {},
     {**PLEATS, "finished_width": "27 in"}, {}),
    ("return_at_ends_only", "pinch pleats", PLEATS, {"rod.returns": "3 in", "panel.count": 3},
     PLEATS, {"rod.returns": "3 in", "panel.count": 2}),
    ("raw_edge_beside_tape", "gathering tape", {**TAPE, "fold_over": "1 in"}, {},
     {**TAPE, "fold_over": "15/16 in"}, {}),
    ("hooks_beside_tape", "gathering tape", {**TAPE, "hook_set": "1 1/16 in"}, {}, {**TAPE, "hook_set": "1 in"}, {}),
    ("nothing_to_gather", "gathering tape", {**TAPE, "finished_width": "54 in"}, {},
     {**TAPE, "finished_width": "53 in"}, {}),
    ("gathers_unusual", "gathering tape", {**TAPE, "finished_width": "27 1/16 in"}, {},
     {**TAPE, "finished_width": "27 in"}, {}),
    ("new_casing_too_tight", "casing", {"depth": "1 1/8 in"}, {}, {"depth": "1 3/16 in"}, {}),
    ("new_casing_tight", "casing", {"depth": "1 7/16 in"}, {}, {"depth": "1 1/2 in"}, {}),
]  # fmt: skip


@pytest.mark.parametrize(
    ("code", "style", "fields", "rest", "inside", "rest_inside"), NOTICES, ids=[row[0] for row in NOTICES]
)
def test_each_notice_is_given_and_not_just_inside_its_limit(
    code: str, style: str, fields: dict[str, Any], rest: dict[str, Any],
    inside: dict[str, Any], rest_inside: dict[str, Any],
) -> None:  # fmt: skip
    assert code in codes(with_heading(style, rest, **fields))
    assert code not in codes(with_heading(style, rest_inside, **inside))


def test_a_heading_that_needs_more_doubled_cloth_folds_the_top_anew() -> None:
    """By hand: 4 in doubled + 1/2 in turned under, 3 in doubled now: the new top edge lies 1 1/2 in below the old."""
    plan = with_heading("pinch pleats", **{**PLEATS, "heading_depth": "4 in"})
    assert plan.top.refolded and plan.top.lowered == inches("3/2")
    assert plan.figures["hang_shift"].value == offset(planned({"heading.style": "casing", **{
        f"heading.{name}": None for name in LOOPS}})) - offset(plan) + inches("3/2")  # fmt: skip
    kept = with_heading("pinch pleats", **PLEATS)
    assert not kept.top.refolded and kept.top.lowered == NOTHING


def test_length_is_read_as_the_tests_mean_it() -> None:
    assert read_length("1 9/16 in") == inches("25/16")
