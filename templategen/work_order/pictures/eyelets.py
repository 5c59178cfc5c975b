"""Eyelets: stiffening, circles, rings, and the folds on the rod."""

from __future__ import annotations

from math import pi, sin

from ...document.view import Circle, Label, Note, Point, Rise, Shape, Span, Stroke, View
from ...drawing import LineType
from ...planning import Plan
from ...planning.headings.eyelets import EyeletPlan
from .cloth import APART, cloth, corner, doubled, front_and_back, rows, shown
from .signs import across, box, figure, mm
from .stiffening import stiffened

FOLDS = 4
"""Eyelets that are drawn on the rod: our choice, enough to be read as in and out."""


def stiff(plan: Plan, eyelets: EyeletPlan) -> View:
    """The stiffening between the layers of the top."""
    return stiffened(plan, eyelets.band)


def circles(plan: Plan, eyelets: EyeletPlan) -> View:
    """The corner of the panel from the back, the first circles on it."""
    band, down = mm(eyelets.band), mm(eyelets.centre)
    radius = mm(eyelets.cut_circle) / 2
    deep = max(band, down + radius, 1.0) * 1.2
    first = shown(eyelets.edge_inset, radius * 1.2, deep)
    second = first + shown(eyelets.pitch, radius * 2.6, deep * 1.2)
    wide = second + max(radius, deep * 0.1) * 1.6
    arm = radius * 1.35
    shapes: list[Shape] = [*corner(wide, deep), *rows(wide, [-band])]
    for x in (first, second):
        shapes += [
            Circle(LineType.CUT, (x, -down), radius),
            across(LineType.CENTRE, x - arm, x + arm, -down),
            Stroke(LineType.CENTRE, ((x, -down - arm), (x, -down + arm))),
        ]
    centre, edge, pitch, cut = (
        figure(plan, each) for each in (eyelets.centre, eyelets.edge_inset, eyelets.pitch, eyelets.cut_circle)
    )
    return View(
        title="The circles to cut, the back towards you",
        spoken=(
            f"The panel's upper left corner, its back towards you. Circles {cut} across, their centres {centre} below "
            f"the top edge: the first {edge} from the side edge, the next {pitch} farther on."
        ),
        shapes=tuple(shapes),
        notes=(
            Span(edge, 0, first, 0, "above"),
            Span(pitch, first, second, 0, "above"),
            Span(cut, second - radius, second + radius, -down, "below"),
            Rise(centre, -down, 0, 0),
            Label("circle to cut", (second + radius * 0.7, -down + radius * 0.7)),
            Label("edge of the doubled top", (wide * 0.97, -band)),
        ),
    )


def ring(plan: Plan, eyelets: EyeletPlan) -> View:
    """A ring closed on the cloth, cut across."""
    down, band = mm(eyelets.centre), max(mm(eyelets.band), 1.0)
    inside, outside = mm(eyelets.inside) / 2, max(mm(eyelets.outside), mm(eyelets.inside) * 1.05) / 2
    hole = max(mm(eyelets.cut_circle) / 2, inside)
    down = max(down, outside * 1.05)
    band = max(band, down + outside * 1.05)
    tail = band * 1.2
    gap = tail * APART
    above = doubled(down - hole, down - hole, gap)
    shapes: list[Shape] = [
        above,
        cloth((0, -tail), (0, -down - hole)),
        cloth((gap, -down - hole), (gap, -band)),
    ]
    for side in (1, -1):
        for x1, x2 in ((-1.2 * gap, -0.45 * gap), (1.45 * gap, 2.2 * gap)):
            y1, y2 = sorted((-down + side * inside, -down + side * outside))
            shapes.append(box(LineType.MARK, (x1, y1), (x2, y2)))
        y = -down + side * inside
        shapes.append(Stroke(LineType.MARK, ((-0.45 * gap, y), (1.45 * gap, y))))
    opening, rim, cut = (figure(plan, each) for each in (eyelets.inside, eyelets.outside, eyelets.cut_circle))
    return View(
        title="A ring closed on the cloth, cut across",
        spoken=(
            f"The panel's top cut across, its front on the left. The hole in both layers is {cut} across. One half of "
            f"the ring lies on the front, the other on the back; the ring is {rim} across, its opening {opening}."
        ),
        shapes=tuple(shapes),
        notes=(
            Rise(opening, -down - inside, -down + inside, -1.2 * gap),
            Rise(rim, -down - outside, -down + outside, -1.2 * gap),
            Label("top edge", (gap * 0.5, 0)),
            Label("ring's back", (2.2 * gap, -down + outside * 0.95)),
            Label(f"circle cut {cut} across", (gap, -down - hole)),
            *front_and_back(-1.4 * gap, 2.4 * gap, -tail, -down - outside - gap, gap),
        ),
    )


def folds(plan: Plan, eyelets: EyeletPlan) -> View:
    """The heading on the rod, drawn out, seen from above."""
    count = min(eyelets.count, FOLDS)
    step = max(mm(eyelets.spacing), 1.0)
    deep = min(mm(eyelets.fold.depth), 4 * step)
    inset = min(mm(eyelets.edge_inset), step)
    long = step * (count - 1)
    thick = max(min(mm(plan.spec.rod.diameter), step * 0.5), step * 0.05)
    # The first eyelet is on the right, where its side edge has room for words.
    points: list[Point] = [(inset * 0.3, inset)]
    points += [
        (-step * (i + t / 16), -deep * sin(pi * t / 16) ** 0.8 * (-1) ** i)
        for i in range(count - 1)
        for t in range(17)
    ]
    points.append((-long - step * 0.15, -inset * 0.5 if count % 2 else inset * 0.5))
    ends = (-long - step * 0.6, step * 0.6)
    shapes: list[Shape] = [
        Stroke(LineType.CUT, tuple(points)),
        box(LineType.MARK, (ends[0], -thick / 2), (ends[1], thick / 2)),
        *(Circle(LineType.MARK, (-step * i, 0.0), thick * 0.75) for i in range(count)),
    ]
    spaced, depth = figure(plan, eyelets.spacing), figure(plan, eyelets.fold.depth)
    notes: list[Note] = [
        Span(spaced, -step, 0, -deep, "below"),
        Label("rod", (ends[1], 0.0)),
        Label("side edge, to the wall", points[0]),
        Label("front, to the room", (-step * 0.3, -deep * sin(pi * 0.3) ** 0.8)),
    ]
    wall = ""
    room = plan.spec.rod.projection
    if room is not None and deep * 0.5 < mm(room) < 3 * step:
        shapes.append(across(LineType.CUT, *ends, mm(room)))
        notes.append(Label("wall", (ends[1], mm(room))))
        wall = f" The wall is {figure(plan, room)} behind the rod's centre."
    if deep:
        notes.append(Rise(depth, -deep, 0, ends[0]))
    return View(
        title="On the rod, seen from above",
        spoken=(
            "The rod seen from above, the wall behind it and the room below. The cloth goes in and out through the "
            f"eyelets, {spaced} apart on the rod, and folds {depth} out to the room and as much to the wall. The rod "
            f"goes in from the back through the first, so that the side edge turns to the wall.{wall}"
        ),
        shapes=tuple(shapes),
        notes=tuple(notes),
    )
