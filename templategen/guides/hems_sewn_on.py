"""New hems of other cloth: a facing behind the edge, a border below it. The other cloth is in thinner lines."""

from __future__ import annotations

from ..document.view import Point, Rise, Stroke, View, Within
from ..drawing import LineType
from ..work_order.pictures.cloth import cloth, turned, turned_below
from .hems import AT, DEPTH, SAID, TOP, from_the_back, sides
from .sections import front_back, lit, stitched

GAP = 3.0


def _other(about: str, *points: Point) -> Stroke:
    """The other cloth, cut across."""
    return Stroke(LineType.MARK, points, about)


def faced() -> View:
    """A facing sewn to the bottom edge and turned up behind it."""
    turn, seam = 9.0, 7.0
    first, second, back = AT + GAP, AT + 2 * GAP, AT + 3 * GAP
    return View(
        title="A facing, sewn on and turned up",
        spoken=(
            f"{SAID} A strip of other cloth is sewn to the panel's bottom edge and turned up behind it: the depth is "
            "from the finished edge up to the facing's upper edge. Along that edge some of it is turned under. The "
            "seam allowance is from the seam, at the finished edge, up to the raw edges inside."
        ),
        shapes=(
            *from_the_back(),
            cloth((AT, TOP), *turned_below(AT, first, 0)),
            lit(cloth((first, GAP / 2), (first, seam)), "hem.seam"),
            _other("hem.seam", (second, seam), (second, GAP / 2)),
            _other("hem.depth", *turned_below(second, back, 0), (back, DEPTH - GAP / 2)),
            _other("hem.turn_under", *turned(back, second, DEPTH), (second, DEPTH - turn)),
            stitched(AT + 1.4, second - 1.4, 2.4),
            stitched(AT, back, DEPTH - 2.4),
        ),
        notes=(
            Rise("depth", 0, DEPTH, 0, "left", "hem.depth"),
            Rise("turned under", DEPTH - turn, DEPTH, back, "right", "hem.turn_under"),
            Rise("seam", 0, seam, back, "right", "hem.seam"),
            *sides(back),
        ),
    )


def border() -> View:
    """A band below the panel, doubled; and one of single cloth with a hem of its own."""
    seam, own, x = 6.0, 9.0, 34.0
    back, outer = 2 * GAP, x + 2 * GAP
    under = (*turned(outer, x + GAP, own), (x + GAP, GAP * 0.6))
    return View(
        title="A border: doubled, and single with its own hem",
        spoken=(
            "The panel's foot cut across twice, the front on the left, the border in thinner lines. The border's depth "
            "is from the seam down to its lower edge. The first border is doubled, the seam's raw edges inside it. The "
            "second is of single cloth, the seam's edges pressed up, and has a hem of its own, turned twice alike: "
            "from the finished edge up to that hem's upper edge. The seam allowance is from the seam to the raw edges."
        ),
        shapes=(
            cloth((0, TOP), (0, DEPTH)),
            lit(cloth((0, DEPTH), (0, DEPTH - seam)), "hem.seam"),
            _other("hem.depth", *turned(-GAP, -back, DEPTH), *turned_below(-back, back, 0), (back, DEPTH + GAP / 2)),
            _other("hem.seam", (-GAP, DEPTH - GAP / 2), (-GAP, DEPTH - seam)),
            _other("hem.seam", *turned(back, GAP, DEPTH + GAP), (GAP, DEPTH - seam)),
            stitched(-GAP + 1.4, 0, DEPTH - 1.0),
            cloth((x, TOP), (x, DEPTH + 1)),
            lit(cloth((x, DEPTH + 1), *turned_below(x, x + GAP, DEPTH), (x + GAP, DEPTH + seam)), "hem.seam"),
            _other("hem.seam", (outer, DEPTH + seam), (outer, DEPTH)),
            _other("hem.depth", (outer, DEPTH), (outer, DEPTH - GAP), (x, DEPTH - 2 * GAP), (x, own)),
            _other("hem.own_hem", (x, own), *turned_below(x, outer, 0), *under),
            stitched(x + 1.4, outer, DEPTH + 1.6),
        ),
        notes=(
            Rise("depth", 0, DEPTH, -back, "left", "hem.depth"),
            Rise("seam", DEPTH, DEPTH + seam, outer, "right", "hem.seam"),
            Rise("own hem", 0, own, outer, "right", "hem.own_hem"),
            *front_back(0, 0.6, DEPTH + seam, TOP + 1),
            Within("doubled", (-12, -9), (12, -1)),
            Within("single", (x - 9, -9), (x + 15, -1)),
        ),
    )
