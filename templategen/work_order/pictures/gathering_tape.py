"""Gathering tape: a piece of it, where it is sewn, the panel drawn up, and a hook in its pocket."""

from __future__ import annotations

from math import pi, sin

from ...document.view import Arrow, Label, Note, Rise, Shape, Span, Stroke, View, Within
from ...drawing import LineType
from ...lengths.counting import plural
from ...planning import Plan
from ...planning.headings.gathering_tape import TapePlan
from .cloth import broken, cloth, corner, rows
from .points import held
from .signs import box, figure, mm

CORDS = (0.26, 0.74)
"""Where its cords are drawn, of the tape's width: our choice; most tapes have two or three."""


def _edges(plan: Plan, tape: TapePlan) -> tuple[str, str]:
    """The edge whose cords are knotted, and the one they are pulled from."""
    pulled = tape.given.cord_side
    return ("leading" if pulled == "return" else "return"), pulled


def piece(plan: Plan, tape: TapePlan) -> View:
    """A piece of tape: knotted at one end, its cords free at the other."""
    high = max(mm(tape.width), 1.0)
    wide, turn = high * 3.0, min(mm(tape.given.tape_turn), high * 1.2)
    knotted, pulled = _edges(plan, tape)
    long, turned = figure(plan, tape.tape_length), figure(plan, tape.given.tape_turn)
    shapes: list[Shape] = [box(LineType.CUT, (0, 0), (wide, high))]
    for part in CORDS:
        y = high * part
        shapes += [
            Stroke(LineType.MARK, ((0, y), (wide + high * 0.5, y))),
            box(LineType.MARK, (-high * 0.08, y - high * 0.07), (0, y + high * 0.07)),
        ]
    notes: list[Note] = [
        Span(long, 0, wide, 0, "below"),
        Label("cords free, at the front", (wide + high * 0.4, high * CORDS[1])),
        Within("knots at the back", (high * 0.05, high * CORDS[0]), (wide, high * CORDS[1])),
    ]
    if turn:
        shapes += [Stroke(LineType.FOLD, ((x, 0), (x, high))) for x in (turn, wide - turn)]
        notes.append(Span(turned, wide - turn, wide, high, "above"))
    fold = f" At either end {turned} will be turned in." if turn else ""
    return View(
        title="A piece of tape, its pockets up",
        spoken=(
            f"A piece of tape {long} long, its pockets up. At the end for the {knotted} edge the cords are drawn out "
            f"at the back and knotted; at the end for the {pulled} edge they are drawn out at the front and left free."
            f"{fold}"
        ),
        shapes=tuple(shapes),
        notes=tuple(notes),
    )


def _sewn(tape: TapePlan) -> tuple[float, list[Shape]]:
    """The panel's corner from the back with the tape on it: how wide it is drawn, and its shapes."""
    top, lower = mm(tape.top), max(mm(tape.lower), mm(tape.top) + 1.0)
    deep = lower * 1.4
    wide = deep * 2.2
    cords = [(-top - (lower - top) * part) for part in CORDS]
    shapes: list[Shape] = [
        *corner(wide, deep),
        Stroke(LineType.MARK, ((wide, -top), (0, -top), (0, -lower), (wide, -lower))),
        *rows(wide, cords, LineType.THIN),
    ]
    return wide, shapes


def pinned(plan: Plan, tape: TapePlan) -> View:
    """Where the tape lies on the back."""
    wide, shapes = _sewn(tape)
    top, width = figure(plan, tape.top), figure(plan, tape.width)
    notes: list[Note] = [
        Rise(width, -mm(tape.lower), -mm(tape.top), 0),
        Label("tape, its pockets towards you", (wide * 0.9, -mm(tape.top) - mm(tape.width) * 0.5)),
        Label("panel's top edge", (wide * 0.9, 0)),
    ]
    if tape.top.mm > 0:
        notes.append(Rise(top, -mm(tape.top), 0, 0))
    under = ""
    if tape.top < tape.fold < tape.lower and plan.top.refolded:
        y = -mm(tape.fold)
        shapes.append(Stroke(LineType.FOLD, ((0, y), (wide, y))))
        notes.append(Label("edge of the fold, under the tape", (wide * 0.97, y)))
        under = " It covers the edge of the folded top."
    return View(
        title="Where the tape lies, the back towards you",
        spoken=(
            f"The panel's upper left corner, its back towards you. The tape, {width} wide, lies {top} below the top "
            f"edge, its pockets towards you.{under}"
        ),
        shapes=tuple(shapes),
        notes=tuple(notes),
    )


def rows_sewn(plan: Plan, tape: TapePlan) -> View:
    """The two rows, in the same direction."""
    wide, shapes = _sewn(tape)
    top, lower = mm(tape.top), mm(tape.lower)
    inside = (lower - top) * 0.12
    ys = (-top - inside, -lower + inside)
    shapes += rows(wide, ys)
    beside = (top * 0.5 or inside, -inside * 2.5)
    shapes += [Arrow(((wide * 0.12, y + d), (wide * 0.45, y + d))) for y, d in zip(ys, beside, strict=True)]
    shapes.append(Stroke(LineType.STITCH, ((wide * 0.02, -top), (wide * 0.02, -lower))))
    pulled = tape.given.cord_side
    return View(
        title="The rows of stitching",
        spoken=(
            "The panel's upper left corner, its back towards you. One row of stitching runs along the tape's upper "
            "edge and one along its lower edge, both in the same direction, and one across each end. No stitch "
            f"catches a cord at the {pulled} edge."
        ),
        shapes=tuple(shapes),
        notes=(
            Label("upper row", (wide * 0.95, ys[0])),
            Label("cord: leave it free", (wide * 0.95, -top - (lower - top) * 0.5 * (CORDS[0] + CORDS[1]))),
            Label("lower row, the same way", (wide * 0.95, ys[1])),
        ),
    )


def gathered(plan: Plan, tape: TapePlan) -> View:
    """The panel drawn up under the marks on the rod."""
    wide = max(mm(tape.gathered), 1.0)
    parts = len(tape.marks) + 1
    step = wide / parts
    high = wide * 0.22
    waves = min(parts * 2, 24) * 2
    top = tuple((wide * i / (waves * 6), wide * 0.012 * sin(2 * pi * i / 12)) for i in range(waves * 6 + 1))
    pulled = tape.given.cord_side
    shapes: list[Shape] = [
        cloth(*top),
        cloth((0, 0), (0, -high)),
        cloth((wide, 0), (wide, -high)),
        broken(0, wide, -high, high * 0.06),
        box(LineType.MARK, (-wide * 0.03, wide * 0.04), (wide * 1.03, wide * 0.07)),
        *(_gather(wide * i / waves, high, i % 2 > 0) for i in range(1, waves)),
        *(Stroke(LineType.MARK, ((step * i, wide * 0.03), (step * i, wide * 0.085))) for i in range(parts + 1)),
    ]
    whole, each = figure(plan, tape.gathered), figure(plan, tape.gathered_division)
    return View(
        title="The panel gathered",
        spoken=(
            f"The panel is drawn up from its {pulled} edge to {whole}. The rod or track is marked in "
            f"{plural(parts, 'equal part')}, each {each}, and every division of the panel stands at its mark."
        ),
        shapes=tuple(shapes),
        notes=(
            Span(whole, 0, wide, -high, "below"),
            Span(each, 0, step, wide * 0.085, "above"),
            Label("rod or track, marked", (wide * 1.03, wide * 0.055)),
            Label("gathers", (wide * (waves - 1) / waves, -high * 0.3)),
        ),
    )


def _gather(x: float, high: float, long: bool) -> Stroke:
    return Stroke(LineType.THIN, ((x, -high * 0.09), (x, -high * (0.9 if long else 0.6))))


def hooks(plan: Plan, tape: TapePlan) -> View:
    """Hooks in the pockets."""
    wide, shapes = _sewn(tape)
    y = -mm(tape.hook_set)
    size = max(mm(tape.width) * 0.3, 1.0)
    first, second = wide * 0.1, wide * 0.72
    for x in (first, second):
        shapes.append(box(LineType.THIN, (x - size * 0.5, y - size), (x + size * 0.5, y)))
        left, right, foot = x - size * 0.3, x + size * 0.3, y - size * 0.6
        shapes.append(cloth((left, foot), (left, y), (right, y), (right, foot)))
    apart, below = figure(plan, tape.hook_pitch), figure(plan, tape.hook_set)
    return View(
        title="Hooks in the pockets, the back towards you",
        spoken=(
            f"The panel's upper left corner, its back towards you. {plural(tape.hooks, 'hook')} stand in the pockets "
            f"of the tape, all in one row {below} below the top edge: one at either end, the others {apart} apart "
            "when the panel is gathered."
        ),
        shapes=tuple(shapes),
        notes=(
            Span(apart, first, second, 0, "above"),
            Rise(below, y, 0, 0),
            Label("hook in a pocket", (second + size * 0.3, y - size * 0.4)),
            Label("top edge", (wide * 0.93, 0)),
        ),
    )


def hung(plan: Plan, tape: TapePlan) -> View:
    """A hook on what carries it."""
    return held(plan, "hook", tape.given.drop, tape.hook_set, True)
