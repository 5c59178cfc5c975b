"""Tabs: an end sewn further in shortens the tab, one let out lengthens it."""

from __future__ import annotations

from ....lengths import NOTHING, Length
from ... import hanging
from ...choices import LEAST_TURN
from ...headings.tabs import TabPlan
from ...plan import HeadingMark, Plan
from ...wording import near
from ..adjustment import Move
from .face import HeadingGive


def _tabs(plan: Plan) -> TabPlan:
    assert isinstance(plan.heading, TabPlan), "these are the tabs' own"
    return plan.heading


def limits(plan: Plan) -> tuple[Length, Length]:
    """Until the gap is closed, and as far as the ends that are sewn in reach."""
    tabs, rod = _tabs(plan), plan.spec.rod.diameter
    spare = max(NOTHING, 2 * (tabs.end_allowance - LEAST_TURN))
    longest = hanging.gap_for(rod, tabs.between + spare)
    return tabs.gap, max(NOTHING, longest - tabs.gap)


def move(plan: Plan, mark: HeadingMark, wanted: Length) -> Move:
    """The tab made so much shorter or longer that the gap changes by what is wanted."""
    tabs, rod = _tabs(plan), plan.spec.rod.diameter
    up, down = limits(plan)
    by = max(-down, min(wanted, up))
    shorter = tabs.between - hanging.tab_length(rod, tabs.gap - by)
    unpicked = tabs.thing_width if by else NOTHING
    return Move(mark.label, mark.at, wanted, shorter, by, unpicked, unpicked)


def how(plan: Plan, moves: tuple[Move, ...]) -> tuple[str, ...]:
    """Resewn at the back."""
    return (
        "Unpick the tab at the back and sew it on again, as much of its length taken in (down) or let out (up) as the "
        "strip says, shared out to both its ends. A tab goes up and down again, so it changes by about twice what "
        f"the hem does. At least {near(plan.tape, LEAST_TURN)} of each end stays sewn in.",
    )


TABS = HeadingGive("tabs", "The tabs sewn on again", move, how, limits)
