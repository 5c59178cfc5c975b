"""Cloth in pictures: in section, where layers that touch are drawn a little apart, and flat, its back towards you.

In a section the front is always on the left and the back on the right, and a picture says so.
"""

from __future__ import annotations

from collections.abc import Iterable
from math import acos, asin, cos, degrees, pi, sin

from ...document.view import Circle, Hatch, Point, Shape, Side, Stroke, Within
from ...drawing import LineType
from ...lengths import Length
from .signs import arc, mm

APART = 1 / 30
"""Layers are drawn so far apart, of the height of the picture: our choice, so that every fold can be followed."""
TAIL = 0.3
"""How much of the cloth below a heading is seen, of the heading's depth."""


def shown(length: Length, least: float, most: float) -> float:
    """A length as it is drawn, in mm: its own, but no more and no less than can be seen beside what matters."""
    return min(max(mm(length), least), most)


def cloth(*points: Point) -> Stroke:
    """A layer of cloth, cut across."""
    return Stroke(LineType.CUT, points)


def turned(x1: float, x2: float, y: float) -> tuple[Point, ...]:
    """A fold at the top, from one side over to the other; its top at ``y``."""
    radius = abs(x2 - x1) / 2
    start, end = (180.0, 0.0) if x1 < x2 else (0.0, 180.0)
    return arc(LineType.CUT, ((x1 + x2) / 2, y - radius), radius, start, end, 8).points


def turned_below(x1: float, x2: float, y: float) -> tuple[Point, ...]:
    """A fold at the bottom; its lowest point at ``y``."""
    return tuple((x, 2 * y - high) for x, high in turned(x1, x2, y))


def doubled(depth: float, tail: float, gap: float, turn: float = 0.0, top: float = 0.0) -> Stroke:
    """The panel's top in section: the front layer, the fold at the top edge, the back layer and its turn-under."""
    under = (*turned_below(gap, gap * 0.45, top - depth), (gap * 0.45, top - depth + turn)) if turn else ()
    return cloth((0.0, top - tail), *turned(0.0, gap, top), (gap, top - depth), *under)


def thread(left: float, right: float, y: float, high: float) -> Stroke:
    """A stitch made by hand, round all that it holds."""
    x, wide = (left + right) / 2, (right - left) / 2
    turns = [i * pi / 8 for i in range(17)]
    return Stroke(LineType.MARK, tuple((x + wide * cos(t), y + high / 2 * sin(t)) for t in turns))


def row(left: float, right: float, y: float, gap: float) -> Stroke:
    """A row of machine stitching, cut across: through everything between the two places."""
    return Stroke(LineType.MARK, ((left - gap * 0.7, y), (right + gap * 0.7, y)))


def rod(centre: Point, radius: float) -> tuple[Shape, ...]:
    """The rod, cut across."""
    (x, y), arm = centre, radius * 1.25
    return (
        Circle(LineType.CUT, centre, radius),
        Stroke(LineType.CENTRE, ((x - arm, y), (x + arm, y))),
        Stroke(LineType.CENTRE, ((x, y - arm), (x, y + arm))),
    )


def half_round(radius: float, below: float, off: float, side: int, ends: float) -> tuple[Point, ...]:
    """Cloth round a rod about the origin, from above it down one side, as ``planning.hanging`` has it.

    It lies ``off`` outside the rod, and comes straight down towards ``below`` the rod's centre as far as ``ends`` from
    the middle. ``side`` is -1 to the left.
    """
    outer = radius + off
    leaves = max(acos(min(1.0, radius / max(below, radius))), asin(min(0.9, ends / outer)))
    turn = 180 - degrees(leaves)
    points = arc(LineType.CUT, (0.0, 0.0), outer, 90.0, 90.0 - side * turn, 20).points
    x, y = points[-1]
    foot = -below * outer / radius
    part = max(0.0, 1 - ends / abs(x)) if x else 0.0
    return (*points, (side * ends, y + (foot - y) * part))


def broken(left: float, right: float, y: float, amount: float) -> Stroke:
    """Where a picture leaves off though the thing goes on: ISO 128's line with a zigzag."""
    middle = (left + right) / 2
    zigzag = ((middle - amount, y), (middle - amount / 2, y + amount), (middle + amount / 2, y - amount))
    return Stroke(LineType.THIN, ((left, y), *zigzag, (middle + amount, y), (right, y)))


def broken_up(x: float, low: float, high: float, amount: float) -> Stroke:
    """The same, upright."""
    return Stroke(LineType.THIN, tuple((x - b, a) for a, b in broken(low, high, 0.0, amount).points))


def corner(wide: float, deep: float, whole: bool = False) -> tuple[Shape, ...]:
    """The upper left corner of the panel, flat: its top edge at 0; it goes on below, and to the right if not whole."""
    sign = deep * 0.06
    edge: tuple[Point, ...] = ((0.0, -deep), (0.0, 0.0), (wide, 0.0))
    if whole:
        return cloth(*edge, (wide, -deep)), broken(0.0, wide, -deep, sign)
    return cloth(*edge), broken(0.0, wide, -deep, sign), broken_up(wide, -deep, 0.0, sign)


def rows(wide: float, heights: Iterable[float], kind: LineType = LineType.STITCH) -> tuple[Shape, ...]:
    """Lines right across, seen flat."""
    return tuple(Stroke(kind, ((0.0, y), (wide, y))) for y in heights)


def front_and_back(front: float, back: float, low: float, high: float, gap: float) -> tuple[Within, Within]:
    """Which side of a section is which, said to the left and right of the cloth between two heights."""
    room = gap / APART * 0.2
    sides: tuple[tuple[str, float, float, Side], ...] = (
        ("front", front - room, front, "left"),
        ("back", back, back + room, "right"),
    )
    first, second = (Within(text, (x1, low), (x2, high), side) for text, x1, x2, side in sides)
    return first, second


def stuff(low: Point, high: Point) -> tuple[Shape, ...]:
    """Stiffening in section: an area of slanting lines."""
    (x1, y1), (x2, y2) = low, high
    corners = ((x1, y1), (x2, y1), (x2, y2), (x1, y2))
    return Stroke(LineType.THIN, (*corners, corners[0])), Hatch(corners)
