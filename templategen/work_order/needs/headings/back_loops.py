"""What loops sewn to the back of the casing need."""

from __future__ import annotations

from collections.abc import Iterator

from ....planning import Plan
from ....planning.headings.back_loops import LoopPlan
from ..amounts import Seam
from .cut_pieces import TURNER, other_cloth, pieces_of, tubes, unpicked
from .face import HeadingNeeds


def seams(plan: Plan, loops: LoopPlan) -> Iterator[Seam]:
    """The tubes; both ends of each loop, by hand through the casing's back layer."""
    yield from tubes(plan, loops.width)
    yield Seam("loops, sewn on", loops.width, 2 * pieces_of(plan).needed, "hand")


BACK_LOOPS = HeadingNeeds(
    name="back loops",
    seams=seams,
    things=lambda plan, loops: other_cloth(plan),
    tools=lambda plan, loops: (TURNER,),
    unpicks=lambda plan, loops: unpicked(plan),
)
