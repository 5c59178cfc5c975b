"""The cloth itself: its pattern, its shrinkage, and what is made of the rest."""

from __future__ import annotations

from math import cos, pi, sin

from ..document.view import Arrow, Rise, Shape, Span, Stroke, View, Within
from ..drawing import LineType
from ..work_order.pictures.cloth import broken
from ..work_order.pictures.signs import across, box


def _flower(x: float, foot: float, about: str) -> tuple[Shape, ...]:
    """A flower whose stalk stands on the place that is measured."""
    petals = tuple(
        (x + 2.6 * (0.6 + 0.4 * cos(5 * t)) * cos(t), foot + 6.4 + 2.6 * (0.6 + 0.4 * cos(5 * t)) * sin(t))
        for t in (2 * pi * i / 40 for i in range(41))
    )
    return Stroke(LineType.MARK, petals, about), Stroke(LineType.MARK, ((x, foot), (x, foot + 4.4)), about)


def pattern() -> View:
    """The same place of the pattern, on the panel as it came and as it will be finished."""
    wide, high, at, repeat = 26.0, 60.0, 36.0, 17.0
    came, done = 11.0, 15.0
    shapes: list[Shape] = [
        Stroke(LineType.CUT, ((0, high), (0, 0), (wide, 0), (wide, high))),
        Stroke(LineType.CUT, ((at, high), (at, 0), (at + wide, 0), (at + wide, high))),
        *(broken(x, x + wide, high, 1.0) for x in (0.0, at)),
        across(LineType.STITCH, 0, wide, 4),
        across(LineType.STITCH, at, at + wide, 9),
    ]
    for i in range(3):
        shapes += _flower(6.5, came + i * repeat, "fabric.repeat" if i else "fabric.repeat_at")
        shapes += _flower(at + wide - 6.5, done + i * repeat, "" if i else "fabric.repeat_above_hem")
    return View(
        title="The pattern, the front towards you",
        spoken=(
            "Two panels from the front. On the left the panel as it came: the repeat is from one place in the pattern, "
            "here a flower's foot, up to the next that is the same; from the bottom edge up to the lowest such place "
            "is measured for each panel. On the right the panel finished: how far above its finished edge that place "
            "is to fall."
        ),
        shapes=tuple(shapes),
        notes=(
            Rise("repeat", came + repeat, came + 2 * repeat, 6.5, "left", "fabric.repeat"),
            Rise("up to it", 0, came, 6.5, "left", "fabric.repeat_at"),
            Rise("above hem", 0, done, at + wide - 6.5, "right", "fabric.repeat_above_hem"),
            Within("as it came", (-2, -10), (wide + 2, -1)),
            Within("finished", (at - 2, -10), (at + wide + 2, -1)),
        ),
    )


def shrinkage() -> View:
    """A piece before and after it is washed."""
    wide, before, after, at = 18.0, 44.0, 36.0, 42.0
    return View(
        title="A piece before and after it is washed",
        spoken=(
            "A length is marked on a piece of the cloth and measured; the piece is washed and pressed as it will be "
            "kept, and the same length is measured again. What it lost, divided by what it was, is the shrinkage."
        ),
        shapes=(
            box(LineType.CUT, (0, -4), (wide, before + 4)),
            *(across(LineType.MARK, 0, wide, y) for y in (0, before)),
            Arrow(((wide + 6, before / 2), (at - 6, before / 2))),
            box(LineType.CUT, (at, -4), (at + wide, after + 4), "fabric.shrinkage"),
            *(across(LineType.MARK, at, at + wide, y, "fabric.shrinkage") for y in (0, after)),
            across(LineType.THIN, wide, at + wide, before),
        ),
        notes=(
            Rise("before", 0, before, 0, "left"),
            Rise("after", 0, after, at + wide, "right", "fabric.shrinkage"),
            Rise("lost", after, before, at + wide, "right", "fabric.shrinkage"),
            Within("washed", (wide + 2, before / 2 + 1), (at - 2, before / 2 + 9)),
        ),
    )


def tie_back() -> View:
    """A tie-back that comes from what is left."""
    long, wide = 60.0, 17.0
    return View(
        title="A tie-back, as its piece is cut",
        spoken=(
            "The piece of cloth that a tie-back is made from, as it is cut: its length is from end to end, its width "
            "from edge to edge."
        ),
        shapes=(
            box(LineType.CUT, (0, 0), (long, wide)),
            across(LineType.FOLD, 0, long, wide / 2),
        ),
        notes=(
            Span("cut length", 0, long, wide, "above", "fabric.tie_back_length"),
            Rise("cut width", 0, wide, 0, "left", "fabric.tie_back_width"),
        ),
    )
