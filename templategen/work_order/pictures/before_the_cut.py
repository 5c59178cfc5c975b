"""Up to the cut: pins where the floor is, the gauge laid on them, the panel hung again, the offcut cut off."""

from __future__ import annotations

from itertools import pairwise

from ...document.view import Arrow, Hatch, Label, Note, Point, Rise, Shape, Span, Stroke, Symbol, View, Within
from ...drawing import LineType
from ...lengths import NOTHING, Length
from ...planning import Plan
from ...planning.lines import line_of
from .cloth import broken
from .signs import across, box, figure, mm

WIDE = 1.5
"""How much of the panel's width is drawn, of the height that is: our choice, so that words have room in it."""


def pins(plan: Plan) -> View:
    """The foot of the hanging panel from the front: what is longer than the floor lies on it; pins at the floor."""
    line = line_of(plan.spec)
    first = plan.drop.marks[0].floor
    high = max(abs(mm(first)), 80.0)
    wide, below = high * WIDE, mm(first)
    edge = -below  # of the cloth, measured from the floor or what the panel hangs to
    shapes: list[Shape] = [
        across(LineType.CUT, -wide * 0.2, wide * 1.2, 0),
        Stroke(LineType.MARK, ((0, high), (0, 0), (wide, 0), (wide, high))),
        broken(0, wide, high, high * 0.03),
    ]
    if edge > 0:
        shapes[1] = Stroke(LineType.MARK, ((0, high + edge), (0, edge), (wide, edge), (wide, high + edge)))
        shapes[2] = broken(0, wide, high + edge, high * 0.03)
    where = (wide * 0.06, wide * 0.5, wide * 0.94)
    if edge <= 0:
        shapes += [Symbol("pin", (x, 0), 200.0) for x in where]
    if edge < 0:  # seen from the front what lies on the floor is not seen; its outline is
        shapes.append(Stroke(LineType.FOLD, ((0, 0), (0, edge), (wide, edge), (wide, 0))))
    notes: list[Note] = [Label(line.the, (wide * 1.2, 0))]
    if edge < 0:
        notes += [
            Label("pin, right through the cloth", (where[2], 0), "right"),
            Rise(figure(plan, first), edge, 0, 0, "left"),
            Label("old bottom edge", (wide, edge)),
            Within("lies on the floor" if plan.spec.drop.to == "floor" else "hangs below", (0, edge), (wide, 0)),
        ]
    elif edge > 0:
        notes += [Rise(figure(plan, abs(first)), 0, edge, 0, "left"), Label("old bottom edge", (wide, edge))]
    notes.append(Within("front", (wide * 0.1, max(edge, 0) + high * 0.3), (wide * 0.9, max(edge, 0) + high * 0.9)))
    said = (
        f"The cloth that is longer lies on {line.the}." if edge < 0 else f"The old bottom edge ends above {line.the}."
    )
    marked = f"Pins stand in it where it meets {line.the}, at both edges and in the middle" if edge <= 0 else (
        f"It is measured from its bottom edge down to {line.the}"
    )
    return View(
        title="The foot of the panel, hanging",
        spoken=(
            f"The foot of the hanging panel, seen from the front. {said} {marked}: {figure(plan, abs(first))} "
            f"{'above' if edge <= 0 else 'below'} the old bottom edge."
        ),
        shapes=tuple(shapes),
        notes=tuple(notes),
    )


def lines(plan: Plan) -> View:
    """The cut gauge laid on a pin, the panel flat, its back up."""
    mark, line = plan.drop.gauged[0], line_of(plan.spec)
    heights = {f"{line.name} mark line": mark.floor, "finish line": mark.finish, "cut line": mark.cut}
    places = [mm(height) for height in heights.values()]
    low, high = min(*places, 0.0), max(places)
    tall = max(high - low, 40.0)
    top, foot = high + tall * 0.25, min(low, 0.0) - tall * 0.08
    wide = tall * WIDE
    left, right = wide * 0.4, wide * 0.56
    short = left + (right - left) * 0.6
    shapes: list[Shape] = [
        Stroke(LineType.MARK, ((0, top), (0, foot), (wide, foot), (wide, top))),
        broken(0, wide, top, tall * 0.03),
        box(LineType.CUT, (left, min(places)), (right, max(places) + tall * 0.14)),
        *(across(LineType.MARK, left, short, place) for place in places),
        *(across(kind, x1, x2, mm(height)) for kind, height in ((LineType.FOLD, mark.finish), (LineType.CUT, mark.cut))
          for x1, x2 in ((0, left), (right, wide))),
        Symbol("pin", (left, mm(mark.floor)), 0.0),
        Arrow((((left + right) / 2, max(places) + tall * 0.02), ((left + right) / 2, max(places) + tall * 0.12))),
    ]  # fmt: skip
    notes: list[Note] = [
        *_named(plan, heights, wide, short),
        Label("cut gauge", (left, max(places) + tall * 0.1), "left"),
        Label("pin", (left, mm(mark.floor)), "left"),
        Within("back, up", (0, foot), (left, mm(mark.cut) - tall * 0.02), "left"),
    ]
    said = "; ".join(f"the {name} {figure(plan, abs(at))} {_side(at)}" for name, at in heights.items())
    return View(
        title="The cut gauge on a pin",
        spoken=(
            f"The panel lies flat, its back up. The cut gauge is laid on it, its {line.name} mark line on a pin. The "
            f"finish line and the cut line are marked by it, and drawn right across. From the old bottom edge: {said}."
        ),
        shapes=tuple(shapes),
        notes=tuple(notes),
    )


def _named(plan: Plan, heights: dict[str, Length], wide: float, short: float) -> list[Label]:
    """The lines by name; those that come to the same reading together, as they could not be told apart."""
    found: dict[Length, list[str]] = {}
    for name, at in heights.items():
        found.setdefault(plan.tape.read(at).value, []).append(name)
    labels = []
    for names in found.values():
        x = short if len(names) == 1 and names[0].endswith("mark line") else wide
        said = ", ".join(name.removesuffix(" line") for name in names)
        labels.append(Label(f"{said} line", (x, mm(heights[names[0]]))))
    return labels


def _side(height: Length) -> str:
    return "below" if height.mm < 0 else "above"


def look(plan: Plan) -> View:
    """The marked panel hanging as it hung when it was marked: where its finish line stands."""
    mark, line = plan.drop.gauged[0], line_of(plan.spec)
    rise = mm(mark.finish - mark.floor)
    high = max(abs(rise) * 3, 90.0)
    wide, top, low = high * WIDE, high * 0.7, -high * 0.3
    shapes: list[Shape] = [
        across(LineType.CUT, -wide * 0.2, wide * 1.2, 0),
        Stroke(LineType.MARK, ((0, top), (0, low), (wide, low), (wide, top))),
        broken(0, wide, top, high * 0.03),
        broken(0, wide, low, high * 0.03),
        across(LineType.FOLD, 0, wide, rise),
    ]
    together = not plan.tape.read(mark.finish - mark.floor).value
    notes: list[Note] = [
        Label(f"{line.the} and finish line" if together else "finish line", (wide, rise)),
        *([] if together else [Label(line.the, (wide * 1.2, 0))]),
        Within("back", (wide * 0.2, max(rise, 0) + high * 0.1), (wide * 0.8, top - high * 0.1)),
    ]
    apart = mark.finish - mark.floor
    if plan.tape.read(apart).value:
        notes.append(Rise(figure(plan, abs(apart)), min(rise, 0), max(rise, 0), 0, "left"))
    stands = "level with" if not plan.tape.read(apart).value else f"{figure(plan, abs(apart))} {_side(apart)}"
    return View(
        title="The marked panel, hung again",
        spoken=f"The marked panel hangs as it did, its back towards you. Its finish line stands {stands} {line.the}.",
        shapes=tuple(shapes),
        notes=tuple(notes),
    )


def cut(plan: Plan) -> View:
    """The foot of the panel, flat: cut along the cut line, the offcut below."""
    drop = plan.drop
    wide = mm(plan.spec.panel.width)
    places: list[Point] = [(wide - mm(mark.at), mm(mark.cut)) for mark in reversed(drop.marks)]
    finishes: list[Point] = [(wide - mm(mark.at), mm(mark.finish)) for mark in reversed(drop.marks)]
    low = min(0.0, *(y for _, y in places)) - mm(plan.spec.panel.hem + plan.spec.panel.turn_under) * (
        min(y for _, y in places) < 0
    )
    high = max(y for _, y in (*places, *finishes))
    top = high + max(high - low, wide * 0.1) * 0.4
    shapes: list[Shape] = [
        Stroke(LineType.MARK, ((0, top), (0, low), (wide, low), (wide, top))),
        broken(0, wide, top, wide * 0.012),
        Stroke(LineType.CUT, tuple(places)),
        Stroke(LineType.FOLD, tuple(finishes)),
        Hatch(((0, low), (wide, low), *reversed(places))),
        Symbol("scissors", (wide * 0.2, _between(places, wide * 0.2)), 0.0),
    ]
    notes: list[Note] = [
        Label("cut line", places[-1]),
        Label("finish line: do not cut", finishes[-1]),
        Within("offcut", (wide * 0.3, low), (wide, min(y for _, y in places))),
        Span(figure(plan, plan.spec.panel.width), 0, wide, low, "below"),
    ]
    deep = figure(plan, drop.marks[0].cut) if drop.level and drop.marks[0].cut > NOTHING else ""
    if deep:
        notes.append(Rise(deep, 0, mm(drop.marks[0].cut), 0, "left"))
    return View(
        title="The cut",
        spoken=(
            f"The foot of the panel, flat, its back up, {figure(plan, plan.spec.panel.width)} wide. It is cut along "
            f"the cut line, and not along the finish line above it; what lies below the cut is the offcutf', {deep} "
            "deep' if deep else ''."
        ),
        shapes=tuple(shapes),
        notes=tuple(notes),
    )


def _between(places: list[Point], x: float) -> float:
    for (x1, y1), (x2, y2) in pairwise(places):
        if x1 <= x <= x2:
            return y1 + (y2 - y1) * (x - x1) / ((x2 - x1) or 1)
    return places[-1][1]
