"""Eyelets along the top: the rod goes in and out through them, and the cloth falls in folds front and back.

The rod lifts the rings by the top of their openings, so the panel's top edge
stands above the rod by what is between the two.
"""

from __future__ import annotations

from ....lengths import Length, Tape
from ....lengths.counting import plural
from ....spec import Spec
from ....spec.headings import Eyelets
from ... import spacing
from ...figures import Figure
from ...folds import fold, turning_ring
from ...fullness import run
from ...heading_choices import CLOTH_ROUND_EYELET, CLOTH_ROUND_RIM, EYELET_PITCHES, EYELET_RIM, NARROW_SHARE
from ...widths import made_count, made_width
from ...wording import near, say, term
from .. import along
from ..face import Hang, HangTerm, HeadingKind
from .advice import eyelet_notices
from .plan import EyeletPlan
from .sizes import (
    band,
    centre,
    cloth_round,
    cut_circle,
    edge_inset,
    eyelet_count,
    outside,
    pitch_limit,
    rod_spacing,
)


def hang(spec: Spec, heading: Eyelets) -> Hang:
    """The rod lifts the tops of the rings' openings. Offset: -(centre - half the ring's inner diameter)."""
    terms = (HangTerm("eyelet centre", centre(spec, heading)), HangTerm("half the opening", -heading.eyelet_inside / 2))
    return Hang("eyelets", terms)


def explain(tape: Tape, hang: Hang) -> str:
    """How a panel hangs by its eyelets, as a clause."""
    return f"by its eyelets, its top edge stands {near(tape, -hang.offset)} above the rod"


def doubled(spec: Spec, heading: Eyelets) -> Length:
    """The rings are set in doubled, stiffened cloth."""
    return band(spec, heading)


def lay_out(spec: Spec, heading: Eyelets) -> EyeletPlan:
    """The eyelets of one panel."""
    inset, count = edge_inset(spec, heading), eyelet_count(spec, heading)
    pitch, chord = spacing.pitch(made_width(spec), inset, count), rod_spacing(spec, count)
    return EyeletPlan(
        style=heading.style,
        thing="eyelet",
        given=heading,
        marks=along.marks_along(spec, inset, count),
        thing_width=cut_circle(heading),
        edge_inset=inset,
        pitch=pitch,
        inside=heading.eyelet_inside,
        outside=outside(heading),
        centre=centre(spec, heading),
        band=band(spec, heading),
        spacing=chord,
        fold=fold(pitch, chord),
    )


def hang_figures(spec: Spec, eyelets: EyeletPlan) -> tuple[Figure, ...]:
    """Where the rings' centres are, and how far the top edge stands above the rod."""
    tape = spec.tape
    return (
        Figure("eyelet_centre", "eyelet centre", eyelets.centre, _centre_working(spec, eyelets)),
        Figure(
            "above_rod",
            "top edge above the rod",
            eyelets.above,
            f"eyelet centre {say(tape, eyelets.centre)} {term(tape, -1, 'half the opening', eyelets.inside / 2)}; "
            "a panel as long as from the rod's top to its hem would hang that much short",
        ),
    )


def figures(spec: Spec, eyelets: EyeletPlan) -> tuple[Figure, ...]:
    """Rings, places, and the folds between them, each with how it came about."""
    given = eyelets.given
    return (
        Figure("edge_inset", "edge inset", eyelets.edge_inset, _inset_working(spec, eyelets)),
        Figure("eyelet_pitch", "eyelet spacing", eyelets.pitch, _pitch_working(spec, eyelets)),
        Figure("eyelet_inside", "ring, inside", eyelets.inside, _inside_working(spec, eyelets)),
        Figure(
            "eyelet_outside",
            "ring, outside",
            eyelets.outside,
            _outside_working(spec, eyelets),
        ),
        Figure(
            "cut_circle",
            "circle to cut",
            eyelets.cut_circle,
            "as given" if given.cut_circle is not None else "chosen: a little wider than the ring's opening",
        ),
        Figure("eyelet_band", "stiffened band", eyelets.band, _band_working(spec, eyelets)),
        *_fold_figures(spec, eyelets),
    )


def _fold_figures(spec: Spec, eyelets: EyeletPlan) -> tuple[Figure, ...]:
    tape, bow = spec.tape, eyelets.fold
    found = [
        Figure(
            "eyelet_spacing",
            "spacing on the rod",
            eyelets.spacing,
            f"drawn out: run {say(tape, run(spec))} ÷ {plural(made_count(spec), 'panel')} ÷ "
            f"{plural(eyelets.count - 1, 'space')}",
        )
    ]
    if bow.depth:
        half = eyelets.pitch / 2
        found += [
            Figure(
                "fold_depth",
                "depth of the folds",
                bow.depth,
                f"before and behind the rod's centre, cloth {say(tape, eyelets.pitch)} long bent round over "
                f"{say(tape, eyelets.spacing)}; half the spacing, {say(tape, half)}, is "
                f"{near(tape, half - bow.depth)} too much until the panels are pushed together",
            ),
            Figure(
                "fold_creased",
                "the same, creased",
                bow.creased,
                f"√(spacing {say(tape, eyelets.pitch)}² − spacing on the rod {say(tape, eyelets.spacing)}²) ÷ 2: "
                "nothing comes further out",
            ),
        ]
    turning = turning_ring(spec.rod.diameter, bow)
    if turning is not None and bow.steepness < 1:
        working = f"the narrowest that stands on a rod {say(tape, spec.rod.diameter)} thick as the cloth crosses it"
        found.append(Figure("eyelet_turning", "ring that turns freely", turning, working))
    return tuple(found)


def _centre_working(spec: Spec, eyelets: EyeletPlan) -> str:
    if eyelets.given.eyelet_centre is not None:
        return "down from the top edge: as given"
    return f"down from the top edge, chosen: {_cloth_working(spec, eyelets)}, rounded up where there is cloth for it"


def _cloth_working(spec: Spec, eyelets: EyeletPlan) -> str:
    tape = spec.tape
    if eyelets.inside / 2 + CLOTH_ROUND_EYELET >= cloth_round(eyelets.given):
        return f"half the opening {say(tape, eyelets.inside / 2)} {term(tape, 1, 'cloth', CLOTH_ROUND_EYELET)} (Singer)"
    return f"half the ring {say(tape, eyelets.outside / 2)} {term(tape, 1, 'cloth', CLOTH_ROUND_RIM)}"


def _band_working(spec: Spec, eyelets: EyeletPlan) -> str:
    if eyelets.given.band is not None:
        return "as given"
    return f"eyelet centre {say(spec.tape, eyelets.centre)} + {_cloth_working(spec, eyelets)}"


def _inside_working(spec: Spec, eyelets: EyeletPlan) -> str:
    play = (eyelets.inside / spec.rod.diameter - 1) * 100
    rod = say(spec.tape, spec.rod.diameter)
    return f"as given: {float(play):.0f} % more than the rod, {rod}; guides say 14 to 40 %"


def _outside_working(spec: Spec, eyelets: EyeletPlan) -> str:
    if eyelets.given.eyelet_outside is not None:
        return "as given"
    return f"chosen: inside {say(spec.tape, eyelets.inside)} + twice a rim of {say(spec.tape, EYELET_RIM)}"


def _inset_working(spec: Spec, eyelets: EyeletPlan) -> str:
    tape = spec.tape
    if eyelets.given.edge_inset is not None:
        return "as given"
    if eyelets.edge_inset == made_width(spec) * NARROW_SHARE:
        return f"chosen: a sixth of the panel's width {say(tape, made_width(spec))}, as it is narrow"
    beside = ", clear of where the side hem ends" if eyelets.given.side_hem else ""
    return f"chosen: a ring {say(tape, eyelets.outside)} wide stands clear of the edge{beside}"


def _pitch_working(spec: Spec, eyelets: EyeletPlan) -> str:
    tape = spec.tape
    why = "" if eyelets.given.count is not None else f"; {_count_working(spec, eyelets)}"
    return (
        f"centre to centre: (panel width {say(tape, made_width(spec))} − 2 × edge inset "
        f"{say(tape, eyelets.edge_inset)}) ÷ {plural(eyelets.count - 1, 'space')}{why}"
    )


def _count_working(spec: Spec, eyelets: EyeletPlan) -> str:
    limit = pitch_limit(spec, eyelets.given)
    if eyelets.pitch > limit:
        return f"{plural(eyelets.count, 'eyelet')} chosen: as many as fit, an even number"
    whose = "the limit given" if eyelets.given.max_pitch is not None else "6 to 8 in (150 to 200 mm) being usual"
    if eyelets.given.max_pitch is None and limit < EYELET_PITCHES[1]:
        whose = "as the wall is near"
    return (
        f"{plural(eyelets.count, 'eyelet')} chosen: the fewest, even, no more than {say(spec.tape, limit)} apart, "
        f"{whose}"
    )


def openings(spec: Spec, heading: Eyelets) -> Length:
    """The lower edge of the holes, down from the top edge."""
    return centre(spec, heading) + cut_circle(heading) / 2


EYELETS = HeadingKind(
    name="eyelets",
    title="The eyelets",
    marks_said="Eyelet centres",
    edge="top",
    openings=openings,
    hang=hang,
    explain=explain,
    doubled=doubled,
    lay_out=lay_out,
    hang_figures=hang_figures,
    figures=figures,
    notices=eyelet_notices,
)

__all__ = ["EYELETS", "EyeletPlan"]
