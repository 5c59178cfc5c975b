"""What can be wrong with a gathering tape, and the number that puts it right."""

from __future__ import annotations

from fractions import Fraction

from ....lengths import NOTHING, Length
from ....lengths.counting import plural
from ....spec import Spec
from ...choices import LEAST_FULLNESS
from ...doubled import doubled_now, kept
from ...figures import Notice
from ...fullness import run, share
from ...heading_choices import (
    HOOKS_FARTHEST,
    MOST_GATHERED,
    NARROW_TAPE,
    NARROW_TAPE_FULLNESS,
    ROWS_APART,
    STANDS_UP,
    WIDE_TAPE_FULLNESS,
)
from ...widths import made_count, made_width
from ...wording import at_least, at_most, decimal, near
from .plan import TapePlan


def tape_notices(spec: Spec, tape: TapePlan) -> tuple[Notice, ...]:
    """Everything that looks wrong with the tape of one panel."""
    return (*_place_notices(spec, tape), *_gathering_notices(spec, tape), *_hook_notices(spec, tape))


def fullness_range(tape: TapePlan) -> tuple[Fraction, Fraction]:
    """Cloth to gathered width, the least and the most that sewing guides give for a tape of this width."""
    return NARROW_TAPE_FULLNESS if tape.width <= NARROW_TAPE else WIDE_TAPE_FULLNESS


def _place_notices(spec: Spec, tape: TapePlan) -> list[Notice]:
    """Whether the hooks hold in the tape, and it covers the edge of the fold and holds what stands above."""
    said, found, most = spec.tape, [], STANDS_UP[spec.cloth]
    depth = doubled_now(spec) if kept(spec, tape.given, tape.fold) else tape.fold
    if not tape.top <= tape.hook_set <= tape.lower:
        text = (
            f"The hooks would hold {near(said, tape.hook_set)} below the top edge, and the tape runs from "
            f"{near(said, tape.top)} to {near(said, tape.lower)} below it. Write heading.set_below between the two, or "
            "leave it out and write heading.pocket."
        )
        found.append(Notice("hooks_off_tape", "stop", text))
    if NOTHING < depth <= tape.top:
        wanted = at_least(said, tape.top + tape.width / 2)
        text = (
            f"The top is folded {near(said, depth)} deep, and the tape begins {near(said, tape.top)} below the top "
            f"edge: it does not cover the edge of the fold. Fold it at least {wanted} "
            "deep, or sew the tape on higher."
        )
        found.append(Notice("tape_misses_fold", "warning", text))
    if tape.top < ROWS_APART:
        text = (
            f"The tape's upper edge lies {near(said, tape.top)} below the panel's top edge, and shows from the front "
            f"where the cloth rolls. {at_least(said, ROWS_APART)} or more hides it."
        )
        found.append(Notice("tape_at_edge", "note", text))
    if tape.top > most:
        text = (
            f"The cloth stands {near(said, tape.top)} above the tape, and {spec.cloth} cloth flops over: "
            f"{at_most(said, most)} stands (A Manual of Home-Making). Sew the tape on higher, or stiffen the top."
        )
        found.append(Notice("frill_flops", "note", text))
    return found


def _gathering_notices(spec: Spec, tape: TapePlan) -> list[Notice]:
    """Whether the panel can be drawn up so, covers its share, and gathers as much as such a tape should."""
    said, width = spec.tape, made_width(spec)
    start = f"The panel is drawn up from {near(said, width)} to {near(said, tape.gathered)}"
    if tape.gathered > width:
        text = (
            f"A panel {near(said, width)} wide cannot be drawn up to {near(said, tape.gathered)}: that is wider than "
            f"it is flat. Write at most {at_most(said, width)} as heading.gathered_width, or leave it out."
        )
        return [Notice("gathered_too_wide", "stop", text)]
    found = []
    if tape.gathered < share(spec) and tape.given.gathered_width is not None:
        text = (
            f"Drawn up to {near(said, tape.gathered)} each, {plural(made_count(spec), 'panel')} cover "
            f"{near(said, made_count(spec) * tape.gathered)} of {near(said, run(spec))}. "
            f"{at_least(said, share(spec))} each would cover it."
        )
        found.append(Notice("gathered_short", "warning", text))
    least, most = fullness_range(tape)
    said_by_fullness = tape.given.gathered_width is None and tape.fullness < LEAST_FULLNESS
    if tape.fullness < least and not said_by_fullness:
        text = (
            f"{start}, {_down(tape.fullness)} to 1: thin for a tape {near(said, tape.width)} wide. Sewing guides have "
            f"{decimal(float(least))} to {decimal(float(most))} to 1; {decimal(float(least))} to 1 comes to "
            f"{at_most(said, width / least)}."
        )
        found.append(Notice("gathers_thin", "warning", text))
    if tape.fullness > MOST_GATHERED:
        text = (
            f"{start}, {_up(tape.fullness)} to 1, and hardly any tape gathers closer than "
            f"{decimal(float(MOST_GATHERED))} to 1, which is {at_least(said, width / MOST_GATHERED)}. Try it on a "
            "length of the tape, or use fewer panels."
        )
        found.append(Notice("gathers_crowded", "warning", text))
    return found


def _down(ratio: Fraction) -> str:
    return decimal((100 * ratio // 1) / 100)


def _up(ratio: Fraction) -> str:
    return decimal(-(-100 * ratio // 1) / 100)


def _hook_notices(spec: Spec, tape: TapePlan) -> list[Notice]:
    """Whether the hooks stand close enough together."""
    said = spec.tape
    limit = HOOKS_FARTHEST if tape.given.max_pitch is None else tape.given.max_pitch
    if tape.hook_pitch <= limit:
        return []
    enough = 1 + _whole_up(tape.gathered, limit)
    text = (
        f"{plural(tape.hooks, 'hook')} stand {near(said, tape.hook_pitch)} apart along the gathered heading, which "
        f"sags between them beyond {near(said, limit)}. {plural(enough, 'hook')} would do."
    )
    return [Notice("hooks_far", "warning", text)]


def _whole_up(length: Length, part: Length) -> int:
    return int(-(-length.mm // part.mm))
