"""Loop ladder: the long sewn tube is laid on it and cut into loops."""

from __future__ import annotations

from fractions import Fraction

from ..drawing import USUAL, Anchor, Drawing, Item, Line, LineType, Look, Text, width_of
from ..planning import Plan
from ..planning.headings.back_loops import LoopPlan
from .ladder import FAR_TICK, TICK, Lettering, across, ladder, length_of, rungs_of


def draw(plan: Plan, look: Look = USUAL) -> list[Drawing]:
    """As many rungs as one sheet holds, and at least one; none for a heading without loops."""
    loops = plan.heading
    if not isinstance(loops, LoopPlan):
        return []
    rungs = rungs_of(loops.length, plan.counts["loops_needed"])
    once = float(length_of(rungs, loops.length))
    return [
        ladder(
            "loop ladder",
            (
                "Lay the sewn and pressed tube between the long lines, its end at the left edge. "
                "Mark at the lines that say cut, and cut straight across.",
            ),
            rungs=rungs,
            length=loops.length,
            width=loops.width,
            room_for_cut=loops.upper_turn,
            rung=lambda start, index, top: _rung(plan, loops, start, top, look, 0 if index else once),
            look=look,
        )
    ]


def _rung(plan: Plan, loops: LoopPlan, start: Fraction, top: Fraction, look: Look, once: float) -> list[Item]:
    """One loop's seam, turn and middle, with its number; its labels where there is room for them.

    ``once`` is what room there is along the ladder, in mm, for what is said at its beginning; 0 but on the first rung.
    """
    lettering = Lettering.of(look)
    size, rows = lettering.size, lettering.rows
    tape = plan.tape
    seam = start + loops.lower_allowance.mm
    turn = start + (loops.length - loops.upper_turn).mm
    middle = (seam + turn) / 2
    items = [
        *across(LineType.STITCH, seam, top),
        *across(LineType.FOLD, turn, top),
        Line(LineType.THIN, middle, 0, middle, TICK / 2),
        Line(LineType.THIN, middle, top, middle, top + FAR_TICK / 2),
    ]
    if loops.tube_depth.mm > width_of("middle", size) + 3:
        items.append(Text(middle, lettering.between, "middle", size, Anchor.MIDDLE))
    low_label = f"lower seam {tape.read(loops.lower_allowance).number}"
    high_label = f"upper turn {tape.read(loops.upper_turn).number}"
    if lettering.along(low_label, high_label) < loops.tube_depth.mm - 2:
        items.append(Text(seam, rows[0], low_label, size))
        items.append(Text(turn, rows[-1], high_label, size, Anchor.END))
    elif once:
        # No room in a rung: said once, at the ladder's beginning.
        items += lettering.once(once, low_label, high_label)
    return items
