"""Whether the loops or tabs can be cut from what comes off."""

from __future__ import annotations

from ...lengths import Length
from ...lengths.counting import plural
from ...spec import Spec
from ..figures import Notice
from ..heading_choices import LEAST_LOOP_WIDTH
from ..plan import OffcutPlan, PiecesPlan
from ..wording import at_most, near


def offcut_notices(spec: Spec, offcut: OffcutPlan) -> list[Notice]:
    """Enough as it is, enough once the old hem is let down, or not enough; nothing where no pieces are needed."""
    return _pieces_notices(spec, offcut, offcut.pieces) if offcut.pieces else []


def _pieces_notices(spec: Spec, offcut: OffcutPlan, plan: PiecesPlan) -> list[Notice]:
    thing, things = plan.pieces.thing, f"{plan.pieces.thing}s"
    need = f"{plan.needed} {things} are needed"
    strips = (
        f"{plural(plan.strips_needed, 'strip')} {near(spec.tape, plan.pieces.strip)} wide, "
        f"up to {plural(plan.per_strip, thing)} from each"
    )
    above = plan.strips_clear * plan.per_strip
    if above >= plan.needed:
        where = " above the old hem" if spec.panel.hem else ""
        text = f"The offcuts give {plural(above, thing)}{where}, and {need}: cut {strips}."
        return [Notice(f"{things}_from_offcuts", "note", text)]
    if plan.available_unpicked >= plan.needed:
        text = (
            f"Unpick the old hem of the offcuts before cutting the {things}: above it they give "
            f"{plural(above, thing)}, let down they give {plan.available_unpicked}, and {need}. "
            f"Cut {strips}."
        )
        return [Notice(f"unpick_for_{things}", "note", text)]
    return [Notice(f"{things}_short", "warning", _short(spec, offcut, plan, need))]


def _short(spec: Spec, offcut: OffcutPlan, plan: PiecesPlan, need: str) -> str:
    tape = spec.tape
    missing = plan.needed - plan.available_unpicked
    most = max(1, plan.per_strip)
    strips = plural(-(-missing // most), "strip")
    long = plan.pieces.length * min(most, missing)
    narrower = _narrower(spec, offcut, plan)
    let_down = ", even with the old hem let down" if spec.panel.hem + spec.panel.turn_under else ""
    wide = f"every {plan.pieces.thing} {at_most(tape, narrower)} wide" if narrower else ""
    instead = f" Or make {wide}: then the offcuts do." if wide else ""
    return (
        f"The offcuts give {plural(plan.available_unpicked, plan.pieces.thing)}{let_down}, and {need}: "
        f"{missing} short. They take {strips} of other cloth, {near(tape, plan.pieces.strip)} wide and "
        f"{near(tape, long)} long.{instead}"
    )


def _narrower(spec: Spec, offcut: OffcutPlan, plan: PiecesPlan) -> Length | None:
    """The finished width at which the offcuts, old hem let down, give every piece; none where too narrow."""
    if plan.per_strip == 0:
        return None
    strips_a_panel = -(-plan.needed // (spec.panel.count * plan.per_strip))
    width = offcut.unpicked / (2 * strips_a_panel) - plan.pieces.seam_allowance
    return width if width >= LEAST_LOOP_WIDTH else None
