"""What is said of tabs over the rod."""

from __future__ import annotations

from collections.abc import Iterator

from ...planning import Plan
from ...planning.headings.tabs import TabPlan
from ..choices import Choices
from ..said import Step, plain
from .face import HeadingWords
from .marking import marking
from .strips import sew_strips


def made(plan: Plan, tabs: TabPlan) -> str:
    """How many there are."""
    return f"with {tabs.count} tabs along its top"


def strip(plan: Plan, tabs: TabPlan) -> tuple[str, ...]:
    """Edges, and how deep the ends go in."""
    return ("Short lines: a tab's edges.", f"Tab ends: {plain(plan, tabs.end_allowance)} below the panel's top edge.")


def steps(plan: Plan, tabs: TabPlan, choices: Choices) -> Iterator[Step]:
    """Tube, tabs, marks, seams."""
    yield f"{sew_strips(plan)} Press the tube {plain(plan, tabs.thing_width)} wide.", False
    yield (
        f"Lay the tube on the tab ladder and cut {plan.counts['tabs_needed']} tabs {plain(plan, tabs.length)} long. "
        "Neaten the ends with a close zigzag.",
        False,
    )
    yield marking(plan, choices, "the back of the panel's top"), True
    yield (
        f"Fold each tab in half, ends together, and pin it to the back at its mark, its ends "
        f"{plain(plan, tabs.end_allowance)} below the top edge, its fold standing above it. Sew all ends down, close "
        "below the top edge and again at the ends, so that no end can turn.",
        True,
    )


TABS = HeadingWords(name="tabs", made=made, hung="its tabs", steps=steps, strip=strip)
