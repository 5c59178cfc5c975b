"""Gathering tape: the panel gathered, from the front; the tape on its back."""

from __future__ import annotations

from math import pi, sin

from ...document.view import Rise, Shape, Span, Stroke, View, Within
from ...drawing import LineType
from ...work_order.pictures.cloth import broken, cloth, corner
from ...work_order.pictures.signs import across, box

WIDE, PLACES = 56.0, (1.0, 28.0, 55.0)
RODS = (16.0, 20.0)
"""Underside and top of the rod over the panel's top edge."""
HOLD = -6.0
"""Where the rings hold the hooks."""
TOP, TAPE, POCKET, FOLD = 9.0, 22.0, 10.0, 15.0
"""From the top edge to the tape, its width, from its upper edge to the hooks; from the top edge to the fold's end."""
CORDS = (0.14, 0.84)
"""Where its cords lie, of the tape's width."""


def gathered() -> View:
    """The panel drawn up, from the front, rings and hooks seen through it."""
    top = tuple((WIDE * i / 144, 0.9 * sin(2 * pi * i / 9)) for i in range(145))
    low = -28.0
    shapes: list[Shape] = [
        cloth(*top),
        cloth((0, 0), (0, low)),
        cloth((WIDE, 0), (WIDE, low)),
        broken(0, WIDE, low, 1.2),
        box(LineType.CUT, (-1, RODS[0]), (WIDE + 1, RODS[1])),
        *(
            Stroke(LineType.THIN, ((WIDE * i / 16, -2.5), (WIDE * i / 16, -9.0 - 5 * (i % 2))))
            for i in range(1, 16) if i != 8
        ),
        *(Stroke(LineType.MARK, ((x, RODS[0]), (x, HOLD)), "heading.count") for x in PLACES),
        *(Stroke(LineType.MARK, ((x - 1.2, HOLD), (x + 1.2, HOLD)), "heading.count") for x in PLACES),
    ]
    return View(
        title="A panel gathered, the front towards you",
        spoken=(
            "The panel's top from the front, its tape drawn up, hung from the rod by hooks in rings. The gathered "
            "width is from side edge to side edge. From one hook to the next there is so much at the most. Hooks are "
            "counted on one panel. The drop is from the top of the rod down to where the rings hold the hooks; the "
            "panel's top edge stands above that place by so much as they are set below."
        ),
        shapes=tuple(shapes),
        notes=(
            Span("gathered width", 0, WIDE, low, "below", "heading.gathered_width"),
            Span("apart, at most", PLACES[0], PLACES[1], RODS[1], "above", "heading.max_pitch"),
            Rise("drop", HOLD, RODS[1], -1, "left", "heading.drop"),
            Rise("set below", HOLD, 0, WIDE, "right", "heading.set_below"),
            *(
                Within(str(i), (max(x - 7, 1), 3), (min(x + 7, WIDE - 1), RODS[0] - 1), about="heading.count")
                for i, x in enumerate(PLACES, 1)
            ),
            Within("front", (2, low + 1), (WIDE - 2, -15)),
        ),
    )  # fmt: skip


def tape() -> View:
    """The tape on the panel's back."""
    wide, turn, low, deep = 34.0, 7.0, -TOP - TAPE, 44.0
    hook = -TOP - POCKET
    shapes: list[Shape] = [
        *corner(wide, deep),
        Stroke(LineType.CUT, ((wide, -TOP), (0, -TOP), (0, low), (wide, low)), "heading.tape_width"),
        *(across(LineType.THIN, -3.0, wide, -TOP - TAPE * part, "heading.cord_side") for part in CORDS),
        Stroke(LineType.FOLD, ((turn, -TOP), (turn, low)), "heading.tape_turn"),
        across(LineType.FOLD, 0, wide, -FOLD, "heading.top_fold"),
        box(LineType.MARK, (9.5, hook - 4.0), (13.0, hook), "heading.pocket"),
    ]
    return View(
        title="The tape on the panel, its back towards you",
        spoken=(
            "The panel's upper left corner, its back towards you, the tape sewn along it. Above the tape some cloth "
            "stands, from the panel's top edge to the tape's upper edge. The tape's width is from edge to edge of it. "
            "The pocket is from the tape's upper edge down to where the hooks hold. The fold is how deep the top is "
            "folded to the back, from the top edge down to a line under the tape. At each end so much of the tape is "
            "turned in. The cords are pulled from one side, the return edge or the leading edge."
        ),
        shapes=tuple(shapes),
        notes=(
            Rise("fold", -FOLD, 0, -3, "left", "heading.top_fold"),
            Rise("tape", low, -TOP, -3, "left", "heading.tape_width"),
            Rise("above", -TOP, 0, wide, "right", "heading.tape_top"),
            Rise("pocket", hook, -TOP, wide, "right", "heading.pocket"),
            Span("turned in", 0, turn, low, "below", "heading.tape_turn"),
            Within("cords", (14, low + 4), (30, hook), about="heading.cord_side"),
            Within("back", (turn + 1, -deep), (wide - 2, low)),
        ),
    )
