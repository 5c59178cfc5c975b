"""Rings, clips and hooks: how far down they are set, and how the panel hangs by them."""

from __future__ import annotations

from math import cos, pi, sin

from ...document.view import Circle, Label, Note, Point, Rise, Shape, Stroke, View
from ...drawing import LineType
from ...lengths import Length
from ...planning import Plan
from ...planning.headings.points import PointPlan
from .cloth import APART, TAIL, corner, doubled, front_and_back, rod, shown, thread
from .signs import box, figure, mm


def heights(plan: Plan, points: PointPlan) -> View:
    """The height card at a mark, its ledge on the top edge."""
    below = max(mm(points.set_below), 1.0)
    deep = below * 2.2
    first = deep * 0.5
    card, wide, up = deep * 0.55, deep * 1.8, deep * 0.5
    left, right = first, first + card
    shapes: list[Shape] = [
        *corner(wide, deep),
        # Its long edge lies on the mark; above the panel's edge it is wider, and that step lies on the edge.
        Stroke(
            LineType.MARK,
            ((left, up), (left, -below), (right, -below), (right, 0), (right + card * 0.35, 0),
             (right + card * 0.35, up), (left, up)),
        ),
        Stroke(LineType.MARK, ((left - deep * 0.16, -below), (left, -below))),
        Stroke(LineType.MARK, ((left, deep * 0.0), (left, -deep * 0.12))),
    ]  # fmt: skip
    said = figure(plan, points.set_below)
    name = "hook" if points.thing == "hook" else "ring"
    return View(
        title=f"The {name} height card at a mark",
        spoken=(
            f"The panel's upper left corner, its back towards you. The {name} height card lies at a mark, its ledge "
            f"level with the panel's top edge; a line is marked at its lower edge, {said} below the top edge."
        ),
        shapes=tuple(shapes),
        notes=(
            Rise(said, -below, 0, 0),
            Label("card", (right, up * 0.6)),
            Label("ledge, on the top edge", (right + card * 0.3, 0)),
            Label(f"mark for the {points.thing}", (left - deep * 0.08, -below)),
        ),
    )


def hung(plan: Plan, points: PointPlan) -> View:
    """Cut across: the rod or track, what goes round or runs in it, and the panel's top."""
    return held(plan, points.thing, points.given.drop, points.set_below, points.round_rod)


def held(plan: Plan, thing: str, drop: Length, set_below: Length, round_rod: bool) -> View:
    """A panel held by a ``thing``, so far below its top edge and below the top of the rod or track."""
    size, p = max(mm(plan.spec.rod.diameter), 1.0), max(mm(drop), 1.0)
    size = min(size, 2 * p)
    below = shown(set_below, 0.0, 2 * p)
    reach = max(below * 1.6, p * 0.9)
    gap = (max(p, below) + reach * (1 + TAIL)) * APART
    place = -p  # the top of the rod is the origin
    edge = place + below
    tail = reach * (1 + TAIL)
    where, what = ("rod", "ring") if round_rod else ("track", "glider")
    front = 0.0 if thing == "clip" else -2.5 * gap
    top = doubled(reach, tail, gap).points
    shapes: list[Shape] = [Stroke(LineType.CUT, tuple((x + front - gap * 0.5, y + edge) for x, y in top))]
    bottom = place + gap * 1.4 if thing == "clip" else place
    if round_rod:
        shapes += rod((0.0, -size / 2), size / 2)
        shapes += [
            Circle(LineType.MARK, (0.0, bottom / 2), -bottom / 2),
            Circle(LineType.MARK, (0.0, bottom / 2), -bottom / 2 + gap * 0.35),
        ]
    else:
        shapes += [box(LineType.CUT, (-size * 0.4, -size), (size * 0.4, 0.0)), *_glider(place, size, gap)]
    shapes += _holding(thing, place, front, gap, reach, below)
    notes: list[Note] = [
        Rise(figure(plan, drop), place, 0.0, -max(size, p if round_rod else 0.0) / 2),
        Label(where, (size * 0.2, -size * 0.3)),
        Label(what, (-bottom / 2 + gap * 0.3, bottom / 2) if round_rod else (gap * 0.3, (place - size) / 2)),
    ]
    if thing != "ring":
        notes.append(Label(thing, (gap * 0.5 if thing == "clip" else gap * 0.4, place - gap * 0.3)))
    if below:
        notes.append(Rise(figure(plan, set_below), place, edge, front - gap * 0.5))
    if abs(edge) > 1e-6:
        notes.append(Label("top edge", (front, edge)))
    notes += front_and_back(front - 1.5 * gap, front + 2.5 * gap, edge - tail, edge - reach, gap)
    held_at = f"{figure(plan, set_below)} below the panel's top edge" if set_below else "at the panel's very top edge"
    return View(
        title=f"A {thing} on the {where}, cut across",
        spoken=(
            f"Cut across, the front on the left. From the top of the {where} down to where a {what} holds it is "
            f"{figure(plan, drop)}. The {thing} holds the panel {held_at}, at its back."
        ),
        shapes=tuple(shapes),
        notes=tuple(notes),
    )


def _glider(place: float, size: float, gap: float) -> tuple[Shape, ...]:
    """A glider in the track and its eye, whose lowest point holds the hook."""
    eye = min(gap * 0.9, (-place - size) / 2 if -place > size else gap * 0.5)
    return (
        Stroke(LineType.MARK, ((0.0, -size * 0.5), (0.0, place + 2 * eye))),
        Circle(LineType.MARK, (0.0, place + eye), eye),
    )


def _holding(thing: str, place: float, front: float, gap: float, reach: float, below: float) -> tuple[Shape, ...]:
    """What is between ring and cloth: stitches, the jaws of a clip, or a hook."""
    if thing == "ring":
        left, right = front + 0.3 * gap, 0.6 * gap
        return thread(left, right, place, gap), thread(left, right, place, gap * 0.5)
    if thing == "clip":
        jaw: tuple[Point, ...] = (
            (0.0, place + gap * 1.4), (-1.5 * gap, place + gap * 0.7), (-0.7 * gap, place - gap * 0.7)
        )  # fmt: skip
        return (
            Stroke(LineType.MARK, jaw),
            Stroke(LineType.MARK, tuple((-x, y) for x, y in jaw)),
        )
    shank = max(reach * 0.45, below * 0.4)
    bend = [(-0.7 * gap + 0.9 * gap * (1 - cos(t)), place - 0.9 * gap + 0.9 * gap * sin(t)) for t in _half_turn()]
    foot = place - 0.9 * gap
    lower: tuple[Point, ...] = ((-1.5 * gap, foot - shank), (-0.7 * gap, foot - shank * 0.9))
    return (
        Stroke(LineType.MARK, (*lower, *bend, (1.1 * gap, foot - gap))),
        thread(front + 0.3 * gap, -0.4 * gap, foot - shank * 0.2, gap * 0.6),
        thread(front + 0.3 * gap, -0.4 * gap, foot - shank * 0.8, gap * 0.6),
    )


def _half_turn() -> list[float]:
    return [i * pi / 8 for i in range(9)]
