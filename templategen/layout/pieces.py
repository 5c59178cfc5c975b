"""Pieces: what a template becomes when it is longer than the sheet.

Neighbouring pieces overlap. They meet at a match line, which is drawn on both:
the left-hand piece runs on beyond it, and that tongue is where the next piece is
glued; the right-hand piece begins a little before it, and is trimmed along it.
"""

from __future__ import annotations

from dataclasses import dataclass
from fractions import Fraction

from ..drawing import Drawing, Mark

TONGUE = Fraction(10)
"""Length of the glued tongue, in mm: our choice, the width of a strip of office tape and more."""
TRIMMED = Fraction(6)
"""Length trimmed off at a match line, in mm: half of a registration mark and 2 mm."""


@dataclass(frozen=True, slots=True)
class Join:
    """Where two neighbouring pieces meet."""

    number: int
    """Counted over the whole kit, from 0: no two joins of a kit are alike."""
    at: Fraction
    crowded: bool
    """Whether marks stood so close that no place between them was clear of everything."""

    @property
    def label(self) -> str:
        """A, B, ... Z, AA, AB ...: without I and O, which read as numbers."""
        letters = "ABCDEFGHJKLMNPQRSTUVWXYZ"
        label, rest = "", self.number + 1
        while rest:
            rest, letter = divmod(rest - 1, len(letters))
            label = letters[letter] + label
        return label


@dataclass(frozen=True, slots=True)
class Piece:
    """A stretch of a drawing that fits one sheet."""

    drawing: Drawing
    number: int
    of: int
    left: Join | None
    right: Join | None

    @property
    def start(self) -> Fraction:
        return self.left.at - TRIMMED if self.left else self.drawing.start

    @property
    def end(self) -> Fraction:
        return self.right.at + TONGUE if self.right else self.drawing.end

    @property
    def length(self) -> Fraction:
        return self.end - self.start

    @property
    def joins(self) -> tuple[Join, ...]:
        return tuple(join for join in (self.left, self.right) if join)

    @property
    def shows(self) -> tuple[Fraction, Fraction]:
        """From where to where it shows the drawing: from match line to match line.

        Beyond them it is blank but for its outline and its joins; where a join is
        crowded, what lies whole in the overlap is shown on both pieces.
        """
        left = self.left.at if self.left and not self.left.crowded else self.start
        right = self.right.at if self.right and not self.right.crowded else self.end
        return left, right

    @property
    def marks(self) -> tuple[Mark, ...]:
        """The marks that stand on this piece."""
        left, right = self.shows
        return tuple(mark for mark in self.drawing.marks if left <= mark.at <= right)
