"""What the old hem means for the new one: in the way, to be let down, or not enough."""

from __future__ import annotations

from ...lengths import NOTHING, Length
from ...spec import Spec
from ..choices import FACING_SEAM
from ..drop import least_cut, spare_below
from ..figures import Notice
from ..hems import HEMS
from ..plan import DropPlan, HemPlan
from ..wording import at_least, near


def old_hem_notices(spec: Spec, drop: DropPlan, hem: HemPlan) -> list[Notice]:
    """How far the lowest cut line comes down on the old hem, and what to do about it."""
    cut, panel = least_cut(drop), spec.panel
    spare = spare_below(spec, drop)
    if spare < NOTHING:
        return [Notice("panel_too_short", "stop", _too_short(spec, drop, hem, -spare))]
    if cut < NOTHING:
        return [Notice("let_down_old_hem", "warning", _let_down(spec, drop, hem, cut))]
    if cut < panel.hem:
        return [Notice("unpick_old_hem", "note", _unpick(spec, drop, hem, cut))]
    return []


def _lowest_finish(drop: DropPlan) -> Length:
    return min(mark.finish for mark in drop.marks)


def _too_short(spec: Spec, drop: DropPlan, hem: HemPlan, short: Length) -> str:
    tape, kind = spec.tape, HEMS[hem.style]
    let_down = ", even with the old hem let down" if spec.panel.hem + spec.panel.turn_under else ""
    start = f"The panel is {near(tape, short)} too short for {kind.said(tape, hem)}{let_down}."
    if instead := kind.shallower(tape, hem, short):
        return f"{start} {instead}"
    below = _lowest_finish(drop) + spec.panel.hem + spec.panel.turn_under
    if below >= FACING_SEAM:
        strip = hem.allowance + FACING_SEAM
        return (
            f"{start} Face it: sew on a strip of other cloth {near(tape, strip)} wide, with a "
            f"seam of {near(tape, FACING_SEAM)} on the finish line, and turn that up for the hem "
            "(hem.style \"faced\")."
        )
    return (
        f"{start} Even a facing needs {near(tape, FACING_SEAM)} of cloth below the finish line: lengthen "
        f"the panel, or make the clearance at least {at_least(tape, FACING_SEAM - below)} more."
    )


def _let_down(spec: Spec, drop: DropPlan, hem: HemPlan, cut: Length) -> str:
    tape, finish = spec.tape, _lowest_finish(drop)
    spare = spare_below(spec, drop)
    off = f"then {near(tape, spare)} comes off" if spare else "then nothing comes off"
    start = (
        f"The cut line lies {near(tape, -cut)} below the old bottom edge, on cloth that "
        "is now in the old hem. Unpick the old hem and press it flat before measuring; "
        f"{off}."
    )
    if finish + hem.sewn_on < NOTHING:
        above = near(tape, -finish)
        crease = f"The old crease will show on the front, {above} above the new bottom edge."
        return f"{start} {crease}{_holes(spec, finish, hem)}"
    into = "seam" if hem.allowance < hem.depth else "new hem"
    return f"{start} The old crease goes into the {into}.{_holes(spec, finish, hem)}"


def _unpick(spec: Spec, drop: DropPlan, hem: HemPlan, cut: Length) -> str:
    tape, finish = spec.tape, _lowest_finish(drop)
    start = (
        f"The old hem is in the way: the cut line, {near(tape, cut)} up, runs through it, and it is "
        f"{near(tape, spec.panel.hem)} deep. Unpick it and press it flat before cutting."
    )
    return f"{start} Measure the cut line from the old bottom crease.{_holes(spec, finish, hem)}"


def _holes(spec: Spec, finish: Length, hem: HemPlan) -> str:
    """Where the old row of stitching shows, once the old hem is let down; nothing where it goes into the new hem, or
    into the seam of what is sewn on."""
    above = spec.panel.hem - finish
    if above <= hem.sewn_on:
        return ""
    return (
        f" Its old stitch holes come {near(spec.tape, above)} above the new bottom edge, on the front: try on a "
        "corner whether they close."
    )
