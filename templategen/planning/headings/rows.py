"""Things in a row along the heading: how many, how far apart, and what can be wrong with that."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from typing import Literal, Protocol

from ...lengths import NOTHING, Length
from ...lengths.counting import plural
from ...spec import Spec
from .. import spacing
from ..choices import INSET_STEP, LEAST_IN_A_ROW, MOST_LOOPS, NARROW_SHARE, POINT_INSET
from ..figures import Notice
from ..plan import HeadingMark, HeadingPlan
from ..widths import made_width
from ..wording import at_least, near, say, stepping

Parity = Literal["odd", "even", "any"]


class InARow(Protocol):
    """What a spec says of a row."""

    @property
    def count(self) -> int | None: ...
    @property
    def edge_inset(self) -> Length | None: ...
    @property
    def max_pitch(self) -> Length | None: ...


@dataclass(frozen=True, slots=True)
class Row:
    """Where the things stand."""

    inset: Length
    pitch: Length
    marks: tuple[HeadingMark, ...]


def pitch_limit(spec: Spec, given: InARow, limits: Mapping[str, Length]) -> Length:
    """How far apart they may stand: given, or by the weight of the cloth."""
    return limits[spec.cloth] if given.max_pitch is None else given.max_pitch


def row(spec: Spec, given: InARow, width: Length, limit: Length, parity: Parity) -> Row:
    """Things ``width`` wide, as given or chosen: the fewest of the right ``parity`` no more than ``limit`` apart."""
    inset = given.edge_inset if given.edge_inset is not None else chosen_inset(spec, width)
    count = given.count if given.count is not None else _chosen_count(spec, inset, width, limit, parity)
    places = spacing.positions(made_width(spec), inset, count)
    return Row(
        inset=inset,
        pitch=spacing.pitch(made_width(spec), inset, count),
        marks=tuple(HeadingMark(str(number), at) for number, at in enumerate(places, start=1)),
    )


def chosen_inset(spec: Spec, width: Length) -> Length:
    """Half the thing's width and a little, rounded up to an eighth of an inch; less on a very narrow panel."""
    wanted = width / 2 + POINT_INSET
    return min(INSET_STEP * -(-wanted.mm // INSET_STEP.mm), made_width(spec) * NARROW_SHARE)


def _chosen_count(spec: Spec, inset: Length, width: Length, limit: Length, parity: Parity) -> int:
    span = made_width(spec) - 2 * inset
    count = max(LEAST_IN_A_ROW, int(-(-span.mm // limit.mm)) + 1)
    most = min(MOST_LOOPS, int(-(-span.mm // width.mm)) if width else MOST_LOOPS)
    count = max(2, min(count, most))
    if parity != "any" and count % 2 == (parity == "even"):
        count += 1 if count < most or count == 2 else -1
    return count


def row_figures_working(
    spec: Spec, plan: HeadingPlan, given: InARow, limit: Length, why_so_many: str
) -> tuple[str, str]:
    """How the inset and the pitch of a row came about."""
    tape = spec.tape
    inset = "as given"
    if given.edge_inset is None:
        inset = f"chosen: half its width {say(tape, plan.thing_width / 2)} + {say(tape, POINT_INSET)}, rounded up"
        if not plan.thing_width:
            inset = f"chosen: {say(tape, POINT_INSET)}, so that the edge does not curl"
    pitch = (
        f"centre to centre: (panel width {say(tape, made_width(spec))} − 2 × edge inset "
        f"{say(tape, plan.edge_inset)}) ÷ {plural(plan.count - 1, 'space')}"
    )
    pitch += stepping(tape, spacing.stepped_off(tape, plan.pitch, plan.count))
    if given.count is None:
        chosen = plural(plan.count, plan.thing)
        whose = "the limit given" if given.max_pitch is not None else f"for {spec.cloth} cloth"
        pitch += f"; {chosen} chosen: the fewest{why_so_many} no more than {say(tape, limit)} apart, {whose}"
    return inset, pitch


def row_notices(spec: Spec, plan: HeadingPlan, limit: Length) -> tuple[Notice, ...]:
    """Things over the panel's edge, in each other's way, or so far apart that the top sags."""
    tape, thing, things = spec.tape, plan.thing, f"{plan.thing}s"
    found = []
    over = plan.thing_width / 2 - plan.edge_inset
    if over > NOTHING:
        text = (
            f"The end {things} would stand {near(tape, over)} over the panel's edge: {things} "
            f"{near(tape, plan.thing_width)} wide need an edge inset of at least "
            f"{at_least(tape, plan.thing_width / 2)}."
        )
        found.append(Notice(f"{thing}_over_edge", "stop", text))
    if plan.thing_width and plan.pitch < plan.thing_width:
        text = (
            f"The {things} run into each other: {plan.count} of them, {near(tape, plan.thing_width)} wide, would stand "
            f"{near(tape, plan.pitch)} apart, centre to centre. Take fewer, or narrower ones."
        )
        found.append(Notice(f"{things}_overlap", "stop", text))
    if plan.pitch > limit:
        enough = int(-(-(made_width(spec) - 2 * plan.edge_inset).mm // limit.mm)) + 1
        text = (
            f"The {things} stand {near(tape, plan.pitch)} apart, and beyond {near(tape, limit)} the top edge sags "
            f"between them. {plural(enough, thing)} would stand close enough."
        )
        found.append(Notice(f"{things}_sag", "warning", text))
    return tuple(found)
