"""Tab ladder: the tube for the tabs is laid on it and cut."""

from __future__ import annotations

from ..drawing import Drawing, LineType
from ..planning import Plan
from ..planning.headings.tabs import TabPlan
from .ladder import Ladder, draw_ladder


def draw(plan: Plan) -> list[Drawing]:
    """The ladder with each tab's ends and its fold, which comes over the rod; none for a heading without tabs."""
    tabs = plan.heading
    if not isinstance(tabs, TabPlan):
        return []
    end = plan.tape.read(tabs.end_allowance).number
    ladder = Ladder(
        name="tab ladder",
        length=tabs.length.mm,
        width=tabs.thing_width.mm,
        needed=plan.counts["tabs_needed"],
        near=tabs.end_allowance.mm,
        far=tabs.end_allowance.mm,
        far_kind=LineType.STITCH,
        near_label=f"end sewn in {end}",
        far_label=f"end sewn in {end}",
        middle="over the rod",
    )
    return [draw_ladder(ladder)]
