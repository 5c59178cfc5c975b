"""The side edges: a panel made narrower, one split, and how side hems and corners are folded."""

from __future__ import annotations

from ..document.view import Arrow, Hatch, Point, Rise, Shape, Span, Stroke, View, Within
from ..drawing import LineType
from ..work_order.pictures.cloth import broken, cloth
from ..work_order.pictures.signs import across, box

GAP = 4.2


def narrower() -> View:
    """A panel made narrower along one side, from the front."""
    wide, keeps, high = 56.0, 40.0, 44.0
    return View(
        title="A panel made narrower, its front towards you",
        spoken=(
            "The panel from the front. The width that it is to have is from its left side edge to its new right side "
            "edge, finished. What is too wide is cut off along one side, here the right one; the left side hem stays."
        ),
        shapes=(
            box(LineType.MARK, (0, 0), (wide, high)),
            Stroke(LineType.THIN, ((1.8, 0), (1.8, high))),
            across(LineType.STITCH, 0, wide, high - 6),
            across(LineType.STITCH, 0, wide, 5),
            Stroke(LineType.CUT, ((keeps, 0), (keeps, high)), "sides.cut_edge"),
            Hatch(((keeps, 0), (wide, 0), (wide, high), (keeps, high)), "sides.cut_edge"),
        ),
        notes=(
            Span("finished width", 0, keeps, high, "above", "sides.finished_width"),
            Within("front", (2, 6), (keeps, high - 7)),
            Within("cut off", (keeps, 6), (wide, high - 7), about="sides.cut_edge"),
        ),
    )


def split() -> View:
    """One panel split in two, from the front."""
    wide, high, apart, to = 24.0, 40.0, 2.5, 46.0
    half = wide / 2
    return View(
        title="A panel split, the front towards you",
        spoken=(
            "On the left one panel from the front, and the line along which it is cut. On the right the panels that "
            "are made of it, side by side, each with a new side hem at the cut: how many there are is counted."
        ),
        shapes=(
            box(LineType.CUT, (0, 0), (wide, high)),
            Stroke(LineType.FOLD, ((half, 0), (half, high)), "sides.split"),
            Arrow(((wide + 5, high / 2), (to - 5, high / 2))),
            *(
                box(LineType.CUT, (x, 0), (x + half - 0.6, high), "sides.split")
                for x in (to, to + half + apart)
            ),
        ),
        notes=(
            Within("front", (wide + 1, high / 2 + 1), (to - 1, high / 2 + 9)),
            *(
                Within(str(i), (x, 4), (x + half - 0.6, high - 4), about="sides.split")
                for i, x in enumerate((to, to + half + apart), 1)
            ),
            Within("how many of one", (to - 16, -10), (to + wide + 10, -1), about="sides.split"),
        ),
    )  # fmt: skip


def _turned(x: float, way: int, deep: float, turn: float, hem: str, under: str) -> tuple[Shape, ...]:
    """A side hem from above, its edge at ``x``, folded to the back, which is up; ``way`` is 1 to the right."""
    edge: tuple[Point, ...] = ((x, 0), (x - way * 1.4, GAP), (x, 2 * GAP))
    inner: tuple[Point, ...] = ((x + way * deep, 2 * GAP), (x + way * (deep + 1.2), 1.5 * GAP), (x + way * deep, GAP))
    return (
        Stroke(LineType.CUT, ((x + way * deep, 0), *edge, (x + way * deep, 2 * GAP)), hem),
        Stroke(LineType.CUT, (*inner, (x + way * (deep - turn), GAP)), under),
    )  # fmt: skip


def hems() -> View:
    """Both side hems seen from above, the new one and the one that stays."""
    wide, new, old, turn, old_turn = 76.0, 30.0, 28.0, 24.0, 22.5
    return View(
        title="Side hems, cut level and seen from above",
        spoken=(
            "The panel cut level and seen from above, its back up and its front below. On the left the new side hem, "
            "on the right the old one that stays. A side hem's depth is from the side edge to its inner edge. Inside "
            "it some cloth is turned under, from that inner edge back to the raw edge."
        ),
        shapes=(
            cloth((new, 0), (wide - old, 0)),
            *_turned(0, 1, new, turn, "sides.hem", "sides.turn_under"),
            *_turned(wide, -1, old, old_turn, "sides.old_hem", "sides.old_turn_under"),
        ),
        notes=(
            Span("new hem", -1.4, new, 0, "below", "sides.hem"),
            Span("old hem", wide - old, wide + 1.4, 0, "below", "sides.old_hem"),
            Span("turned under", new - turn, new, 2 * GAP, "above", "sides.turn_under"),
            Span("turned under", wide - old, wide - old + old_turn, 2 * GAP, "above", "sides.old_turn_under"),
            Within("back", (new + 2, 1), (wide - old - 2, 9)),
            Within("front", (new + 2, -9), (wide - old - 2, -1)),
        ),
    )


def corners() -> View:
    """A mitred corner from the back, beside the side hem's depth."""
    wide, high, side, hem = 54.0, 42.0, 12.0, 18.0
    return View(
        title="A mitred corner, the back towards you",
        spoken=(
            "The panel's foot, its back towards you. In the lower left corner side hem and bottom hem meet in a mitre, "
            "a slanting fold from the corner to where the inner edges of the two hems cross."
        ),
        shapes=(
            Stroke(LineType.CUT, ((0, high), (0, 0), (wide, 0))),
            broken(0, wide, high, 1.2),
            Stroke(LineType.MARK, ((side, high), (side, hem), (wide, hem))),
            Stroke(LineType.CUT, ((0, 0), (side, hem)), "sides.mitre"),
        ),
        notes=(
            Within("mitre", (side - 3, 1), (side + 14, hem - 3), about="sides.mitre"),
            Within("back", (side + 2, hem + 3), (wide - 2, high - 3)),
            Within("bottom hem", (side + 14, 1), (wide, hem - 1)),
            Rise("hem", 0, hem, 0, "left"),
            Span("side hem", 0, side, 0, "below", "sides.hem"),
        ),
    )
