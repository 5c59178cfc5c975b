"""From the floor to the cut: what each floor mark says about the finished edge and the cut line."""

from __future__ import annotations

from ..errors import Fault, Refusal
from ..lengths import NOTHING, Length
from ..spec import Spec
from .figures import Figure
from .headings import HEADINGS, Hang, Tube
from .lines import line_of
from .plan import DropMark, DropPlan
from .top import plan_top
from .wording import say, term


def marked_by_new(spec: Spec) -> bool:
    """Whether the floor was marked while the panel hung by its new heading."""
    return spec.drop.hung_by == "new heading"


def hang_when_marked(spec: Spec) -> Hang:
    """How the panel hung when its floor line was marked."""
    heading = spec.heading if marked_by_new(spec) else spec.panel.heading
    return HEADINGS[heading.style].hang(spec, heading)


def hang_when_done(spec: Spec) -> Hang:
    """How it will hang by its new heading."""
    return HEADINGS[spec.heading.style].hang(spec, spec.heading)


def computed_floor(spec: Spec) -> Length | None:
    """The floor line worked out from the rod's height, where the panel's length is known.

    The bottom edge hangs length + offset below the top of the rod; the floor
    is rod_to_floor below it; so the floor comes that much short of the edge.
    Hung by its new heading, the panel is shorter by what that took off its top.
    """
    if spec.drop.rod_to_floor is None or spec.panel.length is None:
        return None
    lost = plan_top(spec).lowered if marked_by_new(spec) else NOTHING
    return spec.panel.length - lost + hang_when_marked(spec).offset - spec.drop.rod_to_floor


def floor_heights(spec: Spec) -> tuple[Length, ...]:
    """The floor's height on the panel, left to right: as marked, or else as worked out."""
    if spec.drop.floor_marks:
        return spec.drop.floor_marks
    worked_out = computed_floor(spec)
    if worked_out is None:
        right = "needs floor_marks, or rod_to_floor together with panel.length"
        raise Refusal(Fault("drop", "", right))
    return (worked_out,)


def hang_shift(spec: Spec) -> Length:
    """How far the hem rises when the new heading takes over: by how they hang, and by what comes off the top."""
    if marked_by_new(spec):
        return NOTHING
    return hang_when_marked(spec).offset - hang_when_done(spec).offset + plan_top(spec).lowered


def finish_heights(spec: Spec) -> tuple[Length, ...]:
    """Where the finished edge comes at every mark: each mark's own, or level at the highest, as the spec says."""
    rise = spec.drop.clearance - hang_shift(spec)
    heights = floor_heights(spec)
    if spec.drop.follows == "highest":
        return (max(heights) + rise,) * len(heights)
    return tuple(height + rise for height in heights)


def plan_drop(spec: Spec, allowance: Length, tuck: Length = NOTHING) -> DropPlan:
    """The finished edge and the cut line at every mark; one mark alone stands for a level floor.

    ``allowance`` is the cloth that the new hem takes below the finished edge,
    ``tuck`` what a tuck takes up above it. The marks stand where they were
    made, across the panel as it was bought: its bottom is cut before its sides.
    """
    pairs = list(zip(floor_heights(spec), finish_heights(spec), strict=True))
    pairs = pairs * 2 if len(pairs) == 1 else pairs
    marks = []
    for place, (floor, finish) in enumerate(pairs):
        at = spec.panel.width * place / (len(pairs) - 1)
        marks.append(DropMark(at=at, floor=floor, finish=finish - tuck, cut=finish - tuck - allowance))
    return DropPlan(hang_shift=hang_shift(spec), clearance=spec.drop.clearance, marks=tuple(marks), tuck=tuck)


def least_cut(drop: DropPlan) -> Length:
    """The lowest point of the cut line across the width."""
    return min(mark.cut for mark in drop.marks)


def spare_below(spec: Spec, drop: DropPlan) -> Length:
    """The cloth that can come off the bottom where the cut comes lowest, old hem let down; negative where it lacks."""
    return least_cut(drop) + spec.panel.hem + spec.panel.turn_under


def hang_figures(spec: Spec, drop: DropPlan) -> tuple[Figure, ...]:
    """What going round the rod takes up, before and after, and the shift between the two."""
    old, new = hang_when_marked(spec), hang_when_done(spec)
    found = [
        Figure(f"take_up_{when}", f"take-up, {hang.heading}", hang.tube.take_up, _take_up_working(spec, hang.tube))
        for when, hang in (("old", old), ("new", new))
        if hang.tube
    ]
    return (*found, Figure("hang_shift", "hang shift", drop.hang_shift, _shift_working(spec, old, new)))


def _take_up_working(spec: Spec, tube: Tube) -> str:
    depth = say(spec.tape, tube.depth)
    if not tube.passes:
        return f"the rod does not pass; what the thickest rod that passes a tube {depth} deep would take up"
    below = tube.depth - tube.take_up
    rod = f"round a rod {say(spec.tape, spec.rod.diameter)} thick"
    return f"a tube {depth} deep {rod} hangs {say(spec.tape, below)} below the rod's top"


def _shift_working(spec: Spec, old: Hang, new: Hang) -> str:
    if marked_by_new(spec):
        return f"none: {line_of(spec).the} was marked while the panel hung by its new heading"
    both = {term.label for term in old.terms} & {term.label for term in new.terms}
    terms = [(1, f"new {each.label}" if each.label in both else each.label, each.raises) for each in new.terms]
    terms += [(-1, f"old {each.label}" if each.label in both else each.label, each.raises) for each in old.terms]
    lowered = plan_top(spec).lowered
    if lowered:
        terms.append((1, "new top edge below the old", lowered))
    said = " ".join(term(spec.tape, sign, label, length) for sign, label, length in terms)
    return f"upward: {said.removeprefix('+ ')}"


def drop_figures(spec: Spec, drop: DropPlan, hem_terms: str) -> tuple[Figure, ...]:
    """Floor line, finish line, cut line, at the first mark; ``hem_terms`` is what the hem takes, as terms of a sum."""
    tape, first, name = spec.tape, drop.marks[0], line_of(spec).name
    found = [Figure("floor_line", f"{name} line", first.floor, _floor_working(spec))]
    worked_out = computed_floor(spec)
    if worked_out is not None and spec.drop.floor_marks:
        found.append(Figure("computed_floor_line", f"{name} line, by rod", worked_out, _computed_working(spec)))
    start, tuck = f"{name} line {say(tape, first.floor)}", drop.tuck
    if drop.above_marks:
        highest = drop.gauged[0].floor
        found.append(Figure("highest_mark", f"highest {name} mark", highest, "the hem is level, and clears this one"))
        start = f"highest {name} mark {say(tape, highest)}"
    found += [
        Figure("clearance", "clearance", drop.clearance, "as given"),
        Figure(
            "finish_line",
            "finish line",
            first.finish,
            f"{start} {term(tape, -1, 'hang shift', drop.hang_shift)} "
            f"{term(tape, 1, 'clearance', drop.clearance)}{_tuck_term(spec, tuck)}",
        ),
        Figure(
            "cut_line",
            "cut line",
            first.cut,
            f"finish line {say(tape, first.finish)} {hem_terms}",
        ),
    ]
    if spec.panel.length is not None:
        lowered = plan_top(spec).lowered
        working = f"panel {say(tape, spec.panel.length)} {term(tape, -1, 'finish line', first.finish)}"
        working += f" {term(tape, -1, 'new top edge below the old', lowered)}" if lowered else ""
        working += _tuck_term(spec, tuck)
        finished = spec.panel.length - first.finish - lowered - tuck
        found.append(Figure("finished_length", "finished length", finished, working))
    return tuple(found)


def _tuck_term(spec: Spec, tuck: Length) -> str:
    return f" {term(spec.tape, -1, 'taken up by the tuck', tuck)}" if tuck else ""


def _floor_working(spec: Spec) -> str:
    marks = len(spec.drop.floor_marks)
    if not marks:
        return _computed_working(spec)
    return "as given" if marks == 1 else f"as given, the first of {marks} marks"


def _computed_working(spec: Spec) -> str:
    tape, old = spec.tape, hang_when_marked(spec)
    length, height = spec.panel.length or NOTHING, spec.drop.rod_to_floor or NOTHING
    terms = [f"panel {say(tape, length)}"]
    lowered = plan_top(spec).lowered
    if marked_by_new(spec) and lowered:
        terms.append(term(tape, -1, "new top edge below the old", lowered))
    terms += [term(tape, -1, each.label, each.raises) for each in old.terms]
    return " ".join([*terms, term(tape, -1, f"rod to {line_of(spec).name}", height)])
