"""Rings, clips and hooks: the panel is carried at points along its top."""

from __future__ import annotations

from dataclasses import dataclass

from ...lengths import NOTHING, Length, Tape
from ...spec import Spec
from ...spec.headings import Hooks, Rings
from ..choices import RING_PITCH, RING_PLAY
from ..figures import Figure, Notice
from ..plan import GaugeLine, HeadingPlan
from ..wording import at_least, near, say, term
from .face import Hang, HangTerm, HeadingKind, beside_the_top
from .rows import pitch_limit, row, row_figures_working, row_notices


@dataclass(frozen=True, slots=True, kw_only=True)
class CarriedPlan(HeadingPlan):
    """The points at which one panel is carried."""

    given: Rings | Hooks
    carrier_drop: Length
    """Top of the rod down to the point that holds the cloth."""
    below_edge: Length
    """Panel's top edge down to that point."""


def _below_edge(heading: Rings | Hooks) -> Length:
    return heading.held_below if isinstance(heading, Rings) else heading.hook_set


def hang(spec: Spec, heading: Rings | Hooks) -> Hang:
    """The point hangs the carrier's drop below the rod's top, the top edge above it. Offset: +drop - set below."""
    label = "held below the top edge" if isinstance(heading, Rings) else "hooks below the top edge"
    terms = HangTerm(label, _below_edge(heading)), HangTerm("carrier's drop", -heading.carrier_drop)
    return Hang(heading.style, terms)


def explain(tape: Tape, hang: Hang) -> str:
    """How a panel hangs by them, as a clause."""
    return f"by its {hang.heading}, its top edge lies {beside_the_top(tape, hang)}"


def doubled(spec: Spec, heading: Rings | Hooks) -> Length:
    """A hook or a stitch needs two layers to hold in, as far down as it reaches."""
    return _below_edge(heading)


def lay_out(spec: Spec, heading: Rings | Hooks) -> CarriedPlan:
    """The points of one panel."""
    found = row(spec, heading, NOTHING, pitch_limit(spec, heading, RING_PITCH), "any")
    below, thing = _below_edge(heading), heading.style.removesuffix("s")
    lines = (GaugeLine(f"{thing} here", below, "mark"),) if below else ()
    return CarriedPlan(
        style=heading.style,
        thing=thing,
        given=heading,
        marks=found.marks,
        thing_width=NOTHING,
        edge_inset=found.inset,
        pitch=found.pitch,
        carrier_drop=heading.carrier_drop,
        below_edge=below,
        lines=lines,
    )


def hang_figures(spec: Spec, carried: CarriedPlan) -> tuple[Figure, ...]:
    """Drop and depth, and where the top edge comes."""
    tape = spec.tape
    edge = carried.carrier_drop - carried.below_edge
    return (
        Figure("carrier_drop", "carrier's drop", carried.carrier_drop, "as given: the rod's top down to what holds"),
        Figure("hook_set", f"{carried.thing} below edge", carried.below_edge, "as given: down from the top edge"),
        Figure(
            "top_edge_hangs",
            "top edge hangs",
            edge,
            f"below the rod's top: {say(tape, carried.carrier_drop)} "
            f"{term(tape, -1, 'below the edge', carried.below_edge)}",
        ),
    )


def figures(spec: Spec, carried: CarriedPlan) -> tuple[Figure, ...]:
    """Where they are set along the edge."""
    limit = pitch_limit(spec, carried.given, RING_PITCH)
    inset, pitch = row_figures_working(spec, carried, carried.given, limit, "")
    return (
        Figure("edge_inset", "edge inset", carried.edge_inset, inset),
        Figure(f"{carried.thing}_pitch", f"{carried.thing} spacing", carried.pitch, pitch),
    )


def notices(spec: Spec, carried: CarriedPlan) -> tuple[Notice, ...]:
    """Rings that do not go over the rod, points too far apart, a top that stands over the rod or flops."""
    tape = spec.tape
    found = [*_ring_notices(spec, carried), *row_notices(spec, carried, pitch_limit(spec, carried.given, RING_PITCH))]
    there = spec.panel.header + spec.panel.casing
    if carried.below_edge > there:
        text = (
            f"The {carried.thing}s are set {near(tape, carried.below_edge)} below the top edge, and the cloth is "
            f"doubled for {near(tape, there)} only: the top is folded over anew for them, or else it flops forward."
        )
        found.append(Notice("top_flops", "note", text))
    if carried.below_edge > carried.carrier_drop:
        text = (
            f"The panel's top edge stands {near(tape, carried.below_edge - carried.carrier_drop)} above the rod's top, "
            "in front of it: see that it clears the bracket and the wall or ceiling above."
        )
        found.append(Notice("stands_above_rod", "note", text))
    return tuple(found)


def _ring_notices(spec: Spec, carried: CarriedPlan) -> list[Notice]:
    if not isinstance(carried.given, Rings) or carried.given.ring_inside is None:
        return []
    tape, rod, inside = spec.tape, spec.rod.diameter, carried.given.ring_inside
    if inside <= rod:
        text = (
            f"The rings, {near(tape, inside)} inside, do not go over a rod {near(tape, rod)} thick. Take rings at "
            f"least {at_least(tape, rod * (1 + RING_PLAY))} inside."
        )
        return [Notice("ring_too_small", "stop", text)]
    if inside < rod * (1 + RING_PLAY):
        text = (
            f"The rings, {near(tape, inside)} inside, run tight on a rod {near(tape, rod)} thick. From "
            f"{at_least(tape, rod * (1 + RING_PLAY))} inside they run freely."
        )
        return [Notice("ring_tight", "note", text)]
    return []


def _kind(name: str, title: str, marks_said: str) -> HeadingKind[Rings | Hooks, CarriedPlan]:
    return HeadingKind(
        name=name,
        title=title,
        marks_said=marks_said,
        edge="heading",
        hang=hang,
        explain=explain,
        doubled=doubled,
        lay_out=lay_out,
        hang_figures=hang_figures,
        figures=figures,
        notices=notices,
    )


RINGS = _kind("rings", "The rings or clips", "Rings or clips")
HOOKS = _kind("hooks", "The hooks", "Hooks")
