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

from ..drawing import Drawing, Line, Mark, Number

TONGUE = Fraction(10)
"""Least length of the glued tongue, in mm: our choice, the width of a strip of office tape and more."""
TRIMMED = Fraction(6)
"""Least length trimmed off at a match line, in mm: half of a registration mark and 2 mm."""
_LONGEST_TONGUE, _LONGEST_TRIMMED = Fraction(28), Fraction(22)
_TARGET_CLEAR = Fraction(9, 2)
"""Free of content on either side of a registration mark's centre, in mm: the mark is 3 1/2 mm each way."""
_CLEARANCES = (Fraction(8), Fraction(4), Fraction(3, 2), Fraction(2, 5))
"""From a match line to the nearest mark, label or number, in mm; the first that some place allows is kept."""
_EDGE_CLEAR = Fraction(4, 5)
_TENTH = Fraction(1, 10)


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
        for i, (left, right) in enumerate(zip(ends, ends[1:], strict=False), 1)
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
    """Where along a drawing a join can stand without cutting a mark, a label or a number."""

    def __init__(self, drawing: Drawing) -> None:
        low, high = sorted(drawing.registration)
        everything: list[tuple[Number, Number]] = list(drawing.keep_whole)
        between: list[tuple[Number, Number]] = []
        for item in drawing.items:
            if isinstance(item, Line) and item.runs_along:
                continue
            bounds = item.bounds
            everything.append((bounds.left, bounds.right))
            if bounds.bottom < high + _TARGET_CLEAR and bounds.top > low - _TARGET_CLEAR:
                between.append((bounds.left, bounds.right))
        self._taken = _merged(everything)
        self._gaps = {
            clearance: _common(_gaps(self._taken, clearance), _gaps(_merged(between), _TARGET_CLEAR))
            for clearance in _CLEARANCES
        }
        self._wide = _gaps(_merged(everything), Fraction(0))

    def best(self, ideal: Fraction, low: Fraction, high: Fraction) -> tuple[Fraction, bool]:
        """The place nearest to ``ideal`` with the best clearance to be had between ``low`` and ``high``."""
        for clearance in _CLEARANCES:
            found = _nearest(self._gaps[clearance], ideal, low, high)
            if found is not None:
                return found, False
        found = _nearest(self._wide, ideal, low, high)
        return (ideal if found is None else found), True

    def free_edge(self, at: Fraction, least: Fraction, most: Fraction, side: int) -> Fraction:
        """The least distance from ``at``, to one side, at which a piece can end without cutting anything."""
        distance = least
        while distance <= most:
            edge = at + side * distance
            if not any(left - _EDGE_CLEAR < edge < right + _EDGE_CLEAR for left, right in self._near(edge)):
                return distance
            distance += Fraction(1, 2)
        return least

    def _near(self, x: Fraction) -> Sequence[tuple[Number, Number]]:
        i = bisect(self._taken, (x, x))
        return self._taken[max(0, i - 2) : i + 2]


def _merged(stretches: list[tuple[Number, Number]]) -> list[tuple[Number, Number]]:
    """Overlapping stretches made one, in order."""
    merged: list[tuple[Number, Number]] = []
    for left, right in sorted(stretches):
        if merged and left <= merged[-1][1]:
            merged[-1] = (merged[-1][0], max(right, merged[-1][1]))
        else:
            merged.append((left, right))
    return merged


def _gaps(taken: list[tuple[Number, Number]], clearance: Fraction) -> list[tuple[Number, Number]]:
    """The stretches that keep ``clearance`` from everything taken."""
    edges = [(float("-inf"), float("-inf")), *taken, (float("inf"), float("inf"))]
    return [
        (before[1] + clearance, after[0] - clearance)
        for before, after in zip(edges, edges[1:], strict=False)
        if after[0] - before[1] >= 2 * clearance
    ]


def _common(a: list[tuple[Number, Number]], b: list[tuple[Number, Number]]) -> list[tuple[Number, Number]]:
    """The stretches that lie in both."""
    common: list[tuple[Number, Number]] = []
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


def _nearest(gaps: list[tuple[Number, Number]], ideal: Fraction, low: Fraction, high: Fraction) -> Fraction | None:
    """The point of ``gaps`` nearest to ``ideal`` between ``low`` and ``high``, on a tenth of a millimetre."""
    best: Fraction | None = None
    for left, right in gaps:
        left, right = max(left, low), min(right, high)
        if left > right:
            continue
        point = _on_a_tenth(min(max(ideal, left), right), left, right)
        if best is None or abs(point - ideal) < abs(best - ideal):
            best = point
    return best


def _on_a_tenth(point: Number, left: Number, right: Number) -> Fraction:
    """``point`` moved to a whole tenth of a millimetre where one lies between ``left`` and ``right``."""
    tenth = round(Fraction(point) / _TENTH) * _TENTH
    for candidate in (tenth, tenth + _TENTH, tenth - _TENTH):
        if left <= candidate <= right:
            return candidate
    return Fraction(point)
