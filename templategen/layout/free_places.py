"""Free places: where along a drawing a join can stand without cutting a mark, a label or a number.

Clearances are judged in floats, which is exact enough and fast; the place that
is chosen is a whole tenth of a millimetre, and exact.
"""

from __future__ import annotations

from bisect import bisect_right
from collections.abc import Sequence
from dataclasses import dataclass
from fractions import Fraction
from itertools import pairwise
from math import ceil, floor, inf

from ..drawing import Drawing, Line, Text

Stretch = tuple[int, int]
"""From and to along a drawing, both included, in tenths of a millimetre."""
_Taken = tuple[float, float]
"""From and to along a drawing, in mm."""
CLEARANCES = (8.0, 4.0, 1.5, 0.4)
"""From a match line to the nearest mark, label or number, in mm: our choice. 8 mm is the width of a tape's edge and
a slip of the scissors; under 0.4 mm two lines look like one."""
_TARGET_CLEAR = 4.5
"""Free of content on either side of a registration mark's centre, in mm: the mark is 3 1/2 mm each way."""


@dataclass(frozen=True, slots=True)
class FreePlaces:
    """The free stretches, in order, for each of CLEARANCES; and those that are not free but will do.

    The latter are for drawings whose marks stand so close that nothing is free:
    first where no mark and no text stands, only other lines; then where no text stands.
    """

    free: list[list[Stretch]]
    crowded: list[list[Stretch]]


def free_places(drawing: Drawing) -> FreePlaces:
    """Where ``drawing`` can be joined."""
    low, high = sorted(float(y) for y in drawing.registration)
    everything: list[_Taken] = [(float(left), float(right)) for left, right in drawing.keep_whole]
    between: list[_Taken] = []
    written: list[_Taken] = []
    for item in drawing.items:
        if isinstance(item, Line) and item.runs_along:
            continue
        bounds = item.bounds
        stretch = (float(bounds.left), float(bounds.right))
        everything.append(stretch)
        if bounds.bottom < high + _TARGET_CLEAR and bounds.top > low - _TARGET_CLEAR:
            between.append(stretch)
        if isinstance(item, Text):
            written.append(stretch)
    taken = _merged(everything)
    targets = _gaps(_merged(between), _TARGET_CLEAR)
    free = [_in_tenths(_common(_gaps(taken, clearance), targets)) for clearance in CLEARANCES]
    marks = _merged([(float(mark.at), float(mark.at)) for mark in drawing.marks])
    unwritten = _gaps(_merged(written), _TARGET_CLEAR)
    lines_only = _common(unwritten, _gaps(marks, CLEARANCES[-1]))
    return FreePlaces(free, [_in_tenths(lines_only), _in_tenths(unwritten)])


def at_or_before(stretches: Sequence[Stretch], limit: int) -> int | None:
    """The farthest free tenth that is no farther than ``limit``; None where there is none."""
    i = bisect_right(stretches, (limit, inf)) - 1
    return min(limit, stretches[i][1]) if i >= 0 else None


def nearest(stretches: Sequence[Stretch], goal: int, low: int, high: int) -> int | None:
    """The free tenth nearest to ``goal`` between ``low`` and ``high``; None where there is none."""
    goal = min(max(goal, low), high)
    before = at_or_before(stretches, goal)
    i = bisect_right(stretches, (goal, inf))
    after = stretches[i][0] if i < len(stretches) else None
    candidates = [point for point in (before, after) if point is not None and low <= point <= high]
    return min(candidates, key=lambda point: abs(point - goal), default=None)


def _merged(stretches: list[_Taken]) -> list[_Taken]:
    """Overlapping stretches made one, in order."""
    merged: list[_Taken] = []
    for left, right in sorted(stretches):
        if merged and left <= merged[-1][1]:
            merged[-1] = (merged[-1][0], max(right, merged[-1][1]))
        else:
            merged.append((left, right))
    return merged


def _gaps(taken: list[_Taken], clearance: float) -> list[_Taken]:
    """The stretches that keep ``clearance`` from everything taken."""
    edges = [(-inf, -inf), *taken, (inf, inf)]
    return [
        (before + clearance, after - clearance)
        for (_, before), (after, _) in pairwise(edges)
        if after - before >= 2 * clearance
    ]


def _common(a: list[_Taken], b: list[_Taken]) -> list[_Taken]:
    """The stretches that lie in both."""
    common: list[_Taken] = []
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


def _in_tenths(stretches: list[_Taken]) -> list[Stretch]:
    """The whole tenths of a millimetre in each stretch; what lies beyond every drawing is left out."""
    tenths = [(ceil(10 * left), floor(10 * right)) for left, right in stretches if left > -inf and right < inf]
    return [(left, right) for left, right in tenths if left <= right]


def exact(tenths: int) -> Fraction:
    """Tenths of a millimetre as an exact number of millimetres."""
    return Fraction(tenths, 10)
