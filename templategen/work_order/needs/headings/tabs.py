"""What tabs over the rod need."""

from __future__ import annotations

from collections.abc import Iterator

from ....planning import Plan
from ....planning.headings.tabs import TabPlan
from ..amounts import Seam
from .cut_pieces import TURNER, other_cloth, pieces_of, tubes, unpicked
from .face import HeadingNeeds


def seams(plan: Plan, tabs: TabPlan) -> Iterator[Seam]:
    """The tubes; two rows right across each tab."""
    yield from tubes(plan, tabs.width)
    yield Seam("tabs, sewn on", tabs.width, 2 * pieces_of(plan).needed)


TABS = HeadingNeeds(
    name="tabs",
    seams=seams,
    things=lambda plan, tabs: other_cloth(plan),
    tools=lambda plan, tabs: (TURNER,),
    unpicks=lambda plan, tabs: unpicked(plan),
)
