"""The bars of a sheet, found among the lines of a page by what survives scaling, turning, mirroring and n-up.

A line of 100 mm and one of 4 in begin at the same zero, run beside each other
and end in ticks that point away from the other: lengths as 100 to 101.6.
"""

from __future__ import annotations

import math
from collections import defaultdict
from collections.abc import Iterable, Iterator, Sequence
from dataclasses import dataclass

from ..layout.furniture import APART, BAR, FOUR_INCHES, TICK
from .geometry import Point, Stroke
from .limits import MOST_PAIRS

_NOMINAL = float(BAR)
_RATIO = float(FOUR_INCHES / BAR)
_BESIDE = float(APART / BAR)
"""Between the two lines, in lengths of the shorter."""
_TICK = TICK / _NOMINAL
_ALIKE = 4e-4
"""The ratio of the two lines holds to this where lines are read, not seen: programs write two decimals of a point."""
_SHORTEST, _LONGEST = 15.0, 1000.0
"""Bars shorter or longer than this, in mm, are not looked for: a sheet at a seventh or at ten times its size."""
_FARTHEST = 1e5
"""Nor what lies farther than this from the page's corner: the longest side that a page can have is 5,080 mm."""
_CELL = 4.0
_STRETCH = 2.0
"""Across and along may be stretched apart by this much and the pair still be known."""


class TooManyPairs(Exception):
    """More lines that might be bars than are held against each other."""


@dataclass(frozen=True, slots=True)
class Bar:
    """The pair of lines at one edge of a sheet, in mm on the page as it is shown."""

    start: Point
    end: Point
    four_start: Point
    four_end: Point

    @property
    def run(self) -> Point:
        """From zero to 100 mm."""
        return self.end - self.start

    @property
    def ratio(self) -> float:
        """What it measures over what it says."""
        return self.run.length / _NOMINAL

    @property
    def aside(self) -> Point:
        """From the line of 100 mm to that of 4 in."""
        return self.four_start - self.start

    @property
    def four_on_the_left(self) -> bool:
        """As it is drawn; on the right where the page is mirrored."""
        return self.run.cross(self.aside) > 0


def find_bars(strokes: Iterable[Stroke], alike: float = _ALIKE) -> list[Bar]:
    """Every pair of bars among ``strokes``, the ratio of whose two lines is within ``alike`` of what it should be.

    Raises TooManyPairs where there are too many to look at.
    """
    long: dict[tuple[float, ...], Stroke] = {}
    short: list[Stroke] = []
    for stroke in strokes:
        if not all(abs(number) < _FARTHEST for number in (*stroke.start, *stroke.end)):
            continue
        if _SHORTEST <= stroke.length <= _LONGEST:
            ends = sorted([stroke.start, stroke.end])
            long.setdefault(tuple(round(number, 3) for end in ends for number in end), stroke)
        elif 0 < stroke.length < _SHORTEST:
            short.append(stroke)
    ticks = _Ticks(short)
    found: dict[tuple[int, int], Bar] = {}
    for one, other in _pairs(list(long.values()), alike):
        bar = ticks.trimmed(one, other, alike)
        if bar:
            found.setdefault((round(bar.start.x * 4), round(bar.start.y * 4)), bar)
    return list(found.values())


def _pairs(lines: Sequence[Stroke], alike: float) -> Iterator[tuple[Stroke, Stroke]]:
    """Lines that might be 100 mm and 4 in from one zero, each running from it."""
    near: dict[tuple[int, int], list[tuple[float, Stroke]]] = defaultdict(list)
    for line in lines:
        for way in (line, line.turned_round):
            near[_cell(way.start)].append((line.length, way))
    looked_at = 0
    for line in lines:
        length = line.length
        # Before the ticks are looked at, a line's end may be drawn a cap too far.
        wanted, spare = length * _RATIO, (alike * length + 0.8) * _RATIO
        for way in (line, line.turned_round):
            for cell in _cells(way.start, _BESIDE * length * _STRETCH):
                beside = near.get(cell, ())
                looked_at += 1 + len(beside)
                if looked_at > MOST_PAIRS:
                    raise TooManyPairs
                for other_length, other in beside:
                    if abs(other_length - wanted) <= spare and _lie_together(way, other):
                        yield way, other


def _lie_together(one: Stroke, other: Stroke) -> bool:
    """Whether they begin beside each other and run the same way."""
    run, beside = (one.end - one.start).unit, other.start - one.start
    apart = abs(run.cross(beside)) / one.length
    return (
        abs(run.cross((other.end - other.start).unit)) < 1e-3
        and run.dot(other.end - other.start) > 0
        and _BESIDE / _STRETCH < apart < _BESIDE * _STRETCH
        and abs(run.dot(beside)) < 0.25 * abs(run.cross(beside)) + 0.2
    )


class _Ticks:
    """The short lines of a page, by where they begin and end."""

    def __init__(self, short: Iterable[Stroke]) -> None:
        self._near: dict[tuple[int, int], list[Stroke]] = defaultdict(list)
        for stroke in short:
            self._near[_cell(stroke.start)].append(stroke)
            self._near[_cell(stroke.end)].append(stroke.turned_round)

    def trimmed(self, one: Stroke, other: Stroke, alike: float) -> Bar | None:
        """The pair, each line ending where its ticks cross it; None where a tick is missing."""
        away = (one.start - other.start).unit
        ends = [
            self._crossing(line, end, side)
            for line, side in ((one, away), (other, away.times(-1)))
            for end in (line.start, line.end)
        ]
        if any(end is None for end in ends):
            return None
        start, end, four_start, four_end = (end for end in ends if end is not None)
        bar = Bar(start, end, four_start, four_end)
        return bar if abs((four_end - four_start).length / bar.run.length / _RATIO - 1) < alike else None

    def _crossing(self, line: Stroke, end: Point, away: Point) -> Point | None:
        """Where the tick at ``end``, which points ``away``, crosses ``line``."""
        run = (line.end - line.start).unit
        reach = 0.4
        for cell in _cells(end, reach):
            for tick in self._near.get(cell, ()):
                points = tick.end - tick.start
                longest = _TICK * line.length * _STRETCH + 2 * reach
                if (tick.start - end).length <= reach and points.length <= longest and points.unit.dot(away) > 0.97:
                    return line.start.plus(run.times(run.dot(tick.start - line.start)))
        return None


def _cell(point: Point) -> tuple[int, int]:
    return math.floor(point.x / _CELL), math.floor(point.y / _CELL)


def _cells(point: Point, reach: float) -> Iterator[tuple[int, int]]:
    left, low = _cell(Point(point.x - reach, point.y - reach))
    right, high = _cell(Point(point.x + reach, point.y + reach))
    return ((x, y) for x in range(left, right + 1) for y in range(low, high + 1))
