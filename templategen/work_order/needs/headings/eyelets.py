"""What eyelets need."""

from __future__ import annotations

from collections.abc import Iterator

from ....planning import Plan
from ....planning.doubled import rows_left
from ....planning.headings.eyelets import EyeletPlan
from ....planning.wording import near
from ..amounts import Thing, times
from .face import HeadingNeeds


def things(plan: Plan, eyelets: EyeletPlan) -> Iterator[Thing]:
    """The rings, one of them to be tried on a scrap, and the stiffening."""
    tape = plan.tape
    yield Thing(
        f"eyelets, {near(tape, eyelets.inside)} inside and {near(tape, eyelets.outside)} outside",
        eyelets.on_each * plan.panels + 1,
        f"{plan.panels} × {eyelets.on_each}, and one to try on a scrap",
    )
    yield Thing(
        f"stiffening, {near(tape, eyelets.band)} deep", plan.width * plan.panels, times(tape, plan.panels, plan.width)
    )


def tools(plan: Plan, eyelets: EyeletPlan) -> Iterator[str]:
    """What cuts the circles and closes the rings."""
    yield "The tool that closes the eyelets, as their maker says"
    yield f"A punch for circles {near(plan.tape, eyelets.cut_circle)} across, or small sharp scissors"


def unpicks(plan: Plan, eyelets: EyeletPlan) -> bool:
    """Whether a ring would stand on an old row of stitching that is still there."""
    half = eyelets.outside / 2
    there = () if plan.top.refolded else rows_left(plan.spec, eyelets.given, plan.top.needed)
    return any(abs(row - eyelets.centre) < half for row in there)


EYELETS = HeadingNeeds(name="eyelets", things=things, tools=tools, unpicks=unpicks)
