"""Tabs over the rod: their length, what they are cut from, where they stand, what is said of them."""

from __future__ import annotations

import re
from fractions import Fraction
from typing import Any

import pytest

from templategen.lengths import NOTHING, Length, inches
from templategen.planning import Plan
from templategen.planning.hanging import take_up
from templategen.planning.headings.tabs import TabPlan, rule_of_thumb

from .building import READING_ROOM, codes, job, notice, planned

BARE: dict[str, Any] = {path: None for path in READING_ROOM if path.startswith("heading.")}
TABS: dict[str, Any] = {**BARE, "heading.style": "tabs"}
"""The first window with tabs: a rod of 3/4 in; 9 tabs 2 in wide, 6 1/2 in apart, end tabs flush with the edges."""


def tabbed(changes: dict[str, Any] | None = None) -> Plan:
    return planned({**TABS, **(changes or {})})


def tabs_of(plan: Plan) -> TabPlan:
    assert isinstance(plan.heading, TabPlan)
    return plan.heading


def test_an_inch_rod_and_two_inches_of_gap_take_6_671_in() -> None:
    """Derived: R (2 pi - 2 a) + 2 sqrt(s^2 - R^2), cos a = R / s: D = 1, g = 2 in: 6.671 in. "Twice the drop", the
    rule of thumb, gives 6.0, and the plan says by how much that is too short."""
    plan = tabbed({"rod.diameter": "1 in", "heading.gap": "2 in"})
    tabs = tabs_of(plan)
    assert float(tabs.between.mm) / 25.4 == pytest.approx(6.671, abs=5e-4)
    assert tabs.length == tabs.between + inches(1)
    assert rule_of_thumb(plan.spec, tabs) == inches(6)
    said = plan.figures["tab_round"].working
    assert said.endswith("twice the drop, 6 in, would be 11/16 in (a hair under) too short")


def test_the_panel_hangs_a_rod_and_a_gap_below_the_rods_top() -> None:
    """Derived: offset + D + g, so that from casing to tabs the hem drops by D + g and what the casing took up."""
    plan = tabbed({"rod.diameter": "1 in", "heading.gap": "1 1/2 in"})
    assert plan.drop.hang_shift == -inches("5/2") - take_up(inches(1), inches(3))
    assert plan.figures["hang_shift"].working.startswith("upward: − rod's thickness 1 in − gap under the rod 1 1/2 in")


def test_a_tab_two_inches_wide_is_cut_five_wide_with_half_inch_seams() -> None:
    """A sewing guide to tab-top curtains: tabs finished 2 in wide are cut 5 in wide, with seams of 1/2 in; and the
    length measured round the rod has 1 in added, for both ends."""
    tabs = tabs_of(tabbed({"heading.tab_width": "2 in", "heading.seam_allowance": "1/2 in"}))
    assert tabs.strip == inches(5)
    assert tabs.length - tabs.between == inches(1)


def test_tabs_that_are_chosen_are_as_the_guides_have_them() -> None:
    """Guides to tab-top curtains: one tab at each edge, flush with it, the others 6 to 8 in apart, 2 in wide, the
    panel's edge 1 1/2 to 2 in, or at least 2 in, below the rod. An odd number: common practice, no source."""
    tabs = tabs_of(tabbed())
    assert tabs.marks[0].at - tabs.width / 2 == NOTHING
    assert inches(6) <= tabs.pitch <= inches(8)
    assert (tabs.width, tabs.gap, tabs.count) == (inches(2), inches(2), 9)
    assert not codes(tabbed()) & {"tab_gap_unusual", "even_tabs", "tabs_sag", "tabs_hug_rod"}


def test_tabs_are_pieces_to_be_cut_from_the_offcuts() -> None:
    """Eight strips of 4 1/2 in from 12 3/4 in a panel, seven tabs of 7 in from a panel's 54 in."""
    plan = tabbed()
    assert {key: plan.counts[key] for key in ("tabs", "tabs_needed", "tabs_per_strip", "strips_needed")} == {
        "tabs": 9, "tabs_needed": 36, "tabs_per_strip": 7, "strips_needed": 6,
    }  # fmt: skip
    assert plan.offcut.pieces is not None and plan.offcut.pieces.pieces.length == tabs_of(plan).length
    assert "tabs_from_offcuts" in codes(plan)


NEW = {"drop.hung_by": "new heading", "drop.rod_to_floor": None}
CASES: list[tuple[str, str, dict[str, Any], dict[str, Any]]] = [
    ("tabs_hug_rod", "warning", {"heading.gap": "0 in"}, {"heading.gap": "1/4 in"}),
    ("tabs_hug_rod", "warning", {"heading.gap": "3/16 in"}, {"heading.gap": "1/4 in"}),
    ("tab_gap_unusual", "note", {"heading.gap": "1 7/16 in"}, {"heading.gap": "1 1/2 in"}),
    ("tab_gap_unusual", "note", {"heading.gap": "4 1/16 in"}, {"heading.gap": "4 in"}),
    ("tab_gap_unusual", "note", {"heading.gap": "1/4 in"}, {"heading.gap": "3/16 in"}),
    ("tab_over_edge", "stop", {"heading.edge_inset": "15/16 in"}, {"heading.edge_inset": "1 in"}),
    # a quarter of 8 in past the tab's edge, which is 1 in from its centre
    ("tab_corner_droops", "warning", {"heading.edge_inset": "3 1/16 in"}, {"heading.edge_inset": "3 in"}),
    ("tabs_overlap", "stop", {"heading.count": 27}, {"heading.count": 26}),
    ("tabs_sag", "warning", {"heading.count": 7}, {"heading.count": 8}),
    ("tabs_sag", "warning", {"heading.count": 9, "cloth": "heavy"}, {"heading.count": 10, "cloth": "heavy"}),
    ("tabs_sag", "warning", {"heading.max_pitch": "6 7/16 in", "heading.count": 9}, {"heading.max_pitch": "6 1/2 in"}),
    ("even_tabs", "note", {"heading.count": 8}, {"heading.count": 9}),
    # two strips of 4 1/2 in from each of four panels give 56 tabs; six strips are needed
    ("tabs_from_offcuts", "note", {**NEW, "drop.floor_marks": ["14 7/8 in"]}, {**NEW, "drop.floor_marks": ["14 in"]}),
    ("unpick_for_tabs", "note", {**NEW, "drop.floor_marks": ["14 13/16 in"]}, {**NEW, "drop.floor_marks": ["15 in"]}),
    ("tabs_short", "warning", {**NEW, "drop.floor_marks": ["10 7/16 in"]}, {**NEW, "drop.floor_marks": ["10 1/2 in"]}),
]


@pytest.mark.parametrize(
    ("code", "level", "outside", "inside"), CASES, ids=[f"{number:02d} {case[0]}" for number, case in enumerate(CASES)]
)
def test_a_notice_and_just_inside_its_limit(
    code: str, level: str, outside: dict[str, Any], inside: dict[str, Any]
) -> None:
    assert notice(tabbed(outside), code).level == level
    assert code not in codes(tabbed(inside))


CURES = [
    ("tab_over_edge", {"heading.edge_inset": "1/3 in"}, "at least", "heading.edge_inset"),
    ("tab_corner_droops", {"heading.edge_inset": "5 in"}, "at most", "heading.edge_inset"),
    ("tabs_short", {**NEW, "drop.floor_marks": ["10 7/16 in"]}, "every tab", "heading.tab_width"),
]


@pytest.mark.parametrize("units", ["inch", "metric"])
@pytest.mark.parametrize(("code", "changes", "before", "field"), CURES, ids=[case[0] for case in CURES])
def test_the_number_in_a_notice_puts_it_right(
    code: str, changes: dict[str, Any], before: str, field: str, units: str
) -> None:
    changes = {**changes, "units": units}
    text = notice(tabbed(changes), code).text
    found = re.search(rf"{before} (?:about )?(\d+(?: \d+/\d+)?|\d+/\d+) (in|mm)", text)
    assert found, text
    assert code not in codes(tabbed({**changes, field: f"{found[1]} {found[2]}"}))


def test_a_panel_that_came_with_tabs_and_single_cloth_has_its_top_folded_anew() -> None:
    """1 in doubled + 1/2 in turned under come out of the length; the tabs are the same, so nothing else shifts."""
    came = {"panel.casing": None, "panel.heading.style": "tabs", "panel.heading.gap": "2 in", "heading.gap": "2 in"}
    plan = tabbed({**came, "drop.hung_by": "old heading"})
    assert plan.top.refolded and plan.top.lowered == inches("3/2")
    assert plan.drop.hang_shift == inches("3/2")
    assert plan.figures["finished_length"].value == inches(96) - plan.drop.marks[0].finish - inches("3/2")


def test_tabs_on_a_very_narrow_panel_are_narrower_and_stay_on_it() -> None:
    tabs = tabs_of(tabbed({"panel.width": "100 mm", "panel.count": 1}))
    assert tabs.width == Length(Fraction(100, 6)) and tabs.count == 3
    assert tabs.marks[0].at >= tabs.width / 2 and tabs.pitch > tabs.width


def test_how_a_panel_hangs_by_tabs_can_be_asked_of_one_that_came_with_them() -> None:
    """Only the gap says how it hangs: the rest of an old heading is not asked for, and refused."""
    spec = job({**TABS, "panel.heading.style": "tabs", "panel.heading.gap": "1 in", "drop.hung_by": "old heading"})
    assert spec.panel.heading.style == "tabs" and getattr(spec.panel.heading, "gap", None) == inches(1)
