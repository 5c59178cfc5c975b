"""What can be wrong with loops, and the number that puts it right."""

from __future__ import annotations

from ....lengths import NOTHING, Length
from ....spec import Spec
from ... import hanging
from ...doubled import doubled_now
from ...figures import Notice
from ...heading_choices import EASY_TUBE_IN_DIAMETERS, LEAST_EDGE_GAP
from ...wording import at_least, at_most, near
from .. import along
from .plan import LoopPlan
from .sizes import pitch_limit


def loop_notices(spec: Spec, loops: LoopPlan) -> tuple[Notice, ...]:
    """Everything that looks wrong with the loops of one panel."""
    return (
        *_tube_notices(spec, loops),
        *_edge_notices(spec, loops),
        *along.spacing_notices(spec, loops, loops.given, pitch_limit(spec, loops.given)),
        *along.even_notices(loops),
    )


def _sewn_in(loops: LoopPlan) -> Length:
    return loops.lower_allowance + loops.upper_turn


def _longest(spec: Spec, loops: LoopPlan) -> Length:
    """The loop whose upper seam lies on the panel's top edge."""
    return doubled_now(spec) + _sewn_in(loops)


def _tube_notices(spec: Spec, loops: LoopPlan) -> list[Notice]:
    """Whether the rod goes through the loops, and whether the loops fit on the heading."""
    found = []
    shortest = hanging.least_tube(spec.rod.diameter) + _sewn_in(loops)
    longest = _longest(spec, loops)
    if not hanging.passes(spec.rod.diameter, loops.tube_depth):
        found.append(Notice("loop_too_tight", "stop", _too_tight(spec, shortest, longest)))
    elif loops.tube_depth < EASY_TUBE_IN_DIAMETERS * spec.rod.diameter:
        found.append(Notice("loop_tight", "note", _tight(spec, loops, longest)))
    if loops.upper_seam < NOTHING:
        text = (
            f"The loops are too long: their upper seam would lie {near(spec.tape, -loops.upper_seam)} "
            f"above the panel's top edge. Cut them at most {at_most(spec.tape, longest)} long."
        )
        found.append(Notice("seam_above_top", "stop", text))
    return found


def _tight(spec: Spec, loops: LoopPlan, longest: Length) -> str:
    tape, easy = spec.tape, EASY_TUBE_IN_DIAMETERS * spec.rod.diameter
    wanted = easy + _sewn_in(loops)
    cure = (
        f"cut the loops {at_least(tape, wanted)} long"
        if wanted <= longest
        else f"this heading has room for loops {at_most(tape, longest)} long at most"
    )
    return (
        f"The loops go over the rod with little to spare: their tube is {near(tape, loops.tube_depth)} "
        f"deep. Twice the rod's diameter, {near(tape, easy)}, goes on easily (A Manual of Home-Making): "
        f"{cure}."
    )


def _too_tight(spec: Spec, shortest: Length, longest: Length) -> str:
    tape = spec.tape
    needs = (
        f"The rod does not go through the loops: a rod {near(tape, spec.rod.diameter)} thick needs loops "
        f"cut at least {at_least(tape, shortest)} long"
    )
    if shortest <= longest:
        return f"{needs}."
    return (
        f"{needs}, and this heading has room for {at_most(tape, longest)} at most. Use a rod "
        f"{at_most(tape, _thickest(spec))} thick at most."
    )


def _thickest(spec: Spec) -> Length:
    """The thickest rod that loops as deep as the whole heading pass over: 2 / pi of the depth, rounded
    down to 10^-9 of it."""
    deepest = doubled_now(spec)
    return deepest * (deepest / hanging.least_tube(deepest))


def _edge_notices(spec: Spec, loops: LoopPlan) -> list[Notice]:
    """Whether the end loops lie on the panel, out of sight."""
    tape, gap = spec.tape, loops.edge_inset - loops.width / 2
    if not NOTHING <= gap < LEAST_EDGE_GAP:
        return along.over_edge(spec, loops)
    text = (
        f"The end loops lie {near(tape, gap)} from the panel's edge, which then curls and shows them. An "
        f"edge inset of at least {at_least(tape, loops.width / 2 + LEAST_EDGE_GAP)} hides them."
    )
    return [Notice("loop_near_edge", "warning", text)]
