"""What is written of hooks."""

from __future__ import annotations

from ...planning import Plan
from ...planning.headings.points import PointPlan
from ..said import plain
from .face import HeadingCaptions


def strip(plan: Plan, hooks: PointPlan) -> tuple[str, ...]:
    """How far down they are set."""
    return (f"Tops of the hooks: {plain(plan, hooks.set_below)} below the panel's top edge.",)


HOOKS = HeadingCaptions(name="hooks", strip=strip)
