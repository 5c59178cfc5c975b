"""Cloth cut across as it hangs: the floor below, the front on the left and the back on the right.

Stages of one piece of work stand side by side, numbered, at the same heights, so that a line can be followed from one
to the next. Layers that touch are drawn a little apart.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace
from math import cos, pi, sin

from ...document.view import Arrow, Circle, Hatch, Label, Note, Point, Rise, Shape, Stroke, Symbol, View, Within
from ...drawing import LineType
from .cloth import cloth, turned, turned_below

FULL = 62
"""A picture's heights are counted in as many units as a step's picture is high in mm: our choice, so that what stands
beside it can be given in mm of paper."""
LAYER = 2.0
"""Units between two layers."""
ROOM = 14.0
"""Units between two stages: a short word has room there."""
OTHER = LineType.MARK
"""Cloth that is sewn on is drawn by a narrower line than the panel's."""


def unit(high: float) -> float:
    """Mm of the thing that come to about a millimetre on paper, where what is seen of it is so high."""
    return high / FULL


def hanging_down(x: float, gap: float, turn: float, top: float, low: float = 0.0) -> tuple[Point, ...]:
    """The panel down to its edge; what is turned up behind it already."""
    if not turn:
        return ((x, top), (x, low))
    return ((x, top), *turned_below(x, x + gap, low), (x + gap, low + turn))


def turned_up(x: float, gap: float, deep: float, turn: float, top: float, fold: float) -> tuple[Point, ...]:
    """The panel down to its fold, turned up behind, and what is turned under of that between the two."""
    if not turn:
        return ((x, top), *turned_below(x, x + gap, fold), (x + gap, fold + deep))
    outer = x + 2 * gap
    under = (*turned(outer, x + gap, fold + deep), (x + gap, fold + deep - turn))
    return ((x, top), *turned_below(x, outer, fold), *under)


def section(points: Sequence[Point]) -> Stroke:
    """The panel's cloth."""
    return cloth(*points)


def other(points: Sequence[Point]) -> Stroke:
    """Other cloth."""
    return Stroke(OTHER, tuple(points))


def through(left: float, right: float, y: float, unit: float) -> Stroke:
    """A row of stitching, cut across."""
    return Stroke(LineType.MARK, ((left - 1.2 * unit, y), (right + 1.2 * unit, y)))


def pin(right: float, y: float, unit: float) -> Symbol:
    """A pin through all layers, its head at the back."""
    return Symbol("pin", (right - 3.6 * unit, y), 180.0)


def tick(x: float, y: float, unit: float) -> Stroke:
    """A mark on the back of the cloth."""
    return Stroke(LineType.MARK, ((x, y), (x + 2.4 * unit, y)))


def brought_up(x: float, low: float, high: float, unit: float) -> Arrow:
    """The way of an edge from one height to another, behind the cloth at ``x``."""
    middle, half = (low + high) / 2, (high - low) / 2
    turns = [-pi / 2 + i * pi / 12 for i in range(13)]
    wide = 7 * unit
    return Arrow(tuple((x + 0.8 * unit + wide * cos(t), middle + half * sin(t)) for t in turns))


def numbered(centres: Sequence[float], foot: float, unit: float) -> tuple[Within, ...]:
    """The number of each stage, below it."""
    return tuple(
        Within(str(i), (x - 6 * unit, foot - 11 * unit), (x + 6 * unit, foot - unit), at=(x, foot))
        for i, x in enumerate(centres, 1)
    )


def sides(x: float, right: float, low: float, high: float, unit: float) -> tuple[Within, Within]:
    """Which side of the cloth is which, beside it."""
    at = (low + high) / 2
    return (
        Within("front", (x - ROOM * unit, low), (x, high), "left", (x, at)),
        Within("back", (right, low), (right + ROOM * unit, high), "right", (right, at)),
    )


def upside_down(view: View) -> View:
    """The same with what is below above: the top of a panel, in place of its foot."""
    return View(view.title, view.spoken, tuple(map(_over, view.shapes)), tuple(map(_note_over, view.notes)))


def _over(shape: Shape) -> Shape:
    match shape:
        case Stroke(points=points) | Arrow(points=points):
            return replace(shape, points=_points_over(points))
        case Hatch(outline):
            return replace(shape, outline=_points_over(outline))
        case Circle(centre=(x, y)):
            return replace(shape, centre=(x, -y))
        case Symbol(at=(x, y), turn=turn):
            return replace(shape, at=(x, -y), turn=-turn)


def _note_over(note: Note) -> Note:
    match note:
        case Label(at=(x, y)):
            return replace(note, at=(x, -y))
        case Within(low=(x1, y1), high=(x2, y2), at=at):
            return replace(note, low=(x1, -y2), high=(x2, -y1), at=at and (at[0], -at[1]))
        case Rise(low=low, high=high):
            return replace(note, low=-high, high=-low)
    raise TypeError(f"a picture with a {type(note).__name__} is not turned over")


def _points_over(points: Sequence[Point]) -> tuple[Point, ...]:
    return tuple((x, -y) for x, y in points)
