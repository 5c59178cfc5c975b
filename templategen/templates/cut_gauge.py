"""Cut gauge: laid on the floor mark, it shows the finish line and the cut line."""

from __future__ import annotations

from fractions import Fraction
from math import ceil

from ..drawing import USUAL, Drawing, Item, Lane, LineType, Look, Mark, path
from ..planning import Plan
from ..planning.lines import line_of
from ..planning.plan import DropMark
from .places import above_old_edge, place_of
from .registering import AT_EDGE, AT_OTHER_EDGE
from .ruled import SHORTEST, Rule, rule

RULED = 70
LANE = 17
"""Together 87 mm: two gauges stand side by side on letter and on A4 paper."""
SIZE = 12.5
HEADROOM = 12
"""Paper above the topmost line, in mm, to hold the gauge by."""


def draw(plan: Plan, look: Look = USUAL) -> list[Drawing]:
    """One gauge for a level floor; one for each floor mark where they differ.

    Each is read upright, its zero at its lowest line: as a rule the cut line,
    so that the gauge's own lower edge is the edge to cut along.
    """
    marks = plan.drop.gauged
    return [_gauge(plan, mark, number, len(marks), look) for number, mark in enumerate(marks, 1)]


def _gauge(plan: Plan, mark: DropMark, number: int, of: int, look: Look) -> Drawing:
    name = line_of(plan.spec).name
    zero = min(mark.cut, mark.finish, mark.floor)
    lines = [
        ("cut line", mark.cut - zero),
        ("finish line", mark.finish - zero),
        (f"{name} mark", mark.floor - zero),
    ]
    rules = [Rule(at.mm, LineType.MARK if at else None, name) for name, at in lines]
    items, reach = rule(rules, RULED, SIZE, look)
    topmost = max(at for _, at in lines)
    end = Fraction(max(ceil(max(reach, float(topmost.mm)) + HEADROOM), SHORTEST))
    way = "down" if plan.hem.allowance.mm >= 0 else "up"
    place = f"For {name} mark {number} of {of}, {place_of(plan, mark)}. " if of > 1 else ""
    if plan.drop.above_marks:
        place = f"For the highest {name} mark, {place_of(plan, mark)}; the lines run level from there. "
    return Drawing(
        name=f"cut gauge {number}" if of > 1 else "cut gauge",
        caption=(
            f"{place}Lay the {name} mark line on the pin.",
            f"Here the cut line stands {above_old_edge(plan, mark.cut)}: check it with a rule before you cut.",
            f"From the finish line {way} to the cut line it is {plan.tape.show(abs(plan.hem.allowance))}.",
        ),
        up="towards the heading",
        start=Fraction(0),
        end=end,
        low=-RULED - LANE,
        high=0,
        inward=-1,
        lane=Lane(-RULED - LANE, -RULED),
        registration=(-AT_EDGE, -RULED - LANE + AT_OTHER_EDGE),
        marks=tuple(Mark(name, at.mm) for name, at in lines),
        items=(*_outline(end), *items),
        quarter_turns=1,
    )


def _outline(end: Fraction) -> tuple[Item, ...]:
    width = -RULED - LANE
    return path(LineType.CUT, [(0, 0), (0, width), (end, width), (end, 0), (0, 0)])
