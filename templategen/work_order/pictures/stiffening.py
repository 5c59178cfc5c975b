"""Stiffening between the two layers of the top, in section."""

from __future__ import annotations

from ...document.view import Label, Rise, View
from ...lengths import Length
from ...planning import Plan
from .cloth import APART, TAIL, doubled, front_and_back, stuff
from .signs import figure, mm


def stiffened(plan: Plan, depth: Length) -> View:
    """The panel's top cut across, stiffening ``depth`` deep in its fold."""
    deep = max(mm(depth), 1.0)
    doubled_deep = max(mm(plan.top.reach), deep)
    doubled_deep = min(doubled_deep, deep * 2)
    tail = doubled_deep * (1 + TAIL)
    gap = tail * APART * 2.2
    said = figure(plan, depth)
    return View(
        title="Stiffening in the top, cut across",
        spoken=(
            f"The panel's top cut across, its front on the left. Between its two layers lies stiffening {said} deep, "
            "right up to the fold at the top edge."
        ),
        shapes=(
            doubled(doubled_deep, tail, gap),
            *stuff((gap * 0.3, -deep), (gap * 0.7, -gap * 0.4)),
        ),
        notes=(
            Rise(said, -deep, 0, 0),
            Label("top edge: the fold", (gap * 0.5, 0)),
            Label("stiffening", (gap * 0.5, -deep * 0.4)),
            Label("back layer", (gap, -deep * 0.7)),
            *front_and_back(-gap * 0.5, gap * 1.5, -tail, -doubled_deep, tail * APART),
        ),
    )
