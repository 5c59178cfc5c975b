"""Loop ladder: the tube for the loops is laid on it and cut."""

from __future__ import annotations

from ..drawing import Drawing, LineType
from ..planning import Plan
from ..planning.headings.back_loops import LoopPlan
from .ladder import Ladder, draw_ladder


def draw(plan: Plan) -> list[Drawing]:
    """The ladder with each loop's seam and turn; none for a heading without loops."""
    loops = plan.heading
    if not isinstance(loops, LoopPlan):
        return []
    ladder = Ladder(
        name="loop ladder",
        length=loops.length.mm,
        width=loops.width.mm,
        needed=plan.counts["loops_needed"],
        near=loops.lower_allowance.mm,
        far=loops.upper_turn.mm,
        far_kind=LineType.FOLD,
        near_label=f"lower seam {plan.tape.read(loops.lower_allowance).number}",
        far_label=f"upper turn {plan.tape.read(loops.upper_turn).number}",
    )
    return [draw_ladder(ladder)]
