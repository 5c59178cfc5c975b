"""Loop ladder: the long sewn tube is laid on it and cut into loops."""

from __future__ import annotations

from fractions import Fraction

from ..drawing import Anchor, Drawing, Item, Lane, Line, LineType, Mark, Text, path, width_of
from ..planning import Plan
from ..planning.headings.back_loops import LoopPlan
from .registering import AT_EDGE, AT_OTHER_EDGE
from .ruled import SHORTEST

LONGEST = 220
"""In mm. Our choice: a ladder of more rungs would need a join on letter and A4 paper."""
TICK = 10
TUBE_FROM = 21
"""From the datum edge to the tube, in mm: ticks and two rows of labels stand between."""
FAR_TICK = 7
LANE = 18
LABEL = 9.5
_LOW_ROW, _HIGH_ROW = TICK + 6.2, TICK + 1.6


def draw(plan: Plan) -> list[Drawing]:
    """As many rungs as one sheet holds, and at least one; none for a heading without loops."""
    loops = plan.heading
    if not isinstance(loops, LoopPlan):
        return []
    rungs = max(1, min(int(LONGEST // loops.length.mm), plan.counts["loops_needed"]))
    end = max(rungs * loops.length.mm, Fraction(SHORTEST))
    top = TUBE_FROM + loops.width.mm
    high = top + FAR_TICK + LANE + 1
    marks = tuple(Mark("start" if i == 0 else f"cut {i}", i * loops.length.mm) for i in range(rungs + 1))
    items: list[Item] = [*path(LineType.CUT, [(0, 0), (end, 0), (end, high), (0, high), (0, 0)])]
    items += [Line(LineType.THIN, 0, y, end, y) for y in (TUBE_FROM, top)]
    middle = (TUBE_FROM + top) / 2
    items += [Line(LineType.CENTRE, 0, middle, end, middle)]
    for i, mark in enumerate(marks):
        items += _across(LineType.MARK, mark.at, top)
        if i and loops.upper_turn.mm > width_of("cut", LABEL) + 3:
            items.append(Text(mark.at - 1.5, TICK / 2 + 1, "cut", LABEL, Anchor.END))
        if i < rungs:
            items += _rung(plan, loops, mark.at, i, top)
    return [
        Drawing(
            name="loop ladder",
            caption=(
                "Lay the sewn and pressed tube between the long lines, its end at the left edge. "
                "Mark at the lines that say cut, and cut straight across.",
            ),
            up="away from you",
            start=Fraction(0),
            end=end,
            low=0,
            high=high,
            inward=1,
            lane=Lane(top + FAR_TICK, top + FAR_TICK + LANE),
            registration=(AT_EDGE, high - AT_OTHER_EDGE),
            marks=marks,
            items=tuple(items),
        )
    ]


def _across(kind: LineType, x: Fraction, top: Fraction) -> list[Item]:
    """A line across the ladder: a tick at either side of the tube, and on the tube's bed between them."""
    return [
        Line(LineType.MARK, x, 0, x, TICK),
        Line(kind, x, TUBE_FROM, x, top),
        Line(LineType.MARK, x, top, x, top + FAR_TICK - 1),
    ]


def _rung(plan: Plan, loops: LoopPlan, start: Fraction, index: int, top: Fraction) -> list[Item]:
    """One loop's seam, turn and middle, with its number; its labels where there is room for them."""
    tape = plan.tape
    seam = start + loops.lower_allowance.mm
    turn = start + (loops.length - loops.upper_turn).mm
    middle = (seam + turn) / 2
    items = [
        *_across(LineType.STITCH, seam, top),
        *_across(LineType.FOLD, turn, top),
        Line(LineType.THIN, middle, 0, middle, TICK / 2),
        Line(LineType.THIN, middle, top, middle, top + FAR_TICK / 2),
    ]
    if loops.tube_depth.mm > width_of("middle", LABEL) + 3:
        items.append(Text(middle, TICK / 2 + 1, "middle", LABEL, Anchor.MIDDLE))
    low_label = f"lower seam {tape.read(loops.lower_allowance).number}"
    high_label = f"upper turn {tape.read(loops.upper_turn).number}"
    if _labels_fit(loops, low_label, high_label):
        items.append(Text(seam, _LOW_ROW, low_label, LABEL))
        items.append(Text(turn, _HIGH_ROW, high_label, LABEL, Anchor.END))
    elif index == 0:
        # No room in a rung: said once, at the ladder's beginning.
        items.append(Text(2, _LOW_ROW, low_label, LABEL))
        items.append(Text(2, _HIGH_ROW, high_label, LABEL))
    return items


def _labels_fit(loops: LoopPlan, *labels: str) -> bool:
    return max(width_of(label, LABEL) for label in labels) < loops.tube_depth.mm - 2
