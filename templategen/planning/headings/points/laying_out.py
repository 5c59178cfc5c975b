"""The places of rings, clips and hooks, how a panel hangs by them, and how their numbers came about."""

from __future__ import annotations

from ....lengths import NOTHING, Length, Tape
from ....spec import Spec
from ....spec.headings import Hooks, Rings
from ... import spacing
from ...choices import (
    DOUBLED_BEYOND,
    HOOK_BELOW_RINGS,
    LEAST_DOUBLED,
    NARROW_SHARE,
    POINT_INSET,
    RING_PITCH_LIMITS,
    STANDS_UP,
)
from ...figures import Figure
from ...widths import made_width
from ...wording import near, say, term
from .. import along
from ..face import Hang, HangTerm
from .plan import PointPlan


def thing(heading: Rings | Hooks) -> str:
    """What stands at each mark."""
    if isinstance(heading, Hooks):
        return "hook"
    return "ring" if heading.held_by == "sewn rings" else "clip"


def round_rod(heading: Rings | Hooks) -> bool:
    """Whether it hangs by rings that go round the rod."""
    return isinstance(heading, Rings) or heading.hooks_on == "rings"


def set_below(spec: Spec, heading: Rings | Hooks) -> Length:
    """The panel's top edge down to where it is held.

    Rings and clips hold the very edge. Hooks on rings are set so that the edge just touches the ring; hooks
    on gliders so that the edge hides the track, as far as the cloth stands up above a hook.
    """
    if heading.set_below is not None:
        return heading.set_below
    if isinstance(heading, Rings):
        return NOTHING
    return HOOK_BELOW_RINGS if round_rod(heading) else min(heading.drop, STANDS_UP[spec.cloth])


def pitch_limit(spec: Spec, heading: Rings | Hooks) -> Length:
    """How far apart they may stand: given, or by the weight of the cloth."""
    return RING_PITCH_LIMITS[spec.cloth] if heading.max_pitch is None else heading.max_pitch


def hang(spec: Spec, heading: Rings | Hooks) -> Hang:
    """Held p below the rod's top and h below the panel's top edge. Offset: + p - h."""
    terms = (
        HangTerm(f"drop of the {'rings' if round_rod(heading) else 'gliders'}", -heading.drop),
        *([HangTerm("held below the top edge", below)] if (below := set_below(spec, heading)) else []),
    )
    return Hang(heading.style, terms)


def explain(tape: Tape, hang: Hang) -> str:
    """How a panel hangs by them, as a clause."""
    side = "above" if hang.offset < NOTHING else "below"
    return f"by its {hang.heading}, its top edge lies {near(tape, abs(hang.offset))} {side} the rod's top"


def doubled(spec: Spec, heading: Rings | Hooks) -> Length:
    """They are held by doubled cloth, with some of it below them."""
    return max(LEAST_DOUBLED, set_below(spec, heading) + DOUBLED_BEYOND)


def lay_out(spec: Spec, heading: Rings | Hooks) -> PointPlan:
    """The points of one panel."""
    inset = heading.edge_inset
    inset = min(POINT_INSET, made_width(spec) * NARROW_SHARE) if inset is None else inset
    count = along.count_along(spec, heading, inset, NOTHING, pitch_limit(spec, heading))
    return PointPlan(
        style=heading.style,
        thing=thing(heading),
        marks=along.marks_along(spec, inset, count),
        thing_width=NOTHING,
        edge_inset=inset,
        pitch=spacing.pitch(made_width(spec), inset, count),
        given=heading,
        drop=heading.drop,
        set_below=set_below(spec, heading),
        round_rod=round_rod(heading),
    )


def hang_figures(spec: Spec, points: PointPlan) -> tuple[Figure, ...]:
    """Drop, height, and where the top edge comes."""
    tape = spec.tape
    edge = f"below the rod's top: drop {say(tape, points.drop)}"
    edge += f" {term(tape, -1, f'{points.thing}s below the edge', points.set_below)}" if points.set_below else ""
    return (
        Figure("carrier_drop", "drop", points.drop, "as given: top of the rod down to what is held"),
        Figure("held_below_edge", f"{points.thing}s below the edge", points.set_below, _height(spec, points)),
        Figure("edge_below_rod", "top edge", points.edge_below, edge),
    )


def _height(spec: Spec, points: PointPlan) -> str:
    if points.given.set_below is not None:
        return "as given"
    if isinstance(points.given, Rings):
        return "they hold the very edge"
    if points.round_rod:
        return "chosen: the edge then just touches the rings; 1/4 to 1/2 in is usual"
    if points.set_below == points.drop:
        return "chosen: as much as the drop, so that the edge stands level with the top of the track"
    return f"chosen: as far as {spec.cloth} cloth stands up above a hook (A Manual of Home-Making)"


def figures(spec: Spec, points: PointPlan) -> tuple[Figure, ...]:
    """Where they stand."""
    limit, heading = pitch_limit(spec, points.given), points.given
    inset = "as given"
    if heading.edge_inset is None:
        inset = "chosen: in the side hem, whose cloth is thick"
        if points.edge_inset < POINT_INSET:
            inset = f"chosen: a sixth of the panel's width {say(spec.tape, made_width(spec))}, as it is narrow"
    working = along.pitch_working(spec, points, heading, limit)
    return (
        Figure("edge_inset", "edge inset", points.edge_inset, inset),
        Figure(f"{points.thing}_pitch", f"{points.thing} spacing", points.pitch, working),
    )
