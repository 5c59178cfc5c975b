"""How the height card of rings, clips or hooks is held to the hung panel."""

from __future__ import annotations

from ...planning import Plan
from ...planning.headings.points import PointPlan


def held_to(plan: Plan, points: PointPlan) -> str:
    """Whether rod or track is where the plan has it."""
    name, where = "hook" if points.thing == "hook" else "ring", "rod" if points.round_rod else "track"
    return f"Hold the {name} height card to it beside a {points.thing}, as it says: the {where} must be at its lines."
