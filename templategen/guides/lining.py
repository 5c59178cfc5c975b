"""A lining behind the panel, and weights in its hem."""

from __future__ import annotations

from ..document.view import Circle, Point, Rise, Shape, Span, Stroke, View, Within
from ..drawing import LineType
from ..work_order.pictures.cloth import broken, broken_up, turned, turned_below
from ..work_order.pictures.signs import across, box
from .sections import GAP, foot


def as_cut() -> View:
    """Panel and lining, as they are cut."""
    wide, high, shorter, at = 22.0, 46.0, 10.0, 32.0
    return View(
        title="Panel and lining as they are cut, the back towards you",
        spoken=(
            "Panel and lining beside each other, their backs towards you, as they are cut and before they are hemmed, "
            "their top edges level. The lining is so much shorter: from its cut edge down to the panel's."
        ),
        shapes=(
            box(LineType.CUT, (0, 0), (wide, high)),
            box(LineType.MARK, (at, shorter), (at + wide, high), "lining.cut_shorter"),
            Stroke(LineType.THIN, ((wide, 0), (at + wide, 0))),
        ),
        notes=(
            Within("panel", (1, 10), (wide - 1, high - 10)),
            Within("lining", (at + 1, 10), (at + wide - 1, high - 10)),
            Rise("cut shorter", 0, shorter, at + wide, "right", "lining.cut_shorter"),
        ),
    )


def hung() -> View:
    """The panel's corner from the back, the lining on it."""
    wide, high, inset, above = 46.0, 44.0, 9.0, 11.0
    return View(
        title="The lining behind the panel, the back towards you",
        spoken=(
            "The panel's lower left corner, its back towards you, the lining on it. The lining's side edge lies so far "
            "inside the panel's, at each side; its finished edge ends so far above the panel's."
        ),
        shapes=(
            Stroke(LineType.CUT, ((0, high), (0, 0), (wide, 0))),
            broken(0, wide, high, 1.2),
            broken_up(wide, 0, high, 1.2),
            Stroke(LineType.MARK, ((inset, high), (inset, above)), "lining.narrower"),
            across(LineType.MARK, inset, wide, above, "lining.ends_above"),
            across(LineType.STITCH, inset, wide, above + 11),
        ),
        notes=(
            Span("narrower", 0, inset, 0, "below", "lining.narrower"),
            Rise("ends above", 0, above, 0, "left", "lining.ends_above"),
            Within("lining", (inset, above + 13), (wide, high - 3)),
            Within("panel", (inset, 1), (wide - 2, above - 1)),
        ),
    )


def cut_across() -> View:
    """The feet of both, finished, cut across."""
    high, above, hem, turn, x = 48.0, 8.0, 20.0, 9.0, 16.0
    outer = x + 2 * GAP
    lower: tuple[Point, ...] = ((x, above + hem), *turned_below(x, outer, above), (outer, above + hem - GAP / 2))
    upper: tuple[Point, ...] = (*turned(outer, x + GAP, above + hem), (x + GAP, above + hem - turn))
    return View(
        title="Panel and lining, cut across",
        spoken=(
            "The feet of panel and lining cut across, the panel's front on the left, the lining at its back in thinner "
            "lines. The lining ends so far above the panel's finished edge. Its hem is from its finished edge up to "
            "the hem's upper edge; inside it some cloth is turned under, from that upper edge down to the raw edge."
        ),
        shapes=(
            *foot(14.0, 7.0, high),
            Stroke(LineType.MARK, ((x, high), (x, above + hem))),
            Stroke(LineType.MARK, lower, "lining.hem"),
            Stroke(LineType.MARK, upper, "lining.turn_under"),
        ),
        notes=(
            Rise("ends above", 0, above, 0, "left", "lining.ends_above"),
            Rise("hem", above, above + hem, outer, "right", "lining.hem"),
            Rise("turned under", above + hem - turn, above + hem, outer, "right", "lining.turn_under"),
            Within("front", (-14, 20), (0, high)),
            Within("back", (x, 30), (x + 20, high)),
        ),
    )


def weights() -> View:
    """Weights in the bottom hem, from the back."""
    wide, high, hem, radius = 64.0, 40.0, 20.0, 3.6
    places = (radius + 2.0, wide / 2, wide - radius - 2.0)
    shapes: list[Shape] = [
        Stroke(LineType.CUT, ((0, high), (0, 0), (wide, 0), (wide, high))),
        broken(0, wide, high, 1.2),
        across(LineType.STITCH, 0, wide, hem),
        *(Circle(LineType.MARK, (x, radius + 2), radius, "weights.size") for x in places),
    ]
    return View(
        title="Weights in the hem, the back towards you",
        spoken=(
            "The panel's foot, its back towards you: weights lie in the bottom hem, one at each corner. From one to "
            "the next there is so much at the most. A weight's size is straight across it."
        ),
        shapes=tuple(shapes),
        notes=(
            Span("size", places[0] - radius, places[0] + radius, radius + 2, "below", "weights.size"),
            Span("apart, at most", places[1], places[2], radius + 2, "below", "weights.every"),
            Within("hem", (places[0] + radius, 3), (places[1] - radius, hem)),
            Within("back", (2, hem), (wide - 2, high - 2)),
        ),
    )
