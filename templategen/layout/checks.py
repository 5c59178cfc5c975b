"""Check lengths: round figures over two or three joins, and the whole, to be proved with a rule once all is taped.

One length over each join would hide what this is about: an error that is made the
same way at every join. Over two or three it has come to something, and one steel
rule still does.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from fractions import Fraction
from math import ceil

from ..drawing import Drawing
from ..lengths import MM_PER_INCH, Length, Tape
from .error_budget import closing_tolerance, step_of
from .pieces import Join, Piece

ROW = Fraction(13, 5)
"""From the lane's foot up to where check lengths are drawn, in mm."""
CLEAR_OF_A_JOIN = (Fraction(10), Fraction(6))
"""From a tick to the nearest match line that it spans, in mm, and what will do on a short piece: our choice. The paper
is single there, and lies flat."""
_ROUND = {"inch": MM_PER_INCH, "metric": Fraction(10)}
"""Check lengths are whole multiples of this, in mm: the figures that stand large on a rule."""
_AT_LEAST = {"inch": 4 * MM_PER_INCH, "metric": Fraction(100)}
"""No shorter than this, in mm, where there is room: our choice, because a rule can be laid straight along it."""


@dataclass(frozen=True, slots=True)
class Check:
    """A length over joins, from a place on one piece to a place on another, in the drawing's coordinates."""

    first: Piece
    last: Piece
    start: Fraction
    end: Fraction
    joins: tuple[Join, ...]
    """Those that it spans."""
    whole: bool
    """Whether it runs from the template's one end to its other; it needs no ticks then."""
    shown: str
    """What a tape reads: "9 in"."""
    closing: str
    """How far off is still good: "1/32 in"."""

    @property
    def length(self) -> Fraction:
        """In mm."""
        return self.end - self.start

    @property
    def height(self) -> Fraction:
        """The height of the row that it is drawn in."""
        return row_of(self.first.drawing)

    @property
    def over(self) -> str:
        """The letters of the joins that it spans: "A, B"."""
        labels = [join.label for join in self.joins]
        return ", ".join(labels) if len(labels) < 4 else f"{labels[0]} to {labels[-1]}"

    @property
    def text(self) -> str:
        """The whole of it in words, for who does not see the ticks."""
        if self.whole:
            return f"{self.shown} from end to end, give or take {self.closing}, over {self._named}"
        ends = f"from the tick on piece {self.first.number} to the tick on piece {self.last.number}"
        return f"{self.shown} {ends}, give or take {self.closing}, over {self._named}"

    @property
    def _named(self) -> str:
        return f"join{'s' if len(self.joins) > 1 else ''} {self.over}"

    @property
    def said_between(self) -> tuple[str, ...]:
        """What is written on a piece that it only crosses: the longer wordings first."""
        ends = f"from piece {self.first.number} to piece {self.last.number}"
        return (f"here runs the check length of {self.shown} {ends}", f"check length {ends}", "check length")

    def said_on(self, piece: Piece) -> tuple[str, ...]:
        """What is written at the end of it that ``piece`` holds: the longer wordings first."""
        if self.whole:
            figure = f"{self.shown} (± {self.closing})"
            return f"taped, from end to end: {figure}", f"end to end: {figure}", self.shown
        figure = f"{self.shown} ± {self.closing}"
        other = self.last if piece.number == self.first.number else self.first
        there = f"to the tick on piece {other.number}"
        return (
            f"{figure} from here {there} ({self.over})",
            f"{figure} {there} ({self.over})",
            f"{figure} to piece {other.number} ({self.over})",
            f"{figure} to piece {other.number}",
            f"{self.shown} to piece {other.number}",
            self.shown,
        )


def row_of(drawing: Drawing) -> Fraction:
    """The height at which a drawing's check lengths are drawn."""
    return Fraction(drawing.lane.low) + ROW


def checks_of(pieces: Sequence[Piece], tape: Tape) -> tuple[Check, ...]:
    """The check lengths over the joins of a template's ``pieces``, from left to right, and last the whole.

    The joins are taken two by two; where their number is odd the last three together.
    A length that no piece has room for is left out; the whole is always there.
    """
    if len(pieces) < 2:
        return ()
    joins = len(pieces) - 1
    starts = list(range(0, joins - 1, 2)) or [0]
    groups = [(start, joins if start == starts[-1] else start + 2) for start in starts]
    found = [check for first, last in groups if (check := _over(pieces[first], pieces[last], pieces, tape))]
    drawing = pieces[0].drawing
    return *found, _check(pieces, pieces[0], pieces[-1], drawing.start, drawing.end, tape, True)


def half_of(piece: Piece, right: bool) -> tuple[Fraction, Fraction]:
    """The half of ``piece`` that what stands at its right or left end may take, from match line to match line."""
    start = piece.left.at if piece.left else piece.start
    end = piece.right.at if piece.right else piece.end
    middle = (start + end) / 2
    return (middle, end) if right else (start, middle)


def _over(first: Piece, last: Piece, pieces: Sequence[Piece], tape: Tape) -> Check | None:
    """A round length from the right half of one piece to the left half of another: the shortest that will do."""
    assert first.right and last.left
    unit = _ROUND[tape.units]
    low, high = half_of(first, True)[0], half_of(last, False)[1]
    left, right = first.right.at, last.left.at
    for least, clear in [(_AT_LEAST[tape.units], CLEAR_OF_A_JOIN[0]), *((unit, each) for each in CLEAR_OF_A_JOIN)]:
        length = max(least, ceil((right - left + 2 * clear) / unit) * unit)
        # As far from the one join as from the other, if the pieces are long enough.
        start = (left + right - length) / 2
        start = min(max(start, low, right + clear - length), left - clear, high - length)
        if start >= low and start + length >= right + clear:
            return _check(pieces, first, last, start, start + length, tape, False)
    return None


def _check(
    pieces: Sequence[Piece], first: Piece, last: Piece, start: Fraction, end: Fraction, tape: Tape, whole: bool
) -> Check:
    joins = tuple(_joins(pieces[first.number - 1 : last.number - 1]))
    rule, drawing = Tape(tape.units, Length(step_of(tape))), first.drawing
    off = closing_tolerance(drawing, len(joins), 0 if whole else row_of(drawing), rule.step.mm)
    closing = rule.read(Length(Fraction(off))).plain
    return Check(first, last, start, end, joins, whole, tape.show(Length(end - start)), closing)


def _joins(pieces: Sequence[Piece]) -> Iterator[Join]:
    for piece in pieces:
        assert piece.right
        yield piece.right
