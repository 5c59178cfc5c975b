"""Panels bought in several lots whose lengths differ: all end alike, so each lot has a cut line of its own."""

from __future__ import annotations

from ...lengths import NOTHING, Length
from ...spec import Spec
from ..drop import least_cut, spare_below
from ..figures import Figure, Notice
from ..hems import HEMS
from ..lots import longer, shorter
from ..plan import DropPlan, HemPlan
from ..wording import near, say, term


def lot_figures(spec: Spec, drop: DropPlan) -> tuple[Figure, ...]:
    """The cut line of each other lot, up from its own old bottom edge."""
    tape, cut = spec.tape, least_cut(drop)
    line = "cut line" if drop.level else "lowest cut line"
    return tuple(
        Figure(
            f"cut_line_lot_{number}",
            f"{line}, lot {number}",
            cut + more,
            f"{line} {say(tape, cut)} {term(tape, 1, 'difference of the lots', more)}",
        )
        for number, more in enumerate(longer(spec), 2)
    )


def _unpick(spec: Spec, drop: DropPlan, more: Length) -> str:
    """Where a lot's old hem is in the way though that of the marked panel is not."""
    cut = least_cut(drop)
    return ", its old hem unpicked first" if cut + more < spec.panel.hem <= cut else ""


def lot_notices(spec: Spec, drop: DropPlan, hem: HemPlan) -> list[Notice]:
    """That the lots differ; that the shortest is too short for the hem, which decides for all."""
    tape, found = spec.tape, []
    differing = [(number, more) for number, more in enumerate(longer(spec), 2) if more]
    if not differing:
        return []
    spare = spare_below(spec, drop)
    short = shorter(spec) - spare
    if spare >= NOTHING and short > NOTHING:  # where the marked panel is too short itself, that is the fault
        text = (
            f"The shortest lot, {near(tape, shorter(spec))} shorter than the panel that was marked, is "
            f"{near(tape, short)} too short for {HEMS[hem.style].said(tape, hem)}, and all panels have to match it. "
            f"{HEMS[hem.style].shallower(tape, hem, short) or 'Face it, or hang all panels so much higher.'}"
        )
        found.append(Notice("lot_too_short", "stop", text))
    said = "; ".join(
        f"lot {number} is {near(tape, abs(more))} {'longer' if more > NOTHING else 'shorter'}, and cut "
        f"{near(tape, least_cut(drop) + more)} up{_unpick(spec, drop, more)}"
        for number, more in differing
    )
    text = (
        f"The lots differ in length: {said}. Pin the line on every panel, and lay the cut gauge on its own pins: it is "
        "right for all of them. The heights of the plan are those of the panel that was marked."
    )
    found.append(Notice("lots_differ", "note", text))
    return found
