"""Joining: pieces of paper taped together by what is printed on them, and by nothing else.

A piece's own coordinates are millimetres in its picture, x + y i. Where it comes
to lie on the table is a turn and a shift, from the two registration marks of a
join: paper does not stretch.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, replace
from functools import cached_property

import numpy as np

from .seeing import CutOut, Stroke, registration_marks, upside_down

_SAME_TOOTH = 0.3
_SAME_SPAN = 0.1
"""By how much two marks may stand farther apart on one piece than on its neighbour, in mm."""
_TOOTH_ROOM = 4.6
"""From a registration mark to the nearest place for a tooth, in mm: its own arms reach 3.5 mm."""


_SQUARE, _POINT, _SLANT = 2.5, 4.0, 3.25
"""From the match line, in mm: to a square end, to the tip of a point, and to the middle of its sides."""
_BESIDE_AN_END = 0.7
_UPRIGHT = 0.97
_HEAVIEST = 1.25
"""An outline's ink, in mm: it is 1 mm wide in large print."""


class NoFit(Exception):
    """Two pieces that do not belong beside each other."""


Link = tuple[float, float]
"""Two teeth that are closed to one figure, by their heights."""


@dataclass(frozen=True)
class Pair:
    """One end of a piece: the upper registration mark, the lower, the teeth between them and how they are closed.

    Upper and lower as the piece lies, which may be upside down. Heights are in mm down from the upper mark.
    """

    upper: complex
    lower: complex
    edges: Link
    """How far the piece's own edges lie from the upper mark, the upper one and the lower."""
    teeth: tuple[float, ...]
    square: tuple[Link, ...]
    """The links that are closed square, on the side of the match line that stays in sight."""
    pointed: tuple[Link, ...]
    """Those that are closed with a point."""

    @property
    def span(self) -> float:
        return abs(self.lower - self.upper)

    @property
    def links(self) -> tuple[Link, ...]:
        """The teeth, taken two by two."""
        return tuple(zip(self.teeth[::2], self.teeth[1::2], strict=False))

    def strangers(self, other: Pair) -> list[float]:
        """How far each tooth of either side, whose neighbour's is not beside it, is from the nearest there, in mm.

        The two lie mark on mark.
        """
        return [
            off
            for some, others in ((self.teeth, other.teeth), (other.teeth, self.teeth))
            for tooth in some
            if (off := min((abs(tooth - one) for one in others), default=self.span)) >= _SAME_TOOTH
        ]

    def marks_off(self, other: Pair) -> float:
        """By how much the marks of the two miss each other when the pieces lie edge to edge, in mm."""
        upper = abs(self.edges[0] - other.edges[0])
        lower = abs((self.edges[1] - self.span) - (other.edges[1] - other.span))
        return max(upper, lower)

    def meets(self, other: Pair) -> bool:
        """Whether the piece at whose right end this is goes on in the one at whose left end the other is.

        Marks lie on marks, every tooth goes on across the match line, and the figures close: square on this
        side, pointed on that.
        """
        return (
            abs(self.span - other.span) < _SAME_SPAN
            and len(self.teeth) == len(other.teeth) > 0
            and not self.strangers(other)
            and self.square == self.links
            and other.pointed == other.links
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
    upper, lower = lying(left.upper), lying(left.lower)
    turn = (lower - upper) / (right.lower - right.upper)
    turn /= abs(turn)
    return Lying(turn, (upper + lower) / 2 - turn * (right.upper + right.lower) / 2)


def _two(heights: tuple[float, ...]) -> Link:
    first, last = heights
    return first, last


class Paper:
    """A cut-out piece and what can be seen on it."""

    def __init__(self, piece: CutOut) -> None:
        self.piece = piece
        self.picture = piece.picture
        self.inward = 1 if piece.datum_above else -1

    def turned_about(self) -> Paper:
        """The same piece, laid upside down."""
        return Paper(replace(self.piece, picture=upside_down(self.picture), datum_above=self.inward < 0))

    @cached_property
    def pairs(self) -> tuple[Pair | None, Pair | None]:
        """The marks of the join at its left end and of the one at its right end."""
        marks = registration_marks(self.picture)
        middle = self.picture.width / 2
        return (
            self._pair([mark for mark in marks if mark.real < middle], 1),
            self._pair([mark for mark in marks if mark.real >= middle], -1),
        )

    def _pair(self, marks: list[complex], inside: int) -> Pair | None:
        """The join whose marks these are; what stays in sight lies to the right of it where ``inside`` is 1."""
        if not marks:
            return None
        if len(marks) != 2:
            raise NoFit(f"{len(marks)} registration marks at one end of {self.piece.template} {self.piece.number}")
        upper, lower = sorted(marks, key=lambda mark: mark.imag)
        x = (upper.real + lower.real) / 2
        teeth = self._teeth(x, upper.imag, lower.imag)
        links = tuple(zip(teeth[::2], teeth[1::2], strict=False))

        def below(heights: tuple[float, ...]) -> tuple[float, ...]:
            return tuple(height - upper.imag for height in heights)

        return Pair(
            upper,
            lower,
            self._edges(x + inside * 6.5, upper.imag),
            below(teeth),
            tuple(_two(below(link)) for link in links if self._is_square(x, link, inside)),
            tuple(_two(below(link)) for link in links if self._is_pointed(x, link, inside)),
        )

    def _edges(self, x: float, upper: float) -> Link:
        """How far the piece's edges lie from the upper mark, seen beside a join."""
        seen = self.picture.strokes_down(x - 1.5, 0, x + 1.5, self.picture.height)
        return abs(seen[0].at - upper), abs(seen[-1].at - upper)

    def _teeth(self, x: float, upper: float, lower: float) -> tuple[float, ...]:
        """The short strokes across the match line: there on both sides of it, and ended 3 mm away from it."""

        def at(left: float, right: float) -> list[float]:
            seen = self.picture.strokes_down(x + left, upper + _TOOTH_ROOM, x + right, lower - _TOOTH_ROOM)
            return [stroke.at for stroke in seen]

        long_lines = in_both(at(-6.0, -5.0), at(5.0, 6.0))
        return tuple(
            sorted(
                tooth
                for tooth in in_both(at(-2.1, -0.9), at(0.9, 2.1))
                if not any(abs(tooth - line) < 0.1 for line in long_lines)
            )
        )

    def _is_square(self, x: float, link: tuple[float, ...], inside: int) -> bool:
        """Whether a stroke runs from the one tooth to the other where teeth end, and nothing beyond it."""
        return self._across(x, link, inside, 0.1, 0.9) == [_SQUARE]

    def _is_pointed(self, x: float, link: tuple[float, ...], inside: int) -> bool:
        """Whether two strokes run together from where teeth end: at half their length they stand half as far apart."""
        middle, half = (link[0] + link[1]) / 2, (link[1] - link[0]) / 2
        left, right = sorted((x + inside * (_SLANT - 0.05), x + inside * (_SLANT + 0.05)))
        seen = self.picture.strokes_down(left, link[0] + 0.2, right, link[1] - 0.2)
        sides = len(seen) == 2 and all(abs(abs(stroke.at - middle) - half / 2) < 0.12 for stroke in seen)
        return sides and self._across(x, link, inside, 0.1, 0.9) == []

    def _across(self, x: float, link: tuple[float, ...], inside: int, low: float, high: float) -> list[float]:
        """How far from the match line upright strokes stand that run from tooth to tooth, beyond the teeth's middle."""
        height = link[1] - link[0]
        left, right = sorted((x + inside * 1.2, x + inside * (_POINT + _BESIDE_AN_END)))
        # The sides of a small point nearly fill it where lines are heavy; an upright stroke fills its whole height.
        box = left, link[0] + low * height, right, link[0] + high * height
        seen = self.picture.strokes_across(*box, ink=_UPRIGHT)
        return [round(abs(stroke.at - x) * 10) / 10 for stroke in seen]

    @cached_property
    def datum_edge(self) -> tuple[complex, complex]:
        """A point of the datum edge as printed, and the unit vector along it."""
        width, height = self.picture.width, self.picture.height
        top, bottom = (0, 3.5) if self.inward > 0 else (height - 3.5, height)
        points = []
        for left in np.arange(2.0, width - 2.0, 1.0):
            seen = self.picture.strokes_down(left, top, left + 0.6, bottom)
            outer = [s for s in (seen[:1] if self.inward > 0 else seen[-1:]) if s.ink < _HEAVIEST]
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
