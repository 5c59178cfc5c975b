"""Heading card: laid on the panel's top edge, it shows how far down stitching, hooks and ends come."""

from __future__ import annotations

from fractions import Fraction
from math import ceil

from ..drawing import Drawing, Lane, LineType, Mark, path
from ..planning import Plan
from ..planning.plan import GaugeLine
from .gauge_lines import rule_of
from .headings import HEADING_WORDS
from .registering import AT_EDGE, AT_OTHER_EDGE
from .ruled import SHORTEST, Rule, rule

RULED = 110
"""How far the lines run from the datum edge, in mm: room for them and their labels."""
LANE = 18
HEADROOM = 6
"""Card beyond the last line, in mm."""


def draw(plan: Plan) -> list[Drawing]:
    """The card, read with the panel's top edge below, nearest to the reader; none for a heading without lines.

    Its base edge is laid along the top edge. Where the top is folded anew, it is first laid on the raw edge,
    and folds as the hem gauge card does.
    """
    heading = plan.heading
    lines = [*folding(plan), *heading.lines]
    if not lines:
        return []
    rules = [Rule(Fraction(0), None, "", "base edge: the panel's top edge")]
    rules += [rule_of(line, plan.tape) for line in sorted(lines, key=lambda line: line.length)]
    items, reach = rule(rules, RULED)
    longest = max(line.length for line in lines).mm
    end = Fraction(max(ceil(max(reach, float(longest)) + HEADROOM), SHORTEST))
    first, fold = "base edge on the raw edge, mark at top fold-to line 1, bring the edge to it; ", "that fold"
    if not plan.spec.heading.top_turn:
        first, fold = "", "the raw edge"
    folded = (f"Top folded anew: {first}base edge on {fold}, mark at top fold-to line 2, bring {fold} to it.",)
    return [
        Drawing(
            name="heading card",
            caption=(
                *(folded if folding(plan) else ()),
                "Lay the panel with its top edge nearest to you, the base edge on it.",
                *HEADING_WORDS[heading.style].card(plan, heading),
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


def folding(plan: Plan) -> tuple[GaugeLine, ...]:
    """The lines that the top is folded to, where it is folded anew: the fold law of a double-fold hem."""
    turn, deep = plan.spec.heading.top_turn, plan.top.needed
    if not plan.top.refolded or not deep:
        return ()
    first = (GaugeLine("top fold-to line 1", 2 * turn, "mark"),) if turn else ()
    return (*first, GaugeLine("top fold-to line 2", 2 * deep, "mark"))
