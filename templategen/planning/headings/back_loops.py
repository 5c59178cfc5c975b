"""Loops sewn on the back of the casing: the rod runs behind the panel, which then hangs in flat waves.

A loop is sewn down along the casing's stitch line and again above it; the
rod goes through the tube between loop and panel.
"""

from __future__ import annotations

from ...lengths import Tape
from ...lengths.counting import plural
from ...spec import Spec
from .. import spacing
from ..choices import INSET_BEYOND_HALF, LOOP_WIDTH, NARROW_SHARE
from ..plan import Figure, HeadingMark, LoopPlan
from ..wording import near, say, term
from .face import Hang, HeadingKind, HeadingMaker
from .loop_advice import loop_notices
from .loop_sizes import edge_inset, loop_count, loop_length, loop_width, pitch_limit, tube_depth, upper_seam


def hang(spec: Spec) -> Hang:
    """The rod lifts the loops' upper seams. Offset: -upper seam - take-up(tube)."""
    return Hang.of_tube("back loops", upper_seam(spec), tube_depth(spec), spec.rod.diameter)


def explain(tape: Tape, hang: Hang) -> str:
    """How a panel hangs by its loops, as a clause."""
    return (
        f"by its loops, their upper seam lies {near(tape, hang.below_top)} below the top edge and "
        f"their tube, {near(tape, hang.tube_depth)} deep, takes up {near(tape, hang.take_up)}"
    )


def lay_out(spec: Spec) -> LoopPlan:
    """The loops of one panel."""
    inset, count, width = edge_inset(spec), loop_count(spec), loop_width(spec)
    places = spacing.positions(spec.panel.width, inset, count)
    return LoopPlan(
        marks=tuple(HeadingMark(str(number), at) for number, at in enumerate(places, start=1)),
        edge_inset=inset,
        pitch=spacing.pitch(spec.panel.width, inset, count),
        length=loop_length(spec),
        width=width,
        strip=2 * (width + spec.heading.seam_allowance),
        lower_allowance=spec.heading.lower_allowance,
        upper_turn=spec.heading.upper_turn,
        tube_depth=tube_depth(spec),
        upper_seam=upper_seam(spec),
    )


def figures(spec: Spec, loops: LoopPlan) -> tuple[Figure, ...]:
    """The loops' numbers, each with how it came about."""
    tape, panel, heading = spec.tape, spec.panel, spec.heading
    return (
        Figure("loop_length", "loop, cut length", loops.length, _length_working(spec)),
        Figure("loop_width", "loop, finished width", loops.width, _width_working(spec)),
        Figure(
            "loop_strip",
            "strip for loops",
            loops.strip,
            f"2 × (finished width {say(tape, loops.width)} "
            f"{term(tape, 1, 'seam allowance', heading.seam_allowance)})",
        ),
        Figure(
            "tube_depth",
            "tube depth",
            loops.tube_depth,
            f"loop {say(tape, loops.length)} {term(tape, -1, 'lower allowance', loops.lower_allowance)} "
            f"{term(tape, -1, 'upper turn', loops.upper_turn)}",
        ),
        Figure(
            "upper_seam",
            "upper seam",
            loops.upper_seam,
            f"down from the top edge: header {say(tape, panel.header)} "
            f"{term(tape, 1, 'casing', panel.casing)} {term(tape, -1, 'tube depth', loops.tube_depth)}",
        ),
        Figure("edge_inset", "edge inset", loops.edge_inset, _inset_working(spec, loops)),
        Figure("loop_pitch", "loop spacing", loops.pitch, _pitch_working(spec, loops)),
    )


def _length_working(spec: Spec) -> str:
    if spec.heading.loop_length is not None:
        return "as given"
    return f"as long as the casing is deep, {say(spec.tape, spec.panel.casing)} (common practice)"


def _width_working(spec: Spec) -> str:
    if spec.heading.loop_width is not None:
        return "as given"
    if loop_width(spec) < LOOP_WIDTH:
        return f"chosen: a sixth of the panel's width {say(spec.tape, spec.panel.width)}, as it is narrow"
    return "chosen: wide enough to turn out, narrow enough to stay out of sight"


def _inset_working(spec: Spec, loops: LoopPlan) -> str:
    tape = spec.tape
    if spec.heading.edge_inset is not None:
        return "as given"
    if loops.edge_inset == spec.panel.width * NARROW_SHARE:
        return f"chosen: a sixth of the panel's width {say(tape, spec.panel.width)}, as it is narrow"
    return (
        f"chosen: half the loop's width {say(tape, loops.width / 2)} + {say(tape, INSET_BEYOND_HALF)}, "
        "about a little finger's width, rounded up to an eighth of an inch"
    )


def _pitch_working(spec: Spec, loops: LoopPlan) -> str:
    tape = spec.tape
    why = "" if spec.heading.count is not None else f"; {_count_working(spec, loops)}"
    return (
        f"centre to centre: (panel width {say(tape, spec.panel.width)} − 2 × edge inset "
        f"{say(tape, loops.edge_inset)}) ÷ {plural(loops.count - 1, 'space')}{why}"
    )


def _count_working(spec: Spec, loops: LoopPlan) -> str:
    limit = say(spec.tape, pitch_limit(spec))
    whose = "the limit given" if spec.heading.max_pitch is not None else f"for {spec.cloth} cloth"
    if loops.pitch > pitch_limit(spec):
        return f"{plural(loops.count, 'loop')} chosen: as many as fit, an odd number"
    return f"{plural(loops.count, 'loop')} chosen: the fewest, odd, no more than {limit} apart, {whose}"


BACK_LOOPS = HeadingKind(
    name="back loops",
    edge="casing",
    hang=hang,
    explain=explain,
    maker=HeadingMaker(lay_out=lay_out, figures=figures, notices=loop_notices),
)
