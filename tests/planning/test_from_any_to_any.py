"""From every kind of heading to every kind, whatever kinds the table holds."""

from __future__ import annotations

from functools import cache

import pytest

from templategen import make_kit, make_plan
from templategen.lengths import NOTHING, inches
from templategen.planning import Plan, tell_plan
from templategen.planning.headings import HEADINGS
from templategen.planning.top import plan_top
from templategen.spec import Spec, read_spec, starting_spec
from templategen.spec.headings.face import HeadingTable
from tests.work_order.said import words

KINDS = list(HEADINGS)
BOTH = [(old, new) for old in KINDS for new in KINDS]


@cache
def start(old: str, new: str, units: str = "inch") -> Spec:
    """The starting spec for a panel that came with the one and gets the other."""
    return read_spec(starting_spec(units, {"panel.heading.style": old, "heading.style": new}))  # type: ignore[arg-type]


def as_made(kind: str) -> HeadingTable:
    """The heading that hangs a panel as one that it came with does: made with the same numbers, all else left out."""
    there = start(kind, kind).panel.heading
    return type(there)(style=kind, **{name: getattr(there, name) for name in type(there).HANGS_BY})  # type: ignore


def planned(spec: Spec, **drop: object) -> Plan:
    return make_plan(spec.model_copy(update={"drop": spec.drop.model_copy(update=drop)}))


@pytest.mark.parametrize(("old", "new"), BOTH)
def test_every_change_has_a_plan_and_a_work_order(old: str, new: str) -> None:
    plan = make_plan(start(old, new))
    assert not plan.stops, plan.stops
    assert plan.heading.style == new and tell_plan(plan) and words(plan)


@pytest.mark.parametrize(("old", "new"), BOTH)
def test_there_and_back_shifts_nothing_where_the_top_is_not_folded_anew(old: str, new: str) -> None:
    spec, shifts = start(old, new), []
    for one, other in ((old, new), (new, old)):
        panel = spec.panel.model_copy(update={"heading": start(one, one).panel.heading})
        there = spec.model_copy(update={"panel": panel, "heading": as_made(other)})
        assert plan_top(there).refolded is (plan_top(there).lowered != NOTHING)
        shifts.append(planned(there, hung_by="old heading").drop.hang_shift - plan_top(there).lowered)
    assert shifts[0] == -shifts[1]
    assert old != new or shifts[0] == NOTHING


@pytest.mark.parametrize(("old", "new"), BOTH)
def test_it_ends_at_one_place_whichever_heading_the_floor_was_reckoned_by(old: str, new: str) -> None:
    """Worked from the rod: its clearance above the floor, by the new heading's offset."""
    spec = start(old, new)
    reckoned = {"floor_marks": (), "rod_to_floor": inches(84)}
    by_old, by_new = (planned(spec, hung_by=by, **reckoned) for by in ("old heading", "new heading"))
    assert by_old.figures["finished_length"].value == by_new.figures["finished_length"].value
    finished = inches(84) - HEADINGS[new].hang(spec, spec.heading).offset - spec.drop.clearance
    assert by_old.figures["finished_length"].value == finished


@pytest.mark.parametrize("new", KINDS)
def test_every_heading_has_a_kit(new: str) -> None:
    kit = make_kit(make_plan(start(KINDS[0], new)))
    assert kit.sheets


@pytest.mark.parametrize("new", KINDS)
def test_a_top_that_is_cut_off_lowers_the_new_edge_by_all_that_is_cut_and_folded(new: str) -> None:
    spec = start(KINDS[0], new)
    cut = spec.model_copy(update={"heading": spec.heading.model_copy(update={"top_cut": inches(4)})})
    top = make_plan(cut).top
    turned = cut.heading.top_turn if top.needed else NOTHING
    assert top.refolded and top.lowered == inches(4) + top.needed + turned


@pytest.mark.parametrize("new", KINDS)
def test_inch_and_metric_agree(new: str) -> None:
    """The same lengths shown on another tape are the same plan."""
    spec = start(KINDS[0], new)
    metric = make_plan(spec.model_copy(update={"units": "metric"}))
    inch = make_plan(spec)
    assert {key: figure.value for key, figure in inch.figures.items()} == {
        key: figure.value for key, figure in metric.figures.items()
    }
    assert (inch.heading, inch.top, inch.drop) == (metric.heading, metric.top, metric.drop)
