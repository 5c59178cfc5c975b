"""Whether the loops can be cut from what comes off."""

from __future__ import annotations

from ...lengths import Length
from ...lengths.counting import plural
from ...spec import Spec
from ..choices import LEAST_LOOP_WIDTH
from ..plan import LoopPlan, Notice, OffcutPlan
from ..wording import at_most, near


def offcut_notices(spec: Spec, loops: LoopPlan, offcut: OffcutPlan) -> list[Notice]:
    """Enough as it is, enough once the old hem is let down, or not enough."""
    need = f"{offcut.loops_needed} loops are needed"
    strips = (
        f"{plural(offcut.strips_needed, 'strip')} {near(spec.tape, loops.strip)} wide, "
        f"up to {plural(offcut.loops_per_strip, 'loop')} from each"
    )
    above = offcut.strips_clear * offcut.loops_per_strip
    if above >= offcut.loops_needed:
        where = " above the old hem" if spec.panel.hem else ""
        text = f"The offcuts give {plural(above, 'loop')}{where}, and {need}: cut {strips}."
        return [Notice("loops_from_offcuts", "note", text)]
    if offcut.loops_available_unpicked >= offcut.loops_needed:
        text = (
            f"Unpick the old hem of the offcuts before cutting the loops: above it they give "
            f"{plural(above, 'loop')}, let down they give {offcut.loops_available_unpicked}, and {need}. "
            f"Cut {strips}."
        )
        return [Notice("unpick_for_loops", "note", text)]
    return [Notice("loops_short", "warning", _short(spec, loops, offcut, need))]


def _short(spec: Spec, loops: LoopPlan, offcut: OffcutPlan, need: str) -> str:
    tape = spec.tape
    missing = offcut.loops_needed - offcut.loops_available_unpicked
    most = max(1, offcut.loops_per_strip)
    strips = plural(-(-missing // most), "strip")
    long = loops.length * min(most, missing)
    narrower = _narrower(spec, offcut)
    let_down = ", even with the old hem let down" if spec.panel.hem + spec.panel.turn_under else ""
    instead = f" Or make every loop {at_most(tape, narrower)} wide: then the offcuts do." if narrower else ""
    return (
        f"The offcuts give {plural(offcut.loops_available_unpicked, 'loop')}{let_down}, and {need}: "
        f"{missing} short. They take {strips} of other cloth, {near(tape, loops.strip)} wide and "
        f"{near(tape, long)} long.{instead}"
    )


def _narrower(spec: Spec, offcut: OffcutPlan) -> Length | None:
    """The finished width at which the offcuts, old hem let down, give every loop; none where too narrow."""
    if offcut.loops_per_strip == 0:
        return None
    strips_a_panel = -(-offcut.loops_needed // (spec.panel.count * offcut.loops_per_strip))
    width = offcut.unpicked / (2 * strips_a_panel) - spec.heading.seam_allowance
    return width if width >= LEAST_LOOP_WIDTH else None
