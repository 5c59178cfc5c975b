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
        f"Lay {tube(plan)} on the loop ladder, its end at the left edge. Mark at the lines that say cut, and where the "
        f"lower seam and the upper turn come. Take it off and cut: loops {plain(plan, loops.length)} long, "
        f"{plan.counts['loops_needed']} in all. Neaten the ends with a close zigzag.",
        "once",
        ladder(plan, loops.width, loops.length, "loop", "loop ladder"),
        ("loop ladder",),
    )
    yield marking(plan, choices, "the back of the casing")
    seam = plain(plan, loops.upper_seam)
    line = "lower stitch line" if plan.spec.panel.header else "stitch line"
    yield trying(
        plan,
        f"tack every loop to the back layer of the casing only: its lower end on the casing's {line}, "
        f"{plain(plan, loops.lower_allowance)} of it below; its upper end turned {plain(plan, loops.upper_turn)} "
        f"under, towards the casing, and that fold {seam} below the top edge",
        pictures.sewn(plan, loops),
    )
    yield Step(
        "Sew",
        "By hand, and through the back layer of the casing only, so that no stitch shows in front: sew each loop as it "
        f"was tacked, its lower end to the casing's {line}, the fold of its upper end {seam} below the panel's top "
        "edge.",
        view=pictures.from_the_back(plan, loops),
    )


BACK_LOOPS = HeadingWork(name="back loops", made=made, hung="its loops", steps=steps, on_the_rod=pictures.hung)
