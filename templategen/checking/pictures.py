"""The bars of a sheet that is a picture: long dark runs, and at their ends the ticks, to a part of a point.

A print path that draws pages itself leaves no lines to read. Where a line
begins and ends is blurred there; where the middle of a tick lies is not.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass

from ..layout.furniture import BAR, TICK
from .bars import Bar, find_bars
from .geometry import Point, Stroke
from .page import Picture

_DARK = 150
"""A point at most this bright, of 255, belongs to a line."""
_DARK_OR_NOT = bytes(byte <= _DARK for byte in range(256))
_SHORTEST = 30.0
"""Runs shorter than this, in mm, are not looked at: a sheet at under a third of its size."""
_THICKEST = 1.2
_MOST_RUNS = 20_000
_TICK_FROM, _TICK_TO = 0.25, 0.85
"""The part of a tick that is measured, in its lengths from the line: clear of the line and of its own end."""
_NEAR = 0.012
"""A tick is looked for this near a run's end, in lengths of the run."""


@dataclass(frozen=True, slots=True)
class _Rows:
    """A picture's rows, one way or, its rows and columns changed about, the other."""

    points: bytes
    columns: int
    rows: int

    @classmethod
    def of(cls, picture: Picture) -> _Rows:
        return cls(picture.points, picture.columns, picture.rows)

    def changed_about(self) -> _Rows:
        columns = (self.points[i :: self.columns] for i in range(self.columns))
        return _Rows(b"".join(columns), self.rows, self.columns)

    def ink(self, row: int, column: int) -> int:
        """From 0, paper, to 255."""
        return 255 - self.points[row * self.columns + column]


@dataclass(frozen=True, slots=True)
class _Line:
    """A dark line along the rows: its middle across them, its first and its last column."""

    middle: float
    first: int
    last: int


def bars_in(picture: Picture, grain: float) -> list[Bar]:
    """The bars that can be seen, in mm on the page as it is shown; ``grain`` is what a point of it is large, in mm."""
    level = _Rows.of(picture)
    strokes: list[Stroke] = []
    for rows, upright in ((level, False), (level.changed_about(), True)):
        for line in _lines(rows, picture.mm):
            strokes += [_on_page(stroke, upright, picture) for stroke in _with_ticks(rows, line)]
    return find_bars(strokes, alike=2 * max(grain, picture.mm) / float(BAR))


def _on_page(stroke: Stroke, upright: bool, picture: Picture) -> Stroke:
    """From columns and rows from the top to mm from the lower left corner; a point's middle is half a point in."""

    def placed(point: Point) -> Point:
        x, y = (point.y, point.x) if upright else point
        return Point((x + 0.5) * picture.mm, (picture.rows - y - 0.5) * picture.mm)

    return Stroke(placed(stroke.start), placed(stroke.end))


def _lines(rows: _Rows, mm: float) -> Iterator[_Line]:
    """Dark runs that lie under one another, taken together."""
    open_lines: list[list[tuple[int, int, int]]] = []
    for run in _runs(rows, int(_SHORTEST / mm)):
        row, first, last = run
        still_open = []
        for line in open_lines:
            if row - line[-1][0] > 1:
                yield from _as_line(rows, line, mm)
            else:
                still_open.append(line)
        open_lines = still_open
        for line in open_lines:
            if line[-1][0] == row - 1 and line[-1][1] < last and first < line[-1][2]:
                line.append(run)
                break
        else:
            open_lines.append([run])
    for line in open_lines:
        yield from _as_line(rows, line, mm)


def _runs(rows: _Rows, shortest: int) -> Iterator[tuple[int, int, int]]:
    """Row, first and last column of every unbroken dark run that is long enough."""
    dark = rows.points.translate(_DARK_OR_NOT)
    run = b"\1" * max(shortest, 2)
    at = dark.find(run)
    for _ in range(_MOST_RUNS):
        if at < 0:
            return
        after = dark.find(b"\0", at)
        after = len(dark) if after < 0 else after
        row, first = divmod(at, rows.columns)
        last_row, last = divmod(after - 1, rows.columns)
        if row == last_row:
            yield row, first, last
        at = dark.find(run, after)


def _as_line(rows: _Rows, runs: list[tuple[int, int, int]], mm: float) -> Iterator[_Line]:
    if len(runs) * mm > _THICKEST:
        return
    first, last = min(run[1] for run in runs), max(run[2] for run in runs)
    top, foot = max(0, runs[0][0] - 2), min(rows.rows - 1, runs[-1][0] + 2)
    # In the middle of the line nothing touches it; a few columns are enough.
    columns = range(first + (last - first) // 4, last - (last - first) // 4, max(1, (last - first) // 60))
    ink = [sum(rows.ink(row, column) for column in columns) for row in range(top, foot + 1)]
    yield _Line(_centre(ink) + top, first, last)


def _centre(ink: list[int]) -> float:
    """Where the middle of the ink lies, in points from the first; the ground of the paper is taken off."""
    ground = min(ink)
    total = sum(each - ground for each in ink)
    return sum(i * (each - ground) for i, each in enumerate(ink)) / total if total else (len(ink) - 1) / 2


def _with_ticks(rows: _Rows, line: _Line) -> Iterator[Stroke]:
    """The line from tick to tick, and the ticks, for each side on which it has one at either end."""
    length = line.last - line.first
    # The line may be the one of 100 mm or that of 4 in, which makes no odds to where its ticks are looked for.
    tall = TICK / float(BAR) * length
    reach = max(3, round(_NEAR * length))
    for side in (-1, 1):
        band = sorted(round(line.middle + side * tall * part) for part in (_TICK_FROM, _TICK_TO))
        if band[0] < 0 or band[1] >= rows.rows:
            continue
        ends = [_tick_near(rows, range(band[0], band[1] + 1), end, reach) for end in (line.first, line.last)]
        if ends[0] is None or ends[1] is None:
            continue
        yield Stroke(Point(ends[0], line.middle), Point(ends[1], line.middle))
        for at in (ends[0], ends[1]):
            yield Stroke(Point(at, line.middle), Point(at, line.middle + side * tall))


def _tick_near(rows: _Rows, band: range, end: int, reach: int) -> float | None:
    """The middle of the one dark column near a line's end, over the rows of ``band``; None where there is none."""
    first, last = max(0, end - reach), min(rows.columns - 1, end + reach)
    ink = [sum(rows.ink(row, column) for row in band) for column in range(first, last + 1)]
    if not ink or max(ink) - min(ink) < len(band) * (255 - _DARK) // 2:
        return None
    peak = ink.index(max(ink))
    low, high = peak, peak
    least = min(ink) + (max(ink) - min(ink)) // 10
    while low > 0 and ink[low - 1] > least:
        low -= 1
    while high < len(ink) - 1 and ink[high + 1] > least:
        high += 1
    low, high = max(0, low - 1), min(len(ink) - 1, high + 1)
    return first + low + _centre(ink[low : high + 1])
