"""What a facing and a border need."""

from __future__ import annotations

from collections.abc import Callable, Iterator

from ....planning import Plan
from ....planning.hems.sewn_on import SewnOnPlan
from ....planning.wording import near
from ..amounts import Seam, Thing
from .face import HemNeeds, row


def facing_seams(plan: Plan, hem: SewnOnPlan) -> Iterator[Seam]:
    """The facing onto the bottom edge, and its upper edge down."""
    yield row(plan, "facing, sewn on")
    yield row(plan, "facing, its upper edge")


def border_seams(plan: Plan, hem: SewnOnPlan) -> Iterator[Seam]:
    """The border onto the bottom edge; its back edge over the seam, or a single one's neatened seam and hem."""
    yield row(plan, "border, sewn on")
    if hem.own_hem is None:
        yield row(plan, "border, its back edge")
        return
    yield Seam("border's seam, neatened", plan.width, plan.panels, "zigzag")
    yield row(plan, "border's hem")


def strips(name: str) -> Callable[[Plan, SewnOnPlan], Iterator[Thing]]:
    """Strips of other cloth for it, one for each panel; none where what comes off the sides gives them."""

    def things(plan: Plan, hem: SewnOnPlan) -> Iterator[Thing]:
        if any(notice.code == "strips_from_sides" for notice in plan.notices):
            return
        tape = plan.tape
        size = f"{near(tape, hem.strip)} × {near(tape, hem.strip_length)}"
        yield Thing(f"strips of other cloth for the {name}, {size}", plan.panels, "one for each panel")

    return things


FACED = HemNeeds(name="faced", seams=facing_seams, things=strips("facing"))
BORDER = HemNeeds(name="border", seams=border_seams, things=strips("border"))
