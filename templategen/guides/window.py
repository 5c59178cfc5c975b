"""The window: its rod and its glass from the room, and the rod from above."""

from __future__ import annotations

from math import pi, sin

from ..document.view import Arrow, Hatch, Point, Rise, Shape, Span, Stroke, View, Within
from ..drawing import LineType
from ..work_order.pictures.signs import across, arc, box

WIDE, HIGH = 44.0, 60.0
"""From bracket to bracket, and from the floor to the top of the rod."""
ROD = 2.4
OPEN = 10.0
"""How far a panel reaches that is drawn open."""


def window() -> View:
    """The window from the room: two panels on the rod, half open."""
    shapes: list[Shape] = [
        across(LineType.CUT, -3, WIDE + 3, 0, "drop.rod_to_floor"),
        box(LineType.THIN, (6.5, 16.5), (WIDE - 6.5, 48.5)),
        box(LineType.MARK, (8, 18), (WIDE - 8, 47), "rod.glass"),
        box(LineType.CUT, (-2, HIGH - ROD), (WIDE + 2, HIGH), "rod.diameter"),
        *(
            box(LineType.CUT, (x - 0.8, HIGH - ROD - 1.6), (x + 0.8, HIGH + 1.6), "rod.brackets")
            for x in (0, WIDE / 2, WIDE)
        ),
        Arrow(((WIDE / 2 - 1.5, 30), (OPEN + 1.5, 30)), "rod.opens"),
        Arrow(((WIDE / 2 + 1.5, 30), (WIDE - OPEN - 1.5, 30)), "rod.opens"),
    ]
    for edge, lead in ((1.0, OPEN), (WIDE - 1.0, WIDE - OPEN)):
        step = (lead - edge) / 4
        shapes += [
            Stroke(LineType.MARK, ((lead, HIGH - ROD), (edge, HIGH - ROD), (edge, 1.5), (lead, 1.5))),
            Stroke(LineType.CUT, ((lead, HIGH - ROD), (lead, 1.5)), "panel.leading_edge"),
            *(Stroke(LineType.THIN, ((edge + step * i, HIGH - ROD - 4), (edge + step * i, 5.0))) for i in (1, 2, 3)),
        ]
    return View(
        title="The window, from the room",
        spoken=(
            "The window seen from the room, two panels on the rod, half open. The rod's length is from the first "
            "bracket to the last, its thickness straight across it. Brackets are counted. The glass is measured from "
            "side to side of the pane. Panels open to both ends or to one. The leading edges are those that meet in "
            "the middle. Rod to floor is from the top of the rod straight down."
        ),
        shapes=tuple(shapes),
        notes=(
            Span("rod length", 0, WIDE, HIGH + 1.6, "above", "rod.length"),
            Rise("thickness", HIGH - ROD, HIGH, WIDE + 2, "right", "rod.diameter"),
            Rise("rod to floor", 0, HIGH, -3, "left", "drop.rod_to_floor"),
            Span("glass", 8, WIDE - 8, 18, "below", "rod.glass"),
            Within("brackets", (OPEN, 49), (WIDE - OPEN, HIGH - ROD - 1.4), about="rod.brackets"),
            Within("open", (OPEN, 31), (WIDE - OPEN, 39), about="rod.opens"),
            Within("leading edges", (OPEN, 1.5), (WIDE - OPEN, 15.5), about="panel.leading_edge"),
        ),
    )


def _waves(left: float, right: float, y: float, count: int) -> tuple[Point, ...]:
    """Cloth that hangs in folds, from above."""
    steps = count * 12
    return tuple(
        (left + (right - left) * i / steps, y - 1.8 * sin(2 * pi * i / 12)) for i in range(steps + 1)
    )  # fmt: skip


def from_above() -> View:
    """The rod between wall and room, two panels that overlap, their outer edges brought back to the wall."""
    wide, front, near = 44.0, -27.0, -34.0
    first, last = -5.0, wide + 5.0
    middle, half = wide / 2, 6.0
    wall = ((-9.0, 0.0), (wide + 9, 0.0), (wide + 9, 8.0), (-9.0, 8.0))
    shapes: list[Shape] = [
        across(LineType.CUT, -9, wide + 9, 0),
        Hatch(wall),
        box(LineType.MARK, (9, -4), (wide - 9, 0)),
        box(LineType.CUT, (0, -21), (wide, -17)),
        across(LineType.CENTRE, -2, wide + 2, -19, "rod.projection"),
        *(box(LineType.MARK, (x - 0.8, -17), (x + 0.8, 0)) for x in (4.0, wide - 4)),
        Stroke(LineType.CUT, ((first, -1.0), (first, front + 3), *_corner(first + 3, front + 3, 180)), "rod.returns"),
        Stroke(LineType.CUT, ((last, -1.0), (last, near + 3), *_corner(last - 3, near + 3, 360)), "rod.returns"),
        Stroke(LineType.CUT, _waves(first + 3, middle + half, front, 4), "rod.fullness"),
        Stroke(LineType.CUT, _waves(middle - half, last - 3, near, 4), "rod.fullness"),
    ]
    return View(
        title="The rod, from above",
        spoken=(
            "Rod and cloth seen from above, the wall behind them and the room below. The projection is from the wall, "
            "or from what stands out most from it, here the frame, to the centre of the rod. A return is from the "
            "front of the rod back to the wall, where the cloth goes round the rod's end. The overlap is how far two "
            "panels lie over each other where they meet. The fullness is how many times as wide the cloth is, laid "
            "flat, as rod, overlap and returns."
        ),
        shapes=tuple(shapes),
        notes=(
            Within("wall", (-9, 0), (wide + 9, 8)),
            Within("frame", (9, -16), (wide - 9, -4)),
            Rise("return", -21, 0, 0, "left", "rod.returns"),
            Rise("projection", -19, -4, wide - 9, "right", "rod.projection"),
            Span("overlap", middle - half, middle + half, near - 1.8, "below", "rod.overlap"),
            Within("fullness", (-4, near - 4), (middle - half - 1, front - 2), about="rod.fullness"),
            Within("room", (middle + half + 1, near - 12), (last + 4, near - 3)),
        ),
    )


def _corner(x: float, y: float, start: float) -> tuple[Point, ...]:
    """Cloth round a corner of radius 3, towards the room."""
    return arc(LineType.CUT, (x, y), 3.0, start, 270.0, 8).points
