"""The figures: all that plan.json names, each with how it came about, and every number in that true."""

from __future__ import annotations

from typing import Any

import pytest
from hypothesis import HealthCheck, given, settings

from templategen.errors import Refusal
from templategen.lengths import inches
from templategen.planning import make_plan
from templategen.spec import Spec
from tests.strategies import workshop_specs

from .building import job, planned

PROMISED = (
    "floor_line",
    "hang_shift",
    "finish_line",
    "cut_line",
    "offcut_depth",
    "offcut_unpicked",
    "loop_length",
    "loop_width",
    "loop_strip",
    "loop_pitch",
    "edge_inset",
    "tube_depth",
    "upper_seam",
    "finished_length",
)


def test_every_promised_length_is_there() -> None:
    assert set(PROMISED) <= planned().figures.keys()


def test_no_finished_length_without_the_panels_length() -> None:
    assert "finished_length" not in planned({"panel.length": None, "drop.rod_to_floor": None}).figures


@settings(max_examples=40, deadline=None, suppress_health_check=[HealthCheck.too_slow])
@given(workshop_specs())
def test_figures_are_the_plans_own_numbers(spec: Spec) -> None:
    plan = make_plan(spec)
    first, value = plan.drop.marks[0], {key: figure.value for key, figure in plan.figures.items()}
    assert all(figure.key == key and figure.label and figure.working for key, figure in plan.figures.items())
    assert value["floor_line"] == first.floor and value["finish_line"] == first.finish
    assert value["cut_line"] == first.cut and value["hang_shift"] == plan.drop.hang_shift
    assert value["loop_pitch"] == plan.heading.pitch and value["loop_strip"] == plan.heading.strip
    assert value["offcut_depth"] == plan.offcut.depth and value["offcut_unpicked"] == plan.offcut.unpicked
    assert value["stitch_line"] == plan.hem.stitch_line > plan.hem.depth / 2


WORKINGS: list[tuple[dict[str, Any], str, str]] = [
    ({}, "floor_line", "as given"),
    ({"drop.floor_marks": ["13 in", "13 in", "13 in"]}, "floor_line", "as given, the first of 3 marks"),
    (
        {"drop.floor_marks": None},
        "floor_line",
        "panel 96 in − header 0 in − take-up 1/4 in (a hair under) − rod to floor 82 in",
    ),
    (
        {"drop.hung_by": "new heading"},
        "finish_line",
        "floor line 13 5/8 in − hang shift 0 in + clearance 3/4 in",
    ),
    (
        {"drop.hung_by": "new heading", "drop.clearance": "-1/2 in"},
        "finish_line",
        "floor line 13 5/8 in − hang shift 0 in − clearance 1/2 in",
    ),
    (
        {"drop.hung_by": "new heading"},
        "cut_line",
        "finish line 14 3/8 in − hem 4 in − turn-under 5/8 in",
    ),
    ({}, "tube_depth", "loop 3 1/4 in − lower allowance 3/8 in − upper turn 5/8 in"),
    ({}, "upper_seam", "down from the top edge: header 0 in + casing 3 in − tube depth 2 1/4 in"),
    ({}, "loop_strip", "2 × (finished width 1 1/8 in + seam allowance 1/4 in)"),
    ({}, "loop_pitch", "centre to centre: (panel width 54 in − 2 × edge inset 1 1/4 in) ÷ 8 spaces"),
    ({"heading.loop_length": None}, "loop_length", "as long as the casing is deep, 3 in (common practice)"),
    (
        {"heading.edge_inset": None},
        "edge_inset",
        "chosen: half the loop's width 9/16 in + 5/8 in, about a little finger's width, rounded up to an "
        "eighth of an inch",
    ),
    (
        {"heading.edge_inset": None, "panel.width": "6 in", "heading.count": 3},
        "edge_inset",
        "chosen: a sixth of the panel's width 6 in, as it is narrow",
    ),
    (
        {"heading.loop_width": None, "panel.width": "5 in", "heading.count": 3},
        "loop_width",
        "chosen: a sixth of the panel's width 5 in, as it is narrow",
    ),
    (
        {"heading.count": None},
        "loop_pitch",
        "centre to centre: (panel width 54 in − 2 × edge inset 1 1/4 in) ÷ 6 spaces; stepped off as it is shown, the "
        "last would come 1/8 in out; 7 loops chosen: the fewest, odd, no more than 10 in apart, for medium cloth",
    ),
    (
        {"heading.count": None, "heading.max_pitch": "7 in"},
        "loop_pitch",
        "centre to centre: (panel width 54 in − 2 × edge inset 1 1/4 in) ÷ 8 spaces; 9 loops chosen: the "
        "fewest, odd, no more than 7 in apart, the limit given",
    ),
    (
        {"rod.diameter": "2 in"},
        "take_up_new",
        "the rod does not pass; what the thickest rod that passes a tube 2 1/4 in deep would take up",
    ),
    ({"drop.hung_by": "new heading"}, "offcut_depth", "all below the cut line 9 3/4 in"),
    (
        {"drop.hung_by": "new heading", "drop.floor_marks": ["3 in"]},
        "offcut_depth",
        "cut line −7/8 in, so nothing comes off",
    ),
    (
        {"drop.hung_by": "new heading", "drop.floor_marks": ["3 in"]},
        "offcut_unpicked",
        "cut line −7/8 in + old hem 2 in + old turn-under 3/8 in",
    ),
    (
        {"drop.hung_by": "new heading", "drop.floor_marks": ["13 in", "12 7/8 in"]},
        "offcut_clear",
        "lowest cut line 9 in − old hem 2 in",
    ),
]


@pytest.mark.parametrize(("changes", "key", "working"), WORKINGS)
def test_how_a_number_came_about(changes: dict[str, Any], key: str, working: str) -> None:
    assert planned(changes).figures[key].working == working


def test_chosen_sizes() -> None:
    """1 in loops, in from the edge by half of that and 5/8 in; the same exact lengths in metric."""
    left_out = dict.fromkeys(("heading.edge_inset", "heading.loop_width"))
    for units in ("inch", "metric"):
        loops = planned({**left_out, "units": units}).heading
        assert (loops.width, loops.edge_inset) == (inches(1), inches("9/8"))


@pytest.mark.parametrize(
    ("depth", "stitching"), [("4", "31/8"), ("1/2", "3/8"), ("1/4", "3/16"), ("1/16", "3/64")]
)
def test_the_stitch_line_stays_in_the_upper_half(depth: str, stitching: str) -> None:
    narrow = {"hem.depth": f"{depth} in", "hem.turn_under": "1/16 in"}
    assert planned(narrow).hem.stitch_line == inches(stitching)


def test_where_the_floor_is_must_be_said_somewhere() -> None:
    """The spec's reader refuses this; a spec built by hand is refused here, in the same words."""
    spec = job()
    drop = spec.drop.model_copy(update={"floor_marks": (), "rod_to_floor": None})
    with pytest.raises(Refusal, match="drop"):
        make_plan(spec.model_copy(update={"drop": drop}))


def test_every_figure_has_its_section() -> None:
    told = [figure.key for section in planned().sections for figure in section.figures]
    assert len(told) == len(set(told))
    assert planned().figures.keys() == set(told)


@pytest.mark.parametrize(
    ("typed", "figure", "working"),
    [
        ({"hem.style": "border", "hem.turn_under": None}, "sewn_on_length", "panel 54 in + 2 × end 1/2 in"),
        ({"lining.ends_above": "1 in"}, "lining_width", "panel 54 in − 2 × inside its edge 1 in"),
        ({"weights.every": "24 in"}, "weight_pocket", "weight 1 in + ease 1/4 in + 2 × seam 1/4 in"),
    ],
)
def test_what_is_taken_twice_is_shown_once(typed: dict[str, Any], figure: str, working: str) -> None:
    """The working is reckoned through as it stands: 54 + 2 × 1/2 = 55, 54 − 2 × 1 = 52, 1 + 1/4 + 2 × 1/4 = 1 3/4."""
    found = make_plan(job(typed)).figures[figure]
    assert found.working.startswith(working)
    value = {"sewn_on_length": "55", "lining_width": "52", "weight_pocket": "7/4"}[figure]
    assert found.value == inches(value)
