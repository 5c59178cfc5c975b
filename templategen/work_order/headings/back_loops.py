"""What is said of loops sewn to the back of the casing."""

from __future__ import annotations

from collections.abc import Iterator

from ...planning import Plan
from ...planning.headings.back_loops import LoopPlan
from ...templates import Choices
from ...templates.said import plain
from ..pictures import back_loops as pictures
from ..pictures.strips import ladder
from ..step import Step
from .face import HeadingWork
from .marking import marking
from .sewn_strips import sewn_strips, tube
from .trying import trying


def made(plan: Plan, loops: LoopPlan) -> str:
    """How many there are."""
    return f"with {loops.count} loops on the back of its casing"


def steps(plan: Plan, loops: LoopPlan, choices: Choices) -> Iterator[Step]:
    """Tube, loops, marks, a trial, seams."""
    yield from sewn_strips(plan, loops.width)
    yield Step(
        "Cut loops",
        f"Lay {tube(plan)} on the loop ladder and cut loops {plain(plan, loops.length)} long, "
        f"{plan.counts['loops_needed']} in all. Neaten the ends with a close zigzag.",
        "once",
        ladder(plan, loops.width, loops.length, "loop", "loop ladder"),
        ("loop ladder",),
    )
    yield marking(plan, choices, "the back of the casing")
    seam = plain(plan, loops.upper_seam)
    yield trying(
        plan,
        f"tack both ends of every loop, its upper fold {seam} below the top edge",
        pictures.from_the_back(plan, loops),
    )
    yield Step(
        "Sew",
        "By hand, and through the back layer of the casing only, so that no stitch shows in front: sew the lower end "
        f"of each loop to the casing's stitch line, {plain(plan, loops.lower_allowance)} of it below the seam; turn "
        f"{plain(plan, loops.upper_turn)} of its upper end under, towards the casing, and sew that fold "
        f"{seam} below the panel's top edge.",
        view=pictures.sewn(plan, loops),
    )


BACK_LOOPS = HeadingWork(name="back loops", made=made, hung="its loops", steps=steps, on_the_rod=pictures.hung)
