"""A ladder: the long sewn tube is laid on it and cut into pieces of one length, loops or tabs."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from fractions import Fraction

from ..drawing import Anchor, Drawing, Item, Lane, Line, LineType, Mark, Text, path, width_of
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


@dataclass(frozen=True, slots=True)
class Ladder:
    """What is cut off a tube, all in mm."""

    name: str
    length: Fraction
    """Of one piece."""
    width: Fraction
    """Of the tube."""
    needed: int
    near: Fraction
    """From the start of a piece to its first line, a seam."""
    far: Fraction
    """From its last line to the end of a piece."""
    far_kind: LineType
    near_label: str
    far_label: str
    middle: str = "middle"


def draw_ladder(ladder: Ladder) -> Drawing:
    """As many rungs as one sheet holds, and at least one."""
    rungs = max(1, min(int(LONGEST // ladder.length), ladder.needed))
    end = max(rungs * ladder.length, Fraction(SHORTEST))
    top = TUBE_FROM + ladder.width
    high = top + FAR_TICK + LANE + 1
    marks = tuple(Mark("start" if i == 0 else f"cut {i}", i * ladder.length) for i in range(rungs + 1))
    items: list[Item] = [*path(LineType.CUT, [(0, 0), (end, 0), (end, high), (0, high), (0, 0)])]
    items += [Line(LineType.THIN, 0, y, end, y) for y in (TUBE_FROM, top)]
    middle = (TUBE_FROM + top) / 2
    items += [Line(LineType.CENTRE, 0, middle, end, middle)]
    for i, mark in enumerate(marks):
        items += _across(LineType.MARK, mark.at, top)
        if i and ladder.far > width_of("cut", LABEL) + 3:
            items.append(Text(mark.at - 1.5, TICK / 2 + 1, "cut", LABEL, Anchor.END))
        if i < rungs:
            items += _rung(ladder, mark.at, i, top)
    return Drawing(
        name=ladder.name,
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


def _across(kind: LineType, x: Fraction, top: Fraction) -> Iterator[Item]:
    """A line across the ladder: a tick at either side of the tube, and on the tube's bed between them."""
    yield Line(LineType.MARK, x, 0, x, TICK)
    yield Line(kind, x, TUBE_FROM, x, top)
    yield Line(LineType.MARK, x, top, x, top + FAR_TICK - 1)


def _rung(ladder: Ladder, start: Fraction, index: int, top: Fraction) -> Iterator[Item]:
    """One piece's seam, turn and middle; its labels where there is room for them, else said once, at the beginning."""
    first, last = start + ladder.near, start + ladder.length - ladder.far
    between = last - first
    yield from _across(LineType.STITCH, first, top)
    yield from _across(ladder.far_kind, last, top)
    middle = (first + last) / 2
    yield Line(LineType.THIN, middle, 0, middle, TICK / 2)
    yield Line(LineType.THIN, middle, top, middle, top + FAR_TICK / 2)
    if between > width_of(ladder.middle, LABEL) + 3:
        yield Text(middle, TICK / 2 + 1, ladder.middle, LABEL, Anchor.MIDDLE)
    if max(width_of(label, LABEL) for label in (ladder.near_label, ladder.far_label)) < between - 2:
        yield Text(first, _LOW_ROW, ladder.near_label, LABEL)
        yield Text(last, _HIGH_ROW, ladder.far_label, LABEL, Anchor.END)
    elif index == 0:
        yield Text(2, _LOW_ROW, ladder.near_label, LABEL)
        yield Text(2, _HIGH_ROW, ladder.far_label, LABEL)
