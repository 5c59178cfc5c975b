"""Panels that hang in one room and were bought in lots of different lengths."""

from __future__ import annotations

from collections.abc import Sequence

from ...lengths import Length
from ..figures import Notice
from ..wording import say
from .plan import WindowPlan, listed


def lots_notices(windows: Sequence[WindowPlan]) -> list[Notice]:
    """A note for each room whose panels, all of one kind of heading, do not measure the same from top to bottom.

    Their finished lengths can be alike all the same, but a line marked from one panel onto another cannot.
    """
    rooms: dict[tuple[str, str], dict[Length, list[str]]] = {}
    for window in windows:
        length = window.plan.spec.panel.length
        if length is not None and window.room:
            kind = (window.room, window.plan.heading.style)
            rooms.setdefault(kind, {}).setdefault(length, []).append(window.label)
    tape = windows[0].plan.tape
    return [
        Notice(
            "lots_differ",
            "note",
            f"{room}: the panels are not of one length, "
            + "; ".join(f"{listed(labels)} {say(tape, length)}" for length, labels in lots.items())
            + ". Measure and mark every panel from its own bottom edge by its own gauge; never lay one lot on "
            "another to mark or to cut.",
        )
        for (room, _), lots in rooms.items()
        if len(lots) > 1
    ]
