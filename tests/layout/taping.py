"""Tapings simulated: pieces as rigid sheets on a table, laid one after another by their registration marks.

Nothing is taken from the budget's formulas but the limits of each single step. A place
on the table is a complex number; a sheet lies turned by a number of length 1 and shifted.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from fractions import Fraction
from typing import Any

import numpy as np
from numpy.typing import NDArray

from templategen.drawing import Drawing
from templategen.layout.pieces import Join, Piece
from templategen.layout.taping import Limits

Reals = NDArray[np.float64]
Points = NDArray[np.complex128]


def cut(drawing: Drawing, places: Sequence[Fraction]) -> tuple[Piece, ...]:
    """The pieces of ``drawing`` with match lines at ``places``, wherever those are."""
    joins = [Join(i, at, False) for i, at in enumerate(places)]
    ends: list[Join | None] = [None, *joins, None]
    return tuple(Piece(drawing, i + 1, len(joins) + 1, ends[i], ends[i + 1]) for i in range(len(joins) + 1))


@dataclass(frozen=True)
class Draws:
    """What goes wrong in each of many tapings, as shares of the limits from -1 to 1: a row for each taping."""

    accepted: Reals
    """By axis: across the sheet, along it."""
    eye: Reals
    rule: Reals
    near: Reals
    """By join: along, at the registration mark that is named first; then at the other."""
    far: Reals
    near_across: Reals
    far_across: Reals
    line: Reals
    pencil: Reals
    closing: Reals
    """The reading of the closing length: the rule's share, and the eye's."""

    @classmethod
    def random(cls, count: int, joins: int, seed: int) -> Draws:
        """Every step by itself, anywhere between its limits: JCGM 100:2008, 4.3.7."""
        rng = np.random.default_rng(seed)

        def some(*columns: int) -> Reals:
            return rng.uniform(-1, 1, (count, *columns))

        by_join = [some(joins) for _ in range(4)]
        return cls(some(2), some(2), some(), *by_join, some(), some(), some(2))

    @classmethod
    def extreme(cls, scale: int, near: int, far: int, across: int, pen: int, joins: int) -> Draws:
        """One taping with every step at a limit; at all its joins the same way."""

        def all_of(sign: int, *columns: int) -> Reals:
            return np.full((1, *columns), float(sign))

        slips = [all_of(sign, joins) for sign in (near, far, across, across)]
        return cls(
            all_of(scale, 2), all_of(scale, 2), all_of(scale), *slips, all_of(pen), all_of(pen), all_of(0, 2)
        )


@dataclass(frozen=True)
class Taped:
    """Where the pieces of one template came to lie in each taping."""

    pieces: tuple[Piece, ...]
    turns: tuple[int, ...]
    scale: Reals
    """Printed over true, by axis."""
    direction: list[Any]
    shift: list[Any]

    def at(self, x: Fraction, y: float = 0.0) -> Points:
        """Where the point of the template lies, on the piece that stays in sight there."""
        i = sum(piece.right.at < x for piece in self.pieces if piece.right)
        return self._lies(i, self.printed(i, x, y))

    def printed(self, i: int, x: Fraction, y: float) -> Points:
        """The point in the piece's own coordinates, as it came out of the printer."""
        axis = 1 if self.turns[i] else 0
        along = float(x - self.pieces[i].start) * self.scale[:, axis]
        return np.asarray(along + 1j * y * self.scale[:, 1 - axis])

    def _lies(self, i: int, own: Points) -> Points:
        return np.asarray(self.direction[i] * own + self.shift[i])

    def from_zero(self, at: Fraction) -> Points:
        """From the template's zero to the mark, seen along the datum edge of the piece that bears the zero."""
        i = sum(piece.right.at < 0 for piece in self.pieces if piece.right)
        return np.asarray((self.at(at) - self.at(Fraction(0))) / self.direction[i])

    def straight(self, at: Fraction) -> Reals:
        """The same along the template, laid to a straight edge so that its turns are pressed out."""
        low, high = min(Fraction(0), at), max(Fraction(0), at)
        way = np.zeros(len(self.scale))
        for i, piece in enumerate(self.pieces):
            left = piece.left.at if piece.left else piece.start
            right = piece.right.at if piece.right else piece.end
            stretch = float(max(Fraction(0), min(right, high) - max(left, low)))
            way += stretch * self.scale[:, 1 if self.turns[i] else 0]
            if piece.right and low < right < high:
                beside = self._lies(i, self.printed(i, right, 0.0)), self._lies(i + 1, self.printed(i + 1, right, 0.0))
                way += ((beside[1] - beside[0]) / self.direction[i]).real
        return way if at >= 0 else -way


def tape(pieces: Sequence[Piece], turns: Sequence[int], draws: Draws, limits: Limits, corrected: bool = False) -> Taped:
    """Print every piece, and lay each by its registration marks on those of the one before it."""
    accepted = 0.0 if corrected else limits.accepted
    read = accepted * draws.accepted + limits.eye * draws.eye + limits.rule_over(100.0) * draws.rule[:, None]
    count = len(draws.rule)
    direction, shift = [np.ones(count, complex)], [np.zeros(count, complex)]
    taped = Taped(tuple(pieces), tuple(turns), 1 + read / 100, direction, shift)
    heights = [float(y) for y in pieces[0].drawing.registration]
    for i, piece in enumerate(pieces[:-1]):
        assert piece.right is not None
        slips = (
            draws.near[:, i] + 1j * draws.near_across[:, i],
            draws.far[:, i] + 1j * draws.far_across[:, i],
        )
        lying = [direction[i] * (taped.printed(i, piece.right.at, y) + limits.slip * slip) + shift[i]
                 for y, slip in zip(heights, slips, strict=True)]  # fmt: skip
        own = [taped.printed(i + 1, piece.right.at, y) for y in heights]
        turned = (lying[1] - lying[0]) / (own[1] - own[0])
        turned = turned / abs(turned)
        direction.append(turned)
        shift.append((lying[0] + lying[1]) / 2 - turned * (own[0] + own[1]) / 2)
    return taped


def pen(draws: Draws, limits: Limits) -> Reals:
    """How far the pencil's line lies from the middle of the printed one."""
    return np.asarray(limits.line * draws.line + limits.pencil * draws.pencil)
