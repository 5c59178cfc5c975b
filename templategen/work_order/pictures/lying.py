"""Cloth that lies on the board, its back up, cut across: layers, folds, and the way an edge goes.

The panel's bottom edge is on the left. Layers that touch are drawn a little apart, so that every fold can be followed.
"""

from __future__ import annotations

from math import cos, pi, sin

from ...document.view import Arrow, Label, Point, Stroke
from ...drawing import LineType

GAP = 1 / 28
"""Layers are drawn so far apart, of the width of the picture: our choice."""


def folded_left(x: float, low: float, high: float) -> tuple[Point, ...]:
    """From the upper layer round a fold on the left, which reaches to ``x``, to the lower one."""
    return _round(x, low, high, 90, 270)


def folded_right(x: float, low: float, high: float) -> tuple[Point, ...]:
    """From the lower layer round a fold on the right to the upper one."""
    return _round(x, low, high, -90, 90)


def _round(x: float, low: float, high: float, start: float, end: float) -> tuple[Point, ...]:
    radius = (high - low) / 2
    centre = (x + radius if start == 90 else x - radius, (low + high) / 2)
    turns = [(start + (end - start) * i / 8) * pi / 180 for i in range(9)]
    return tuple((centre[0] + radius * cos(t), centre[1] + radius * sin(t)) for t in turns)


def layer(*points: Point) -> Stroke:
    """Cloth, cut across."""
    return Stroke(LineType.CUT, points)


def tick(x: float, y: float, gap: float) -> Stroke:
    """A mark on the cloth."""
    return Stroke(LineType.MARK, ((x, y - gap), (x, y + gap)))


def stitches(x: float, low: float, high: float, gap: float) -> Stroke:
    """A row of stitching, cut across: through all layers between two heights."""
    return Stroke(LineType.MARK, ((x, low - gap * 0.8), (x, high + gap * 0.8)))


def over(start: float, end: float, y: float) -> Arrow:
    """The way of an edge from one place over to another, above ``y``."""
    middle, half = (start + end) / 2, (end - start) / 2
    turns = [pi - i * pi / 12 for i in range(13)]
    return Arrow(tuple((middle + half * cos(t), y + half * 0.45 * sin(t)) for t in turns))


def going_on(right: float, y: float, gap: float) -> Stroke:
    """Where the cloth goes on to the right though the picture does not."""
    return Stroke(LineType.THIN, ((right, y - gap), (right, y - gap / 3), (right - gap / 2, y),
                                  (right + gap / 2, y + gap / 3), (right, y + gap)))  # fmt: skip


def back_up(left: float, right: float, y: float) -> Label:
    """Which side is up."""
    return Label("back, up", (left + (right - left) * 0.82, y))
