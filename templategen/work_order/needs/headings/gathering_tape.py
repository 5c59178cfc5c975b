"""What a gathering tape needs."""

from __future__ import annotations

from collections.abc import Iterator

from ....planning import Plan
from ....planning.headings.gathering_tape import TapePlan
from ....planning.wording import near
from ..amounts import Seam, Thing, times
from ..pins import along
from .face import HeadingNeeds


def seams(plan: Plan, tape: TapePlan) -> Iterator[Seam]:
    """Both edges, and both ends."""
    yield Seam("tape, its edges", plan.width, 2 * plan.panels)
    yield Seam("tape, its ends", tape.width, 2 * plan.panels)


def things(plan: Plan, tape: TapePlan) -> Iterator[Thing]:
    """The tape with its ends, its hooks, and what they hang on."""
    hooks = tape.hooks * plan.panels
    yield Thing(
        f"gathering tape, {near(plan.tape, tape.width)} wide",
        tape.tape_length * plan.panels,
        f"{times(plan.tape, plan.panels, tape.tape_length)}, what is turned in at the ends with it",
    )
    yield Thing("hooks", hooks, f"{plan.panels} × {tape.hooks}" if plan.panels > 1 else "on the panel")
    yield Thing("rings or gliders", hooks, "one for each hook")


GATHERING_TAPE = HeadingNeeds(
    name="gathering tape", seams=seams, things=things, pins=lambda plan, tape: along(plan.width)
)
