"""What a ladder is, whatever is cut by it: a bed for the sewn tube, and lines across it at every cut."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass
from fractions import Fraction

from ..drawing import USUAL, Anchor, Drawing, Item, Lane, Line, LineType, Look, Mark, Text, path, width_of
from ..lengths import Length
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
BASE = Fraction(TICK, 2) + 1
"""Base line of what is written between the ticks."""


@dataclass(frozen=True, slots=True)
class Lettering:
    """How what is written between ticks and tube is set."""

    size: float
    """In points."""
    rows: tuple[float, ...]
    """Base lines of its rows, in mm from the datum edge, the one next to the tube first."""
    between: Fraction = BASE
    """The base line of what is written between the ticks, in mm."""

    @classmethod
    def of(cls, look: Look) -> Lettering:
        """Two rows in usual print; in large print there is room for one."""
        size = look.size(LABEL)
        return cls(size, (TICK + 6.2, TICK + 1.6)) if size <= LABEL else cls(size, (TICK + 3.6,), BASE + Fraction(1, 2))

    def along(self, *labels: str) -> float:
        """How much of the length it takes to write these side by side, or below each other where there are rows."""
        widths = [width_of(label, self.size) for label in labels]
        return max(widths) if len(self.rows) >= len(labels) else sum(widths) + 4 * (len(labels) - 1)

    def once(self, room: float, *labels: str) -> list[Item]:
        """What is said once, at the ladder's beginning: below each other, or in one row as much as has room."""
        if len(self.rows) >= len(labels):
            return [Text(2, row, label, self.size) for row, label in zip(self.rows, labels, strict=False)]
        for many in range(len(labels), 0, -1):
            text = ", ".join(labels[:many])
            if width_of(text, self.size) + 4 <= room:
                return [Text(2, self.rows[0], text, self.size)]
        return []


def rungs_of(length: Length, needed: int) -> int:
    """As many as one sheet holds, and at least one."""
    return max(1, min(int(LONGEST // length.mm), needed))


def length_of(rungs: int, length: Length) -> Fraction:
    """How long the ladder is, in mm."""
    return max(rungs * length.mm, Fraction(SHORTEST))


def ladder(
    name: str,
    caption: tuple[str, ...],
    *,
    rungs: int,
    length: Length,
    width: Length,
    room_for_cut: Length,
    rung: Callable[[Fraction, int, Fraction], list[Item]],
    inner: tuple[tuple[str, Length], ...] = (),
    look: Look = USUAL,
) -> Drawing:
    """A ladder of ``rungs`` pieces, each ``length`` long, cut off a tube ``width`` wide.

    ``room_for_cut`` is what is free before a cut for the word; ``rung`` draws what is in one, from where it begins,
    its number from 0, and where the tube's bed ends; ``inner`` are marks within the first rung, besides the cuts.
    """
    end, lettering = length_of(rungs, length), Lettering.of(look)
    top = TUBE_FROM + width.mm
    high = top + FAR_TICK + LANE + 1
    cuts = tuple(Mark("start" if i == 0 else f"cut {i}", i * length.mm) for i in range(rungs + 1))
    items: list[Item] = [*path(LineType.CUT, [(0, 0), (end, 0), (end, high), (0, high), (0, 0)])]
    items += [Line(LineType.THIN, 0, y, end, y) for y in (TUBE_FROM, top)]
    if end <= LONGEST:  # on a ladder in pieces it would run through the signs of the joins
        middle = (TUBE_FROM + top) / 2
        items.append(Line(LineType.CENTRE, 0, middle, end, middle))
    for i, mark in enumerate(cuts):
        items += across(LineType.MARK, mark.at, top)
        if i and room_for_cut.mm > width_of("cut", lettering.size) + 3:
            items.append(Text(mark.at - 1.5, lettering.between, "cut", lettering.size, Anchor.END))
        if i < rungs:
            items += rung(mark.at, i, top)
    return Drawing(
        name=name,
        caption=caption,
        up="away from you",
        start=Fraction(0),
        end=end,
        low=0,
        high=high,
        inward=1,
        lane=Lane(top + FAR_TICK, top + FAR_TICK + LANE),
        registration=(AT_EDGE, high - AT_OTHER_EDGE),
        marks=(*cuts[:1], *(Mark(label, at.mm) for label, at in inner), *cuts[1:]),
        items=tuple(items),
    )


def across(kind: LineType, x: Fraction, top: Fraction) -> list[Item]:
    """A line across the ladder: a tick at either side of the tube, and on the tube's bed between them."""
    return [
        Line(LineType.MARK, x, 0, x, TICK),
        Line(kind, x, TUBE_FROM, x, top),
        Line(LineType.MARK, x, top, x, top + FAR_TICK - 1),
    ]
