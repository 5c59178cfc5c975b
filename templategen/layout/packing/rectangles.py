"""Rectangles in whole micrometres, each taken with the gap that it keeps to the next."""

from __future__ import annotations

from collections.abc import Callable, Iterator, Sequence
from dataclasses import dataclass
from fractions import Fraction
from typing import NamedTuple

GAP = Fraction(2)
"""Between pieces on a sheet, in mm: their outlines stay apart and scissors get in between."""
MICROMETRES = 1000


class Size(NamedTuple):
    """Width and height in micrometres, a gap on one side of each included."""

    width: int
    height: int

    @classmethod
    def of_piece(cls, width: Fraction, height: Fraction) -> Size:
        """The size of a piece, given in mm; rounded up."""
        return cls(-int(-(width + GAP) * MICROMETRES // 1), -int(-(height + GAP) * MICROMETRES // 1))

    @classmethod
    def of_sheet(cls, width: Fraction, height: Fraction) -> Size:
        """The size of a sheet's live area, given in mm; rounded down."""
        return cls(int((width + GAP) * MICROMETRES // 1), int((height + GAP) * MICROMETRES // 1))

    @property
    def turned(self) -> Size:
        return Size(self.height, self.width)

    @property
    def area(self) -> int:
        return self.width * self.height

    def fits(self, other: Size) -> bool:
        """Whether it fits into ``other`` as it lies."""
        return self.width <= other.width and self.height <= other.height


class Spot(NamedTuple):
    """Where a rectangle lies: on which sheet, its left and top from the live area's left and top edge, in mm."""

    sheet: int
    left: Fraction
    top: Fraction
    turned: bool
    """By a quarter, from how it was given."""


class Free(NamedTuple):
    """A free rectangle of a sheet, in micrometres."""

    left: int
    top: int
    width: int
    height: int

    @property
    def size(self) -> Size:
        return Size(self.width, self.height)


class Slot(NamedTuple):
    """A place for one piece of a run: its left and top, and how long it is, gap included."""

    left: int
    top: int
    length: int
    upright: bool
    """Whether its length runs down the sheet."""


def cuts(free: Free, size: Size) -> Iterator[tuple[Free, Free]]:
    """What is left of ``free`` beside and under a rectangle in its corner, for either way of cutting it on."""
    right, below = free.width - size.width, free.height - size.height
    yield (
        Free(free.left + size.width, free.top, right, free.height),
        Free(free.left, free.top + size.height, size.width, below),
    )
    if right and below:
        yield (
            Free(free.left + size.width, free.top, right, size.height),
            Free(free.left, free.top + size.height, free.width, below),
        )


@dataclass(frozen=True, slots=True)
class Strips:
    """How the pieces of a run lie in a free rectangle: equally deep, side by side, all the same way round."""

    depth: int
    shortest: int
    worth: Callable[[int], int]
    """How much of the run a slot of this length is good for."""
    liking: Callable[[int], int]
    """How much a slot of this length is liked: what decides which way round slots lie."""

    def slots(self, free: Free) -> list[Slot]:
        """The places for pieces, lying the way that is liked better; down the sheet where both are liked as much."""
        count, length, upright = self._lying(free)
        right, down = (self.depth, 0) if upright else (0, self.depth)
        return [Slot(free.left + i * right, free.top + i * down, length, upright) for i in range(count)]

    def room(self, free: Sequence[Free]) -> int:
        """How much of the run the free rectangles are good for."""
        return self._sum(free, self.worth)

    def liked(self, free: Sequence[Free]) -> int:
        """How much the slots in the free rectangles are liked."""
        return self._sum(free, self.liking)

    def _sum(self, free: Sequence[Free], of: Callable[[int], int]) -> int:
        """Of all slots; those of one rectangle are alike, and counted rather than listed."""
        lying = map(self._lying, free)
        return sum(count * of(length) for count, length, _ in lying if count)

    def _lying(self, free: Free) -> tuple[int, int, bool]:
        """How many slots there are in a free rectangle, how long each is, and whether they run down the sheet."""
        down, across = free.width // self.depth, free.height // self.depth
        upright = down * self._liked(free.height) >= across * self._liked(free.width)
        count, length = (down, free.height) if upright else (across, free.width)
        return (count if length >= self.shortest else 0), length, upright

    def _liked(self, length: int) -> int:
        return self.liking(length) if length >= self.shortest else 0


def in_mm(micrometres: int) -> Fraction:
    return Fraction(micrometres, MICROMETRES)
