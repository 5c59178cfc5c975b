"""What can be wrong with loops, and the number that puts it right."""

from __future__ import annotations

from ....lengths import NOTHING, Length
from ....lengths.counting import plural
from ....spec import Spec
from ... import hanging, spacing
from ...choices import EASY_TUBE_IN_DIAMETERS, FEWEST_LOOPS, LEAST_EDGE_GAP, MOST_LOOPS
from ...figures import Notice
from ...widths import made_width
from ...wording import at_least, at_most, near
from .plan import LoopPlan
from .sizes import most_apart, pitch_limit


def loop_notices(spec: Spec, loops: LoopPlan) -> tuple[Notice, ...]:
    """Everything that looks wrong with the loops of one panel."""
    return (*_tube_notices(spec, loops), *_edge_notices(spec, loops), *_spacing_notices(spec, loops))


def _sewn_in(loops: LoopPlan) -> Length:
    return loops.lower_allowance + loops.upper_turn


def _longest(spec: Spec, loops: LoopPlan) -> Length:
    """The loop whose upper seam lies on the panel's top edge."""
    return spec.panel.header + spec.panel.casing + _sewn_in(loops)


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
    deepest = spec.panel.header + spec.panel.casing
    return deepest * (deepest / hanging.least_tube(deepest))


def _edge_notices(spec: Spec, loops: LoopPlan) -> list[Notice]:
    """Whether the end loops lie on the panel."""
    tape = spec.tape
    gap = loops.edge_inset - loops.width / 2
    if gap < NOTHING:
        text = (
            f"The end loops would stand {near(tape, -gap)} over the panel's edge: loops "
            f"{near(tape, loops.width)} wide need an edge inset of at least "
            f"{at_least(tape, loops.width / 2)}."
        )
        return [Notice("loop_over_edge", "stop", text)]
    if gap < LEAST_EDGE_GAP:
        text = (
            f"The end loops lie {near(tape, gap)} from the panel's edge, which then curls and shows them. An "
            f"edge inset of at least {at_least(tape, loops.width / 2 + LEAST_EDGE_GAP)} hides them."
        )
        return [Notice("loop_near_edge", "warning", text)]
    return []


def _spacing_notices(spec: Spec, loops: LoopPlan) -> list[Notice]:
    """Whether there are too many loops, too few, or no middle one."""
    found = [Notice("loops_overlap", "stop", _overlap(spec, loops))] if loops.pitch <= loops.width else []
    if loops.pitch > pitch_limit(spec, loops.given):
        found.append(Notice("loops_sag", "warning", _sag(spec, loops)))
    if loops.count % 2 == 0:
        text = (
            f"{loops.count} loops is an even number, so none sits on the centre. "
            f"{' or '.join(str(count) for count in _odd_beside(loops.count))} would put one there."
        )
        found.append(Notice("even_loops", "note", text))
    return found


def _odd_beside(count: int) -> list[int]:
    """The odd numbers next to ``count`` that a panel can have."""
    return [odd for odd in (count - 1, count + 1) if FEWEST_LOOPS <= odd <= MOST_LOOPS]


def _overlap(spec: Spec, loops: LoopPlan) -> str:
    tape = spec.tape
    span = made_width(spec) - 2 * loops.edge_inset
    fitting = most_apart(span, loops.width)
    start = (
        f"The loops run into each other: {loops.count} of them, {near(tape, loops.width)} wide, would stand "
        f"{near(tape, loops.pitch)} apart, centre to centre."
    )
    if span > (fitting - 1) * loops.width:
        return f"{start} {fitting} fit."
    narrow = span / (FEWEST_LOOPS - 1)
    return f"{start} Make them narrower than {at_most(tape, narrow)}; then {FEWEST_LOOPS} fit."


def _sag(spec: Spec, loops: LoopPlan) -> str:
    tape, limit = spec.tape, pitch_limit(spec, loops.given)
    width, inset = made_width(spec), loops.edge_inset
    span = width - 2 * inset
    whose = "the limit given" if loops.given.max_pitch is not None else f"the limit for {spec.cloth} cloth"
    start = (
        f"The loops stand {near(tape, loops.pitch)} apart, and beyond {near(tape, limit)}, {whose}, the top "
        f"edge sags between them."
    )
    curing = int(-(-span.mm // limit.mm)) + 1
    curing += 1 - curing % 2
    if curing > MOST_LOOPS:
        return f"{start} That takes more than {MOST_LOOPS} loops: allow a wider limit."
    if span > (curing - 1) * loops.width:
        closer = spacing.pitch(width, inset, curing)
        return f"{start} {plural(curing, 'loop')} would stand {near(tape, closer)} apart."
    narrow = span / (curing - 1)
    return f"{start} That takes {curing} loops, narrower than {at_most(tape, narrow)}, or a wider limit."
