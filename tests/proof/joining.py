"""Joining: pieces of paper taped together by what is printed on them, and by nothing else.

A piece's own coordinates are millimetres in its picture, x + y i. Where it comes
to lie on the table is a turn and a shift, from the two registration marks of a
join: paper does not stretch.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from functools import cached_property

import numpy as np

from .seeing import CutOut, Stroke, registration_marks

_SAME_TOOTH = 0.3
_SAME_SPAN = 0.1
"""By how much two marks may stand farther apart on one piece than on its neighbour, in mm."""
_TOOTH_ROOM = 4.6
"""From a registration mark to the nearest place for a tooth, in mm: its own arms reach 3.5 mm."""


class NoFit(Exception):
    """Two pieces that do not belong beside each other."""


@dataclass(frozen=True)
class Pair:
    """One side of a join: the mark near the datum edge, the one far from it, and the teeth between them."""

    near: complex
    far: complex
    teeth: tuple[float, ...]
    """From the near mark, in mm."""

    @property
    def span(self) -> float:
        return abs(self.far - self.near)

    def meets(self, other: Pair) -> bool:
        """Whether the teeth on this side go on across the match line on the other."""
        return (
            abs(self.span - other.span) < _SAME_SPAN
            and len(self.teeth) == len(other.teeth)
            and all(abs(a - b) < _SAME_TOOTH for a, b in zip(self.teeth, other.teeth, strict=True))
        )


def in_both(some: Sequence[float], others: Sequence[float]) -> list[float]:
    """Those of the heights in ``some`` at which there is one in ``others`` too."""
    return [one for one in some if any(abs(one - other) < 0.1 for other in others)]


@dataclass(frozen=True)
class Lying:
    """Where a piece lies: turned by ``turn`` (of length 1), then shifted."""

    turn: complex = 1
    shift: complex = 0

    def __call__(self, point: complex) -> complex:
        return self.turn * point + self.shift


def beside(left: Pair, lying: Lying, right: Pair) -> Lying:
    """How a piece lies whose left-hand marks cover the right-hand marks of its neighbour."""
    if not left.meets(right):
        raise NoFit(f"teeth at {left.teeth} do not meet teeth at {right.teeth}")
    near, far = lying(left.near), lying(left.far)
    turn = (far - near) / (right.far - right.near)
    turn /= abs(turn)
    return Lying(turn, (near + far) / 2 - turn * (right.near + right.far) / 2)


class Paper:
    """A cut-out piece and what can be seen on it."""

    def __init__(self, piece: CutOut) -> None:
        self.piece = piece
        self.picture = piece.picture
        self.inward = 1 if piece.datum_above else -1

    @cached_property
    def pairs(self) -> tuple[Pair | None, Pair | None]:
        """The marks of the join at its left end and of the one at its right end."""
        marks = registration_marks(self.picture)
        sides: list[Pair | None] = []
        for side in (
            [mark for mark in marks if mark.real < self.picture.width / 2],
            [mark for mark in marks if mark.real >= self.picture.width / 2],
        ):
            if len(side) not in (0, 2):
                raise NoFit(f"{len(side)} registration marks at one end of {self.piece.template} {self.piece.number}")
            near, far = sorted(side, key=lambda mark: mark.imag * self.inward) if side else (None, None)
            sides.append(None if near is None or far is None else Pair(near, far, self._teeth(near, far)))
        return sides[0], sides[1]

    def _teeth(self, near: complex, far: complex) -> tuple[float, ...]:
        """The short strokes across the match line: there on both sides of it, and ended 3 mm away from it."""
        low, high = sorted((near.imag, far.imag))
        x = (near.real + far.real) / 2

        def at(left: float, right: float) -> list[float]:
            seen = self.picture.strokes_down(x + left, low + _TOOTH_ROOM, x + right, high - _TOOTH_ROOM)
            return [stroke.at for stroke in seen]

        long_lines = in_both(at(-4.2, -3.4), at(3.4, 4.2))
        ended = [
            tooth
            for tooth in in_both(at(-2.6, -0.9), at(0.9, 2.6))
            if not any(abs(tooth - line) < 0.1 for line in long_lines)
        ]
        return tuple(sorted(abs(tooth - near.imag) for tooth in ended))

    @cached_property
    def datum_edge(self) -> tuple[complex, complex]:
        """A point of the datum edge as printed, and the unit vector along it."""
        width, height = self.picture.width, self.picture.height
        top, bottom = (0, 3.5) if self.inward > 0 else (height - 3.5, height)
        points = []
        for left in np.arange(2.0, width - 2.0, 1.0):
            seen = self.picture.strokes_down(left, top, left + 0.6, bottom)
            outer = [s for s in (seen[:1] if self.inward > 0 else seen[-1:]) if s.ink < 1]
            points += [complex(left + 0.3, stroke.at) for stroke in outer]
        xs, ys = np.array([p.real for p in points]), np.array([p.imag for p in points])
        near = abs(ys - np.median(ys)) < 0.1
        slope, level = np.polyfit(xs[near], ys[near], 1)
        along = complex(1, slope)
        return complex(0, level), along / abs(along)

    def strokes(self, low: float, high: float) -> list[Stroke]:
        """The lines that stand on the datum edge, seen between two distances inward from it."""
        edge = self.datum_edge[0].imag
        top, bottom = sorted((edge + self.inward * low, edge + self.inward * high))
        return self.picture.strokes_across(0, top, self.picture.width, bottom)

    def on_edge(self, at: float) -> complex:
        """The point of the datum edge at ``at`` in the picture."""
        point, along = self.datum_edge
        return point + along * ((at - point.real) / along.real)


@dataclass(frozen=True)
class Taped:
    """A template taped together: its papers from left to right, and how each lies."""

    papers: tuple[Paper, ...]
    lying: tuple[Lying, ...]

    @property
    def template(self) -> str:
        return self.papers[0].piece.template

    def along(self, paper: int, point: complex) -> float:
        """How far a point of one paper lies along the datum edge from the left edge as printed on the first."""
        first = self.papers[0]
        _, direction = first.datum_edge
        origin = first.on_edge(first.strokes(2, 7)[0].at)
        return ((self.lying[paper](point) - origin) / direction).real

    def strokes(self, low: float, high: float) -> list[list[Stroke]]:
        """For each paper, the lines that stand on the datum edge, measured along the whole template."""
        return [
            [Stroke(self.along(i, paper.on_edge(s.at)), s.ink) for s in paper.strokes(low, high)]
            for i, paper in enumerate(self.papers)
        ]


def tape_together(papers: Sequence[Paper]) -> list[Taped]:
    """All papers of a kit, shuffled, taped together where teeth meet teeth.

    Raises NoFit where a side has no partner, or more than one.
    """
    taped = []
    used = 0
    for paper in papers:
        if paper.pairs[0] is not None:
            continue
        chain, lying = [paper], [Lying()]
        while (right := chain[-1].pairs[1]) is not None:
            partners = [other for other in papers if other.pairs[0] is not None and right.meets(other.pairs[0])]
            if len(partners) != 1 or partners[0] in chain:
                raise NoFit(f"{len(partners)} partners for {paper.piece.template} {chain[-1].piece.number}")
            left = partners[0].pairs[0]
            assert left is not None
            lying.append(beside(right, lying[-1], left))
            chain.append(partners[0])
        taped.append(Taped(tuple(chain), tuple(lying)))
        used += len(chain)
    if used != len(papers):
        raise NoFit(f"{len(papers) - used} pieces belong to nothing")
    return taped
