"""What a casing stitched anew needs."""

from __future__ import annotations

from collections.abc import Iterator

from ....planning import Plan
from ....planning.headings.casing import CasingPlan
from ..amounts import Seam
from .face import HeadingNeeds


def seams(plan: Plan, casing: CasingPlan) -> Iterator[Seam]:
    """The rows that are not there yet, right across."""
    yield Seam("rows of the casing", plan.width, len(casing.new_rows) * plan.panels)


def unpicks(plan: Plan, casing: CasingPlan) -> bool:
    """Old rows inside the new casing."""
    return bool(casing.unpicked)


CASING = HeadingNeeds(name="casing", seams=seams, unpicks=unpicks)
