"""Pieces: what a template becomes when it is longer than the sheet.

Neighbouring pieces overlap. They meet at a match line, which is drawn on both:
the left-hand piece runs on beyond it, and that tongue is where the next piece is
glued; the right-hand piece begins a little before it, and is trimmed along it.
"""

from __future__ import annotations

from bisect import bisect
from collections.abc import Sequence
from dataclasses import dataclass, replace
from fractions import Fraction
from itertools import pairwise
from math import inf

from ..drawing import Drawing, Line, Mark

TONGUE = Fraction(10)
"""Least length of the glued tongue, in mm: our choice, the width of a strip of office tape and more."""
TRIMMED = Fraction(6)
"""Least length trimmed off at a match line, in mm: half of a registration mark and 2 mm."""
_LONGEST_TONGUE, _LONGEST_TRIMMED = Fraction(28), Fraction(22)
_Stretch = tuple[float, float]
_TARGET_CLEAR = 4.5
"""Free of content on either side of a registration mark's centre, in mm: the mark is 3 1/2 mm each way."""
_CLEARANCES = (8.0, 4.0, 1.5, 0.4)
"""From a match line to the nearest mark, label or number, in mm; the first that some place allows is kept."""
_EDGE_CLEAR = 0.8


@dataclass(frozen=True, slots=True)
class Join:
    """Where two neighbouring pieces meet."""

    number: int
    """Counted over the whole kit, from 0: no two joins of a kit are alike."""
    at: Fraction
    tongue: Fraction
    """How far the left-hand piece runs on beyond the match line."""
    trimmed: Fraction
    """How far before the match line the right-hand piece begins."""
    room: Fraction
    """From the match line to the nearest neighbouring match line, or end of the template."""
    crowded: bool
    """Whether marks stood so close that no place between them was free."""

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
        return self.left.at - self.left.trimmed if self.left else self.drawing.start

    @property
    def end(self) -> Fraction:
        return self.right.at + self.right.tongue if self.right else self.drawing.end

    @property
    def length(self) -> Fraction:
        return self.end - self.start

    @property
    def joins(self) -> tuple[Join, ...]:
        return tuple(join for join in (self.left, self.right) if join)

    @property
    def marks(self) -> tuple[Mark, ...]:
        """The marks that stand on this piece, those of its overlaps among them."""
        return tuple(mark for mark in self.drawing.marks if self.start <= mark.at <= self.end)


def split(drawing: Drawing, longest: Fraction, first_join: int = 0) -> tuple[Piece, ...]:
    """``drawing`` as the fewest pieces of near-equal length, none longer than ``longest``.

    ``first_join`` is the number of its first join in the kit.
    """
    if drawing.length <= longest:
        return (Piece(drawing, 1, 1, None, None),)
    places = _Places(drawing)
    net = longest - TONGUE - TRIMMED
    fewest = max(2, -int(-(drawing.length - TONGUE - TRIMMED) // net))
    for count in range(fewest, fewest + 3):
        joins = _choose_joins(drawing, places, count, longest, first_join)
        if joins and all(piece.length <= longest for piece in _between(drawing, joins)):
            break
    else:
        joins = _choose_joins(drawing, places, fewest + 2, longest, first_join, tight=True)
        assert joins is not None
    return _between(drawing, joins)


def _between(drawing: Drawing, joins: Sequence[Join]) -> tuple[Piece, ...]:
    ends: list[Join | None] = [None, *joins, None]
    return tuple(
        Piece(drawing, i, len(joins) + 1, left, right)
        for i, (left, right) in enumerate(pairwise(ends), 1)
    )


def _choose_joins(
    drawing: Drawing, places: _Places, count: int, longest: Fraction, first: int, tight: bool = False
) -> tuple[Join, ...] | None:
    """A place for each of ``count - 1`` joins, each as near as may be to an equal division.

    None where the pieces would come out too long.
    """
    joins: list[Join] = []
    start = drawing.start
    for i in range(1, count):
        ideal = drawing.start + drawing.length * i / count
        low = drawing.end - (longest - TRIMMED) - (count - 1 - i) * (longest - TONGUE - TRIMMED)
        high = start + longest - TONGUE
        if low > high:
            return None
        at, crowded = places.best(min(max(ideal, low), high), low, high)
        room = longest - (at - start)
        tongue = TONGUE if tight else places.free_edge(at, TONGUE, min(room, _LONGEST_TONGUE), 1)
        trimmed = TRIMMED if tight else places.free_edge(at, TRIMMED, _LONGEST_TRIMMED, -1)
        joins.append(Join(first + i - 1, at, tongue, trimmed, Fraction(0), crowded))
        start = at - trimmed
    stops = [drawing.start, *(join.at for join in joins), drawing.end]
    return tuple(
        replace(join, room=min(join.at - before, after - join.at))
        for join, before, after in zip(joins, stops, stops[2:], strict=False)
    )


class _Places:
    """Where along a drawing a join can stand without cutting a mark, a label or a number.

    Clearances are judged in floats, which is exact enough and fast; the place
    that is chosen is a whole tenth of a millimetre, and exact.
    """

    def __init__(self, drawing: Drawing) -> None:
        low, high = sorted(float(y) for y in drawing.registration)
        everything: list[_Stretch] = [(float(left), float(right)) for left, right in drawing.keep_whole]
        between: list[_Stretch] = []
        for item in drawing.items:
            if isinstance(item, Line) and item.runs_along:
                continue
            bounds = item.bounds
            stretch = (float(bounds.left), float(bounds.right))
            everything.append(stretch)
            if bounds.bottom < high + _TARGET_CLEAR and bounds.top > low - _TARGET_CLEAR:
                between.append(stretch)
        self._taken = _merged(everything)
        targets = _gaps(_merged(between), _TARGET_CLEAR)
        self._gaps = [_common(_gaps(self._taken, clearance), targets) for clearance in _CLEARANCES]
        self._wide = _gaps(self._taken, 0.0)

    def best(self, ideal: Fraction, low: Fraction, high: Fraction) -> tuple[Fraction, bool]:
        """The place nearest to ``ideal`` with the best clearance to be had between ``low`` and ``high``.

        The second of the pair says whether marks stand too close for any clearance.
        """
        for gaps in self._gaps:
            found = _nearest(gaps, ideal, low, high)
            if found is not None:
                return found, False
        found = _nearest(self._wide, ideal, low, high)
        return (ideal if found is None else found), True

    def free_edge(self, at: Fraction, least: Fraction, most: Fraction, side: int) -> Fraction:
        """The least distance from ``at``, to one side, at which a piece can end without cutting anything."""
        distance = least
        while distance <= most:
            edge = float(at + side * distance)
            i = bisect(self._taken, (edge, edge))
            near = self._taken[max(0, i - 1) : i + 1]
            if not any(left - _EDGE_CLEAR < edge < right + _EDGE_CLEAR for left, right in near):
                return distance
            distance += Fraction(1, 2)
        return least


def _merged(stretches: list[_Stretch]) -> list[_Stretch]:
    """Overlapping stretches made one, in order."""
    merged: list[_Stretch] = []
    for left, right in sorted(stretches):
        if merged and left <= merged[-1][1]:
            merged[-1] = (merged[-1][0], max(right, merged[-1][1]))
        else:
            merged.append((left, right))
    return merged


def _gaps(taken: list[_Stretch], clearance: float) -> list[_Stretch]:
    """The stretches that keep ``clearance`` from everything taken."""
    edges = [(-inf, -inf), *taken, (inf, inf)]
    return [
        (before + clearance, after - clearance)
        for (_, before), (after, _) in pairwise(edges)
        if after - before >= 2 * clearance
    ]


def _common(a: list[_Stretch], b: list[_Stretch]) -> list[_Stretch]:
    """The stretches that lie in both."""
    common: list[_Stretch] = []
    i = j = 0
    while i < len(a) and j < len(b):
        left, right = max(a[i][0], b[j][0]), min(a[i][1], b[j][1])
        if left <= right:
            common.append((left, right))
        if a[i][1] < b[j][1]:
            i += 1
        else:
            j += 1
    return common


def _nearest(gaps: list[_Stretch], ideal: Fraction, low: Fraction, high: Fraction) -> Fraction | None:
    """The point of ``gaps`` nearest to ``ideal`` between ``low`` and ``high``, on a tenth of a millimetre."""
    best: Fraction | None = None
    goal, least, most = float(ideal), float(low), float(high)
    first = max(0, bisect(gaps, (least, least)) - 1)
    for left, right in gaps[first:]:
        if left > most or (best is not None and left - goal > abs(float(best) - goal)):
            break
        point = _tenth_between(min(max(goal, left, least), right, most), max(left, least), min(right, most))
        if point is not None and (best is None or abs(point - ideal) < abs(best - ideal)):
            best = point
    return best


def _tenth_between(point: float, left: float, right: float) -> Fraction | None:
    """The whole tenth of a millimetre nearest to ``point`` that lies between ``left`` and ``right``."""
    tenth = round(point * 10)
    for candidate in (tenth, tenth + 1, tenth - 1):
        if left <= candidate / 10 <= right:
            return Fraction(candidate, 10)
    return None
