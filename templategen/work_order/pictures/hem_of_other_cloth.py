"""Facing and border: their strips, the seam, and what becomes of it."""

from __future__ import annotations

from collections.abc import Sequence

from ...document.view import Arrow, Label, Note, Point, Rise, Shape, Span, Stroke, Symbol, View, Within
from ...drawing import LineType
from ...planning import Plan
from ...planning.hems.sewn_on import SewnOnPlan
from .cloth import broken_up, turned, turned_below
from .hem_done import done
from .hem_folds import Fold, folding
from .sections import LAYER, ROOM, numbered, other, pin, section, sides, through, unit
from .signs import across, figure, mm


def strip(plan: Plan, hem: SewnOnPlan) -> View:
    """The strip of other cloth that is cut for one panel."""
    high = mm(hem.strip)
    u = unit(high) * 2
    wide = 70 * u
    return View(
        title="The strip for one panel",
        spoken=(
            f"A strip of other cloth, {figure(plan, hem.strip)} wide and {figure(plan, hem.strip_length)} long."
        ),
        shapes=(
            Stroke(LineType.CUT, ((wide * 0.45, high), (0, high), (0, 0), (wide * 0.45, 0))),
            Stroke(LineType.CUT, ((wide * 0.55, high), (wide, high), (wide, 0), (wide * 0.55, 0))),
            broken_up(wide * 0.45, 0, high, 1.5 * u),
            broken_up(wide * 0.55, 0, high, 1.5 * u),
            Symbol("scissors", (wide * 0.2, high), 180.0),
        ),
        notes=(
            Rise(figure(plan, hem.strip), 0, high, 0, "left"),
            Span(figure(plan, hem.strip_length), 0, wide, 0, "below"),
            Within("right side", (0, 0), (wide * 0.45, high * 0.8), at=(wide * 0.3, high / 2)),
        ),
    )


def pressed(plan: Plan, hem: SewnOnPlan) -> View:
    """A facing's long edge turned under."""
    assert hem.turn_under is not None, "a facing has a turn-under"
    fold = Fold(depth=hem.turn_under, edge="raw edge", line="fold-to line")
    return folding(plan, fold, "The facing's edge: marked, brought to its line, folded")


def halved(plan: Plan, hem: SewnOnPlan) -> View:
    """1: the strip, and where it is folded. 2: folded in half, one of its edges pressed under, cut across."""
    seam, deep = mm(hem.seam), mm(hem.depth)
    half = deep + seam
    u = unit(2.2 * half)
    wide, gap = 36 * u, LAYER * u
    x = wide + ROOM * u
    back = x + 2 * gap
    return View(
        title="The border pressed in half",
        spoken=(
            f"1: the strip, {figure(plan, hem.strip)} wide, its wrong side towards you, is folded along its middle. "
            f"2: cut across: it is folded in half, right side out; of one edge {figure(plan, hem.seam)} is pressed "
            f"under, so that it is {figure(plan, hem.depth)} deep there."
        ),
        shapes=(
            Stroke(LineType.MARK, ((wide, half), (0, half), (0, -half), (wide, -half))),
            broken_up(wide, -half, half, u),
            across(LineType.FOLD, 0, wide, 0),
            Arrow(_curved(((wide * 0.4, -half * 0.9), (wide * 0.5, 0), (wide * 0.4, half * 0.9)))),
            other(((x, half), *turned_below(x, back, 0), *turned(back, x + gap, deep), (x + gap, deep - seam))),
        ),
        notes=(
            Rise(figure(plan, hem.strip), -half, half, 0, "left"),
            Rise(figure(plan, hem.depth), 0, deep, back, "right"),
            Rise(figure(plan, hem.seam), deep, half, back, "right"),
            Label("flat edge", (x, half)),
            Label("turned in", (x + 1.5 * gap, deep)),
            Label("fold", (x + gap, 0)),
            *numbered((wide / 2, x + gap), -half, u),
        ),
    )


def faced(plan: Plan, hem: SewnOnPlan) -> View:
    """1: facing and panel, right sides together, with their seam. 2: the facing turned to the back."""
    assert hem.turn_under is not None, "a facing has a turn-under"
    deep, seam, turn = mm(hem.depth), mm(hem.seam), mm(hem.turn_under)
    top = deep * 1.35
    u = unit(top + seam)
    gap, x = LAYER * u, (2 * ROOM + 10) * u
    made = done(hem, x, top)
    outer = -2 * gap
    way = ((outer - u, deep * 0.45), (outer - 4 * u, 0.0), (-gap, -seam - 6 * u), (5 * u, 0.0), (5 * u, deep * 0.45))
    shapes: list[Shape] = [
        section(((0, top), (0, -seam))),
        other(((-gap, -seam), *turned(-gap, outer, deep), (outer, deep - turn))),
        through(-gap, 0, 0, u),
        Arrow(_curved(way)),
        *made.shapes,
        pin(made.right, deep - 2.5 * u, u),
    ]
    notes: list[Note] = [
        Rise(figure(plan, hem.seam), -seam, 0, -gap, "left"),
        Label("facing", (-gap, deep * 0.7), "left"),
        Label("seam", (-gap - u, 0), "left"),
        *sides(0, gap * 0.3, deep + 2 * u, top, u),
        Rise(figure(plan, hem.depth), 0, deep, made.right, "right"),
        Label("pin", (made.right + u, deep - 2.5 * u)),
        *numbered((-gap / 2, (made.left + made.right) / 2), -seam - 5 * u, u),
    ]
    return View(
        title="The facing sewn on, and turned, cut across",
        spoken=(
            "Cut across, the panel's front on the left. 1: the facing lies before the panel, right sides together, "
            f"its pressed edge up, and a seam joins them {figure(plan, hem.seam)} from the edges. The facing is then "
            f"brought round below to the back. 2: it lies behind the panel and is pinned {figure(plan, hem.depth)} up; "
            "the seam lies just behind the finished edge."
        ),
        shapes=tuple(shapes),
        notes=tuple(notes),
    )


def _curved(points: Sequence[Point], steps: int = 8) -> tuple[Point, ...]:
    """A smooth way past points: a Catmull-Rom spline."""
    ends = (points[0], *points, points[-1])
    found: list[Point] = []
    for a, b, c, d in zip(ends, ends[1:], ends[2:], ends[3:], strict=False):
        for i in range(steps):
            t = i / steps
            found.append((_spline(a[0], b[0], c[0], d[0], t), _spline(a[1], b[1], c[1], d[1], t)))
    return (*found, points[-1])


def _spline(a: float, b: float, c: float, d: float, t: float) -> float:
    return b + t / 2 * (c - a + t * (2 * a - 5 * b + 4 * c - d + t * (3 * (b - c) + d - a)))


def bordered(plan: Plan, hem: SewnOnPlan) -> View:
    """1: the border's flat edge sewn on. 2: the border folded down, pinned over the seam at the back."""
    deep, seam = mm(hem.depth), mm(hem.seam)
    top = deep * 2.15
    u = unit(top)
    gap, x = LAYER * u, (2 * ROOM + 12) * u
    made = done(hem, x, top)
    outer = -3 * gap
    border = ((-gap, deep - seam), *turned(-gap, outer, 2 * deep), *turned_below(outer, outer + gap, deep),
              (outer + gap, deep + seam))  # fmt: skip
    way = ((outer - u, deep * 1.7), (outer - 6 * u, deep * 1.2), (outer - u, deep * 0.3))
    return View(
        title="The border sewn on, and folded down, cut across",
        spoken=(
            "Cut across, the panel's front on the left. 1: the border lies before the panel, its fold up; its flat "
            f"edge is sewn to the panel's bottom edge, right sides together, {figure(plan, hem.seam)} from the edges. "
            f"2: it is folded down and comes {figure(plan, hem.depth)} below the seam; its pressed edge lies over the "
            "seam at the back, and is pinned."
        ),
        shapes=(
            section(((0, top), (0, deep - seam))),
            other(border),
            through(-gap, 0, deep, u),
            Arrow(_curved(way)),
            *made.shapes,
            pin(made.right, deep - 2.5 * u, u),
        ),
        notes=(
            Rise(figure(plan, hem.seam), deep - seam, deep, -gap, "left"),
            Label("border", (outer, deep * 1.8), "left"),
            Label("seam", (-gap - u, deep), "left"),
            *sides(x, x + gap * 0.3, deep + 3 * u, top, u),
            Rise(figure(plan, hem.depth), 0, deep, made.right, "right"),
            Label("pin", (made.right + u, deep - 2.5 * u)),
            *numbered((-gap, x), 0, u),
        ),
    )


def bordered_single(plan: Plan, hem: SewnOnPlan) -> View:
    """1: the border's upper edge sewn on. 2: folded down, its lower edge turned up twice."""
    assert hem.own_hem is not None, "a single border has its own hem"
    deep, seam, own = mm(hem.depth), mm(hem.seam), mm(hem.own_hem)
    whole = hem.strip - hem.seam
    top = max(deep + mm(whole), deep * 1.5) * 1.08
    u = unit(top)
    gap, x = LAYER * u, (2 * ROOM + 10) * u
    made = done(hem, x, top)
    way = ((-gap - u, deep + mm(whole) * 0.8), (-gap - 6 * u, deep + mm(whole) * 0.3), (-gap - u, deep * 0.3))
    return View(
        title="The border sewn on, and hemmed, cut across",
        spoken=(
            "Cut across, the panel's front on the left. 1: the border lies before the panel, right sides together; a "
            f"seam joins them {figure(plan, hem.seam)} from the edges. 2: it is folded down, both edges of the seam "
            f"pressed up behind the panel; its lower edge is turned up twice, {figure(plan, hem.own_hem)} each time, "
            f"and pinned, so that the border is {figure(plan, hem.depth)} deep."
        ),
        shapes=(
            section(((0, top), (0, deep - seam))),
            other(((-gap, deep - seam), (-gap, deep + mm(whole)))),
            through(-gap, 0, deep, u),
            Arrow(_curved(way)),
            *made.shapes,
            pin(made.right, own - min(2.5 * u, own / 2), u),
        ),
        notes=(
            Rise(figure(plan, hem.seam), deep - seam, deep, -gap, "left"),
            Label("border", (-gap, deep + mm(whole) * 0.9), "left"),
            Label("seam", (-gap - u, deep), "left"),
            *sides(x, x + gap * 0.3, deep + seam + 2 * u, top, u),
            Rise(figure(plan, hem.own_hem), 0, own, x, "left"),
            Rise(figure(plan, hem.depth), 0, deep, made.right, "right"),
            Label("pin", (made.right + u, own - min(2.5 * u, own / 2))),
            *numbered((0, x + gap), 0, u),
        ),
    )
