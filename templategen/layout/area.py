"""What of a page can be drawn on."""

from __future__ import annotations

from dataclasses import dataclass
from fractions import Fraction


@dataclass(frozen=True, slots=True)
class Area:
    """An upright rectangle on a page, in millimetres from the page's lower left corner."""

    left: Fraction
    bottom: Fraction
    right: Fraction
    top: Fraction

    @property
    def width(self) -> Fraction:
        return self.right - self.left

    @property
    def height(self) -> Fraction:
        return self.top - self.bottom

    def inset(self, by: Fraction) -> Area:
        """The same, smaller by this much on every side."""
        return Area(self.left + by, self.bottom + by, self.right - by, self.top - by)
