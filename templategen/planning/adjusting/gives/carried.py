"""Rings, clips and hooks: set lower on the panel they raise it, set higher they let it down."""

from __future__ import annotations

from ....lengths import NOTHING, Length
from ...headings.points import PointPlan
from ...plan import HeadingMark, Plan
from ..adjustment import Move
from .face import HeadingGive


def _below_edge(plan: Plan) -> Length:
    assert isinstance(plan.heading, PointPlan), "these are the hooks' own"
    return plan.heading.set_below


def limits(plan: Plan) -> tuple[Length, Length]:
    """Down to the end of the doubled cloth, and up to the top edge."""
    below = _below_edge(plan)
    return max(NOTHING, plan.top.reach - below), below


def move(plan: Plan, mark: HeadingMark, wanted: Length) -> Move:
    """The hook set so much lower or higher; what it is moved the panel moves."""
    up, down = limits(plan)
    by = max(-down, min(wanted, up))
    return Move(mark.label, mark.at, wanted, by, by, NOTHING, NOTHING)


def how(plan: Plan, moves: tuple[Move, ...]) -> tuple[str, ...]:
    """Set it anew."""
    return (
        "Take off what holds the panel there and set it as much lower on the cloth (down) or higher (up) as the strip "
        "says: lower raises the hem by as much.",
    )


def _give(style: str) -> HeadingGive:
    return HeadingGive(style, "What holds the top, set anew", move, how, limits)


RINGS, HOOKS = _give("rings"), _give("hooks")
