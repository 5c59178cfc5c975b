"""Pleats folded by hand: how each is formed, the whole heading, and the hooks behind it."""

from __future__ import annotations

from collections.abc import Callable

from ...document.view import Arrow, Label, Note, Point, Rise, Running, Shape, Span, Stroke, View, Within
from ...drawing import LineType
from ...lengths.counting import plural
from ...planning import Plan
from ...planning.headings.pleats import PleatPlan
from ...spec.headings import PinchPleats
from .cloth import broken, cloth
from .pleat_shapes import folded, loop
from .points import held
from .signs import box, figure, mm
from .stiffening import stiffened


def stiff(plan: Plan, pleats: PleatPlan) -> View:
    """The stiffening in the doubled top."""
    return stiffened(plan, pleats.given.heading_depth)


def _left(plan: Plan, pleats: PleatPlan) -> tuple[str, float]:
    """The edge on the left, the back towards you, and how far from it the first pleat is."""
    return ("leading", mm(pleats.last)) if pleats.leading == "left" else ("return", mm(pleats.first))


def together(plan: Plan, pleats: PleatPlan) -> View:
    """From above: the cloth flat with its pins, and below it the two pins of each number brought together."""
    (edge, inset), cloth_in, space = _left(plan, pleats), max(mm(pleats.pleat), 1.0), mm(pleats.space)
    most = cloth_in * 1.4
    inset, space = min(inset, most), min(space, most)
    side = -1 if pleats.style == "inverted box pleats" else 1
    up = cloth_in * 0.75
    at = [inset, inset + cloth_in, inset + cloth_in + space, inset + 2 * cloth_in + space]
    wide = at[-1] + min(space, cloth_in) * 0.4
    seams = [inset, inset + space]
    end = seams[-1] + min(space, cloth_in) * 0.4
    names = [mark.label for mark in pleats.marks[:4]]
    base: list[Point] = [(0.0, 0.0)]
    for x in seams:
        base += loop(x, cloth_in, side)
    sewn, spaced = figure(plan, pleats.pleat), figure(plan, pleats.space)
    middle = (at[0] + at[1]) / 2
    shapes: list[Shape] = [
        cloth((0.0, up), (wide, up)),
        Stroke(LineType.CUT, (*base, (end, 0.0))),
        *(Arrow(((x, up * 0.93), (middle + (x - middle) * 0.35, up * 0.93))) for x in at[:2]),
    ]
    where = "back" if side < 0 else "front"
    way = "right side in" if side < 0 else "right side out"
    number = names[0].rstrip("ab")
    notes: list[Note] = [
        Running(tuple(zip(at, names, strict=True)), up),
        Span(sewn, at[0], at[1], up, "above"),
        *([Span(spaced, at[1], at[2], up, "above")] if space else []),
        *([Span(spaced, seams[0], seams[1], min(0.0, side * cloth_in * 0.42), "below")] if space else []),
        Label("flat", (wide, up)),
        Label("pins together", (end, 0.0)),
        Label(f"stands out at the {where}", (seams[-1], side * cloth_in * 0.42)),
    ]
    return View(
        title="Two pins brought together, seen from above",
        spoken=(
            f"The top edge seen from above, the back towards you, the {edge} edge on the left. Above, the cloth flat: "
            f"the two pins of number {number} stand {sewn} apart, and the next pleat begins {spaced} farther on. "
            f"Below, the two pins of each number are brought together, {way}: the cloth between them stands out at the "
            f"{where}, and {spaced} lie between two pleats."
        ),
        shapes=tuple(shapes),
        notes=tuple(notes),
    )


def formed(plan: Plan, pleats: PleatPlan) -> View:
    """From above: two pleats, as they are folded in the end."""
    pleat, space = max(mm(pleats.pleat), 1.0), mm(pleats.space)
    given = pleats.given
    apart = min(max(space, pleat * (0.3 if isinstance(given, PinchPleats) else 0.54)), pleat * 1.2)
    seams = [0.0, apart]
    over = pleat * 0.36
    line: list[Point] = [(-over, 0.0)]
    for x in seams:
        line += folded(pleats, x)
    line.append((apart + over, 0.0))
    shapes: list[Shape] = [Stroke(LineType.CUT, tuple(line))]
    spaced = figure(plan, pleats.space)
    tall = max(y for _, y in line)
    low = min(y for _, y in line)
    notes: list[Note] = [
        Span(spaced, 0, apart, low, "below"),
        Label("seam of the pleat", (apart, 0.0)),
    ]
    if isinstance(given, PinchPleats):
        value = pleats.pleat / (2 * given.fingers)
        size = figure(plan, value)
        fingers = "two" if given.fingers == 2 else "three"
        notes += [Rise(size, 0, tall, -over), Label(f"{fingers} fingers", (apart + pleat * 0.02, tall))]
        shape = f"Each is pinched into {fingers} equal fingers, {size} deep, which stand out at the front"
    else:
        size = figure(plan, pleats.pleat / 2)
        side = "back" if pleats.style == "inverted box pleats" else "front"
        y = low if side == "back" else tall
        notes += [Span(size, -pleat / 4, pleat / 4, tall, "above"), Label("box, pressed flat", (apart + pleat / 4, y))]
        shape = f"Each is pressed flat at the {side}, as much to either side of its seam: a box {size} wide"
    room = pleat * 0.3
    notes += [
        Within("front", (-over, tall + room * 0.1), (apart + over, tall + room)),
        Within("back, towards you", (-over, low - room), (apart + over, low - room * 0.1)),
    ]
    return View(
        title="The pleats folded, seen from above",
        spoken=(
            "Two pleats seen from above, the back towards you, the front beyond. "
            f"{shape}. From one seam to the next it is {spaced}."
        ),
        shapes=tuple(shapes),
        notes=tuple(notes),
    )


def finished(plan: Plan, pleats: PleatPlan) -> View:
    """The whole heading from the front, with its measures."""
    wide, deep = max(mm(pleats.finished), 1.0), mm(pleats.given.heading_depth)
    deep = min(max(deep, wide * 0.1), wide * 0.16)
    long = deep * 1.8
    # From the front the leading edge is on the other side.
    first, last = min(mm(pleats.first), wide * 0.45), min(mm(pleats.last), wide * 0.45)
    leading_right = pleats.leading == "left"
    start, end = (first, wide - last) if leading_right else (last, wide - first)
    space = (end - start) / (pleats.pleats - 1)
    draw = _front(pleats, deep, min(mm(pleats.pleat) / 2, space * 0.8))
    shapes: list[Shape] = [
        cloth((0, -long), (0, 0), (wide, 0), (wide, -long)),
        broken(0, wide, -long, deep * 0.1),
        *(shape for i in range(pleats.pleats) for shape in draw(start + i * space)),
    ]
    edges = ("return", "leading") if leading_right else ("leading", "return")
    whole, near, far, spaced = (
        figure(plan, each) for each in (pleats.finished, pleats.first, pleats.last, pleats.space)
    )
    notes: list[Note] = [
        Span(whole, 0, wide, -long, "below"),
        Span(near, 0 if leading_right else wide - first, first if leading_right else wide, 0, "above"),
        Span(far, wide - last if leading_right else 0, wide if leading_right else last, 0, "above"),
        *([Span(spaced, start, start + space, 0, "above")] if space > 0 else []),
        Within(f"{edges[0]} edge", (0, -long), (wide * 0.5, -deep * 1.05)),
        Within(f"{edges[1]} edge", (wide * 0.5, -long), (wide, -deep * 1.05), "right"),
    ]
    return View(
        title="The panel pleated, seen from the front",
        spoken=(
            f"The panel's top from the front, pleated: {whole} wide, {plural(pleats.pleats, 'pleat')}, {spaced} apart. "
            f"The first stands {near} from the return edge, the last {far} from the leading edge."
        ),
        shapes=tuple(shapes),
        notes=tuple(notes),
    )


def _front(pleats: PleatPlan, deep: float, wide: float) -> Callable[[float], tuple[Shape, ...]]:
    """How one pleat looks from the front."""
    if isinstance(pleats.given, PinchPleats):
        spread = min(deep * 0.22, wide * 0.4)
        turns = (-1, 1) if pleats.given.fingers == 2 else (-1, 0, 1)
        return lambda x: tuple(Stroke(LineType.MARK, ((x + t * spread, 0.0), (x, -deep))) for t in turns)
    if pleats.style == "box pleats":
        return lambda x: (box(LineType.MARK, (x - wide / 2, -deep), (x + wide / 2, 0.0)),)
    return lambda x: (
        Stroke(LineType.MARK, ((x, 0.0), (x, -deep))),
        Stroke(LineType.FOLD, ((x - wide / 2, 0.0), (x - wide / 2, -deep), (x + wide / 2, -deep), (x + wide / 2, 0.0))),
    )


def hung(plan: Plan, pleats: PleatPlan) -> View:
    """A hook behind a pleat, on what carries it."""
    return held(plan, "hook", pleats.given.drop, pleats.hooks_below, True)
