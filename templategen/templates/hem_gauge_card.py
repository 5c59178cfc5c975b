"""Hem gauge card: measures a hem by its own edges and steps."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import replace
from fractions import Fraction
from math import ceil

from ..drawing import CAP, USUAL, Anchor, Drawing, Item, Lane, LineType, Look, Mark, Text, path, width_of
from ..lengths import Length, Tape
from ..planning import Plan
from .gauge_lines import rule_of
from .hems import HEM_CAPTIONS
from .registering import AT_EDGE, AT_OTHER_EDGE
from .ruled import SHORTEST, Rule, rule

RULED = 116
"""How far the lines run from the datum edge, in mm: room for them and, where they crowd, for labels beside them."""
LANE = 18
TREAD = 14
"""Width of a step, in mm: our choice, the width of the finger tip that has to feel it."""
VALUE = 12
_BELOW_A_TREAD, _UNDER = 5.5, 1.5
"""From a tread down to the base line of its value in that size, and what is left below it, in mm."""


def draw(plan: Plan, look: Look = USUAL) -> list[Drawing]:
    """The card, read upright with its base edge below.

    The base edge is laid along the raw edge or the fold; it is also the edge
    that a fold is pressed over. The steps at the right stand the hem's own
    lengths above it, the top edge its longest: for a double fold, twice the depth.
    """
    marks = plan.hem.lines
    lines = [rule_of(mark, plan.tape) for mark in marks]
    base = Rule(Fraction(0), None, "", "base edge")
    end = lines[-1].at
    at_the_edge = [replace(line, kind=None, below=True) if line.at == end else line for line in lines]
    items, reach = rule([base, *at_the_edge], RULED, look=look)
    if reach > end or end < SHORTEST:
        items, reach = rule([base, *lines], RULED, look=look)
        end = Fraction(max(ceil(reach + 1), SHORTEST))
    steps = [step for step in plan.hem.steps if step != Length(end)]
    width = RULED + LANE + TREAD * len(steps)
    return [
        Drawing(
            name="hem gauge card",
            caption=HEM_CAPTIONS[plan.hem.style].card(plan, plan.hem),
            up="towards the heading",
            start=Fraction(0),
            end=end,
            low=-width,
            high=0,
            inward=-1,
            lane=Lane(-RULED - LANE, -RULED),
            registration=(-AT_EDGE, -RULED - LANE + AT_OTHER_EDGE),
            marks=tuple(Mark(mark.name, mark.length.mm) for mark in marks),
            items=(*_outline(steps, end, width), *items, *_step_values(steps, width, plan.tape, look)),
            quarter_turns=1,
        )
    ]


def _outline(steps: Sequence[Length], end: Fraction, width: int) -> tuple[Item, ...]:
    """Base edge, stairs, top edge, datum edge."""
    corners: list[tuple[Fraction, int]] = [(Fraction(0), 0), (Fraction(0), -width)]
    outer = -width
    for step in steps:
        corners += [(step.mm, outer), (step.mm, outer + TREAD)]
        outer += TREAD
    return path(LineType.CUT, [*corners, (end, outer), (end, 0), (Fraction(0), 0)])


def _step_values(steps: Sequence[Length], width: int, tape: Tape, look: Look) -> Iterator[Item]:
    """Each step's height, just below its tread; upright where it is wider than that, if the step is high enough."""
    size = look.size(VALUE)
    down = _BELOW_A_TREAD if size <= VALUE else size * CAP + 2
    for i, step in enumerate(steps):
        middle, number = -width + TREAD * (i + Fraction(1, 2)), tape.read(step).number
        wide = width_of(number, size, True)
        if size <= VALUE or wide <= TREAD - 2:
            if step.mm > down + _UNDER:
                yield Text(step.mm - down, middle, number, size, Anchor.MIDDLE, True, 270)
        elif step.mm > wide + 2 * _UNDER:
            yield Text(step.mm - _UNDER, middle - Fraction(size * CAP / 2), number, size, Anchor.END, True)
