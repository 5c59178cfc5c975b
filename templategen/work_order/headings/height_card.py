"""How the height card of rings, clips or hooks is held to the hung panel."""

from __future__ import annotations

from ...planning import Plan
from ...planning.headings.points import PointPlan


def card_of(points: PointPlan) -> tuple[str, ...]:
    """What the card is called."""
    return (f"{_name(points)} height card",)


def held_to(plan: Plan, points: PointPlan) -> str:
    """Whether rod or track is where the plan has it."""
    where = "rod" if points.round_rod else "track"
    return (
        f"Hold the {_name(points)} height card to it beside a {points.thing}, as it says: the {where} must be at its "
        "lines."
    )


def _name(points: PointPlan) -> str:
    return "hook" if points.thing == "hook" else "ring"
