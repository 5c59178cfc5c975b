"""Headings worked by hand and by handbooks: where they hang, how they are divided, and when they are remarked on."""

from __future__ import annotations

from fractions import Fraction
from typing import Any

import pytest

from templategen.lengths import NOTHING, Length, inches, read_length
from templategen.planning import Plan, folds
from templategen.planning.hanging import round_the_rod
from templategen.planning.headings import HEADINGS
from templategen.planning.headings.eyelets import EyeletPlan
from templategen.planning.headings.pleats import PleatPlan
from templategen.planning.headings.tabs import TabPlan
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
RINGS = {"carrier_drop": "1 1/2 in"}
HOOKS = {"carrier_drop": "1 1/2 in", "hook_set": "1/2 in"}
EYELETS = {"eyelet_inside": "1 in", "eyelet_outside": "1 3/4 in", "centre_below": "1 3/8 in"}
PLEATS = {**HOOKS, "heading_depth": "3 in"}
TAPE = {**HOOKS, "tape_width": "1 in"}


def offset(plan: Plan) -> Length:
    heading = plan.spec.heading
    return HEADINGS[heading.style].hang(plan.spec, heading).offset


def test_offsets_are_those_of_the_trade() -> None:
    """checks.md, "How a hung panel behaves" (derived): tabs + D + g; eyelets - (e - r); rings + p; hooks + p - h."""
    assert offset(with_heading("tabs", **TABS)) == inches("11/4")
    assert offset(with_heading("eyelets", **EYELETS)) == -inches("7/8")
    assert offset(with_heading("rings", **RINGS)) == inches("3/2")
    assert offset(with_heading("rings", **RINGS, held_below="1 in")) == inches("1/2")
    assert offset(with_heading("hooks", **HOOKS)) == inches(1)
    assert offset(with_heading("pinch pleats", **PLEATS)) == inches(1)
    assert offset(with_heading("gathering tape", **TAPE)) == inches(1)


def test_a_tab_round_an_inch_rod_with_a_gap_of_two() -> None:
    """D = 1, g = 2 in: 6.671 in, and twice the drop, 6 in, is too short (derived)."""
    assert float(round_the_rod(inches(1), inches(2)).inches) == pytest.approx(6.671, abs=5e-4)
    plan = with_heading("tabs", {"rod.diameter": "1 in"}, gap="2 in", end_allowance="1/2 in")
    assert isinstance(plan.heading, TabPlan)
    assert plan.heading.length == plan.heading.visible + inches(1)
    assert "twice the drop, 6 in, would be 11/16 in (a hair under) too short" in plan.figures["tab_over_rod"].working


def test_tabs_are_cut_from_the_offcuts_like_loops() -> None:
    plan = with_heading("tabs", **TABS)
    assert plan.offcut.pieces is not None and plan.offcut.pieces.pieces.thing == "tab"
    assert plan.counts["tabs_needed"] == 4 * plan.counts["tabs"]


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


def test_eyelets_are_even_and_their_folds_are_as_deep_as_geometry_says() -> None:
    """Sharp: a triangle with sides of 3-4-5. Rounded: against a fold drawn as points, half a circle and two sides."""
    assert folds.sharp(inches(10), inches(6)) == inches(4)
    plan = with_heading("eyelets", **EYELETS)
    assert isinstance(plan.heading, EyeletPlan) and plan.heading.count % 2 == 0
    apart, side = Fraction(40), Fraction(55)
    import numpy as np

    angles = np.linspace(0, np.pi, 20_001)
    x, y = 20 * np.cos(angles), float(side) + 20 * np.sin(angles)
    around = float(np.hypot(np.diff(x), np.diff(y)).sum()) + 2 * float(side)
    assert float(folds.rounded(Length(Fraction(around)), Length(apart)).mm) == pytest.approx(float(y.max()), abs=1e-4)


def test_tape_covers_the_raw_edge_and_is_long_enough_for_its_turns() -> None:
    plan = with_heading("gathering tape", **TAPE)
    tape = plan.heading
    assert isinstance(tape, TapePlan)
    assert tape.tape == inches(55) and tape.tape_top < tape.fold_over < tape.tape_bottom
    assert [mark.at for mark in tape.marks] == [inches(9 * i) for i in range(1, 6)]


NOTICES: list[tuple[str, str, dict[str, Any], dict[str, Any], dict[str, Any], dict[str, Any]]] = [
    # code, style, fields, rest, fields just inside, rest just inside
    ("tabs_tight", "tabs", {"gap": "0 in"}, {}, {"gap": "1/16 in"}, {}),
    ("even_tabs", "tabs", {**TABS, "count": 8}, {}, {**TABS, "count": 9}, {}),
    ("tabs_sag", "tabs", {**TABS, "count": 7, "edge_inset": "1 in"}, {},
     {**TABS, "count": 8, "edge_inset": "1 in"}, {}),
    ("tab_over_edge", "tabs", {**TABS, "edge_inset": "15/16 in", "tab_width": "2 in"}, {},
     {**TABS, "edge_inset": "1 in", "tab_width": "2 in"}, {}),
    ("tabs_overlap", "tabs", {**TABS, "count": 28, "edge_inset": "1 in", "tab_width": "2 in"}, {},
     {**TABS, "count": 27, "edge_inset": "1 in", "tab_width": "2 in"}, {}),
    ("tabs_from_offcuts", "tabs", TABS, {}, TABS, {"panel.hem": "0 in", "panel.turn_under": "0 in",
     "drop.floor_marks": ["6 in"]}),
    ("unpick_for_tabs", "tabs", TABS, {"drop.floor_marks": ["7 3/4 in"]}, TABS, {}),
    ("tabs_short", "tabs", TABS, {"drop.floor_marks": ["4 in"]}, TABS, {}),
    ("hooks_sag", "hooks", {**HOOKS, "count": 9, "edge_inset": "1 in"}, {},
     {**HOOKS, "count": 10, "edge_inset": "1 in"}, {}),
    ("eyelets_sag", "eyelets", {**EYELETS, "count": 7, "edge_inset": "2 in"}, {},
     {**EYELETS, "count": 8, "edge_inset": "2 in"}, {}),
    ("eyelet_over_edge", "eyelets", {**EYELETS, "edge_inset": "13/16 in"}, {}, {**EYELETS, "edge_inset": "7/8 in"}, {}),
    ("eyelets_overlap", "eyelets", {**EYELETS, "count": 32, "edge_inset": "1 in"}, {},
     {**EYELETS, "count": 30, "edge_inset": "1 in"}, {}),
    ("ring_too_small", "rings", {**RINGS, "ring_inside": "3/4 in"}, {}, {**RINGS, "ring_inside": "13/16 in"}, {}),
    ("ring_tight", "rings", {**RINGS, "ring_inside": "14.8 mm"}, {"rod.diameter": "12 mm"},
     {**RINGS, "ring_inside": "15 mm"}, {"rod.diameter": "12 mm"}),
    ("rings_sag", "rings", {**RINGS, "count": 9, "edge_inset": "1 in"}, {},
     {**RINGS, "count": 10, "edge_inset": "1 in"}, {}),
    ("top_flops", "hooks", {**HOOKS, "hook_set": "3 1/16 in"}, {}, {**HOOKS, "hook_set": "3 in"}, {}),
    ("stands_above_rod", "hooks", {**HOOKS, "hook_set": "1 9/16 in"}, {}, {**HOOKS, "hook_set": "1 1/2 in"}, {}),
    ("eyelet_too_small", "eyelets", {**EYELETS, "eyelet_inside": "3/4 in"}, {},
     {**EYELETS, "eyelet_inside": "13/16 in"}, {}),
    ("eyelet_tight", "eyelets", {**EYELETS, "eyelet_inside": "11.3 mm"}, {"rod.diameter": "10 mm"},
     {**EYELETS, "eyelet_inside": "11.4 mm"}, {"rod.diameter": "10 mm"}),
    ("eyelet_loose", "eyelets", {**EYELETS, "eyelet_inside": "14.1 mm"}, {"rod.diameter": "10 mm"},
     {**EYELETS, "eyelet_inside": "14 mm"}, {"rod.diameter": "10 mm"}),
    ("hole_too_wide", "eyelets", {**EYELETS, "hole": "1 3/4 in"}, {}, {**EYELETS, "hole": "1 11/16 in"}, {}),
    ("eyelet_over_top", "eyelets", {**EYELETS, "centre_below": "13/16 in"}, {},
     {**EYELETS, "centre_below": "7/8 in"}, {}),
    ("odd_eyelets", "eyelets", {**EYELETS, "count": 9}, {}, {**EYELETS, "count": 8}, {}),
    ("eyelets_close", "eyelets", {**EYELETS, "count": 10, "edge_inset": "1 in"}, {},
     {**EYELETS, "count": 9, "edge_inset": "1 in"}, {}),
    ("folds_touch_wall", "eyelets", {**EYELETS, "count": 8, "edge_inset": "2 1/2 in"}, {"rod.projection": "2 7/8 in"},
     {**EYELETS, "count": 8, "edge_inset": "2 1/2 in"}, {"rod.projection": "3 1/16 in"}),
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
