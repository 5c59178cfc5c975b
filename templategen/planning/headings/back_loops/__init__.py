"""Loops sewn on the back of the casing: the rod runs behind the panel, which then hangs in flat waves.

A loop is sewn down along the casing's stitch line and again above it; the
rod goes through the tube between loop and panel.
"""

from __future__ import annotations

from ....lengths import Length, Tape
from ....spec import Spec
from ....spec.headings import BackLoops
from ... import spacing
from ...doubled import doubled_now
from ...figures import Figure
from ...heading_choices import INSET_BEYOND_HALF, LOOP_WIDTH, NARROW_SHARE
from ...plan import Pieces
from ...widths import made_width
from ...wording import near, say, term
from .. import along
from ..face import Hang, HeadingKind
from .advice import loop_notices
from .plan import LoopPlan
from .sizes import edge_inset, loop_count, loop_length, loop_width, pitch_limit, tube_depth, upper_seam


def hang(spec: Spec, heading: BackLoops) -> Hang:
    """The rod lifts the loops' upper seams. Offset: -upper seam - take-up(tube)."""
    seam, depth = upper_seam(spec, heading), tube_depth(spec, heading)
    return Hang.of_tube("back loops", "upper seam", seam, depth, spec.rod.diameter)


def explain(tape: Tape, hang: Hang) -> str:
    """How a panel hangs by its loops, as a clause."""
    tube = hang.tube
    assert tube is not None, "loops are tubes"
    return (
        f"by its loops, their upper seam lies {near(tape, tube.top)} below the top edge and "
        f"their tube, {near(tape, tube.depth)} deep, takes up {near(tape, tube.take_up)}"
    )


def doubled(spec: Spec, heading: BackLoops) -> Length:
    """The loops are sewn through the back layer of a casing, so there has to be one."""
    return doubled_now(spec)


def lay_out(spec: Spec, heading: BackLoops) -> LoopPlan:
    """The loops of one panel."""
    inset, count, width = edge_inset(spec, heading), loop_count(spec, heading), loop_width(spec, heading)
    return LoopPlan(
        style=heading.style,
        thing="loop",
        given=heading,
        marks=along.marks_along(spec, inset, count),
        thing_width=width,
        edge_inset=inset,
        pitch=spacing.pitch(made_width(spec), inset, count),
        length=loop_length(spec, heading),
        strip=2 * (width + heading.seam_allowance),
        lower_allowance=heading.lower_allowance,
        upper_turn=heading.upper_turn,
        tube_depth=tube_depth(spec, heading),
        upper_seam=upper_seam(spec, heading),
    )


def pieces(loops: LoopPlan) -> Pieces:
    """The loops, as they are cut off the sewn strip."""
    return Pieces(
        thing="loop",
        on_each=loops.count,
        length=loops.length,
        strip=loops.strip,
        seam_allowance=loops.given.seam_allowance,
    )


def hang_figures(spec: Spec, loops: LoopPlan) -> tuple[Figure, ...]:
    """The loop's length and seams, each with how it came about."""
    tape, panel = spec.tape, spec.panel
    return (
        Figure("loop_length", "loop, cut length", loops.length, _length_working(spec, loops)),
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
    )


def figures(spec: Spec, loops: LoopPlan) -> tuple[Figure, ...]:
    """Where the loops stand and how wide they are, each with how it came about."""
    tape, limit = spec.tape, pitch_limit(spec, loops.given)
    return (
        Figure("edge_inset", "edge inset", loops.edge_inset, _inset_working(spec, loops)),
        Figure("loop_pitch", "loop spacing", loops.pitch, along.pitch_working(spec, loops, loops.given, limit)),
        Figure("loop_width", "loop, finished width", loops.width, _width_working(spec, loops)),
        Figure(
            "loop_strip",
            "strip for loops",
            loops.strip,
            f"2 × (finished width {say(tape, loops.width)} "
            f"{term(tape, 1, 'seam allowance', loops.given.seam_allowance)})",
        ),
    )


def _length_working(spec: Spec, loops: LoopPlan) -> str:
    if loops.given.loop_length is not None:
        return "as given"
    return f"as long as the casing is deep, {say(spec.tape, spec.panel.casing)} (common practice)"


def _width_working(spec: Spec, loops: LoopPlan) -> str:
    if loops.given.loop_width is not None:
        return "as given"
    if loops.width < LOOP_WIDTH:
        return f"chosen: a sixth of the panel's width {say(spec.tape, made_width(spec))}, as it is narrow"
    return "chosen: wide enough to turn out, narrow enough to stay out of sight"


def _inset_working(spec: Spec, loops: LoopPlan) -> str:
    tape = spec.tape
    if loops.given.edge_inset is not None:
        return "as given"
    if loops.edge_inset == made_width(spec) * NARROW_SHARE:
        return f"chosen: a sixth of the panel's width {say(tape, made_width(spec))}, as it is narrow"
    return (
        f"chosen: half the loop's width {say(tape, loops.width / 2)} + {say(tape, INSET_BEYOND_HALF)}, "
        "about a little finger's width, rounded up to an eighth of an inch"
    )


BACK_LOOPS = HeadingKind(
    name="back loops",
    title="The loops",
    marks_said="Loop centres",
    edge="casing",
    hang=hang,
    explain=explain,
    doubled=doubled,
    lay_out=lay_out,
    hang_figures=hang_figures,
    figures=figures,
    notices=loop_notices,
    pieces=pieces,
)

__all__ = ["BACK_LOOPS", "LoopPlan"]
