"""A piece on a sheet: where it lies and how it is turned."""

from __future__ import annotations

from dataclasses import dataclass
from fractions import Fraction

from ..drawing import Item, Line, LineType, Ring
from .area import Area
from .pieces import Piece


@dataclass(frozen=True, slots=True)
class Placed:
    """A piece on a sheet.

    ``x``, ``y`` is where the point of the datum edge at which the piece begins
    lies, in mm from the sheet's lower left corner, as it is to come out of the printer.
    """

    piece: Piece
    x: Fraction
    y: Fraction
    turn: int
    """Anticlockwise, in degrees: 0 or 90."""
    items: tuple[Item, ...]
    """In the drawing's coordinates."""

    @property
    def line_types(self) -> set[LineType]:
        """The types of line that stand on it."""
        return {item.kind for item in self.items if isinstance(item, Line | Ring)}

    @property
    def direction(self) -> tuple[int, int]:
        """The unit vector along the datum edge, on the sheet."""
        return (0, 1) if self.turn else (1, 0)

    @property
    def inward(self) -> tuple[int, int]:
        """The unit vector from the datum edge to the side that the template lies on."""
        side = self.piece.drawing.inward
        return (-side, 0) if self.turn else (0, side)

    @property
    def area(self) -> Area:
        """The whole piece, as it lies on the sheet."""
        length, low, high = self.piece.length, Fraction(self.piece.drawing.low), Fraction(self.piece.drawing.high)
        if self.turn:
            return Area(self.x - high, self.y, self.x - low, self.y + length)
        return Area(self.x, self.y + low, self.x + length, self.y + high)

    def at(self, along: Fraction) -> tuple[Fraction, Fraction]:
        """Where on the sheet the point of the datum edge at ``along`` lies."""
        dx, dy = self.direction
        offset = along - self.piece.start
        return self.x + dx * offset, self.y + dy * offset


def datum_of(piece: Piece, turn: int, left: Fraction, top: Fraction) -> tuple[Fraction, Fraction]:
    """Where the piece's own point (start, 0) comes to lie, its box having this left and top on the sheet."""
    high = Fraction(piece.drawing.high)
    if turn:
        return left + high, top - piece.length
    return left, top - high
