"""Eyelets: the rod goes through the cloth at each, to and fro, so that it stands in even folds."""

from __future__ import annotations

from dataclasses import dataclass

from ...lengths import Length, Tape
from ...spec import Spec
from ...spec.headings import Eyelets
from .. import folds
from ..choices import (
    EYELET_CLOSEST,
    EYELET_MARGIN,
    EYELET_PITCH,
    EYELET_PLAY,
    HOLE_OVER_INSIDE,
    RING_FLANGE,
)
from ..figures import Figure, Notice
from ..fullness import run
from ..plan import GaugeLine, HeadingPlan
from ..widths import made_count
from ..wording import at_least, near, say
from .face import Hang, HangTerm, HeadingKind, beside_the_top
from .rows import pitch_limit, row, row_figures_working, row_notices


@dataclass(frozen=True, slots=True, kw_only=True)
class EyeletPlan(HeadingPlan):
    """The eyelets of one panel; each mark is the centre of one."""

    given: Eyelets
    inside: Length
    outside: Length
    hole: Length
    """Diameter of the hole that is cut."""
    centre_below: Length
    """Panel's top edge down to the centres."""
    on_the_rod: Length
    """Centre to centre when the panel is drawn over its share of the rod."""
    fold_sharp: Length
    """The deepest that a fold can stand from the rod's centre line, front or back."""
    fold_rounded: Length
    """The same with a round back."""


def _outside(heading: Eyelets) -> Length:
    return heading.eyelet_inside * RING_FLANGE if heading.eyelet_outside is None else heading.eyelet_outside


def _centre_below(heading: Eyelets) -> Length:
    return _outside(heading) / 2 + EYELET_MARGIN if heading.centre_below is None else heading.centre_below


def hang(spec: Spec, heading: Eyelets) -> Hang:
    """The eyelet's upper rim rests on the rod's top. Offset: -(centre below the edge - inner radius)."""
    return Hang(
        "eyelets",
        (HangTerm("eyelet's centre", _centre_below(heading)), HangTerm("inner radius", -heading.eyelet_inside / 2)),
    )


def explain(tape: Tape, hang: Hang) -> str:
    """How a panel hangs by its eyelets, as a clause."""
    return f"by its eyelets, its top edge lies {beside_the_top(tape, hang)}"


def doubled(spec: Spec, heading: Eyelets) -> Length:
    """The band takes the whole ring, and a margin below it."""
    return _centre_below(heading) + _outside(heading) / 2 + EYELET_MARGIN


def lay_out(spec: Spec, heading: Eyelets) -> EyeletPlan:
    """The eyelets of one panel: an even number, so that both its edges turn to the wall."""
    outside, below = _outside(heading), _centre_below(heading)
    found = row(spec, heading, outside, pitch_limit(spec, heading, EYELET_PITCH), "even")
    share = run(spec) / made_count(spec)
    on_the_rod = share / len(found.marks)
    return EyeletPlan(
        style=heading.style,
        thing="eyelet",
        given=heading,
        marks=found.marks,
        thing_width=outside,
        edge_inset=found.inset,
        pitch=found.pitch,
        inside=heading.eyelet_inside,
        outside=outside,
        hole=heading.eyelet_inside + HOLE_OVER_INSIDE if heading.hole is None else heading.hole,
        centre_below=below,
        on_the_rod=on_the_rod,
        fold_sharp=folds.sharp(found.pitch, on_the_rod),
        fold_rounded=folds.rounded(found.pitch, on_the_rod),
        lines=(GaugeLine("eyelet's centre", below, "mark"), GaugeLine("band ends", doubled(spec, heading), "fold")),
    )


def hang_figures(spec: Spec, eyelets: EyeletPlan) -> tuple[Figure, ...]:
    """Centre and inner radius."""
    tape, given = spec.tape, eyelets.given
    below = "as given"
    if given.centre_below is None:
        below = f"chosen: half the ring {say(tape, eyelets.outside / 2)} + {say(tape, EYELET_MARGIN)} of cloth above it"
    return (
        Figure("eyelet_centre", "eyelet's centre", eyelets.centre_below, f"down from the top edge, {below}"),
        Figure("eyelet_inside", "eyelet, inside", eyelets.inside, "as given"),
    )


def figures(spec: Spec, eyelets: EyeletPlan) -> tuple[Figure, ...]:
    """Ring and hole, places, and the folds they make."""
    tape, given = spec.tape, eyelets.given
    inset, pitch = row_figures_working(
        spec, eyelets, given, pitch_limit(spec, given, EYELET_PITCH), ", an even number,"
    )
    outside = "as given" if given.eyelet_outside is not None else "chosen: a half wider than its inside"
    hole = "as given" if given.hole is not None else f"inside + {say(tape, HOLE_OVER_INSIDE)}: hold it against the ring"
    share = run(spec) / made_count(spec)
    return (
        Figure("edge_inset", "edge inset", eyelets.edge_inset, inset),
        Figure("eyelet_pitch", "eyelet spacing", eyelets.pitch, pitch),
        Figure("eyelet_outside", "eyelet, outside", eyelets.outside, outside),
        Figure("eyelet_hole", "hole to cut", eyelets.hole, hole),
        Figure(
            "eyelet_on_rod",
            "spacing on the rod",
            eyelets.on_the_rod,
            f"when drawn closed: the panel's share of the rod {say(tape, share)} ÷ {eyelets.count}",
        ),
        Figure(
            "fold_depth",
            "fold, round back",
            eyelets.fold_rounded,
            f"from the rod's centre line, front and back: {say(tape, eyelets.pitch)} of cloth between two eyelets "
            f"{say(tape, eyelets.on_the_rod)} apart",
        ),
        Figure("fold_sharp", "fold, at the deepest", eyelets.fold_sharp, "the same with two straight sides"),
    )


def notices(spec: Spec, eyelets: EyeletPlan) -> tuple[Notice, ...]:
    """Rings against the rod and the top edge, an odd number, folds against the wall."""
    return (
        *_ring_notices(spec, eyelets),
        *row_notices(spec, eyelets, pitch_limit(spec, eyelets.given, EYELET_PITCH)),
        *_count_notices(spec, eyelets),
        *_fold_notices(spec, eyelets),
    )


def _ring_notices(spec: Spec, eyelets: EyeletPlan) -> list[Notice]:
    tape, rod, inside = spec.tape, spec.rod.diameter, eyelets.inside
    least, most = (rod * (1 + play) for play in EYELET_PLAY)
    usual = f"makers ask for 14 to 40 % more than the rod, {near(tape, least)} to {near(tape, most)}"
    found = []
    if inside <= rod:
        text = f"The eyelets, {near(tape, inside)} inside, do not go over a rod {near(tape, rod)} thick: {usual}."
        found.append(Notice("eyelet_too_small", "stop", text))
    elif inside < least:
        text = f"The eyelets, {near(tape, inside)} inside, run tight on a rod {near(tape, rod)} thick: {usual}."
        found.append(Notice("eyelet_tight", "note", text))
    elif inside > most:
        text = (
            f"The eyelets, {near(tape, inside)} inside, are wide for a rod {near(tape, rod)} thick, and the folds "
            f"stand less evenly: {usual}. The choice is yours."
        )
        found.append(Notice("eyelet_loose", "note", text))
    if eyelets.hole >= eyelets.outside or eyelets.outside <= inside:
        text = (
            f"An eyelet {near(tape, eyelets.outside)} outside does not hold in a hole {near(tape, eyelets.hole)} wide, "
            f"with {near(tape, inside)} inside: measure ring and hole again."
        )
        found.append(Notice("hole_too_wide", "stop", text))
    if eyelets.centre_below < eyelets.outside / 2:
        text = (
            f"The eyelets would stand {near(tape, eyelets.outside / 2 - eyelets.centre_below)} over the top edge: set "
            f"their centres at least {at_least(tape, eyelets.outside / 2)} below it."
        )
        found.append(Notice("eyelet_over_top", "stop", text))
    return found


def _count_notices(spec: Spec, eyelets: EyeletPlan) -> list[Notice]:
    tape = spec.tape
    found = []
    if eyelets.count % 2:
        text = (
            f"{eyelets.count} eyelets is an odd number: one side edge turns to the room, the other to the wall. "
            f"{eyelets.count - 1} or {eyelets.count + 1} turn both to the wall."
        )
        found.append(Notice("odd_eyelets", "warning", text))
    if eyelets.pitch < EYELET_CLOSEST:
        text = (
            f"The eyelets stand {near(tape, eyelets.pitch)} apart; 6 to 8 in is usual (common practice), and closer "
            "ones make many shallow folds. The choice is yours."
        )
        found.append(Notice("eyelets_close", "note", text))
    return found


def _fold_notices(spec: Spec, eyelets: EyeletPlan) -> list[Notice]:
    tape, projection = spec.tape, spec.rod.projection
    if projection is None or eyelets.fold_rounded <= projection:
        return []
    text = (
        f"The folds reach {near(tape, eyelets.fold_rounded)} back from the rod's centre line, and the wall is "
        f"{near(tape, projection)} away: they press against it. Brackets that project further, eyelets closer together "
        f"or fewer panels make them shallower."
    )
    return [Notice("folds_touch_wall", "warning", text)]


EYELETS = HeadingKind(
    name="eyelets",
    title="The eyelets",
    marks_said="Eyelet centres",
    edge="heading",
    hang=hang,
    explain=explain,
    doubled=doubled,
    lay_out=lay_out,
    hang_figures=hang_figures,
    figures=figures,
    notices=notices,
)
