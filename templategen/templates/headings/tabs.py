"""What is written of tabs over the rod."""

from __future__ import annotations

from ...planning import Plan
from ...planning.headings.tabs import TabPlan
from ..said import plain
from .face import HeadingCaptions


def strip(plan: Plan, tabs: TabPlan) -> tuple[str, ...]:
    """Edges, and how deep the ends are sewn."""
    return (
        "Short lines: a tab's edges.",
        f"Each tab's two ends go {plain(plan, tabs.end_allowance)} down from the panel's top edge.",
    )


TABS = HeadingCaptions(name="tabs", strip=strip)
