"""What is written of rings and clips."""

from __future__ import annotations

from ...planning import Plan
from ...planning.headings.points import PointPlan
from ..said import plain
from .face import HeadingCaptions


def _place(plan: Plan, rings: PointPlan) -> str:
    return f"{plain(plan, rings.set_below)} below the top edge" if rings.set_below else "at the very top edge"


def strip(plan: Plan, rings: PointPlan) -> tuple[str, ...]:
    """How far down they hold."""
    return (f"The {rings.thing}s hold {_place(plan, rings)}.",)


RINGS = HeadingCaptions(name="rings", strip=strip)
