"""What rings, clips and hooks need."""

from __future__ import annotations

from collections.abc import Iterator

from ....planning import Plan
from ....planning.headings.points import PointPlan
from ....planning.wording import say
from ....spec.headings import Hooks
from ..amounts import Thing
from ..thread import BUTTON_THREAD
from .face import HeadingNeeds


def sewn_on(points: PointPlan) -> bool:
    """Whether they are sewn on by hand: rings, and hooks that are not pinned on."""
    return points.given.fixed == "sewn on" if isinstance(points.given, Hooks) else points.thing == "ring"


def things(plan: Plan, points: PointPlan) -> Iterator[Thing]:
    """Themselves, what hooks hang on, and the thread for those that are sewn on."""
    number = points.on_each * plan.panels
    each = f"{plan.panels} × {points.on_each}" if plan.panels > 1 else "as many as there are marks"
    yield Thing(f"{points.thing}s", number, each)
    if isinstance(points.given, Hooks):
        yield Thing(points.given.hooks_on, number, "one for each hook")
    if sewn_on(points):
        working = f"{number} × {say(plan.tape, BUTTON_THREAD)}, used doubled"
        yield Thing("button thread", BUTTON_THREAD * number, working)


RINGS = HeadingNeeds(name="rings", things=things)
HOOKS = HeadingNeeds(name="hooks", things=things)
