"""The new hem of each style, cut across and from the back."""

from __future__ import annotations

from ..document.view import Rise, Shape, Stroke, View, Within
from ..drawing import LineType
from ..work_order.pictures.cloth import broken, broken_up
from ..work_order.pictures.signs import across
from .sections import GAP, foot, front_back, stitched

DEPTH, TOP = 26.0, 44.0
FLAT = 15.0
"""How much is seen of the panel flat."""
AT = FLAT + 17
"""Where the panel stands that is cut across."""
_SAID = "On the left the panel's foot, its back towards you; on the right the same cut across, the front on the left."


def _flat(depth: float = DEPTH, top: float = TOP) -> tuple[Shape, ...]:
    """The panel's corner from the back, the hem's stitching on it."""
    return (
        Stroke(LineType.CUT, ((0, top), (0, 0), (FLAT, 0))),
        broken(0, FLAT, top, 1.0),
        broken_up(FLAT, 0, top, 1.0),
        across(LineType.MARK, 0, FLAT, depth, "hem.depth"),
        across(LineType.STITCH, 0, FLAT, depth - 1.4),
    )


def _named(right: float, depth: float = DEPTH, top: float = TOP) -> tuple[Within, ...]:
    return (Within("back", (1, depth + 1), (FLAT - 1, top - 2)), *front_back(AT, right, depth + 3, top))


def double_fold() -> View:
    turn, right = 10.0, AT + 2 * GAP
    return View(
        title="A double fold",
        spoken=(
            f"{_SAID} The hem is turned up to the back: its depth is from the finished edge up to its upper edge. "
            "Inside it some cloth is turned under, from the hem's upper edge down to the raw edge."
        ),
        shapes=(
            *_flat(), *foot(DEPTH, turn, TOP, "hem.depth", "hem.turn_under", AT),
            stitched(AT, right, DEPTH - 1.4),
        ),
        notes=(
            Rise("depth", 0, DEPTH, 0, "left", "hem.depth"),
            Rise("turned under", DEPTH - turn, DEPTH, right, "right", "hem.turn_under"),
            *_named(right),
        ),
    )  # fmt: skip
