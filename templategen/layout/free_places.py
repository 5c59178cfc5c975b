"""Free places: where along a drawing a join can stand without cutting a mark, a label or a number.

Clearances are judged in floats, which is exact enough and fast; the place that
is chosen is a whole step of the tape, and exact.
"""

from __future__ import annotations

from bisect import bisect_left, bisect_right
from collections.abc import Sequence
from dataclasses import dataclass, field
from enum import IntEnum
from fractions import Fraction
from itertools import pairwise
from math import ceil, floor, inf

from ..drawing import USUAL, Drawing, Line, LineType, Look, Text

_Taken = tuple[float, float]
"""From and to along a drawing, in mm."""
CLEAR = 8.0
"""From a match line to the nearest mark, label or number, in mm: the width of a tape's edge and a slip of the
scissors. Our choice."""
_CLOSE = (4.0, 1.5, 0.8)
"""What is kept where marks stand too close for that. At 0.8 mm a quarter of a millimetre of white is left beside a
trim line; under that two lines look like one. Our choice."""
_FREE = 1 + len(_CLOSE)
_TARGET_CLEAR = 4.5
"""Free of content on either side of a registration mark's centre, in mm: the mark is 3 1/2 mm each way."""
FINE = Fraction(1, 10)
"""The step of places where no whole step of the tape is free, in mm."""


class Care(IntEnum):
    """With how much care joins are to be placed: each allows what the one before it does, and more."""

    CLEAR = 0
    """Keeping CLEAR of everything."""
    FREE = 1
    """Touching nothing, nor their registration marks."""
    LEGIBLE = 2
    """Through no text; a registration mark may stand on a line."""
    ANY = 3
    """Anywhere."""


@dataclass(frozen=True, slots=True)
class Places:
    """Free stretches of one kind, in whole steps, both ends included."""

    step: Fraction
    stretches: Sequence[tuple[int, int]]

    def last_to(self, limit: Fraction) -> Fraction | None:
        """The farthest place that is no farther than ``limit``; None where there is none."""
        last = self.last_step_to(floor(limit / self.step))
        return None if last is None else last * self.step

    def last_step_to(self, most: int) -> int | None:
        """The same in whole steps, for those who take many."""
        i = bisect_right(self.stretches, (most, inf)) - 1
        return min(most, self.stretches[i][1]) if i >= 0 else None

    def first_from(self, limit: Fraction) -> Fraction | None:
        """The nearest place that is no nearer than ``limit``; None where there is none."""
        least = ceil(limit / self.step)
        i = bisect_left(self.stretches, least, key=lambda stretch: stretch[1])
        return max(least, self.stretches[i][0]) * self.step if i < len(self.stretches) else None

    def nearest(self, goal: Fraction, low: Fraction, high: Fraction) -> Fraction | None:
        """The place nearest to ``goal`` between ``low`` and ``high``; None where there is none."""
        goal = min(max(goal, low), high)
        candidates = [place for place in (self.last_to(goal), self.first_from(goal)) if place is not None]
        return min((p for p in candidates if low <= p <= high), key=lambda p: abs(p - goal), default=None)


@dataclass(frozen=True, slots=True)
class FreePlaces:
    """Where one drawing can be joined, from the best kind of place to the last resort.

    First those that keep CLEAR of everything; then, for drawings whose marks stand
    too close, those that keep less; then where no mark and no text stands, only
    other lines; last where no text stands.
    """

    step: Fraction
    """The tape's, in mm: a place on a whole step is read off without a hair over or under."""
    _kinds: tuple[list[_Taken], ...]
    _found: dict[int, Places] = field(default_factory=dict, compare=False)

    def __len__(self) -> int:
        return 2 * len(self._kinds)

    def __getitem__(self, i: int) -> Places:
        """The places of a kind on whole steps of the tape; after each kind, the same on fine steps."""
        if i >= len(self):
            raise IndexError(i)
        if i not in self._found:
            step = FINE if i % 2 else self.step
            self._found[i] = Places(step, _in_steps(self._kinds[i // 2], step))
        return self._found[i]

    def with_care(self, care: Care) -> range:
        """The kinds of place that will do for this care."""
        return range({Care.CLEAR: 2, Care.FREE: 2 * _FREE}.get(care, len(self)))


def free_places(drawing: Drawing, step: Fraction = Fraction(1), look: Look = USUAL) -> FreePlaces:
    """Where ``drawing`` can be joined, on whole steps of a tape with this ``step``, in mm."""
    low, high = sorted(float(y) for y in drawing.registration)
    # By as much as half a trim line and half a mark are wider than usual, so much farther are they kept apart.
    wider = sum(look.width(kind) - kind.width for kind in (LineType.TRIM, LineType.MARK)) / 2
    close = [clearance + wider for clearance in _CLOSE]
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
    marks = _merged([(float(mark.at), float(mark.at)) for mark in drawing.marks])
    unwritten = _gaps(_merged(written), _TARGET_CLEAR)
    lines_only = _common(unwritten, _gaps(marks, close[-1]))
    kinds = [_common(_gaps(taken, clearance), targets) for clearance in (CLEAR, *close)]
    return FreePlaces(step, (*kinds, lines_only, unwritten))


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


def _in_steps(stretches: list[_Taken], step: Fraction) -> list[tuple[int, int]]:
    """The whole steps in each stretch; what lies beyond every drawing is left out."""
    size = float(step)
    steps = [(ceil(left / size), floor(right / size)) for left, right in stretches if left > -inf and right < inf]
    return [(left, right) for left, right in steps if left <= right]
