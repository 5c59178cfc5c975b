"""Loops: a second row below a loop's upper seam, or the seam unpicked and moved up into the loop's upper turn."""

from __future__ import annotations

from ....lengths import NOTHING, Length
from ... import hanging
from ...choices import LEAST_TURN
from ...headings.back_loops import LoopPlan
from ...plan import HeadingMark, Plan
from ...wording import near, say
from ..adjustment import Move
from . import tubes
from .face import HeadingGive


def _loops(plan: Plan) -> LoopPlan:
    assert isinstance(plan.heading, LoopPlan), "these are the loops' own"
    return plan.heading


def _spare(loops: LoopPlan) -> Length:
    """How far the upper seam can move up: it needs cloth in the turn, and ends at the panel's top edge."""
    return max(NOTHING, min(loops.upper_turn - LEAST_TURN, loops.upper_seam))


def move(plan: Plan, mark: HeadingMark, wanted: Length) -> Move:
    """The new row at one loop."""
    loops, rod = _loops(plan), plan.spec.rod.diameter
    apart, raised = tubes.shifted(rod, loops.tube_depth, wanted, _spare(loops))
    unpicked = loops.width if apart < NOTHING else NOTHING
    return Move(mark.label, mark.at, wanted, apart, raised, unpicked, loops.width)


def limits(plan: Plan) -> tuple[Length, Length]:
    """By the rod, which must still pass, and by the cloth in the upper turn."""
    loops = _loops(plan)
    return tubes.limits(plan.spec.rod.diameter, loops.tube_depth, _spare(loops))


def how(plan: Plan, moves: tuple[Move, ...]) -> tuple[str, ...]:
    """Rows below, seams moved up, and where the rule of thumb goes wrong."""
    tape, loops = plan.tape, _loops(plan)
    said = []
    rows = [each for each in moves if each.distance > NOTHING]
    if rows:
        most = max(rows, key=lambda each: each.distance)
        needs, left = hanging.least_tube(plan.spec.rod.diameter), loops.tube_depth - most.distance
        said.append(
            "Sew a second row across the loop, through the back layer of the casing only, as far below its upper seam "
            "as the strip says; leave the first row in. "
            f"A row {say(tape, most.distance)} below raises the hem {say(tape, most.raised)}: the shallower tube takes "
            "up more, so that the rows lie a little nearer than the hem rises. The rod still passes: it needs a tube "
            f"{near(tape, needs)} deep, and {near(tape, left)} are left."
        )
    if any(each.distance < NOTHING for each in moves):
        said.append(
            "Where the strip says up: unpick the loop's upper seam, let that much of its turn out, and sew it again so "
            f"much nearer the top edge. At least {near(tape, LEAST_TURN)} stays turned under."
        )
    return tuple(said)


BACK_LOOPS = HeadingGive("back loops", "A second row of stitching at the loops", move, how, limits)
