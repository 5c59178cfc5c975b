"""The whole panel, to scale: as it hangs, seen from the front, and flat, wrong side up."""

from __future__ import annotations

from collections.abc import Iterator

from ...document.blocks import Pictures
from ...document.view import Hatch, Heights, Label, Note, Point, Rise, Running, Shape, Span, Stroke, View, Within
from ...drawing import LineType
from ...lengths import NOTHING, Length
from ...lengths.counting import plural
from ...planning import Plan
from ...planning.drop import hang_when_done
from ...planning.lines import line_of
from .signs import across, box, figure, mm

FOLDS = 7
"""Lines that stand for the folds of a hanging panel. Our choice: enough to be read as folds."""


def length_of(plan: Plan) -> tuple[Length, bool]:
    """How long the panel is that is drawn, and whether that is its own length.

    Where the spec does not say, what the marks need and as much again: our choice; such a picture is not to scale.
    """
    panel = plan.spec.panel
    if panel.length is not None:
        return panel.length, True
    top = max(abs(mark.floor) for mark in plan.drop.marks) + plan.top.reach + panel.casing + panel.header
    return max(2 * top, panel.width), False


def flat(plan: Plan) -> View:
    """The panel as bought, flat, its back up: what is marked and cut on it."""
    panel, drop = plan.spec.panel, plan.drop
    length, known = length_of(plan)
    wide, high = mm(panel.width), mm(length)
    # Marks are counted from the left as seen from the front; here the back is up.
    places = [(wide - mm(mark.at), mark) for mark in reversed(drop.marks)]
    cuts: tuple[Point, ...] = tuple((x, mm(mark.cut)) for x, mark in places)
    finishes = tuple((x, mm(mark.finish)) for x, mark in places)
    floors = tuple((x, mm(mark.floor)) for x, mark in places)
    lowest = min(0.0, *(y for _, y in cuts))
    shapes: list[Shape] = [
        box(LineType.MARK, (0, lowest), (wide, high)),
        Stroke(LineType.CENTRE, floors),
        Stroke(LineType.FOLD, finishes),
        Stroke(LineType.CUT, cuts),
    ]
    if max(y for _, y in cuts) > lowest:
        shapes.append(Hatch(((0, lowest), (wide, lowest), *reversed(cuts))))
    if panel.hem:
        shapes.append(across(LineType.STITCH, 0, wide, mm(panel.hem)))
    if doubled := panel.casing + panel.header:
        shapes.append(across(LineType.STITCH, 0, wide, high - mm(doubled)))
    (x, y) = cuts[-1]
    notes: list[Note] = [
        *_floor_and_finish(plan, floors[-1], finishes[-1]),
        Label("cut line", (x, y)),
        *([Label("old hem", (wide, mm(panel.hem)))] if panel.hem else []),
        *([Label(_old_row(plan), (wide, high - mm(doubled)))] if doubled else []),
        Within("offcut", (0, lowest), (wide, max(lowest, min(y for _, y in cuts)))),
        Within(
            "back, up", (0, max(y for _, y in (*floors, *finishes))), (wide, high - mm(doubled))
        ),
        _heights(plan, known),
        *_across(plan, high),
    ]
    return View(
        title="The panel flat, its back up",
        spoken=_flat_said(plan, known),
        shapes=tuple(shapes),
        notes=tuple(notes),
        to_scale=known,
    )


def _heights(plan: Plan, known: bool) -> Heights:
    """Cut, finish and floor line above the old bottom edge, at the left end of the picture, and the top edge."""
    mark, length = plan.drop.marks[-1], length_of(plan)[0]
    places = [mark.cut, mark.floor, mark.finish, *([length] if known else [])]
    alike = {plan.tape.read(each).value: each for each in reversed(places) if each}
    return Heights(0.0, tuple((mm(each), figure(plan, abs(each))) for each in alike.values()), 0.0)


def _floor_and_finish(plan: Plan, floor: Point, finish: Point) -> list[Label]:
    """The two lines by name; together where they come to the same reading, as they could not be told apart."""
    name, mark = f"{line_of(plan.spec).name} line", plan.drop.marks[0]
    if plan.drop.level and plan.tape.read(mark.floor).value == plan.tape.read(mark.finish).value:
        return [Label(f"{name}, finish line", floor)]
    return [Label(name, floor), Label("finish line", finish)]


def _old_row(plan: Plan) -> str:
    """What the stitching along the top is."""
    return "stitch line" if plan.spec.panel.heading.style == "casing" else "old stitching"


def _across(plan: Plan, high: float) -> Iterator[Note]:
    """The width below; the marks along the heading, where it has any, with the first distances above."""
    panel, heading = plan.spec.panel, plan.heading
    yield Span(figure(plan, panel.width), 0, mm(panel.width), 0, "below")
    if not heading.marks or plan.width != panel.width:
        return
    yield Running(tuple((mm(mark.at), mark.label) for mark in heading.marks), high)
    first = mm(heading.marks[0].at)
    if heading.edge_inset:
        yield Span(figure(plan, heading.edge_inset), 0, first, high, "above")
    if heading.pitch and heading.spaced:
        yield Span(figure(plan, heading.pitch), first, mm(heading.marks[1].at), high, "above")


def _flat_said(plan: Plan, known: bool) -> str:
    panel, drop, heading = plan.spec.panel, plan.drop, plan.heading
    line, mark = line_of(plan.spec), plan.drop.marks[-1]
    size = f"{figure(plan, panel.width)} wide"
    if known and panel.length is not None:
        size += f" and {figure(plan, panel.length)} long"
    heights = ", ".join(
        f"the {name} {figure(plan, abs(height))} {'above' if height >= NOTHING else 'below'}"
        for name, height in (("cut line", mark.cut), ("finish line", mark.finish), (f"{line.name} line", mark.floor))
    )
    slope = "" if drop.level else " at the left end of the picture, and otherwise farther along"
    marks = _marks_said(plan) if heading.marks and plan.width == panel.width else ""
    return (
        f"The panel lies flat, its back towards you, {size}. Heights are from the old bottom edge: {heights}{slope}. "
        f"Below the cut line lies the offcut, hatched.{marks}"
    )


def _marks_said(plan: Plan) -> str:
    heading = plan.heading
    where = f" the first {figure(plan, heading.edge_inset)} from the edge" if heading.edge_inset else ""
    apart = f" {figure(plan, heading.pitch)} apart" if heading.pitch and heading.spaced else ""
    said = f":{','.join(filter(None, (where, apart)))}" if where or apart else ""
    return f" Along the top edge {plural(heading.count, 'mark')}, numbered from the left{said}."


def hanging(plan: Plan) -> View:
    """One panel on the rod as it will hang, seen from the front."""
    spec, drop = plan.spec, plan.drop
    length, known = length_of(plan)
    line = line_of(spec)
    fullness = max(1.0, float(plan.ratios.get("fullness", 1)))
    wide = mm(plan.width) / fullness
    new = hang_when_done(spec)
    first = drop.marks[0].floor
    floors = [mm(mark.floor - first) for mark in drop.marks]
    # How far above the floor the finished edge hangs: the flat cloth's line, what a tuck takes up and the hang shift.
    ends = [mm(mark.finish + drop.tuck + drop.hang_shift - first) for mark in drop.marks]
    finished = mm(length - plan.top.lowered - drop.marks[0].finish - drop.tuck)
    top = ends[0] + finished
    rod = top + mm(new.offset)
    thick = mm(spec.rod.diameter)
    past = wide * 0.12
    shapes: list[Shape] = [
        _floor(wide, past, floors),
        box(LineType.MARK, (-past, rod - thick), (wide + past, rod)),
        *_folds(wide, top, ends),
    ]
    for x in (-past, wide + past):
        shapes.append(Stroke(LineType.MARK, ((x, rod + thick * 0.4), (x, rod - thick * 1.4))))
    notes: list[Note] = [
        Label("rod", (wide + past, rod - thick / 2)),
        Label(line.the, (wide + past * 2, floors[-1])),
        Label("new bottom edge", (wide, ends[-1])),
    ]
    above = drop.gap(drop.marks[0])
    heights = [(ends[0], figure(plan, abs(above)))] if above else []
    if spec.drop.rod_to_floor is not None:
        heights.append((rod, figure(plan, spec.drop.rod_to_floor)))
    if heights:
        notes.append(Heights(0.0, tuple(heights), -past))
    if known and drop.level:
        notes.append(Rise(figure(plan, plan.figures["finished_length"].value), ends[0], top, wide, "right"))
    return View(
        title="The panel as it will hang, seen from the front",
        spoken=_hanging_said(plan, known),
        shapes=tuple(shapes),
        notes=tuple(notes),
        to_scale=known,
    )


def _floor(wide: float, past: float, floors: list[float]) -> Stroke:
    """What the panel hangs to, as high at each of its marks as it was marked, and as high on beyond its edges."""
    count = len(floors) - 1
    points = [(wide * i / count, y) for i, y in enumerate(floors)]
    return Stroke(LineType.CUT, ((-past * 2, floors[0]), *points, (wide + past * 2, floors[-1])))


def _folds(wide: float, top: float, ends: list[float]) -> Iterator[Shape]:
    """The panel's outline and its folds."""
    count = len(ends) - 1
    bottom = tuple((wide * i / count, y) for i, y in enumerate(ends))
    yield Stroke(LineType.CUT, (*bottom, (wide, top), (0, top), bottom[0]))
    for i in range(1, FOLDS + 1):
        x = wide * i / (FOLDS + 1)
        place = x / wide * count
        before = min(int(place), count - 1)
        low = ends[before] + (ends[before + 1] - ends[before]) * (place - before)
        yield Stroke(LineType.THIN, ((x, low), (x, low + (top - low) * (0.97 if i % 2 else 0.8))))


def _hanging_said(plan: Plan, known: bool) -> str:
    spec, drop = plan.spec, plan.drop
    line = line_of(spec)
    above = drop.gap(drop.marks[0])
    away = f"{figure(plan, abs(above))} {'above' if above > NOTHING else 'below'}" if above else "just at"
    long = f"It is {figure(plan, plan.figures['finished_length'].value)} long. " if known and drop.level else ""
    rod = f" From the top of the rod to {line.the} it is {figure(plan, spec.drop.rod_to_floor)}." if (
        spec.drop.rod_to_floor is not None
    ) else ""
    return f"The panel hangs from the rod. {long}Its finished bottom edge comes {away} {line.the}.{rod}"


def overview(plan: Plan) -> Pictures:
    """The job in two pictures: what it will be, and what is marked and cut for it."""
    return Pictures((hanging(plan), flat(plan)))
