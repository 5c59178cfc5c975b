"""Rings, clips and hooks: how a panel hangs by them, where they stand, what is said of them."""

from __future__ import annotations

import re
from typing import Any

import pytest

from templategen.lengths import NOTHING, inches
from templategen.planning import Plan
from templategen.planning.hanging import take_up
from templategen.planning.headings.points import PointPlan

from .building import codes, notice, planned
from .test_tabs import BARE

RINGS: dict[str, Any] = {**BARE, "heading.style": "rings", "heading.drop": "2 in"}
"""The first window with rings that hold the edge 2 in below the top of a rod of 3/4 in."""
HOOKS: dict[str, Any] = {**BARE, "heading.style": "hooks", "heading.drop": "2 in"}
TRACK: dict[str, Any] = {**HOOKS, "heading.hooks_on": "gliders", "heading.drop": "1 in"}


def points_of(plan: Plan) -> PointPlan:
    assert isinstance(plan.heading, PointPlan)
    return plan.heading


def test_rings_that_hold_the_edge_hang_it_by_their_drop() -> None:
    """Derived: offset + p."""
    assert planned(RINGS).drop.hang_shift == -inches(2) - take_up(inches("3/4"), inches(3))


def test_rings_sewn_an_inch_below_the_edge_hang_it_an_inch_higher() -> None:
    """Te Ao Hou no. 11, July 1955: rings sewn 1 in below the top edge. Derived: offset + p - 1 in."""
    plan = planned({**RINGS, "heading.set_below": "1 in"})
    assert plan.drop.hang_shift == -inches(1) - take_up(inches("3/4"), inches(3))
    assert plan.drop.hang_shift - planned(RINGS).drop.hang_shift == inches(1)
    assert not codes(plan) & {"rings_low", "edge_rubs_rod", "drop_above_ring"}


def test_hooks_hang_the_edge_by_the_drop_less_their_height() -> None:
    """Derived: offset + p - h."""
    plan = planned({**HOOKS, "heading.set_below": "3/4 in"})
    assert plan.drop.hang_shift == -inches("5/4") - take_up(inches("3/4"), inches(3))
    assert plan.figures["edge_below_rod"].value == points_of(plan).edge_below == inches("5/4")


def test_hooks_on_rings_are_set_so_that_the_edge_just_touches_the_ring() -> None:
    """A fitter's guide to poles with rings: tops of the pins 1/4 to 1/2 in below the edge, 3/8 in the average."""
    assert points_of(planned(HOOKS)).set_below == inches("3/8")


def test_hooks_on_gliders_hide_the_track_as_far_as_the_cloth_stands_up() -> None:
    """A Manual of Home-Making: heading 1 1/2 in (limp) to 2 in (firm)."""
    hidden = points_of(planned(TRACK))
    assert hidden.set_below == inches(1) and hidden.edge_below == NOTHING
    for cloth, most in (("light", "3/2"), ("heavy", "2")):
        deep = points_of(planned({**TRACK, "heading.drop": "3 in", "cloth": cloth}))
        assert deep.set_below == inches(most) and "hooks_low" not in codes(planned({**TRACK, "cloth": cloth}))


def test_sewn_rings_and_clips_differ_in_words_alone() -> None:
    rings, clips = planned(RINGS), planned({**RINGS, "heading.held_by": "clips"})
    assert (rings.heading.thing, clips.heading.thing) == ("ring", "clip")
    assert (rings.drop, rings.heading.marks, rings.top) == (clips.drop, clips.heading.marks, clips.top)
    assert clips.counts["clips"] == rings.counts["rings"] == 9


def test_rings_that_are_chosen_stand_as_household_guides_have_them() -> None:
    """Household guides: a ring every 4 to 8 in, closer for heavy cloth; on flat panels 6, 8 or 10 in."""
    for cloth in ("light", "medium", "heavy"):
        assert inches(4) <= planned({**RINGS, "cloth": cloth}).heading.pitch <= inches(10)


ROOMY = {"heading.ring_inside": "1 1/4 in"}
CASES: list[tuple[str, str, dict[str, Any], dict[str, Any]]] = [
    ("rings_too_small", "stop", {**RINGS, "heading.ring_inside": "3/4 in"}, {**RINGS, **ROOMY}),
    ("rings_too_small", "stop", {**HOOKS, "heading.ring_inside": "3/4 in"}, {**HOOKS, **ROOMY}),
    # 3/4 in is 19.05 mm; 5 mm more is the least of the guides, 1/2 in more the most: 1 1/4 in on a 3/4 in rod
    ("rings_bind", "warning", {**RINGS, "heading.ring_inside": "24 mm"}, {**RINGS, "heading.ring_inside": "24.05 mm"}),
    ("rings_snug", "note", {**RINGS, "heading.ring_inside": "1 3/16 in"}, {**RINGS, **ROOMY}),
    ("rings_snug", "note", {**RINGS, "heading.ring_inside": "24.05 mm"}, {**RINGS, "heading.ring_inside": "24 mm"}),
    ("drop_above_ring", "stop", {**RINGS, "heading.drop": "11/16 in"}, {**RINGS, "heading.drop": "3/4 in"}),
    (
        "drop_above_ring",
        "stop",
        {**RINGS, **ROOMY, "heading.drop": "1 3/16 in"},
        {**RINGS, **ROOMY, "heading.drop": "1 1/4 in"},
    ),
    ("drop_above_ring", "stop", {**HOOKS, "heading.drop": "1/2 in"}, {**TRACK, "heading.drop": "1/2 in"}),
    ("edge_rubs_rod", "note", {**HOOKS, "heading.set_below": "1 5/16 in"}, {**HOOKS, "heading.set_below": "1 1/4 in"}),
    ("track_shows", "note", {**TRACK, "heading.set_below": "15/16 in"}, {**TRACK, "heading.set_below": "1 in"}),
    ("hooks_low", "warning", {**HOOKS, "heading.set_below": "1 9/16 in"}, {**HOOKS, "heading.set_below": "1 1/2 in"}),
    (
        "hooks_low",
        "warning",
        {**HOOKS, "cloth": "heavy", "heading.set_below": "2 1/16 in"},
        {**HOOKS, "cloth": "heavy", "heading.set_below": "2 in"},
    ),
    ("rings_low", "warning", {**RINGS, "heading.set_below": "1 9/16 in"}, {**RINGS, "heading.set_below": "1 1/2 in"}),
    (
        "ring_corner_droops",
        "warning",
        {**RINGS, "heading.edge_inset": "2 1/16 in"},
        {**RINGS, "heading.edge_inset": "2 in"},
    ),
    ("hooks_sag", "warning", {**HOOKS, "heading.count": 7}, {**HOOKS, "heading.count": 8}),
    (
        "hooks_sag",
        "warning",
        {**HOOKS, "heading.count": 9, "cloth": "heavy"},
        {**HOOKS, "heading.count": 10, "cloth": "heavy"},
    ),
    ("clips_sag", "warning", {**RINGS, "heading.held_by": "clips", "heading.max_pitch": "6 in", "heading.count": 9},
     {**RINGS, "heading.held_by": "clips", "heading.max_pitch": "6 in"}),
    # 9 hooks stand 6 5/8 in apart, and fold back half of that, 1/2 in off the wall: a return of 3 13/16 in does
    ("folds_touch_wall", "note", {**HOOKS, "rod.returns": "3 3/4 in"}, {**HOOKS, "rod.returns": "3 13/16 in"}),
    ("folds_touch_wall", "note", {**HOOKS, "rod.returns": "1/2 in"}, {**HOOKS, "rod.returns": "0 in"}),
]  # fmt: skip


@pytest.mark.parametrize(
    ("code", "level", "outside", "inside"), CASES, ids=[f"{number:02d} {case[0]}" for number, case in enumerate(CASES)]
)
def test_a_notice_and_just_inside_its_limit(
    code: str, level: str, outside: dict[str, Any], inside: dict[str, Any]
) -> None:
    assert notice(planned(outside), code).level == level
    assert code not in codes(planned(inside))


CURES = [
    ("rings_too_small", {**RINGS, "heading.ring_inside": "1/2 in"}, "at least", "heading.ring_inside"),
    ("rings_bind", {**RINGS, "heading.ring_inside": "22 mm"}, "rings at least", "heading.ring_inside"),
    ("drop_above_ring", {**RINGS, "heading.drop": "1/3 in"}, "at least", "heading.drop"),
    ("edge_rubs_rod", {**HOOKS, "heading.set_below": "1.4 in"}, "at most", "heading.set_below"),
    ("track_shows", {**TRACK, "heading.set_below": "1/3 in"}, "at least", "heading.set_below"),
    ("hooks_low", {**HOOKS, "heading.set_below": "2 in"}, "at most", "heading.set_below"),
    ("ring_corner_droops", {**RINGS, "heading.edge_inset": "5 in"}, "at most", "heading.edge_inset"),
    ("folds_touch_wall", {**HOOKS, "rod.returns": "3 in"}, "Hooks at most", "heading.max_pitch"),
]


@pytest.mark.parametrize("units", ["inch", "metric"])
@pytest.mark.parametrize(("code", "changes", "before", "field"), CURES, ids=[case[0] for case in CURES])
def test_the_number_in_a_notice_puts_it_right(
    code: str, changes: dict[str, Any], before: str, field: str, units: str
) -> None:
    """What the notice says, typed as its tape shows it, is enough: it is rounded to the safe side."""
    changes = {**changes, "units": units}
    text = notice(planned(changes), code).text
    found = re.search(rf"{before} (?:about )?(\d+(?: \d+/\d+)?|\d+/\d+) (in|mm)", text)
    assert found, text
    assert code not in codes(planned({**changes, field: f"{found[1]} {found[2]}"}))


def test_what_is_said_where_nothing_puts_it_right() -> None:
    text = notice(planned({**HOOKS, "rod.returns": "1/2 in"}), "folds_touch_wall").text
    assert text.endswith("There is no room for folds behind the rod.")


@pytest.mark.parametrize(("below", "refolded"), [("2 1/2 in", False), ("2 9/16 in", True)])
def test_hooks_below_the_doubled_cloth_have_the_top_folded_anew(below: str, refolded: bool) -> None:
    """The casing doubles the cloth 3 in deep, and 1/2 in of that is to lie below the hooks."""
    assert planned({**HOOKS, "heading.drop": "4 in", "heading.set_below": below}).top.refolded is refolded


def test_the_working_says_how_each_number_came_about() -> None:
    workings = {key: figure.working for key, figure in planned(TRACK).figures.items()}
    assert "level with the top of the track" in workings["held_below_edge"]
    assert workings["edge_below_rod"] == "below the rod's top: drop 1 in − hooks below the edge 1 in"
    assert "stands up above a hook" in planned({**TRACK, "heading.drop": "3 in"}).figures["held_below_edge"].working
    assert "just touches the rings" in planned(HOOKS).figures["held_below_edge"].working
    assert planned(RINGS).figures["held_below_edge"].working == "they hold the very edge"
    assert planned({**RINGS, "heading.set_below": "1 in"}).figures["held_below_edge"].working == "as given"
