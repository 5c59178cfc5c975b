"""What headings with things along the top edge have in common: how many, where, and what can be wrong with that.

A thing is a loop, a tab, a ring, a hook. Its plan's ``thing`` is its name,
``thing_width`` how wide it is along the edge, nothing where it is a point.
"""

from __future__ import annotations

from collections.abc import Sequence
from typing import Protocol

from ...lengths import NOTHING, Length
from ...lengths.counting import plural
from ...spec import Spec
from .. import spacing
from ..choices import CORNER_SHARE, FEWEST_LOOPS, MOST_LOOPS
from ..figures import Notice
from ..plan import HeadingMark, HeadingPlan
from ..widths import made_width
from ..wording import at_least, at_most, near, say, stepping


class Spaced(Protocol):
    """What a spec says of how things stand along the edge."""

    @property
    def count(self) -> int | None: ...
    @property
    def max_pitch(self) -> Length | None: ...


def most_apart(span: Length, width: Length) -> int:
    """The most things, an odd number, that stand over ``span`` without touching; three at the least."""
    if width.mm <= 0:
        return MOST_LOOPS
    most = int(-(-span.mm // width.mm))
    return max(FEWEST_LOOPS, most if most % 2 else most - 1)


def count_along(spec: Spec, heading: Spaced, inset: Length, width: Length, limit: Length) -> int:
    """Things on each panel: given, or the fewest that hold the edge up, odd so that one is on the centre."""
    if heading.count is not None:
        return heading.count
    most = most_apart(made_width(spec) - 2 * inset, width)
    return spacing.fewest(made_width(spec), inset, limit, FEWEST_LOOPS, min(most, MOST_LOOPS))


def marks_along(spec: Spec, inset: Length, count: int) -> tuple[HeadingMark, ...]:
    """Their centres, numbered from the left end, the back towards you."""
    places = spacing.positions(made_width(spec), inset, count)
    return tuple(HeadingMark(str(number), at) for number, at in enumerate(places, start=1))


def pitch_working(spec: Spec, plan: HeadingPlan, heading: Spaced, limit: Length) -> str:
    """How the spacing came about, and the number, where it was chosen."""
    tape = spec.tape
    why = "" if heading.count is not None else f"; {_count_working(spec, plan, heading, limit)}"
    return (
        f"centre to centre: (panel width {say(tape, made_width(spec))} − 2 × edge inset "
        f"{say(tape, plan.edge_inset)}) ÷ {plural(plan.count - 1, 'space')}"
        f"{stepping(tape, spacing.stepped_off(tape, plan.pitch, plan.count))}{why}"
    )


def _count_working(spec: Spec, plan: HeadingPlan, heading: Spaced, limit: Length) -> str:
    whose = "the limit given" if heading.max_pitch is not None else f"for {spec.cloth} cloth"
    if plan.pitch > limit:
        return f"{plural(plan.count, plan.thing)} chosen: as many as fit, an odd number"
    most = say(spec.tape, limit)
    return f"{plural(plan.count, plan.thing)} chosen: the fewest, odd, no more than {most} apart, {whose}"


def over_edge(spec: Spec, plan: HeadingPlan) -> list[Notice]:
    """Whether the end things lie on the panel."""
    tape, gap = spec.tape, plan.edge_inset - plan.thing_width / 2
    if gap >= NOTHING:
        return []
    thing, things = plan.thing, f"{plan.thing}s"
    text = (
        f"The end {things} would stand {near(tape, -gap)} over the panel's edge: {things} "
        f"{near(tape, plan.thing_width)} wide need an edge inset of at least "
        f"{at_least(tape, plan.thing_width / 2)}."
    )
    return [Notice(f"{thing}_over_edge", "stop", text)]


def corner_droops(spec: Spec, plan: HeadingPlan, limit: Length) -> list[Notice]:
    """Whether so much of the edge lies beyond the end things that the corner falls forward."""
    tape, beyond = spec.tape, plan.edge_inset - plan.thing_width / 2
    most = limit * CORNER_SHARE
    if beyond <= most:
        return []
    text = (
        f"The panel's corners droop: the edge runs {near(tape, beyond)} past the end {plan.thing}s, where nothing "
        f"holds it. An edge inset of at most {at_most(tape, most + plan.thing_width / 2)} holds the corners up."
    )
    return [Notice(f"{plan.thing}_corner_droops", "warning", text)]


def spacing_notices(spec: Spec, plan: HeadingPlan, heading: Spaced, limit: Length) -> list[Notice]:
    """Whether there are too many of them, or too few."""
    things = f"{plan.thing}s"
    found = [Notice(f"{things}_overlap", "stop", _overlap(spec, plan))] if plan.pitch <= plan.thing_width else []
    if plan.pitch > limit:
        found.append(Notice(f"{things}_sag", "warning", _sag(spec, plan, heading, limit)))
    return found


def even_notices(plan: HeadingPlan) -> list[Notice]:
    """Whether one of them sits on the centre: common practice, no source."""
    if plan.count % 2:
        return []
    things = f"{plan.thing}s"
    text = (
        f"{plan.count} {things} is an even number, so none sits on the centre. "
        f"{' or '.join(str(count) for count in _odd_beside(plan.count))} would put one there."
    )
    return [Notice(f"even_{things}", "note", text)]


def _odd_beside(count: int) -> Sequence[int]:
    """The odd numbers next to ``count`` that a panel can have."""
    return [odd for odd in (count - 1, count + 1) if FEWEST_LOOPS <= odd <= MOST_LOOPS]


def _overlap(spec: Spec, plan: HeadingPlan) -> str:
    tape, width = spec.tape, plan.thing_width
    span = made_width(spec) - 2 * plan.edge_inset
    fitting = most_apart(span, width)
    start = (
        f"The {plan.thing}s run into each other: {plan.count} of them, {near(tape, width)} wide, would stand "
        f"{near(tape, plan.pitch)} apart, centre to centre."
    )
    if span > (fitting - 1) * width:
        return f"{start} {fitting} fit."
    narrow = span / (FEWEST_LOOPS - 1)
    return f"{start} Make them narrower than {at_most(tape, narrow)}; then {FEWEST_LOOPS} fit."


def _sag(spec: Spec, plan: HeadingPlan, heading: Spaced, limit: Length) -> str:
    tape, things = spec.tape, f"{plan.thing}s"
    span = made_width(spec) - 2 * plan.edge_inset
    whose = "the limit given" if heading.max_pitch is not None else f"the limit for {spec.cloth} cloth"
    start = (
        f"The {things} stand {near(tape, plan.pitch)} apart, and beyond {near(tape, limit)}, {whose}, the top "
        f"edge sags between them."
    )
    curing = int(-(-span.mm // limit.mm)) + 1
    curing += 1 - curing % 2
    if curing > MOST_LOOPS:
        return f"{start} That takes more than {MOST_LOOPS} {things}: allow a wider limit."
    if span > (curing - 1) * plan.thing_width:
        closer = spacing.pitch(made_width(spec), plan.edge_inset, curing)
        return f"{start} {plural(curing, plan.thing)} would stand {near(tape, closer)} apart."
    narrow = span / (curing - 1)
    return f"{start} That takes {curing} {things}, narrower than {at_most(tape, narrow)}, or a wider limit."
