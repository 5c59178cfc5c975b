"""Shapes of a picture as items at a scale, and what they take up."""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Sequence
from dataclasses import replace
from math import atan2, ceil, cos, hypot, pi, radians, sin

from ..drawing import Bounds, Item, Line, LineType, Number, Ring, Solid, Text
from ..drawing.items import path
from .view import Arrow, Circle, Hatch, Point, Shape, Stroke, Symbol

HATCH_PITCH = 2.2
"""Mm between two slanting lines, on paper. Our choice: apart enough for a photocopier, near enough to be an area."""
CLEAR = 0.7
"""Mm that slanting lines stay away from words among them."""
HEAD, HALF_HEAD = 2.2, 0.5
"""Length of an arrow head and half its width, in mm: narrow and filled, one of the heads of ISO 129-1."""
DOT = 0.55
"""Radius of a dot, in mm: how a leader ends inside an outline (ISO 128-2)."""

_DISC = tuple((cos(i * pi / 6), sin(i * pi / 6)) for i in range(12))
"""Corners of a polygon that is as good as round, of radius 1."""


def moved(item: Item, dx: Number, dy: Number) -> Item:
    """The same item, so much farther to the right and up, in mm."""
    if isinstance(item, Line):
        return Line(item.kind, item.x1 + dx, item.y1 + dy, item.x2 + dx, item.y2 + dy, item.about)
    if isinstance(item, Ring):
        return Ring(item.kind, item.x + dx, item.y + dy, item.radius, item.about)
    if isinstance(item, Solid):
        return Solid(tuple((x + dx, y + dy) for x, y in item.points), item.about)
    return Text(item.x + dx, item.y + dy, item.text, item.size, item.anchor, item.bold, item.turn, item.about)


def points_of(shape: Shape) -> Iterator[Point]:
    """Points between which all of the shape lies, symbols aside."""
    match shape:
        case Stroke(points=points) | Arrow(points=points) | Hatch(outline=points):
            yield from points
        case Circle(centre=(x, y), radius=r):
            yield from ((x - r, y - r), (x + r, y + r))
        case Symbol(at=at):
            yield at


def drawn(shape: Shape, scale: float, grown: float) -> Iterator[Item]:
    """A shape at this scale, in mm of paper; an area's slanting lines come later, when the words are in place.

    ``grown`` is how many times their usual size arrow heads and symbols have.
    """
    match shape:
        case Stroke(kind, points, about):
            yield from path(kind, [(x * scale, y * scale) for x, y in points], about)
        case Circle(kind, (x, y), radius, about):
            yield Ring(kind, x * scale, y * scale, radius * scale, about)
        case Arrow(points, about):
            on_paper = [(x * scale, y * scale) for x, y in points]
            yield from path(LineType.THIN, on_paper, about)
            yield head(on_paper[-2], on_paper[-1], grown, about)
        case Symbol(kind, (x, y), turn, about):
            yield from (
                replace(item, about=about) for item in _symbol(kind, (x * scale, y * scale), radians(turn), grown)
            )
        case Hatch():
            pass


def head(start: Point, tip: Point, grown: float = 1.0, about: str = "") -> Solid:
    """An arrow head at ``tip``, pointing away from ``start``."""
    (x1, y1), (x2, y2) = start, tip
    turn = atan2(y2 - y1, x2 - x1)
    long, half = HEAD * grown, HALF_HEAD * grown
    base = (x2 - long * cos(turn), y2 - long * sin(turn))
    across = (half * sin(turn), -half * cos(turn))
    corners = ((base[0] + across[0], base[1] + across[1]), (base[0] - across[0], base[1] - across[1]))
    return Solid((tip, *corners), about)


def dot(at: Point, grown: float = 1.0, radius: float = DOT, about: str = "") -> Solid:
    """A small filled disc."""
    wide = radius * grown
    return Solid(tuple((at[0] + wide * across, at[1] + wide * up) for across, up in _DISC), about)


def _symbol(kind: str, at: Point, turn: float, grown: float) -> Iterator[Item]:
    """Something small, its point at ``at``, the rest of it lying back along ``turn``."""

    def place(along: float, across: float = 0.0) -> Point:
        along, across = along * grown, across * grown
        return (at[0] + along * cos(turn) - across * sin(turn), at[1] + along * sin(turn) + across * cos(turn))

    if kind == "dot":
        yield dot(at, grown, 0.7)
    elif kind == "pin":
        yield from path(LineType.MARK, [place(0), place(-6)])
        yield dot(place(-6), grown, 0.8)
    elif kind == "needle":
        yield from path(LineType.MARK, [place(0), place(-8, 0.35), place(-9), place(-8, -0.35), place(0)])
    else:  # scissors
        for side in (1, -1):
            yield from path(LineType.MARK, [place(0, 0.9 * side), place(-7, -1.1 * side)])
            x, y = place(-8.4, -1.7 * side)
            yield Ring(LineType.MARK, x, y, 1.5 * grown)


def hatched(hatch: Hatch, scale: float, words: Sequence[Bounds]) -> Iterator[Line]:
    """Slanting lines over an area, at 45 degrees, left out around ``words``."""
    corners = [(x * scale, y * scale) for x, y in hatch.outline]
    sums = [x + y for x, y in corners]
    step = HATCH_PITCH * 2**0.5
    first, last = ceil(min(sums) / step), int(max(sums) // step)
    boxes = [_grown(box) for box in words]
    for number in range(first, last + 1):
        for line in _slanting(corners, number * step, boxes):
            yield replace(line, about=hatch.about)


def _slanting(corners: Sequence[Point], total: float, boxes: Sequence[Bounds]) -> Iterator[Line]:
    """The stretches of the line x + y = ``total`` inside the outline and outside all ``boxes``."""
    crossings = []
    for (x1, y1), (x2, y2) in zip(corners, [*corners[1:], corners[0]], strict=True):
        a, b = x1 + y1 - total, x2 + y2 - total
        if (a > 0) != (b > 0):
            crossings.append(x1 + (x2 - x1) * a / (a - b))
    crossings.sort()
    for left, right in zip(crossings[::2], crossings[1::2], strict=False):
        for start, end in _outside(left, right, total, boxes):
            if end - start > 0.4:
                yield Line(LineType.THIN, start, total - start, end, total - end)


def _outside(left: float, right: float, total: float, boxes: Iterable[Bounds]) -> list[tuple[float, float]]:
    """Stretches of x from ``left`` to ``right`` whose points on the line lie in no box."""
    free = [(left, right)]
    for box in boxes:
        enters = max(float(box.left), total - float(box.top))
        leaves = min(float(box.right), total - float(box.bottom))
        if enters < leaves:
            free = [
                part
                for start, end in free
                for part in ((start, min(end, enters)), (max(start, leaves), end))
                if part[0] < part[1]
            ]
    return free


def _grown(box: Bounds) -> Bounds:
    return Bounds(box.left - CLEAR, box.bottom - CLEAR, box.right + CLEAR, box.top + CLEAR)


def meets_line(box: Bounds, line: Line, gap: float = 0.0) -> bool:
    """Whether a straight line comes into a box, or nearer to it than ``gap``."""
    x1, y1, x2, y2 = float(line.x1), float(line.y1), float(line.x2), float(line.y2)
    left, right, bottom, top = box.left - gap, box.right + gap, box.bottom - gap, box.top + gap
    if (x1 <= left and x2 <= left) or (x1 >= right and x2 >= right):
        return False
    if (y1 <= bottom and y2 <= bottom) or (y1 >= top and y2 >= top):
        return False
    enters, leaves = 0.0, 1.0
    for start, way, low, high in ((x1, x2 - x1, left, right), (y1, y2 - y1, bottom, top)):
        if way:
            near, far = sorted(((low - start) / way, (high - start) / way))
            enters, leaves = max(enters, near), min(leaves, far)
    return bool(enters < leaves)


def meets_ring(box: Bounds, ring: Ring, gap: float = 0.0) -> bool:
    """Whether a circle's line comes into a box, or nearer to it than ``gap``."""
    x, y, radius = float(ring.x), float(ring.y), float(ring.radius)
    left, bottom, right, top = (float(n) for n in box)
    nearest = hypot(max(left - x, 0, x - right), max(bottom - y, 0, y - top))
    farthest = hypot(max(abs(left - x), abs(right - x)), max(abs(bottom - y), abs(top - y)))
    return nearest - gap < radius < farthest + gap
