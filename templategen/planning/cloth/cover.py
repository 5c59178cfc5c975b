"""How many panels it takes to hang as full as is wanted, and whether the open panels clear the glass."""

from __future__ import annotations

from dataclasses import dataclass
from fractions import Fraction

from ...lengths import NOTHING, Length
from ...lengths.counting import plural
from ...spec import Spec
from ..choices import FULLNESSES, STACK_SHARE, USUAL_FULLNESS
from ..figures import Amount, Figure, Notice
from ..fullness import fullness, panels_for, run
from ..headings import HEADINGS
from ..plan import HeadingPlan
from ..wording import at_least, decimal, near, say
from .load import most_on_one_side, opens_one_way

_ON_THE_ROD = frozenset({"loop", "tab"})
"""Things that lie along the rod by their whole width, and cannot be pushed closer than that."""


def takes_up(spec: Spec) -> str:
    """How the new heading takes its cloth up: "flat", "gathered" or "pleated"."""
    return HEADINGS[spec.heading.style].takes_up


@dataclass(frozen=True, slots=True)
class StackPlan:
    """The panels drawn open."""

    stack: Length
    """How wide they stand at one end."""
    by_share: Length
    """By the rule of thumb."""
    by_things: Length
    """What the loops or tabs there take up on the rod; nothing where they take up none."""
    beside: Length
    """How much of the rod there is beside the glass at one end; negative where the glass reaches further."""
    ends: int
    """At how many ends they stand."""


def plan_stack(spec: Spec, heading: HeadingPlan) -> StackPlan | None:
    """How wide the open panels stand; None where the glass is not known.

    A third of what is covered, shared by the ends; but loops and tabs lie on the rod side by side.
    """
    if spec.rod.glass is None:
        return None
    ends = 1 if opens_one_way(spec) else 2
    by_share = run(spec) * STACK_SHARE / ends
    by_things = NOTHING
    if heading.thing in _ON_THE_ROD:
        by_things = heading.thing_width * heading.count * most_on_one_side(spec)
    beside = (spec.rod.length - spec.rod.glass) / 2
    return StackPlan(max(by_share, by_things), by_share, by_things, beside, ends)


def cover_figures(spec: Spec, heading: HeadingPlan, plan: StackPlan | None) -> tuple[Figure, ...]:
    """The stack, and the rod beside the glass."""
    if plan is None:
        return ()
    tape = spec.tape
    share = f"a third of {say(tape, run(spec))}{', at two ends' if plan.ends == 2 else ''} (common practice)"
    if plan.by_things > plan.by_share:
        things = heading.count * most_on_one_side(spec)
        how = (
            f"{things} {heading.thing}s × {say(tape, heading.thing_width)}, side by side on the rod; {share} would be "
            f"{near(tape, plan.by_share)}"
        )
    else:
        how = share
    where = "at each end" if plan.ends == 2 else "at one end"
    return (
        Figure("stack_back", "stack of open panels", plan.stack, f"{where}: {how}"),
        Figure("rod_beside_glass", "rod beside the glass", plan.beside,
               f"at each end: half of rod {say(tape, spec.rod.length)} − glass {say(tape, spec.rod.glass or NOTHING)}"),
    )  # fmt: skip


def cover_amounts(spec: Spec) -> tuple[Amount, ...]:
    """Panels for each fullness, where one is wanted."""
    wanted = spec.rod.fullness
    if wanted is None or run(spec).mm <= 0:
        return ()
    how = takes_up(spec)
    least, most = USUAL_FULLNESS[how]
    usual = f"usual for a {how} heading"
    found = []
    named = {decimal(float(times)): times for times in (*FULLNESSES, wanted.value)}  # 2.001 stands in the place of 2
    for name, times in sorted(named.items(), key=lambda each: each[1]):
        panels = panels_for(spec, times)
        said = [f"{decimal(float(times))} × {say(spec.tape, run(spec))}"]
        said += ["wanted"] if times == wanted.value else []
        said += [usual] if least <= times <= most else []
        said += [f"{decimal(float(100 * times))} % (UFGS-12491N)"] if times in (2, Fraction(5, 2), 3) else []
        found.append(
            Amount(f"panels_for_{name.replace('.', '_')}", f"for {name} times", Fraction(panels), "panels",
                   plural(panels, "panel"), ", ".join(said))
        )  # fmt: skip
    return tuple(found)


def cover_notices(spec: Spec, plan: StackPlan | None) -> list[Notice]:
    """Less full than is wanted; an open stack that stands before the glass."""
    tape, found = spec.tape, []
    wanted = spec.rod.fullness
    if wanted is not None and run(spec).mm > 0 and fullness(spec) < wanted.value:
        needed = panels_for(spec, wanted.value)
        text = (
            f"The panels are {decimal(float(100 * fullness(spec) // 1) / 100)} times as wide as what they cover, and "
            f"{decimal(float(wanted.value))} times is wanted: it takes {plural(needed, 'panel')} like these."
        )
        found.append(Notice("less_full_than_wanted", "warning", text))
    if plan is not None and plan.stack > plan.beside:
        where = "at each end " if plan.ends == 2 else ""
        rod = (spec.rod.glass or NOTHING) + 2 * plan.stack
        text = (
            f"Drawn open, the panels stand {near(tape, plan.stack)} wide {where}and cover "
            f"{near(tape, plan.stack - max(plan.beside, NOTHING))} of the glass{' there' if where else ''}. To clear "
            f"it, the rod would have to be {at_least(tape, rod)} long."
        )
        found.append(Notice("stack_covers_glass", "note", text))
    return found
