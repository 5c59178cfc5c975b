"""Laws that every plan obeys."""

from __future__ import annotations

import json
from decimal import Decimal
from itertools import pairwise
from typing import Any

import pytest
from hypothesis import HealthCheck, given, settings

from templategen.lengths import NOTHING, inches
from templategen.planning import Plan, make_plan, plan_record, tell_plan
from templategen.planning.drop import computed_floor, floor_heights
from templategen.spec import Spec
from tests.strategies import kind_specs, specs, workshop_specs

from .building import READING_ROOM, planned
from .jobs import specs as absurd_specs

few = settings(max_examples=60, deadline=None, suppress_health_check=[HealthCheck.too_slow])


@few
@given(absurd_specs() | specs() | kind_specs())
def test_every_spec_has_a_plan_that_can_be_told(spec: Spec) -> None:
    plan = make_plan(spec)
    assert all(len(line) <= 96 for line in tell_plan(plan).splitlines())
    assert json.loads(json.dumps(plan_record(plan), allow_nan=False))["title"] == spec.title
    levels = [notice.level for notice in plan.notices]
    assert levels == sorted(levels, key=["stop", "warning", "note"].index)
    assert len({notice.code for notice in plan.notices}) == len(plan.notices)


@few
@given(absurd_specs())
def test_loops_that_were_chosen_lie_on_the_panel_and_apart(spec: Spec) -> None:
    """Where nothing about the loops was given but their length, nothing about them has to be stopped."""
    left_out = {"count": None, "edge_inset": None, "loop_width": None}
    loops = make_plan(spec.model_copy(update={"heading": spec.heading.model_copy(update=left_out)})).heading
    assert loops.count % 2 == 1 and loops.count >= 3
    assert loops.pitch > loops.width > NOTHING
    assert loops.edge_inset > loops.width / 2


@few
@given(specs())
def test_marks_are_even_symmetric_and_inside_the_panel(spec: Spec) -> None:
    loops = make_plan(spec).heading
    places = [mark.at for mark in loops.marks]
    assert places[0] == loops.edge_inset > NOTHING
    assert all(right - left == loops.pitch for left, right in pairwise(places))
    assert all(a + b == spec.panel.width for a, b in zip(places, reversed(places), strict=True))
    assert [mark.label for mark in loops.marks] == [str(n) for n in range(1, loops.count + 1)]


@few
@given(workshop_specs() | kind_specs())
def test_the_chain_from_floor_to_cut_is_exact(spec: Spec) -> None:
    plan = make_plan(spec)
    for mark in plan.drop.marks:
        floor = mark.floor if spec.drop.follows == "marks" else max(each.floor for each in plan.drop.marks)
        assert mark.finish == floor - plan.drop.hang_shift + spec.drop.clearance
        assert mark.cut == mark.finish - plan.hem.allowance
    first, last = plan.drop.marks[0], plan.drop.marks[-1]
    assert (first.at, last.at) == (NOTHING, spec.panel.width)
    assert plan.figures["finish_line"].value == first.finish
    assert plan.offcut.unpicked - plan.offcut.depth <= spec.panel.hem + spec.panel.turn_under
    assert plan.offcut.clear <= plan.offcut.depth <= plan.offcut.unpicked


@few
@given(workshop_specs())
def test_the_hem_hangs_where_it_was_wanted(spec: Spec) -> None:
    """Worked from the rod: the finished edge ends up exactly its clearance above the floor."""
    plan = make_plan(spec)
    if spec.panel.length is None:
        return
    by_casing = spec.model_copy(update={"drop": spec.drop.model_copy(update={"hung_by": "casing"})})
    casing, loops = plan.figures, make_plan(by_casing)
    old_offset = -spec.panel.header - loops.figures["take_up_old"].value
    new_offset = -plan.heading.upper_seam - casing["take_up_new"].value
    rod_to_floor = inches(80)
    drop = by_casing.drop.model_copy(update={"rod_to_floor": rod_to_floor, "floor_marks": ()})
    worked = make_plan(by_casing.model_copy(update={"drop": drop}))
    assert worked.drop.marks[0].floor == spec.panel.length + old_offset - rod_to_floor
    hem_below_rod = worked.figures["finished_length"].value + new_offset
    assert rod_to_floor - hem_below_rod == spec.drop.clearance


@few
@given(workshop_specs() | kind_specs())
def test_what_it_hung_by_shifts_the_finish_line_by_the_hang_shift_and_nothing_else(spec: Spec) -> None:
    def marked(hung_by: str) -> Plan:
        return make_plan(spec.model_copy(update={"drop": spec.drop.model_copy(update={"hung_by": hung_by})}))

    casing, heading = marked("old heading"), marked("new heading")
    assert heading.drop.hang_shift == NOTHING
    for before, after in zip(casing.drop.marks, heading.drop.marks, strict=True):
        assert after.finish - before.finish == casing.drop.hang_shift
        assert (after.at, after.floor) == (before.at, before.floor)
    assert (casing.heading, casing.hem, casing.ratios) == (heading.heading, heading.hem, heading.ratios)


@few
@given(workshop_specs() | kind_specs())
def test_moving_every_floor_mark_moves_every_cut_as_much(spec: Spec) -> None:
    up = inches("7/16")
    moved = tuple(mark + up for mark in floor_heights(spec))
    drop = spec.drop.model_copy(update={"floor_marks": moved})
    for before, after in zip(
        make_plan(spec).drop.marks, make_plan(spec.model_copy(update={"drop": drop})).drop.marks, strict=True
    ):
        assert after.cut - before.cut == up


def _in_millimetres(value: Any) -> Any:
    """A length of the first window, in inches there, written in millimetres instead; exactly."""
    if isinstance(value, list):
        return [_in_millimetres(item) for item in value]
    if not (isinstance(value, str) and value.endswith(" in")):
        return value
    parts = [part.split("/") for part in value.removesuffix(" in").split()]
    number = sum((Decimal(top) / Decimal(bottom[0] if bottom else 1) for top, *bottom in parts), Decimal(0))
    return f"{number * Decimal('25.4')} mm"


@pytest.mark.parametrize("left_out", [(), ("heading.count", "heading.edge_inset", "heading.loop_width")])
def test_the_plan_is_the_same_whatever_unit_was_typed(left_out: tuple[str, ...]) -> None:
    nothing = dict.fromkeys(left_out)
    typed = {path: _in_millimetres(value) for path, value in READING_ROOM.items()}
    plans = [
        planned(nothing),
        planned({**typed, **nothing}),
        planned({**typed, "units": "metric", **nothing}),
    ]
    assert typed["panel.width"] == "1371.6 mm"
    for plan in plans[1:]:
        assert (plan.drop, plan.hem, plan.heading, plan.offcut) == (
            plans[0].drop,
            plans[0].hem,
            plans[0].heading,
            plans[0].offcut,
        )
        assert {key: figure.value for key, figure in plan.figures.items()} == {
            key: figure.value for key, figure in plans[0].figures.items()
        }
        assert [notice.code for notice in plan.notices] == [notice.code for notice in plans[0].notices]


def test_the_same_spec_gives_the_same_plan() -> None:
    assert planned() == planned()


def test_both_ways_to_the_floor_agree_where_the_marks_are_the_rods() -> None:
    plan = planned({"drop.floor_marks": None})
    assert plan.drop.marks[0].floor == computed_floor(plan.spec)
    assert plan.drop.level and len(plan.drop.marks) == 2
