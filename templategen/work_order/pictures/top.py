"""The top folded anew, in section."""

from __future__ import annotations

from ...document.view import Label, Note, Rise, Shape, Stroke, View
from ...drawing import LineType
from ...planning import Plan
from ...planning.doubled import doubled_now, turned_now
from .cloth import APART, TAIL, broken, doubled, front_and_back
from .signs import across, figure, mm


def folded(plan: Plan) -> View:
    """The panel's top cut across, as it is when it is folded: how deep, and what is turned under."""
    deep, turn = max(mm(plan.top.needed), 1.0), min(mm(plan.spec.heading.top_turn), mm(plan.top.needed) * 0.9)
    tail = deep * (1 + TAIL)
    gap = tail * APART * 1.4
    depth, under = figure(plan, plan.top.needed), figure(plan, plan.spec.heading.top_turn)
    shapes: list[Shape] = [doubled(deep, tail, gap, turn)]
    notes: list[Note] = [
        Rise(depth, -deep, 0, 0),
        Label("new top edge", (gap * 0.5, 0)),
        *front_and_back(-gap * 0.5, gap * 1.5, -tail, -deep, tail * APART),
    ]
    said = ""
    if turn:
        notes.append(Label(f"{under} turned under", (gap * 0.45, -deep + turn)))
        said = f" {under} of it is turned under, between the two layers."
    return View(
        title="The top folded, cut across",
        spoken=(
            f"The panel's top cut across, its front on the left. The top is folded to the back, {depth} deep.{said}"
        ),
        shapes=tuple(shapes),
        notes=tuple(notes),
    )


def let_down(plan: Plan) -> View:
    """The old top unpicked and flat, the back towards you."""
    was = doubled_now(plan.spec) + turned_now(plan.spec)
    deep = max(mm(was), 10.0)
    wide, low = deep * 3, -deep * 2.2
    return View(
        title="The old top let down, the back towards you",
        spoken=(
            "The panel's top, its back towards you, the old top unpicked and flat. The raw edge is now the top; the "
            f"old top edge shows as a crease {figure(plan, was)} below it."
        ),
        shapes=(
            Stroke(LineType.CUT, ((0, low), (0, 0), (wide, 0), (wide, low))),
            broken(0, wide, low, deep * 0.08),
            across(LineType.THIN, 0, wide, -deep),
        ),
        notes=(
            Rise(figure(plan, was), -deep, 0, 0, "left"),
            Label("raw edge", (wide, 0)),
            Label("crease: the old top edge", (wide, -deep)),
        ),
    )
