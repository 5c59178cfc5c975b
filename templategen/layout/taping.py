"""Taping: what each step of making a template whole may be out, and how joins add it up."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from fractions import Fraction
from math import asin, ceil, cos, pi, sin

from ..drawing import Drawing, LineType, Mark, Number
from ..misprints import TOLERANCE
from .furniture import BAR
from .pieces import Piece


@dataclass(frozen=True, slots=True)
class Limits:
    """How far out each step of the work may be, in mm."""

    accepted: float = float(BAR * TOLERANCE)
    """A bar of 100 mm passes that reads this much more or less: what the work order tells people to accept."""
    eye: float = 0.25
    """Misreading. Our choice, because a rule divided in half millimetres is read to the nearer half."""
    rule: tuple[float, float] = (0.3, 0.2)
    """A rule of class II is true to 0.3 + 0.2 L mm between any two of its marks, L in metres rounded up: OIML
    R 35-1:2007; the same in UK SI 2016/1153, schedule 1I, paragraph 2, which adds 0.2 where the rule's end is used."""
    slip: float = LineType.THIN.width
    """At each registration mark of a join, along and across. Our choice, because lines that are parted by more
    than their own width show white between them, and a ring of 5 mm drawn out by that is seen not to be round."""
    line: float = LineType.MARK.width / 2
    """Half of the width of a mark's line: a point on the line is taken for its middle."""
    pencil: float = 0.35
    """Half of a pencil's line: a lead of 0.7 mm, ISO 9177-1 (value from memory)."""

    def rule_over(self, length: float) -> float:
        """How far a rule may be out over ``length``, in mm."""
        return self.rule[0] + self.rule[1] * ceil(length / 1000) if length else 0.0

    @property
    def scale(self) -> float:
        """By how much of itself a print may be too long or too short whose bars have passed."""
        bar = float(BAR)
        return (self.accepted + self.eye + self.rule_over(bar)) / bar


USUAL = Limits()


def far_mark(drawing: Drawing) -> Mark:
    """The mark farthest from the template's zero; the farther end of a template that has none."""
    ends = (Mark("end", drawing.end), Mark("end", drawing.start))
    return max(drawing.marks or ends, key=lambda mark: abs(mark.at))


def span_of(drawing: Drawing) -> float:
    """How far the two registration marks of a join stand apart, in mm."""
    near, far = (float(y) for y in drawing.registration)
    return abs(far - near)


def slips_at(drawing: Drawing, height: Number, limits: Limits = USUAL) -> list[float]:
    """How far a join moves what lies at ``height`` of the next piece along, in mm: for the slip at each of its two
    registration marks. Between them the two are at most one slip together; at the datum edge, height 0, more."""
    near, far = (float(y) for y in drawing.registration)
    return [abs((float(height) - other) / (far - near)) * limits.slip for other in (far, near)]


@dataclass(frozen=True, slots=True)
class Way:
    """The way from a template's zero to one of its marks, over its pieces."""

    by_turn: dict[int, Fraction]
    """How much of it runs over pieces that lie so on their sheets."""
    lengths: tuple[float, ...]
    """How much of it runs over each piece that it touches, from zero on."""
    beyond: tuple[float, ...]
    """For each join on it, how far it goes on beyond."""

    @classmethod
    def to(cls, mark: Mark, pieces: Sequence[Piece], turns: Sequence[int]) -> Way:
        low, high = min(Fraction(0), mark.at), max(Fraction(0), mark.at)
        by_turn: dict[int, Fraction] = {}
        lengths: list[Fraction] = []
        for piece, turn in zip(pieces, turns, strict=True):
            left = piece.left.at if piece.left else piece.start
            right = piece.right.at if piece.right else piece.end
            stretch = min(right, high) - max(left, low)
            if stretch > 0:
                by_turn[turn] = by_turn.get(turn, Fraction(0)) + stretch
                lengths.append(stretch)
        if mark.at < 0:
            lengths.reverse()
        beyond = [sum(lengths[i:], Fraction(0)) for i in range(1, len(lengths))]
        return cls(by_turn, tuple(map(float, lengths)), tuple(map(float, beyond)))

    @property
    def joins(self) -> int:
        return len(self.beyond)

    def turned(self, drawing: Drawing, limits: Limits) -> tuple[float, float]:
        """The most that is lost along, and gained sideways, where every join turns as far as it can, the same way."""
        angle = asin(min(1.0, 2 * limits.slip / (span_of(drawing) * (1 - limits.scale))))
        lever = max(abs(float(y)) for y in drawing.registration)
        sideways, slip = limits.slip + lever * (1 - cos(angle)), sum(slips_at(drawing, 0, limits))
        along, across = 0.0, 0.0
        for passed, length in enumerate(self.lengths):
            whole = length * (1 + limits.scale)
            along += whole * (1 - cos(min(passed * angle, pi)))
            across += whole * sin(min(passed * angle, pi / 2))
            if passed:
                before = sin(min((passed - 1) * angle, pi / 2))
                along += sideways * before
                across += sideways + slip * before
        return along, across
