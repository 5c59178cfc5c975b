"""Laws that every plan with tabs, rings, clips or hooks obeys."""

from __future__ import annotations

import json
from itertools import pairwise
from typing import Any

from hypothesis import HealthCheck, given, settings

from templategen.lengths import NOTHING, inches
from templategen.planning import Plan, make_plan, plan_record, tell_plan
from templategen.planning.drop import hang_when_done
from templategen.planning.headings.tabs import TabPlan

from .building import job
from .hung_jobs import changes
from .test_tabs import BARE

few = settings(max_examples=40, deadline=None, suppress_health_check=[HealthCheck.too_slow])


@few
@given(changes(wide=True))
def test_every_job_has_a_plan_that_can_be_told(typed: dict[str, Any]) -> None:
    plan = make_plan(job(typed))
    assert all(len(line) <= 96 for line in tell_plan(plan).splitlines())
    assert json.loads(json.dumps(plan_record(plan), allow_nan=False))["marks"].keys() == {"top"}
    assert len({notice.code for notice in plan.notices}) == len(plan.notices)


@few
@given(changes(wide=True))
def test_what_was_chosen_lies_on_the_panel_and_apart(typed: dict[str, Any]) -> None:
    left_out = {"heading.count": None, "heading.edge_inset": None, "heading.tab_width": None}
    heading = make_plan(job({**typed, **left_out})).heading
    assert heading.count % 2 == 1 and heading.count >= 3
    assert heading.pitch > heading.thing_width and heading.edge_inset >= heading.thing_width / 2
    assert all(right.at - left.at == heading.pitch for left, right in pairwise(heading.marks))


@few
@given(changes())
def test_nothing_is_on_the_cloth_beyond_its_edges_unless_it_is_stopped(typed: dict[str, Any]) -> None:
    plan = make_plan(job(typed))
    first, last, half = plan.heading.marks[0].at, plan.heading.marks[-1].at, plan.heading.thing_width / 2
    on_it = first - half >= NOTHING and last + half <= plan.width
    assert on_it or any(notice.code.endswith("_over_edge") for notice in plan.stops)


@few
@given(changes())
def test_the_hem_hangs_where_it_was_wanted_and_all_cloth_is_accounted_for(typed: dict[str, Any]) -> None:
    """Worked from the rod: what hangs below the rod's top, and the clearance, make up its height; and what the
    panel was long is what it ends up long, what the top took, and what is below the finished edge."""
    plan = make_plan(job(typed))
    spec, finished = plan.spec, plan.figures["finished_length"].value
    assert spec.drop.rod_to_floor is not None and spec.panel.length is not None
    assert spec.drop.rod_to_floor - (finished + hang_when_done(spec).offset) == spec.drop.clearance
    first = plan.drop.marks[0]
    assert finished + plan.top.lowered + plan.hem.allowance + first.cut == spec.panel.length
    if isinstance(plan.heading, TabPlan):
        tabs = plan.heading
        assert tabs.length == tabs.between + 2 * tabs.end_allowance and tabs.between >= tabs.on_rod


@few
@given(changes())
def test_there_and_back_gives_no_shift(typed: dict[str, Any]) -> None:
    """The job, and the same the other way round: from what is to be made to what the panel came with."""
    there = job({**typed, "drop.hung_by": "old heading", "panel.casing": "12 in"})
    panel = there.panel.model_copy(update={"heading": there.heading})
    one, other = make_plan(there), make_plan(there.model_copy(update={"panel": panel, "heading": there.panel.heading}))
    assert not one.top.refolded and not other.top.refolded
    assert one.drop.hang_shift + other.drop.hang_shift == NOTHING


def test_inch_and_metric_agree() -> None:
    """The same lengths typed in either unit, exactly: one plan."""
    for style, by_inch, by_mm in (
        ("tabs", {"heading.gap": "2 in", "heading.tab_width": "1 1/4 in"},
         {"heading.gap": "50.8 mm", "heading.tab_width": "31.75 mm"}),
        ("hooks", {"heading.drop": "1 3/4 in", "heading.set_below": "1/2 in"},
         {"heading.drop": "44.45 mm", "heading.set_below": "12.7 mm"}),
        ("rings", {"heading.drop": "2 in"}, {"heading.drop": "50.8 mm"}),
    ):  # fmt: skip
        plans = [_plan(style, each) for each in (by_inch, {**by_mm, "units": "metric"})]
        one, other = ({key: figure.value for key, figure in plan.figures.items()} for plan in plans)
        assert one == other and plans[0].heading.marks == plans[1].heading.marks
        assert one["hang_shift"] < -inches(1)


def _plan(style: str, typed: dict[str, Any]) -> Plan:
    return make_plan(job({**BARE, "heading.style": style, **typed}))
