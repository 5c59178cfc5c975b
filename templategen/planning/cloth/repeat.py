"""Cloth with a repeat: where the pattern falls above the hem, and what brings it to one height on all panels.

The hem's height is given by the line that the panel hangs to, so the pattern
can only be moved by moving the top: with a more cut off it, the panel's marks
hang a higher, and its finish and cut lines lie a lower on the cloth.
"""

from __future__ import annotations

from dataclasses import dataclass

from ...lengths import NOTHING, Length
from ...lengths.counting import plural
from ...spec import Spec
from ..doubled import taken
from ..drop import spare_below
from ..figures import Figure, Notice
from ..plan import DropPlan, TopPlan
from ..widths import made_count
from ..wording import at_least, near, say


@dataclass(frozen=True, slots=True)
class RepeatPlan:
    """Where the pattern falls."""

    repeat: Length
    above: tuple[Length, ...]
    """For each panel, from the finished edge up to the first place in the pattern, as the panel would hang now."""
    wanted: Length
    """The same as it is wanted on all panels."""
    raised: tuple[Length, ...]
    """How much higher each panel's marks have to hang, less than one repeat."""


def remainder(length: Length, repeat: Length) -> Length:
    """What is left of a length after whole repeats: never negative, less than one repeat."""
    return Length(length.mm % repeat.mm)


def raised_to(above: tuple[Length, ...], wanted: Length, repeat: Length) -> tuple[Length, ...]:
    """How much higher each pattern has to hang to fall as ``wanted``."""
    return tuple(remainder(wanted - each, repeat) for each in above)


def plan_repeat(spec: Spec, drop: DropPlan, top: TopPlan) -> RepeatPlan | None:
    """Where the pattern falls now, and what it takes to bring it to the height that is wanted.

    Where no height is chosen, it is the one among the panels' own that takes the least off the tops.
    """
    repeat, places = spec.fabric.repeat, spec.fabric.repeat_at
    if repeat is None or not places:
        return None
    finish = drop.marks[0].finish + drop.tuck
    above = tuple(remainder(place - finish, repeat) for place in places)
    chosen = spec.fabric.repeat_above_hem
    if chosen is not None:
        wanted = remainder(chosen, repeat)
    else:
        wanted = min(above, key=lambda each: _cost(spec, top, raised_to(above, each, repeat), repeat))
    return RepeatPlan(repeat, above, wanted, raised_to(above, wanted, repeat))


def _cost(spec: Spec, top: TopPlan, raised: tuple[Length, ...], repeat: Length) -> tuple[Length, Length]:
    """The most that comes off any top, then all that does."""
    lowered = [_lowered(spec, top, each, repeat) if each else top.lowered for each in raised]
    return max(lowered), sum(lowered, NOTHING)


def top_cut_for(spec: Spec, top: TopPlan, raised: Length, repeat: Length) -> Length:
    """The least ``heading.top_cut`` with which the new top edge lies ``raised`` lower than now, give or take repeats.

    What is cut off leaves a raw edge, so a heading that needs doubled cloth takes that and its turn as well.
    """
    return remainder(top.lowered + raised - taken(spec.heading, top.needed), repeat) or repeat


def repeat_figures(spec: Spec, plan: RepeatPlan | None) -> tuple[Figure, ...]:
    """Where it falls on the first panel, and where it is to fall."""
    if plan is None:
        return ()
    tape, place = spec.tape, spec.fabric.repeat_at[0]
    now = (
        f"{say(tape, place)} from the old bottom edge − finish line, and whole repeats of {say(tape, plan.repeat)}"
    )
    first = "" if len(plan.above) == 1 else ", panel 1"
    given = spec.fabric.repeat_above_hem is not None
    how = "as given" if given else "alike on all panels, with the least cut off their tops"
    return (
        Figure("repeat_falls", f"pattern falls{first}", plan.above[0], f"above the finished edge: {now}"),
        Figure("repeat_wanted", "pattern is to fall", plan.wanted, f"above the finished edge, {how}"),
    )


def repeat_notices(spec: Spec, drop: DropPlan, top: TopPlan, plan: RepeatPlan | None) -> list[Notice]:
    """Panels whose pattern falls elsewhere than wanted, and what to cut off the top of each; or too short for it."""
    if plan is None or not any(plan.raised):
        return []
    tape = spec.tape
    alike = len(plan.raised) == 1
    moves = []
    for raised in dict.fromkeys(each for each in plan.raised if each):
        numbers = [str(at) for at, each in enumerate(plan.raised, 1) if each == raised]
        who = "the panels" if alike else f"panel{'s' if len(numbers) > 1 else ''} {' and '.join(numbers)}"
        cut = top_cut_for(spec, top, raised, plan.repeat)
        lower = near(tape, _lowered(spec, top, raised, plan.repeat))
        how = f"heading.top_cut {near(tape, cut)}: its top edge {lower} below the old"
        moves.append(f"on {who} {near(tape, raised)} higher ({how})")
    where = f"{near(tape, plan.wanted)} above the finished edge"
    if alike:
        text = f"The pattern falls {near(tape, plan.above[0])} above the finished edge, and not {where}. "
    else:
        text = f"The pattern does not fall alike on the {plural(made_count(spec), 'panel')}. "
    text += f"To bring it to {where}, it has to hang {'; '.join(moves)}. The finish line and the cut line lie as much "
    text += "lower. Panels that are cut otherwise need a kit of their own."
    found = [Notice("repeat_moves", "warning", text)]
    spare = spare_below(spec, drop)
    lowest = max(_lowered(spec, top, each, plan.repeat) - top.lowered for each in plan.raised if each)
    if spare >= NOTHING and lowest > spare:
        short = at_least(tape, lowest - spare)
        text = (
            f"There is not the cloth to bring the pattern there: at the bottom {near(tape, spare)} can come off, and "
            f"it takes {near(tape, lowest)}. The panels would have to be {short} longer."
        )
        found.append(Notice("repeat_too_short", "warning", text))
    return found


def _lowered(spec: Spec, top: TopPlan, raised: Length, repeat: Length) -> Length:
    """The new top edge below the old one, with the top cut for it."""
    return top_cut_for(spec, top, raised, repeat) + taken(spec.heading, top.needed)


