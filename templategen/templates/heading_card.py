"""Heading card: laid on the panel's top edge, it shows how far down stitching, hooks and ends come."""

from __future__ import annotations

from fractions import Fraction
from math import ceil

from ..drawing import USUAL, Drawing, Lane, LineType, Look, Mark, path
from ..planning import Plan
from .gauge_lines import rule_of
from .headings import HEADING_CAPTIONS
from .registering import AT_EDGE, AT_OTHER_EDGE
from .ruled import SHORTEST, Rule, rule

RULED = 110
"""How far the lines run from the datum edge, in mm: room for them and their labels."""
LANE = 18
HEADROOM = 6
"""Card beyond the last line, in mm."""


def draw(plan: Plan, look: Look = USUAL) -> list[Drawing]:
    """The card, read with the panel's top edge below, nearest to the reader; none for a heading without lines.

    Its base edge is laid along the top edge.
    """
    heading = plan.heading
    lines = heading.lines
    if not lines:
        return []
    rules = [Rule(Fraction(0), None, "", "base edge: the panel's top edge")]
    rules += [rule_of(line, plan.tape) for line in sorted(lines, key=lambda line: line.length)]
    items, reach = rule(rules, RULED, look=look)
    longest = max(line.length for line in lines).mm
    end = Fraction(max(ceil(max(reach, float(longest)) + HEADROOM), SHORTEST))
    return [
        Drawing(
            name="heading card",
            caption=(
                "Lay the panel with its top edge nearest to you, the base edge on it.",
                *HEADING_CAPTIONS[heading.style].card(plan, heading),
            ),
            up="towards the hem",
            start=Fraction(0),
            end=end,
            low=-RULED - LANE,
            high=0,
            inward=-1,
            lane=Lane(-RULED - LANE, -RULED),
            registration=(-AT_EDGE, -RULED - LANE + AT_OTHER_EDGE),
            marks=tuple(Mark(line.name, line.length.mm) for line in lines),
            items=(
                *path(LineType.CUT, [(0, 0), (0, -RULED - LANE), (end, -RULED - LANE), (end, 0), (0, 0)]),
                *items,
            ),
            quarter_turns=1,
        )
    ]

