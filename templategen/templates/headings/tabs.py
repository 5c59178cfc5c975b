"""What is said of tabs over the rod."""

from __future__ import annotations

from collections.abc import Iterator

from ...planning import Plan
from ...planning.headings.tabs import TabPlan
from ..choices import Choices
from ..said import Step, plain
from .face import HeadingWords
from .marking import marking
from .sewn_strips import sewn_strips, tube


def made(plan: Plan, tabs: TabPlan) -> str:
    """How many there are."""
    return f"with {tabs.count} tabs along its top"


def strip(plan: Plan, tabs: TabPlan) -> tuple[str, ...]:
    """Edges, and how deep the ends are sewn."""
    return (
        "Short lines: a tab's edges.",
        f"Each tab's two ends go {plain(plan, tabs.end_allowance)} down from the panel's top edge.",
    )


def steps(plan: Plan, tabs: TabPlan, choices: Choices) -> Iterator[Step]:
    """Tube, one tab tried, tabs, marks, seams."""
    ends = plain(plan, tabs.end_allowance)
    yield f"{sewn_strips(plan, tabs.width)}, its seam along the middle.", False
    yield (
        f"Lay {tube(plan)} on the tab card and cut one tab {plain(plan, tabs.length)} long. Fold it in half across, "
        f"seam inside, and pin its ends together {ends} from the raw edges. Hang it on the rod: from the rod's "
        f"underside down to the pin it must be {plain(plan, tabs.gap)}; if thick cloth takes up some of that, cut each "
        f"tab twice as much longer. Cut the others, {plan.counts['tabs_needed']} in all. Neaten the ends with a close "
        "zigzag.",
        False,
    )
    yield marking(plan, choices, "the back of the panel"), True
    yield (
        f"Lay both ends of each tab on the back of the panel's doubled top, one on the other, {ends} below the top "
        "edge, the tab's fold upwards. Sew them down with two rows right across the tab: one close to the top edge, "
        "one close to the raw ends; backstitch both.",
        True,
    )


TABS = HeadingWords(name="tabs", made=made, hung="its tabs", steps=steps, strip=strip)
