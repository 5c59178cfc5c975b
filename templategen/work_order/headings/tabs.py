"""What is said of tabs over the rod."""

from __future__ import annotations

from collections.abc import Iterator

from ...planning import Plan
from ...planning.headings.tabs import TabPlan
from ...templates import Choices
from ...templates.said import plain
from ..pictures import tabs as pictures
from ..pictures.strips import ladder
from ..step import Step
from .face import HeadingWork
from .marking import marking
from .sewn_strips import sewn_strips, tube
from .trying import trying


def made(plan: Plan, tabs: TabPlan) -> str:
    """How many there are."""
    return f"with {tabs.count} tabs along its top"


def steps(plan: Plan, tabs: TabPlan, choices: Choices) -> Iterator[Step]:
    """Tube, one tab tried, tabs, marks, a panel tried, seams."""
    ends = plain(plan, tabs.end_allowance)
    yield from sewn_strips(plan, tabs.width, ", its seam along the middle")
    yield Step(
        "One tab",
        f"Lay {tube(plan)} on the tab card and cut one tab {plain(plan, tabs.length)} long. Fold it in half across, "
        f"seam inside, and pin its ends together {ends} from the raw edges. Hang it on the rod: from the rod's "
        f"underside down to the pin it must be {plain(plan, tabs.gap)}; if thick cloth takes up some of that, cut each "
        "tab twice as much longer.",
        "once",
        pictures.tried(plan, tabs),
        ("tab card",),
    )
    yield Step(
        "Cut tabs",
        f"Cut the others as long, {plan.counts['tabs_needed']} in all. Neaten the ends with a close zigzag.",
        "once",
        ladder(plan, tabs.width, tabs.length, "tab", "tab card"),
        ("tab card",),
    )
    yield marking(plan, choices, "the back of the panel")
    yield trying(
        plan,
        f"tack both ends of every tab to the back, one on the other, {ends} below the top edge",
        pictures.hung(plan, tabs),
    )
    yield Step(
        "Sew",
        f"Lay both ends of each tab on the back of the panel's doubled top, one on the other, {ends} below the top "
        "edge, the tab's fold upwards. Sew them down with two rows right across the tab: one close to the top edge, "
        "one close to the raw ends; backstitch both.",
        view=pictures.sewn(plan, tabs),
    )


TABS = HeadingWork(name="tabs", made=made, hung="its tabs", steps=steps)
