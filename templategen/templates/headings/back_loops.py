"""What is said of loops sewn to the back of the casing."""

from __future__ import annotations

from collections.abc import Iterator

from ...planning import Plan
from ...planning.headings.back_loops import LoopPlan
from ..choices import Choices
from ..said import Step, plain
from .face import HeadingWords
from .marking import marking
from .sewn_strips import sewn_strips, tube


def made(plan: Plan, loops: LoopPlan) -> str:
    """How many there are."""
    return f"with {loops.count} loops on the back of its casing"


def strip(plan: Plan, loops: LoopPlan) -> tuple[str, ...]:
    """Edges, and where the seams come."""
    return (
        "Short lines: a loop's edges.",
        f"Upper seams: {plain(plan, loops.upper_seam)} below the panel's top edge.",
    )


def steps(plan: Plan, loops: LoopPlan, choices: Choices) -> Iterator[Step]:
    """Tube, loops, marks, seams."""
    yield f"{sewn_strips(plan, loops.width)}.", False
    yield (
        f"Lay {tube(plan)} on the loop ladder and cut loops {plain(plan, loops.length)} long, "
        f"{plan.counts['loops_needed']} in all. Neaten the ends with a close zigzag.",
        False,
    )
    yield marking(plan, choices, "the back of the casing"), True
    yield (
        "By hand, and through the back layer of the casing only, so that no stitch shows in front: sew the lower end "
        f"of each loop to the casing's stitch line, {plain(plan, loops.lower_allowance)} of it below the seam; turn "
        f"{plain(plan, loops.upper_turn)} of its upper end under, towards the casing, and sew that fold "
        f"{plain(plan, loops.upper_seam)} below the panel's top edge.",
        True,
    )


BACK_LOOPS = HeadingWords(name="back loops", made=made, hung="its loops", steps=steps, strip=strip)
