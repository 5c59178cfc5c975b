"""The sides of a panel: where it is cut narrower or in several, its new side hems, its mitred corners."""

from __future__ import annotations

from ...document.view import Hatch, Label, Note, Point, Rise, Shape, Span, Stroke, Symbol, View, Within
from ...drawing import LineType
from ...planning import Plan
from ...planning.plan import MitrePlan
from ...planning.widths import kept_edge
from .cloth import broken, broken_up
from .sections import FULL, numbered
from .signs import across, figure, mm

LOW = 0.3
"""Height of what is seen of the whole panel, of its width."""


def narrowed(plan: Plan) -> View:
    """The panel from the front, and where it is cut narrower or in several."""
    return _split(plan) if plan.spec.sides.split > 1 else _narrowed(plan)


def _whole(plan: Plan, cuts: list[float]) -> list[Shape]:
    whole = mm(plan.spec.panel.width)
    high = whole * LOW
    return [
        Stroke(LineType.MARK, ((0, 0), (0, high), (whole, high), (whole, 0))),
        broken(0, whole, 0, whole * 0.012),
        *(Stroke(LineType.CUT, ((x, 0), (x, high))) for x in cuts),
        Symbol("scissors", (cuts[0], high * 0.35), 90.0),
    ]


def _narrowed(plan: Plan) -> View:
    whole, cut = mm(plan.spec.panel.width), plan.figures["side_cut"].value
    high, kept = whole * LOW, kept_edge(plan.spec)
    x = mm(cut) if kept == "left" else whole - mm(cut)
    start, end = (0.0, x) if kept == "left" else (x, whole)
    low, top = (x, whole) if kept == "left" else (0.0, x)
    return View(
        title="Where the panel is cut, seen from the front",
        spoken=(
            f"The panel from the front, {figure(plan, plan.spec.panel.width)} wide. It is cut {figure(plan, cut)} "
            f"wide, measured from its {kept} edge, which stays. What is beyond the cut is cut off."
        ),
        shapes=(*_whole(plan, [x]), Hatch(((low, 0), (top, 0), (top, high), (low, high)))),
        notes=(
            Span(figure(plan, plan.spec.panel.width), 0, whole, high, "above"),
            Span(figure(plan, cut), start, end, 0, "below"),
            Within("cut off", (low, 0), (top, high), "right" if kept == "left" else "left"),
            Within("front", (start, high * 0.1), (end, high * 0.9)),
        ),
    )


def _split(plan: Plan) -> View:
    sides, whole = plan.spec.sides, mm(plan.spec.panel.width)
    cut, piece = plan.figures["side_cut"].value, plan.width + 2 * plan.figures["side_allowance"].value
    cuts = [mm(cut) + mm(piece) * i for i in range(sides.split - 1)]
    high = whole * LOW
    notes: list[Note] = [
        Span(figure(plan, plan.spec.panel.width), 0, whole, high, "above"),
        Span(figure(plan, cut), 0, cuts[0], 0, "below"),
        Label("cut here", (cuts[-1], high * 0.5)),
        Within("front", (0, high * 0.1), (cuts[0], high * 0.9)),
    ]
    inner = ""
    if sides.split > 2:
        notes.append(Span(figure(plan, piece), cuts[0], cuts[1], 0, "below"))
        inner = f" Every inner piece is {figure(plan, piece)} wide."
    return View(
        title="Where the panel is cut, seen from the front",
        spoken=(
            f"The panel from the front, {figure(plan, plan.spec.panel.width)} wide. It is cut in {sides.split} from "
            f"top to bottom, the first time {figure(plan, cut)} from a side edge.{inner}"
        ),
        shapes=tuple(_whole(plan, cuts)),
        notes=tuple(notes),
    )


def hemmed(plan: Plan) -> View:
    """1: a new edge from the back, with its two folds. 2: folded, and sewn."""
    sides = plan.spec.sides
    turn, deep = mm(sides.turn_under), mm(sides.hem)
    wide, high = (turn + deep) * 1.7, (turn + deep) * 1.1
    u = wide / 30
    left = wide + 16 * u
    row = left + deep - min(deep * 0.2, 1.2 * u)
    return View(
        title="The new side hem, from the back",
        spoken=(
            f"1: a new edge, the back towards you: {figure(plan, sides.turn_under)} is turned under along the first "
            f"dashed line, then the side hem, {figure(plan, sides.hem)} deep, along the second. 2: it is folded, and "
            "sewn close to its inner edge."
        ),
        shapes=(
            Stroke(LineType.CUT, ((0, 0), (0, high))),
            *(Stroke(LineType.FOLD, ((x, 0), (x, high))) for x in (turn, turn + deep)),
            broken(0, wide, high, u),
            broken(0, wide, 0, u),
            broken_up(wide, 0, high, u),
            *(Stroke(LineType.MARK, ((x, 0), (x, high))) for x in (left, left + deep)),
            Stroke(LineType.STITCH, ((row, 0), (row, high))),
            broken(left, left + wide - turn - deep + deep * 0.6, high, u),
            broken(left, left + wide - turn - deep + deep * 0.6, 0, u),
            broken_up(left + wide - turn - deep + deep * 0.6, 0, high, u),
        ),
        notes=(
            Span(figure(plan, sides.turn_under), 0, turn, high, "above"),
            Span(figure(plan, sides.hem), turn, turn + deep, high, "above"),
            Span(figure(plan, sides.hem), left, left + deep, high, "above"),
            Label("raw edge", (0, high * 0.7), "left"),
            Label("stitching", (row, high * 0.3)),
            Label("inner edge", (left + deep, high * 0.7)),
            *numbered((wide / 2, left + (wide - turn) / 2), 0, u),
        ),
    )


def mitred(plan: Plan, mitre: MitrePlan) -> View:
    """A corner from the back. 1: opened, with the one straight fold. 2: folded in along it. 3: both hems turned."""
    up, along = mm(mitre.up_the_side), mm(mitre.along_the_bottom)
    beside, below = mm(mitre.side_allowance), mm(mitre.hem_allowance)
    wide, high = along * 1.2, max(up * 1.12, below + mm(mitre.hem) * 1.3)
    u = max(high, wide * 2) / FULL
    second, third = wide + 8 * u, 2 * (wide + 8 * u) - beside
    tip = _mirrored(up, along)
    shapes: list[Shape] = [
        Stroke(LineType.CUT, ((0, high), (0, 0), (wide, 0))),
        *_going_on(0, wide, 0, high, u),
        Stroke(LineType.THIN, ((beside, 0), (beside, high))),
        across(LineType.THIN, 0, wide, below),
        Stroke(LineType.FOLD, ((0, up), (along, 0))),
        Stroke(LineType.CUT, ((second, high), (second, up), (second + along, 0), (second + wide, 0))),
        *_going_on(second, second + wide, 0, high, u),
        Stroke(LineType.MARK, ((second, up), (second + tip[0], tip[1]), (second + along, 0))),
        *_finished(mitre, third + beside, third + beside + max(wide - beside, mm(mitre.side) * 1.6), high, u),
    ]
    corner = third + beside
    seam = (corner + mm(mitre.side) / 2, below + mm(mitre.hem) / 2)
    notes: list[Note] = [
        Rise(figure(plan, mitre.up_the_side), 0, up, 0, "left"),
        Span(figure(plan, mitre.along_the_bottom), 0, along, 0, "below"),
        Label("fold", (along * 0.25, up * 0.75), "left"),
        Label("crease", (wide * 0.03, below), "left"),
        Label("seam", seam),
        *numbered((wide * 0.75, second + wide * 0.75, corner + wide * 0.3), 0.0, u),
    ]
    return View(
        title="A corner from the back: marked, folded in, both hems turned",
        spoken=(
            "1: the corner of the panel opened flat, its back towards you, the raw corner below on the left. The one "
            f"straight fold runs from {figure(plan, mitre.up_the_side)} up the side's raw edge to "
            f"{figure(plan, mitre.along_the_bottom)} along the bottom's raw edge, over the crossing of the two creases "
            "that come to lie at the finished edges. 2: the corner is folded in along it. 3: both hems are turned; "
            f"their edges meet in a seam {figure(plan, mitre.seam)} long, from the finished corner inwards."
        ),
        shapes=tuple(shapes),
        notes=tuple(notes),
    )


def _mirrored(up: float, along: float) -> Point:
    """Where the raw corner comes to lie, folded in along the line."""
    part = 2 * up * along / (up * up + along * along)
    return (up * part, along * part)


def _finished(mitre: MitrePlan, left: float, right: float, high: float, u: float) -> tuple[Shape, ...]:
    """The corner with both hems turned, its lower edge as high as the crease of the bottom hem."""
    low = mm(mitre.hem_allowance)
    inner = (left + mm(mitre.side), low + mm(mitre.hem))
    return (
        Stroke(LineType.CUT, ((left, high), (left, low), (right, low))),
        Stroke(LineType.MARK, ((inner[0], high), inner, (right, inner[1]))),
        Stroke(LineType.MARK, ((left, low), inner)),
        *_going_on(left, right, low, high, u),
    )


def _going_on(left: float, right: float, low: float, high: float, u: float) -> tuple[Shape, Shape]:
    return broken(left, right, high, u), broken_up(right, low, high, u)
