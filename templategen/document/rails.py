"""Dimension lines beside a picture, and the figures on them, so that nothing meets.

The habits are those of ISO 129-1: extension lines begin a little off the thing and end a little beyond the dimension
line; shorter dimensions lie nearer to the thing; where two arrow heads have no room between the extension lines they
stand outside, and a figure that has none stands beside, on the dimension line drawn on.

One axis runs along the dimension lines, the other away from the thing; rails are counted outwards. No figure is put
where any extension line on the same side passes, so rails need not know of one another but for their own stretch.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from itertools import pairwise
from math import inf

from .shapes import HEAD

PAD = 1.1
"""Least distance of a figure from an extension line, and between two figures, in mm."""
TAIL = 3.0
"""Mm of line outside an arrow head that stands outside."""


@dataclass(frozen=True, slots=True)
class Measured:
    """What is to be dimensioned, along the axis: from where to where, and how much room its figure takes there."""

    start: float
    end: float
    room: float


@dataclass(frozen=True, slots=True)
class Railed:
    """Where a dimension comes to lie."""

    rail: int
    """0 is nearest to the thing."""
    centre: float
    """Of its figure."""
    line: tuple[float, float]
    """From where to where its dimension line runs, along the axis."""
    outside: bool
    """Whether its arrow heads stand outside the extension lines."""


def on_rails(dimensions: Sequence[Measured], passing: Sequence[float], grown: float) -> list[Railed]:
    """Each dimension on the nearest rail that has room; ``passing`` are places where other lines cross the rails.

    Places in mm of paper. ``grown`` is how many times their usual size arrow heads have.
    """
    barred = sorted({place for each in dimensions for place in (each.start, each.end)} | set(passing))
    taken: list[list[tuple[float, float]]] = []
    placed: dict[int, Railed] = {}
    for i in sorted(range(len(dimensions)), key=lambda i: dimensions[i].end - dimensions[i].start):
        placed[i] = _placed(dimensions[i], barred, taken, grown)
    return [placed[i] for i in range(len(dimensions))]


def _placed(each: Measured, barred: Sequence[float], taken: list[list[tuple[float, float]]], grown: float) -> Railed:
    """The first rail on which some place of the figure leaves the whole dimension clear of all others there."""
    long = each.end - each.start
    outside = long < 2 * HEAD * grown + 1.0
    low, high = (each.start - TAIL * grown, each.end + TAIL * grown) if outside else (each.start, each.end)
    centres = list(_centres(each, barred))
    rail = 0
    while True:
        if rail == len(taken):
            taken.append([])
        for centre in centres:
            line = (min(low, centre - each.room / 2), max(high, centre + each.room / 2))
            if all(line[1] + PAD <= start or end + PAD <= line[0] for start, end in taken[rail]):
                taken[rail].append(line)
                return Railed(rail, centre, line, outside)
        rail += 1


def _centres(each: Measured, barred: Sequence[float]) -> Iterator[float]:
    """Places for the middle of the figure, the best first: between its own ends, else beside them; one at least."""
    middle, half = (each.start + each.end) / 2, each.room / 2 + PAD
    walls = [-inf, *barred, inf]
    gaps = [(a + half, b - half) for a, b in pairwise(walls) if b - a >= 2 * half]
    inside = [g for g in gaps if g[0] - half >= each.start - 1e-9 and g[1] + half <= each.end + 1e-9]
    beside = [g for g in gaps if g not in inside]
    for those in (inside, beside):
        yield from sorted((min(max(middle, a), b) for a, b in those), key=lambda centre: abs(centre - middle))
