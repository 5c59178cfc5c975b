"""The new hem of each style, cut across and from the back."""

from __future__ import annotations

from ..document.view import Label, Rise, Shape, Stroke, View, Within
from ..drawing import LineType
from ..work_order.pictures.cloth import broken, broken_up
from ..work_order.pictures.signs import across
from .sections import GAP, foot, front_back, stitched

DEPTH, TOP = 26.0, 44.0
FLAT = 15.0
"""How much is seen of the panel flat."""
AT = FLAT + 17
"""Where the panel stands that is cut across."""
SAID = "On the left the panel's foot, its back towards you; on the right the same cut across, the front on the left."


def from_the_back(stitching: float = DEPTH - 1.4) -> tuple[Shape, ...]:
    """The panel's corner from the back, the hem's upper edge on it, and its stitching at this height, if any."""
    return (
        Stroke(LineType.CUT, ((0, TOP), (0, 0), (FLAT, 0))),
        broken(0, FLAT, TOP, 1.0),
        broken_up(FLAT, 0, TOP, 1.0),
        across(LineType.MARK, 0, FLAT, DEPTH, "hem.depth"),
        *([across(LineType.STITCH, 0, FLAT, stitching)] if stitching else []),
    )


def sides(right: float) -> tuple[Within, ...]:
    """Which side is seen flat, and which is which of what is cut across."""
    return (Within("back", (1, DEPTH + 1), (FLAT - 1, TOP - 2)), *front_back(AT, right, DEPTH + 3, TOP))


def double_fold() -> View:
    """The raw edge turned under, then the hem turned up."""
    turn, right = 10.0, AT + 2 * GAP
    return View(
        title="A double fold",
        spoken=(
            f"{SAID} The hem is turned up to the back: its depth is from the finished edge up to its upper edge. "
            "Inside it some cloth is turned under, from the hem's upper edge down to the raw edge."
        ),
        shapes=(
            *from_the_back(), *foot(DEPTH, turn, TOP, "hem.depth", "hem.turn_under", AT),
            stitched(AT, right, DEPTH - 1.4),
        ),
        notes=(
            Rise("depth", 0, DEPTH, 0, "left", "hem.depth"),
            Rise("turned under", DEPTH - turn, DEPTH, right, "right", "hem.turn_under"),
            *sides(right),
        ),
    )  # fmt: skip


def equal_fold() -> View:
    """Both turns alike."""
    right = AT + 2 * GAP
    return View(
        title="A double fold of equal turns",
        spoken=(
            f"{SAID} The hem is turned up to the back: its depth is from the finished edge up to its upper edge. As "
            "much is turned under inside it, so that the raw edge lies on the fold."
        ),
        shapes=(
            *from_the_back(),
            *foot(DEPTH, DEPTH - 2.5, TOP, "hem.depth", "hem.depth", AT),
            stitched(AT, right, DEPTH - 1.4),
        ),
        notes=(
            Rise("depth", 0, DEPTH, 0, "left", "hem.depth"),
            Rise("depth again", 2.5, DEPTH, right, "right", "hem.depth"),
            *sides(right),
        ),
    )


def single_fold() -> View:
    """A tape over its raw edge, or a web that bonds it."""
    right, tape = AT + GAP, 4.0
    return View(
        title="A single fold with tape",
        spoken=(
            f"{SAID} The hem is turned up once to the back: its depth is from the finished edge up to the raw edge. "
            "The raw edge is held by a tape that is sewn over it, or by a web that bonds it to the panel."
        ),
        shapes=(
            *from_the_back(0.0),
            *(across(LineType.MARK, 0, FLAT, DEPTH + y, "hem.held_by") for y in (tape, -tape)),
            *foot(DEPTH, 0.0, TOP, "hem.depth", "", AT),
            Stroke(LineType.TRIM, ((right + 1.6, DEPTH - tape), (right + 1.6, DEPTH + tape)), "hem.held_by"),
        ),
        notes=(
            Rise("depth", 0, DEPTH, 0, "left", "hem.depth"),
            Label("tape, or bonded", (right + 1.6, DEPTH), about="hem.held_by"),
            Within("back", (1, DEPTH + tape), (FLAT - 1, TOP - 2)),
            *front_back(AT, right, DEPTH + tape + 3, TOP),
        ),
    )
