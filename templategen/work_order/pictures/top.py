"""The top: let down or cut off, and folded anew."""

from __future__ import annotations

from ...document.view import Hatch, Label, Rise, Shape, Stroke, Symbol, View, Within
from ...drawing import LineType
from ...planning import Plan
from ...planning.doubled import doubled_now, turned_now
from .cloth import broken
from .hem_folds import Fold, folding
from .signs import across, figure, mm


def turned_under(plan: Plan) -> View:
    """The raw edge brought to its line."""
    fold = Fold(depth=plan.spec.heading.top_turn, edge="raw edge", line="line", card=False, top=True)
    return folding(plan, fold, "The top turned under: marked, brought to its line, folded")


def folded(plan: Plan, pinned: bool) -> View:
    """The top folded over to the back."""
    turn = plan.spec.heading.top_turn
    edge = "first fold" if turn else "raw edge"
    fold = Fold(
        depth=plan.top.needed, edge=edge, line="line", turn=mm(turn), card=False, pinned=pinned, top=True
    )
    return folding(plan, fold, "The top: marked, brought to its line, folded")


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
            Within("back", (0, low), (wide, -deep)),
        ),
    )


def cut_off(plan: Plan) -> View:
    """The line below the old top, and what is cut off above it."""
    cut = plan.spec.heading.top_cut
    deep = mm(cut)
    wide, low = deep * 3.2, -deep * 1.9
    shapes: tuple[Shape, ...] = (
        Stroke(LineType.MARK, ((0, low), (0, 0), (wide, 0), (wide, low))),
        broken(0, wide, low, deep * 0.06),
        across(LineType.CUT, 0, wide, -deep),
        Hatch(((0, 0), (wide, 0), (wide, -deep), (0, -deep))),
        Symbol("scissors", (wide * 0.3, -deep), 0.0),
    )
    return View(
        title="The old top cut off, the back towards you",
        spoken=(
            f"The panel's top, its back towards you. A line runs right across {figure(plan, cut)} below the top edge; "
            "what is above it is cut off."
        ),
        shapes=shapes,
        notes=(
            Rise(figure(plan, cut), -deep, 0, 0, "left"),
            Label("old top edge", (wide, 0)),
            Label("cut here", (wide, -deep)),
            Within("cut off", (wide * 0.35, -deep), (wide, 0)),
            Within("back", (0, low), (wide, -deep)),
        ),
    )


def neatened() -> View:
    """A close zigzag along the raw edge."""
    wide, deep, count = 120.0, 5.0, 24
    zigzag = tuple((wide * i / count, -1.0 if i % 2 else -1.0 - deep) for i in range(count + 1))
    return View(
        title="The raw edge of the top neatened",
        spoken="The panel's top, its back towards you: a close zigzag stitch runs along the raw edge.",
        shapes=(
            Stroke(LineType.CUT, ((0, -30.0), (0, 0), (wide, 0), (wide, -30.0))),
            broken(0, wide, -30.0, 2.0),
            Stroke(LineType.MARK, zigzag),
        ),
        notes=(
            Label("raw edge", (wide, 0)),
            Label("zigzag", (wide, -1.0 - deep)),
            Within("back", (0, -30.0), (wide, -8.0)),
        ),
    )
