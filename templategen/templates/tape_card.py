"""Tape card: laid on the panel's top edge, it shows where the tape, its stitching and its hooks come."""

from __future__ import annotations

from ..drawing import USUAL, Drawing, LineType, Look
from ..lengths import millimetres
from ..planning import Plan
from ..planning.headings.gathering_tape import TapePlan
from .said import plain
from .top_card import TopLine, draw_top_card

STITCHED_IN = millimetres(2)
"""Rows of stitching run so far inside the tape's edges: our choice, because outside the cords there is room for
no more."""


def draw(plan: Plan, look: Look = USUAL) -> list[Drawing]:
    """The card; none for a heading without a tape."""
    tape = plan.heading
    if not isinstance(tape, TapePlan):
        return []
    lines = [
        TopLine("tape's upper edge", tape.top, LineType.MARK),
        TopLine("hooks hold", tape.hook_set, LineType.CENTRE),
        TopLine("tape's lower edge", tape.lower, LineType.MARK),
    ]
    if plan.top.refolded and tape.fold:
        lines.append(TopLine("edge of the fold", tape.fold, LineType.FOLD))
    caption = (
        "Upper edge on the panel's top edge, back towards you: mark the tape's upper edge.",
        f"Held to the bought tape: it is {plain(plan, tape.width)} wide, its pockets hold the hooks at their line.",
    )
    rows = (tape.top + STITCHED_IN, tape.lower - STITCHED_IN) if tape.width > 3 * STITCHED_IN else ()
    return [draw_top_card("tape card", sorted(lines, key=lambda line: line.at), caption, plan.tape, rows, look)]
