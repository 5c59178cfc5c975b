"""Loop ladder: the long sewn tube is laid on it and cut into loops."""

from __future__ import annotations

from fractions import Fraction

from ..drawing import Anchor, Drawing, Item, Line, LineType, Text, width_of
from ..planning import Plan
from ..planning.headings.back_loops import LoopPlan
from .ladder import BASE, FAR_TICK, HIGH_ROW, LABEL, LOW_ROW, TICK, across, ladder, rungs_of


def draw(plan: Plan) -> list[Drawing]:
    """As many rungs as one sheet holds, and at least one; none for a heading without loops."""
    loops = plan.heading
    if not isinstance(loops, LoopPlan):
        return []
    return [
        ladder(
            "loop ladder",
            (
                "Lay the sewn and pressed tube between the long lines, its end at the left edge. "
                "Mark at the lines that say cut, and cut straight across.",
            ),
            rungs=rungs_of(loops.length, plan.counts["loops_needed"]),
            length=loops.length,
            width=loops.width,
            room_for_cut=loops.upper_turn,
            rung=lambda start, index, top: _rung(plan, loops, start, index, top),
        )
    ]


def _rung(plan: Plan, loops: LoopPlan, start: Fraction, index: int, top: Fraction) -> list[Item]:
    """One loop's seam, turn and middle, with its number; its labels where there is room for them."""
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
    if loops.tube_depth.mm > width_of("middle", LABEL) + 3:
        items.append(Text(middle, BASE, "middle", LABEL, Anchor.MIDDLE))
    low_label = f"lower seam {tape.read(loops.lower_allowance).number}"
    high_label = f"upper turn {tape.read(loops.upper_turn).number}"
    if _labels_fit(loops, low_label, high_label):
        items.append(Text(seam, LOW_ROW, low_label, LABEL))
        items.append(Text(turn, HIGH_ROW, high_label, LABEL, Anchor.END))
    elif index == 0:
        # No room in a rung: said once, at the ladder's beginning.
        items.append(Text(2, LOW_ROW, low_label, LABEL))
        items.append(Text(2, HIGH_ROW, high_label, LABEL))
    return items


def _labels_fit(loops: LoopPlan, *labels: str) -> bool:
    return max(width_of(label, LABEL) for label in labels) < loops.tube_depth.mm - 2
