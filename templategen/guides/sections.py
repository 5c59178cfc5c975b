"""Cloth cut across in guides: its layers a little apart, each of which can be what a field measures."""

from __future__ import annotations

from ..document.view import Shape, Stroke, Within
from ..drawing import LineType
from ..work_order.pictures.cloth import cloth, turned, turned_below

GAP = 3.6
"""Between two layers."""
SAID = 16.0
"""Room for "front" or "back" beside the cloth."""


def lit(stroke: Stroke, about: str) -> Stroke:
    """The same, about a field."""
    return Stroke(stroke.kind, stroke.points, about)


def foot(hem: float, turn: float, top: float, about: str = "", under: str = "", x: float = 0.0) -> tuple[Shape, ...]:
    """A panel down to its fold at 0, turned up behind so deep, and what is turned under of that between the two."""
    if not turn:
        return (
            cloth((x, top), (x, hem)),
            lit(cloth((x, hem), *turned_below(x, x + GAP, 0), (x + GAP, hem)), about),
        )
    outer = x + 2 * GAP
    inner = (*turned(outer, x + GAP, hem), (x + GAP, hem - turn))
    return (
        cloth((x, top), (x, hem)),
        lit(cloth((x, hem), *turned_below(x, outer, 0), (outer, hem - GAP / 2)), about),
        lit(cloth(*inner), under),
    )


def head(
    top: float, deep: float, turn: float, low: float, about: str = "", under: str = "", x: float = 0.0
) -> tuple[Shape, ...]:
    """A panel's top: the front layer, the fold at ``top``, the back layer so deep, and what is turned under inside."""
    shapes: tuple[Shape, ...] = (
        cloth((x, low), (x, top - deep)),
        lit(cloth((x, top - deep), *turned(x, x + GAP, top), (x + GAP, top - deep)), about),
    )
    if turn:
        inner = (*turned_below(x + GAP, x + GAP * 0.45, top - deep), (x + GAP * 0.45, top - deep + turn))
        shapes += (lit(cloth(*inner), under),)
    return shapes


def stitched(left: float, right: float, y: float, about: str = "") -> Stroke:
    """A row of stitching cut across, through all between the two places."""
    return Stroke(LineType.MARK, ((left - 1.4, y), (right + 1.4, y)), about)


def front_back(left: float, right: float, low: float, high: float) -> tuple[Within, Within]:
    """Which side of the cloth is which, beside it."""
    middle = (low + high) / 2
    return (
        Within("front", (left - SAID, low), (left, high), "left", (left, middle)),
        Within("back", (right, low), (right + SAID, high), "right", (right, middle)),
    )
