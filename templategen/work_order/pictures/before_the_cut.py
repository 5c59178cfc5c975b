"""Up to the cut: pins where the floor is, the gauge laid on them, the panel hung again, the offcut cut off."""

from __future__ import annotations

from itertools import pairwise

from ...document.view import Arrow, Hatch, Label, Note, Point, Rise, Shape, Stroke, Symbol, View, Within
from ...drawing import LineType
from ...lengths import NOTHING, Length
from ...planning import Plan
from ...planning.lines import line_of
from .cloth import broken
from .signs import across, box, figure, mm

WIDE = 1.5
"""How much of the panel's width is drawn, of the height that is: our choice, so that words have room in it."""
DOWN = -90.0
"""A pin that stands on what it marks."""


def pins(plan: Plan) -> View:
    """The foot of the hanging panel from the front: what is longer than the floor lies on it; pins at the floor."""
    line, first = line_of(plan.spec), plan.drop.marks[0].floor
    high, edge = max(abs(mm(first)), 80.0), -mm(first)  # heights over the floor, or what the panel hangs to
    wide, foot = high * WIDE, max(edge, 0.0)
    where = (wide * 0.06, wide * 0.5, wide * 0.94)
    pinned = edge <= 0
    below = "lies on the floor" if plan.spec.drop.to == "floor" else "hangs below"
    notes: list[Note] = [
        Label(line.the, (wide * 1.2, 0)),
        Within("front", (wide * 0.1, foot + high * 0.3), (wide * 0.9, foot + high * 0.9)),
        *([Label("pin, right through", (where[2], high * 0.06))] if pinned else []),
        *([Within(below, (0, edge), (wide, 0))] if edge < 0 else []),
    ]
    if edge:
        notes.append(Rise(figure(plan, abs(first)), min(edge, 0), foot, 0, "left"))
        notes.append(Label("old bottom edge", (wide, edge)))
    said = (
        f"What is longer {below}." if edge < 0 else
        f"The old bottom edge ends above {line.the}." if edge else f"The old bottom edge ends at {line.the}."
    )  # fmt: skip
    marked = f"Pins stand in it where it meets {line.the}, at both edges and in the middle" if pinned else (
        f"It is measured from its bottom edge down to {line.the}"
    )
    apart = f": {figure(plan, abs(first))} {'above' if edge < 0 else 'below'} the old bottom edge" if edge else ""
    return View(
        title="The foot of the panel, hanging",
        spoken=f"The foot of the hanging panel, seen from the front. {said} {marked}{apart}.",
        shapes=(
            across(LineType.CUT, -wide * 0.2, wide * 1.2, 0),
            Stroke(LineType.MARK, ((0, foot + high), (0, foot), (wide, foot), (wide, foot + high))),
            *([Stroke(LineType.THIN, ((0, 0), (0, edge), (wide, edge), (wide, 0)))] if edge < 0 else []),
            broken(0, wide, foot + high, high * 0.03),
            *(Symbol("pin", (x, 0), DOWN) for x in where if pinned),
        ),
        notes=tuple(notes),
    )


def lines(plan: Plan) -> View:
    """The cut gauge laid on a pin, the panel flat, its back up."""
    mark, line = plan.drop.gauged[0], line_of(plan.spec)
    heights = {f"{line.name} mark line": mark.floor, "finish line": mark.finish, "cut line": mark.cut}
    places = [mm(height) for height in heights.values()]
    low, high = min(*places, 0.0), max(*places, 0.0)
    tall = max(high - low, 40.0)
    top, foot = high + tall * 0.3, low - tall * 0.1
    wide = tall * 1.25
    left, right = wide * 0.36, wide * 0.56
    short = left + (right - left) * 0.6
    cloth_ends = -mm(plan.spec.panel.hem + plan.spec.panel.turn_under) if mark.cut < NOTHING else 0.0
    shapes: list[Shape] = [
        Stroke(LineType.MARK, ((0, top), (0, foot))),
        Stroke(LineType.MARK, ((wide, top), (wide, foot))),
        broken(0, wide, top, tall * 0.03),
        box(LineType.CUT, (left, min(places)), (right, max(places) + tall * 0.15)),
        *(across(LineType.MARK, left, short, place) for place in places),
        *(across(kind, x1, x2, mm(height)) for kind, height in ((LineType.FOLD, mark.finish), (LineType.CUT, mark.cut))
          for x1, x2 in ((0, left), (right, wide))),
        Symbol("pin", (left, mm(mark.floor)), 0.0),
        Arrow((((left + right) / 2, max(places) + tall * 0.03), ((left + right) / 2, max(places) + tall * 0.13))),
    ]  # fmt: skip
    if cloth_ends >= foot:
        shapes[0] = Stroke(LineType.MARK, ((0, top), (0, cloth_ends), (wide, cloth_ends), (wide, top)))
        shapes[1] = across(LineType.THIN, 0, wide, 0)
    else:
        shapes += [broken(0, wide, foot, tall * 0.03), across(LineType.THIN, 0, wide, 0)]
    notes: list[Note] = [
        *_named(plan, heights, wide, short),
        Label("cut gauge", (right, max(places) + tall * 0.11)),
        Label("pin", (left, mm(mark.floor)), "left"),
        Label("old bottom edge", (wide, 0)),
        Within("back", *((right, 0), (wide, mm(mark.cut))) if mm(mark.cut) > tall * 0.2 else ((0, high), (left, top))),
    ]
    if mark.cut:
        notes.append(Rise(figure(plan, abs(mark.cut)), min(mm(mark.cut), 0), max(mm(mark.cut), 0), 0, "left"))
    said = "; ".join(f"the {name} {figure(plan, abs(at))} {_side(at)}" for name, at in heights.items())
    return View(
        title="The cut gauge on a pin",
        spoken=(
            "The panel lies flat, its back up. The cut gauge is laid on it, its arrow towards the heading, the left "
            f"end of its {line.name} mark line on a pin. The finish line and the cut line are marked "
            f"by it, and drawn right across. From the old bottom edge: {said}."
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


def looked_at(plan: Plan) -> tuple[str, Length]:
    """The line that is looked at before the cut, and its height: the finish line.

    Where the finished edge comes below the panel's own cloth, under a border, it is the cut line that is seen.
    """
    mark, panel = plan.drop.gauged[0], plan.spec.panel
    if mark.finish + panel.hem + panel.turn_under < NOTHING and mark.cut > mark.finish:
        return "cut line", mark.cut
    return "finish line", mark.finish


def look(plan: Plan) -> View:
    """The marked panel hanging as it hung when it was marked: where its finish line stands."""
    mark, line = plan.drop.gauged[0], line_of(plan.spec)
    name, height = looked_at(plan)
    apart = height - mark.floor
    rise = mm(apart)
    high = max(abs(rise) * 2.4, 90.0)
    wide, top, low = high * WIDE, max(rise, 0) + high * 0.55, min(rise, 0) - high * 0.25
    level = not plan.tape.read(apart).value
    kind = LineType.CUT if name == "cut line" else LineType.FOLD
    pinned = mark.floor >= NOTHING
    stands = "level with" if level else f"{figure(plan, abs(apart))} {_side(apart)}"
    return View(
        title="The marked panel, hung again",
        spoken=f"The marked panel hangs as it did, its back towards you. Its {name} stands {stands} {line.the}.",
        shapes=(
            across(LineType.MARK, -wide * 0.2, wide * 1.2, 0),
            Stroke(LineType.MARK, ((0, top), (0, low))),
            Stroke(LineType.MARK, ((wide, top), (wide, low))),
            broken(0, wide, top, high * 0.03),
            broken(0, wide, low, high * 0.03),
            across(kind, 0, wide, rise),
            *(Symbol("pin", (wide * x, 0), DOWN) for x in (0.08, 0.5, 0.92) if pinned),
        ),
        notes=(
            Label(f"{line.the} and {name}" if level else name, (wide, rise)),
            *([] if level else [Label(line.the, (wide * 1.2, 0))]),
            *([Label("pin", (wide * 0.92, high * 0.05))] if pinned else []),
            Within("back", (wide * 0.1, max(rise, 0) + high * 0.2), (wide * 0.9, top)),
            *([] if level else [Rise(figure(plan, abs(apart)), min(rise, 0), max(rise, 0), 0, "left")]),
        ),
    )


def cut(plan: Plan) -> View:
    """The foot of the panel, flat: cut along the cut line, the offcut below. Its width is drawn narrower."""
    drop, panel = plan.drop, plan.spec.panel
    ends = -mm(panel.hem + panel.turn_under) if min(mark.cut for mark in drop.marks) < NOTHING else 0.0
    high = max(mm(max(mark.cut, mark.finish)) for mark in drop.marks)
    low = min(ends, *(mm(mark.cut) for mark in drop.marks))
    tall = max(high - low, 40.0)
    wide, top = tall * 2, high + tall * 0.4
    part = wide / mm(panel.width)
    places: list[Point] = [(wide - mm(mark.at) * part, mm(mark.cut)) for mark in reversed(drop.marks)]
    finishes: list[Point] = [(wide - mm(mark.at) * part, mm(mark.finish)) for mark in reversed(drop.marks)]
    notes: list[Note] = [
        Label("cut line", places[-1]),
        Label("finish line: do not cut", finishes[-1]),
        Within("offcut", (wide * 0.4, low), (wide, min(y for _, y in places))),
        Within("back", (wide * 0.05, max(y for _, y in (*places, *finishes))), (wide * 0.95, top)),
    ]
    if drop.marks[-1].cut > NOTHING:
        notes.append(Rise(figure(plan, drop.marks[-1].cut), 0, mm(drop.marks[-1].cut), 0, "left"))
    at = f", {figure(plan, drop.marks[-1].cut)} above the old bottom edge{'' if drop.level else ' at the left'}"
    return View(
        title="The cut",
        spoken=(
            "The foot of the panel, flat, its back up. It is cut along the cut line"
            f"{at if drop.marks[-1].cut > NOTHING else ''}, and not along the finish line; what lies below the cut is "
            "the offcut."
        ),
        shapes=(
            Stroke(LineType.MARK, ((0, top), (0, low), (wide, low), (wide, top))),
            broken(0, wide, top, wide * 0.02),
            Stroke(LineType.CUT, tuple(places)),
            Stroke(LineType.FOLD, tuple(finishes)),
            Hatch(((0, low), (wide, low), *reversed(places))),
            Symbol("scissors", (wide * 0.3, _between(places, wide * 0.3)), 0.0),
        ),
        notes=tuple(notes),
    )


def _between(places: list[Point], x: float) -> float:
    for (x1, y1), (x2, y2) in pairwise(places):
        if x1 <= x <= x2:
            return y1 + (y2 - y1) * (x - x1) / ((x2 - x1) or 1)
    return places[-1][1]
