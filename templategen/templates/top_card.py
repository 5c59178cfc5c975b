"""A card whose upper edge is laid on the panel's top edge: lines for what lies so far below it."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, replace
from fractions import Fraction
from math import ceil

from ..drawing import USUAL, Drawing, Item, Lane, Line, LineType, Look, Mark, Text, path
from ..lengths import Length, Tape
from .registering import AT_EDGE, AT_OTHER_EDGE
from .ruled import Lettering, Rule, rule

RULED = 87
"""How far the lines run from the datum edge, in mm: room for labels beside them where they crowd."""
LANE = 18
LEAST = 76
"""Least length of the card along its datum edge, in mm: our choice; its whole caption has room beside the lines."""
FOOT = 6
"""Paper below the lowest line or label, in mm, so that the card's own lower edge is never taken for a line."""
SIZE = 13
LEAST_ROW = 15
"""A row of stitching shorter than this, in mm, shows too few dashes to be known for one."""
_CAPS = 4.0
"""From a label's place below its line down to its base line, in mm."""


@dataclass(frozen=True, slots=True)
class TopLine:
    """One line of such a card."""

    name: str
    at: Length
    """Down from the panel's top edge."""
    kind: LineType


def draw_top_card(
    name: str,
    lines: Sequence[TopLine],
    caption: tuple[str, ...],
    tape: Tape,
    rows: Sequence[Length] = (),
    look: Look = USUAL,
) -> Drawing:
    """The card, read upright, its upper edge the panel's top edge.

    Along the datum edge x rises towards the top: a mark so far below the top
    edge stands so far before the end. Its labels stand below their lines. ``rows``
    are rows of stitching that follow another line too closely for a label: they
    are shown where the labels leave room.
    """
    rules = [Rule(Fraction(0), None, "", "the panel's top edge"), *(_rule(line, tape) for line in lines)]
    items, reach = rule(rules, RULED, SIZE, look, downward=True)
    lowest = max(float(line.at.mm) for line in lines)
    end = Fraction(max(ceil(max(reach, lowest) + FOOT), LEAST))
    marks = [Mark(line.name, end - line.at.mm) for line in lines if line.at]
    width = RULED + LANE
    caps = _CAPS * Lettering.of(look, SIZE).grown
    return Drawing(
        name=name,
        caption=caption,
        up="the panel's top edge",
        start=Fraction(0),
        end=end,
        low=-width,
        high=0,
        inward=-1,
        lane=Lane(-width, -RULED),
        registration=(-AT_EDGE, -width + AT_OTHER_EDGE),
        marks=(*sorted(marks, key=lambda mark: mark.at), Mark("top edge", end)),
        items=(
            *path(LineType.CUT, [(0, 0), (0, -width), (end, -width), (end, 0), (0, 0)]),
            *(_from_the_top(item, end, caps) for item in (*items, *_rows(rows, items))),
        ),
        quarter_turns=1,
    )


def _rows(rows: Sequence[Length], labelled: Sequence[Item]) -> list[Item]:
    """Rows of stitching beside the labels, in the part of the card that these leave free."""
    room = min(float(item.bounds.bottom) for item in labelled if isinstance(item, Text)) - 3
    return [Line(LineType.STITCH, row.mm, room, row.mm, -RULED) for row in rows if room - LEAST_ROW >= -RULED]


def _rule(line: TopLine, tape: Tape) -> Rule:
    """The line and its label; what rounding took away is said in words, since a sign would look like a dash."""
    reading = tape.read(line.at)
    return Rule(line.at.mm, line.kind if line.at else None, reading.number, f"{line.name}{reading.remark}")


def _from_the_top(item: Item, end: Fraction, caps: float) -> Item:
    """What was ruled upwards from zero, ruled downwards from the end; texts stay upright."""
    if isinstance(item, Line):
        return replace(item, x1=end - item.x1, x2=end - item.x2)
    assert isinstance(item, Text), "a gauge is of lines and labels"
    return replace(item, x=float(end - item.x) - caps)
