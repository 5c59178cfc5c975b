"""What is written of loops sewn to the back of the casing."""

from __future__ import annotations

from ...planning import Plan
from ...planning.headings.back_loops import LoopPlan
from ..said import plain
from .face import HeadingCaptions


def strip(plan: Plan, loops: LoopPlan) -> tuple[str, ...]:
    """Edges, and where the seams come."""
    return (
        "Short lines: a loop's edges.",
        f"Upper seams: {plain(plan, loops.upper_seam)} below the panel's top edge.",
    )


BACK_LOOPS = HeadingCaptions(name="back loops", strip=strip)
