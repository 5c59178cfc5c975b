"""From the floor to the cut: what each floor mark says about the finished edge and the cut line."""

from __future__ import annotations

from ..errors import Fault, Refusal
from ..lengths import NOTHING, Length
from ..spec import Spec
from .headings import HEADINGS, Hang
from .plan import DropMark, DropPlan, Figure
from .wording import say, term


def hang_when_marked(spec: Spec) -> Hang:
    """How the panel hung when its floor line was marked."""
    return HEADINGS["casing" if spec.drop.hung_by == "casing" else spec.heading.style].hang(spec)


def hang_when_done(spec: Spec) -> Hang:
    """How it will hang by its new heading."""
    return HEADINGS[spec.heading.style].hang(spec)


def computed_floor(spec: Spec) -> Length | None:
    """The floor line worked out from the rod's height, where the panel's length is known.

    The bottom edge hangs length + offset below the top of the rod; the floor
    is rod_to_floor below it; so the floor comes that much short of the edge.
    """
    if spec.drop.rod_to_floor is None or spec.panel.length is None:
        return None
    return spec.panel.length + hang_when_marked(spec).offset - spec.drop.rod_to_floor


def floor_heights(spec: Spec) -> tuple[Length, ...]:
    """The floor's height on the panel, left to right: as marked, or else as worked out."""
    if spec.drop.floor_marks:
        return spec.drop.floor_marks
    worked_out = computed_floor(spec)
    if worked_out is None:
        right = "needs floor_marks, or rod_to_floor together with panel.length"
        raise Refusal(Fault("drop", "", right))
    return (worked_out,)


def plan_drop(spec: Spec) -> DropPlan:
    """The finished edge and the cut line at every mark; one mark alone stands for a level floor."""
    shift = hang_when_marked(spec).offset - hang_when_done(spec).offset
    heights = floor_heights(spec)
    heights = heights * 2 if len(heights) == 1 else heights
    spaces = len(heights) - 1
    marks = tuple(
        _drop_mark(spec, shift, spec.panel.width * place / spaces, floor)
        for place, floor in enumerate(heights)
    )
    return DropPlan(hang_shift=shift, clearance=spec.drop.clearance, marks=marks)


def _drop_mark(spec: Spec, shift: Length, at: Length, floor: Length) -> DropMark:
    finish = floor - shift + spec.drop.clearance
    return DropMark(at=at, floor=floor, finish=finish, cut=finish - spec.hem.depth - spec.hem.turn_under)


def least_cut(drop: DropPlan) -> Length:
    """The lowest point of the cut line across the width."""
    return min(mark.cut for mark in drop.marks)


def hang_figures(spec: Spec, drop: DropPlan) -> tuple[Figure, ...]:
    """What going round the rod takes up, before and after, and the shift between the two."""
    tape, old, new = spec.tape, hang_when_marked(spec), hang_when_done(spec)
    rod = f"round a rod {say(tape, spec.rod.diameter)} thick"
    return (
        Figure("take_up_old", f"take-up, {old.heading}", old.take_up, _take_up_working(spec, old, rod)),
        Figure("take_up_new", f"take-up, {new.heading}", new.take_up, _take_up_working(spec, new, rod)),
        Figure("hang_shift", "hang shift", drop.hang_shift, _shift_working(spec, old, new)),
    )


def _take_up_working(spec: Spec, hang: Hang, rod: str) -> str:
    depth = say(spec.tape, hang.tube_depth)
    if not hang.passes:
        return f"the rod does not pass; what the thickest rod that passes a tube {depth} deep would take up"
    below = hang.tube_depth - hang.take_up
    return f"a tube {depth} deep {rod} hangs {say(spec.tape, below)} below the rod's top"


def _shift_working(spec: Spec, old: Hang, new: Hang) -> str:
    tape = spec.tape
    if spec.drop.hung_by == "new heading":
        return "none: the floor was marked while the panel hung by its new heading"
    return (
        f"upward: upper seam {say(tape, new.below_top)} {term(tape, 1, 'new take-up', new.take_up)} "
        f"{term(tape, -1, 'header', old.below_top)} {term(tape, -1, 'old take-up', old.take_up)}"
    )


def drop_figures(spec: Spec, drop: DropPlan) -> tuple[Figure, ...]:
    """Floor line, finish line, cut line, at the first mark."""
    tape, first = spec.tape, drop.marks[0]
    found = [Figure("floor_line", "floor line", first.floor, _floor_working(spec))]
    worked_out = computed_floor(spec)
    if worked_out is not None and spec.drop.floor_marks:
        found.append(Figure("computed_floor_line", "floor line, by rod", worked_out, _computed_working(spec)))
    found += [
        Figure("clearance", "clearance", drop.clearance, "as given"),
        Figure(
            "finish_line",
            "finish line",
            first.finish,
            f"floor line {say(tape, first.floor)} {term(tape, -1, 'hang shift', drop.hang_shift)} "
            f"{term(tape, 1, 'clearance', drop.clearance)}",
        ),
        Figure(
            "cut_line",
            "cut line",
            first.cut,
            f"finish line {say(tape, first.finish)} {term(tape, -1, 'hem', spec.hem.depth)} "
            f"{term(tape, -1, 'turn-under', spec.hem.turn_under)}",
        ),
    ]
    if spec.panel.length is not None:
        working = f"panel {say(tape, spec.panel.length)} {term(tape, -1, 'finish line', first.finish)}"
        found.append(Figure("finished_length", "finished length", spec.panel.length - first.finish, working))
    return tuple(found)


def _floor_working(spec: Spec) -> str:
    marks = len(spec.drop.floor_marks)
    if not marks:
        return _computed_working(spec)
    return "as given" if marks == 1 else f"as given, the first of {marks} marks"


def _computed_working(spec: Spec) -> str:
    tape, old = spec.tape, hang_when_marked(spec)
    length, height = spec.panel.length or NOTHING, spec.drop.rod_to_floor or NOTHING
    above = "header" if old.heading == "casing" else "upper seam"
    return (
        f"panel {say(tape, length)} {term(tape, -1, above, old.below_top)} "
        f"{term(tape, -1, 'take-up', old.take_up)} {term(tape, -1, 'rod to floor', height)}"
    )
