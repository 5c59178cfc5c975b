"""Jobs for the planner's tests: one good job, and changes to it written as they stand in a file."""

from __future__ import annotations

from typing import Any

from templategen.lengths import Length, read_length
from templategen.planning import Notice, Plan, make_plan
from templategen.spec import Spec
from templategen.spec.reading import spec_from_tables

READING_ROOM: dict[str, Any] = {
    "title": "Reading room, east window",
    "units": "inch",
    "cloth": "medium",
    "rod.length": "60 in",
    "rod.diameter": "3/4 in",
    "panel.count": 4,
    "panel.width": "54 in",
    "panel.length": "96 in",
    "panel.casing": "3 in",
    "panel.header": "0 in",
    "panel.hem": "2 in",
    "panel.turn_under": "3/8 in",
    "drop.floor_marks": ["13 5/8 in"],
    "drop.hung_by": "casing",
    "drop.rod_to_floor": "82 in",
    "drop.clearance": "3/4 in",
    "hem.depth": "4 in",
    "hem.turn_under": "5/8 in",
    "heading.style": "back loops",
    "heading.count": 9,
    "heading.edge_inset": "1 1/4 in",
    "heading.loop_length": "3 1/4 in",
    "heading.loop_width": "1 1/8 in",
    "heading.lower_allowance": "3/8 in",
    "heading.upper_turn": "5/8 in",
}
"""A village library refits its reading rooms: the first window."""


def job(changes: dict[str, Any] | None = None) -> Spec:
    """The first window with some fields changed; a field changed to None is left out."""
    tables: dict[str, Any] = {}
    for path, value in {**READING_ROOM, **(changes or {})}.items():
        if value is None:
            continue
        *steps, field = path.split(".")
        table = tables
        for step in steps:
            table = table.setdefault(step, {})
        table[field] = value
    return spec_from_tables(tables)


def planned(changes: dict[str, Any] | None = None) -> Plan:
    return make_plan(job(changes))


def length(text: str) -> Length:
    return read_length(text)


def codes(plan: Plan) -> set[str]:
    return {notice.code for notice in plan.notices}


def notice(plan: Plan, code: str) -> Notice:
    """The one notice with this code."""
    (found,) = [notice for notice in plan.notices if notice.code == code]
    return found
