"""The strip pinned along the panel's top, and what is marked by it."""

from __future__ import annotations

from collections.abc import Sequence

from ...document.view import Label, Note, Running, Shape, Span, Stroke, Symbol, View, Within
from ...drawing import LineType
from ...lengths.counting import plural
from ...planning import Plan
from ...planning.headings.pleats import PleatPlan
from ...planning.plan import HeadingMark
from ...templates import Choices
from .cloth import broken, cloth
from .signs import figure, mm

MOST_MARKS = 120
"""Our choice: on paper they are then about as near to each other as lines can stand."""
STRIP, BELOW = 0.17, 0.13
"""Depth of the strip, and of the cloth seen below it, of the panel's width: our choice, so that numbers have room."""


def marking(plan: Plan, choices: Choices) -> View:
    """The spacing strip along the whole top edge, or the half strip from the left edge to the centre."""
    heading, half = plan.heading, choices.half_strip
    wide = mm(plan.width)
    end = wide / 2 if half else wide
    name = "half strip" if half else "spacing strip"
    places = [mark for mark in heading.marks if not half or 2 * mark.at <= plan.width]
    first = mm(heading.marks[0].at)
    edge, pitch = figure(plan, heading.edge_inset), figure(plan, heading.pitch)
    notes: list[Note] = [
        _marks(places),
        Span(edge, 0, first, 0, "above"),
        *([Span(pitch, first, mm(heading.marks[1].at), 0, "above")] if heading.count > 1 else []),
        Label(name, (end * 0.985, -wide * STRIP * 0.93)),
        Within("back of the panel", (end * 0.1, -wide * (STRIP + BELOW)), (wide * 0.9, -wide * STRIP)),
    ]
    shapes = _pinned(wide, end)
    if half:
        shapes.append(Stroke(LineType.CENTRE, ((end, wide * 0.02), (end, -wide * (STRIP + BELOW)))))
        notes.append(Label("centre", (end, -wide * (STRIP + BELOW * 0.9))))
    what = "from the left side edge to the panel's centre" if half else "from one side edge to the other"
    many = f", {pitch} apart" if heading.count > 1 else ""
    return View(
        title=f"The {name} pinned on",
        spoken=(
            f"The panel's top, its back towards you. The {name} is pinned along it, {what}, its upper edge on the "
            f"panel's top edge. {plural(len(places), 'mark')}, numbered from the left: the first {edge} from the side "
            f"edge{many}."
        ),
        shapes=tuple(shapes),
        notes=tuple(notes),
    )


def pleat_marking(plan: Plan, pleats: PleatPlan) -> View:
    """The pleat strip along the top edge, its two lines for each pleat."""
    wide, end = mm(plan.width), mm(plan.width)
    left, right = ("leading", "return") if pleats.leading == "left" else ("return", "leading")
    a, b, *others = [mark.at for mark in pleats.marks]
    inset, pleat = figure(plan, a), figure(plan, b - a)
    notes: list[Note] = [
        _marks(pleats.marks),
        Span(inset, 0, mm(a), 0, "above"),
        *([Span(pleat, mm(a), mm(b), 0, "above")] if b > a else []),
        Within(f"{left} edge", (0, -wide * (STRIP + BELOW)), (wide * 0.48, -wide * STRIP)),
        Within(f"{right} edge", (wide * 0.52, -wide * (STRIP + BELOW)), (wide, -wide * STRIP), "right"),
        Label("pleat strip", (wide * 0.985, -wide * STRIP * 0.93)),
    ]
    space = figure(plan, others[0] - b)
    if others[0] > b:
        notes.append(Span(space, mm(b), mm(others[0]), 0, "above"))
    which = " On left panels; on right panels the other way round." if pleats.mirrored else ""
    return View(
        title="The pleat strip pinned on",
        spoken=(
            f"The panel's top, its back towards you, the {left} edge on the left. The pleat strip is pinned along it. "
            f"The first line is {inset} from the edge, the two lines of a pleat {pleat} apart, and {space} lie between "
            f"two pleats.{which}"
        ),
        shapes=tuple(_pinned(wide, end)),
        notes=tuple(notes),
    )


def _marks(marks: Sequence[HeadingMark]) -> Running:
    """The marks, at most so many that each can be seen; the last always."""
    every = -(-len(marks) // MOST_MARKS)
    drawn = [*marks[:-1:every], marks[-1]]
    return Running(tuple((mm(mark.at), mark.label) for mark in drawn), 0.0)


def _pinned(wide: float, end: float) -> list[Shape]:
    """The panel's top, and on it a strip from its left edge to ``end``, with pins."""
    strip, below = -wide * STRIP, -wide * (STRIP + BELOW)
    pins = (0.06, 0.94) if end == wide else (0.1, 0.9)
    return [
        cloth((0, below), (0, 0), (wide, 0), (wide, below)),
        broken(0, wide, below, wide * 0.012),
        Stroke(LineType.MARK, ((0, strip), (end, strip), (end, 0))),
        *(Symbol("pin", (end * part, strip + wide * 0.03), 90.0) for part in pins),
    ]
