"""How marks look to the eye: sizes of type and weights of lines. Where a mark stands is no part of it."""

from __future__ import annotations

from dataclasses import dataclass

from .items import LineType


@dataclass(frozen=True, slots=True)
class Look:
    """A way of drawing the same marks: for any eye, or in large print for eyes that need it."""

    name: str
    least: float
    """No type is smaller than this, in points; nothing is raised by a look that asks for none."""
    grown: float
    """How many times its usual size type has that would be larger than the least anyway."""
    heavier: float
    """How many times its usual width a line has."""

    def size(self, points: float) -> float:
        """What type of this usual size, in points, is set in."""
        return max(points * self.grown, self.least)

    def width(self, kind: LineType) -> float:
        """Width of a line of this type, in mm."""
        return kind.width * self.heavier

    def dashes(self, kind: LineType) -> tuple[float, ...]:
        """Lengths of its dashes and gaps, in mm: they go with the width, as ISO 128-2 has them."""
        return tuple(length * self.heavier for length in kind.dashes)


USUAL = Look("usual", 0.0, 1.0, 1.0)
LARGE = Look("large print", 18.0, 1.15, 2.0)
"""Large print. Type of 18 points at the least: American Printing House for the Blind, guidelines for print document
design (value from memory). Outlines of 1 mm, all other lines twice as heavy too: our choice, because what differs by
its weight must go on doing so."""
