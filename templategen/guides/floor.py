"""Where the floor is: the panel as it hangs, and its marks measured flat."""

from __future__ import annotations

from ..document.view import Arrow, Point, Rise, Running, Shape, Stroke, Symbol, View, Within
from ..drawing import LineType
from ..work_order.pictures.cloth import broken
from ..work_order.pictures.signs import across, box

WIDE, HIGH, ROD, CLEAR = 40.0, 54.0, 2.4, 6.0


def hanging() -> View:
    """The panel hung as it came, from the front."""
    top = HIGH - ROD
    places = ((5.0, "mark 1"), (WIDE / 2, "2"), (WIDE - 5, "3"))
    spread: tuple[Point, ...] = ((0, 3.2), (-0.5, 1.8), (-1.7, 0.9), (-3.6, 0.5), (-4.0, 0))
    shapes: list[Shape] = [
        across(LineType.CUT, -6, WIDE + 6, 0, "drop.to"),
        box(LineType.CUT, (-6, top), (WIDE + 6, HIGH)),
        Stroke(LineType.MARK, ((0, top - 6), *spread)),
        Stroke(LineType.MARK, tuple((WIDE - x, y) for x, y in ((0, top - 6), *spread))),
        Stroke(LineType.MARK, ((0, top - 6), (0, top), (WIDE, top), (WIDE, top - 6)), "drop.hung_by"),
        across(LineType.FOLD, 0, WIDE, CLEAR, "drop.follows"),
    ]
    return View(
        title="The panel hung as it came, from the front",
        spoken=(
            "The panel hangs as it came, seen from the front; what is too long of it lies on the floor. Rod to floor "
            "is from the top of the rod straight down. A pin marks where the cloth meets the floor, at one place or at "
            "several, from left to right. The clearance is from the floor up to the finished edge. In place of the "
            "floor the panel may hang to a sill, an apron or a radiator. What it hung by when the floor was marked is "
            "said as well. The finished edge follows the marks, or is level above the highest."
        ),
        shapes=tuple(shapes),
        notes=(
            Rise("rod to floor", 0, HIGH, -6, "left", "drop.rod_to_floor"),
            Rise("clearance", 0, CLEAR, WIDE, "right", "drop.clearance"),
            Running(places, 0, "drop.floor_marks"),
            Within("what it hangs by", (0, top - 9), (WIDE, top - 1), about="drop.hung_by"),
            Within("front", (0, 22), (WIDE, 34)),
            Within("finished edge", (0, CLEAR), (WIDE, CLEAR + 8), about="drop.follows"),
            Within("floor, or sill, apron, radiator", (-12, -17), (WIDE + 12, -9), about="drop.to"),
        ),
    )


def marks() -> View:
    """The foot of the panel laid flat, front up: from the bottom edge up to each pin."""
    wide, high = 56.0, 36.0
    places = ((7.0, 16.0), (wide / 2, 18.0), (wide - 7, 20.0))
    shapes: list[Shape] = [
        Stroke(LineType.CUT, ((0, high), (0, 0), (wide, 0), (wide, high))),
        broken(0, wide, high, 1.2),
        across(LineType.STITCH, 0, wide, 5),
    ]
    for x, y in places:
        shapes += [
            Symbol("pin", (x - 3, y), 180.0, "drop.floor_marks"),
            Arrow(((x, y / 2), (x, 0)), "drop.floor_marks"),
            Arrow(((x, y / 2), (x, y)), "drop.floor_marks"),
        ]
    return View(
        title="The floor marks, laid flat, front up",
        spoken=(
            "The panel is taken down and laid flat, its front up. At every pin the rule is laid from the bottom edge, "
            "as the panel came, straight up to the pin. The marks are written from left to right, as seen from the "
            "front: here 1, 2 and 3. A panel that ended above the floor has a negative mark."
        ),
        shapes=tuple(shapes),
        notes=(
            *(
                Within(str(i), (x - 5, y), (x + 5, y + 8), about="drop.floor_marks")
                for i, (x, y) in enumerate(places, 1)
            ),
            Within("front, up", (0, 27), (wide, high - 1)),
            Within("bottom edge", (0, -8), (wide, 0)),
        ),
    )
