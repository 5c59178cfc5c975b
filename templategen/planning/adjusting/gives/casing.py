"""A casing: a row of stitching right across, below its top, makes more header and raises the panel."""

from __future__ import annotations

from ....lengths import NOTHING, Length
from ...headings.casing import CasingPlan
from ...plan import HeadingMark, Plan
from ...wording import say
from ..adjustment import Move
from . import tubes
from .face import HeadingGive


def _casing(plan: Plan) -> CasingPlan:
    assert isinstance(plan.heading, CasingPlan), "this is the casing's own"
    return plan.heading


def move(plan: Plan, mark: HeadingMark, wanted: Length) -> Move:
    """The new row at one place; it can rise into the header that there is, where the old row is unpicked."""
    casing = _casing(plan)
    apart, raised = tubes.shifted(plan.spec.rod.diameter, casing.depth, wanted, casing.header)
    return Move(mark.label, mark.at, wanted, apart, raised, NOTHING, NOTHING)


def limits(plan: Plan) -> tuple[Length, Length]:
    """By the rod, which must still pass, and by the header."""
    casing = _casing(plan)
    return tubes.limits(plan.spec.rod.diameter, casing.depth, casing.header)


def how(plan: Plan, moves: tuple[Move, ...]) -> tuple[str, ...]:
    """The new row, and the old one where it is in the way."""
    said = [
        "Sew a row right across, through both layers, as far below the casing's present top (down) or above it (up) "
        "as the strip says; join the marks with a rule first."
    ]
    most = max(moves, key=lambda each: each.distance)
    if most.distance > NOTHING:
        said.append(
            f"A row {say(plan.tape, most.distance)} lower raises the hem {say(plan.tape, most.raised)}: the shallower "
            "casing takes up more."
        )
    if any(each.distance < NOTHING for each in moves):
        said.append("Where it goes up, unpick the old row under the header.")
    return tuple(said)


CASING = HeadingGive("casing", "A new row below the casing's top", move, how, limits, across=True)
