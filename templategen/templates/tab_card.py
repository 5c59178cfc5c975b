"""Tab card: the sewn tube is laid on it and cut into tabs, and each tab is folded by it."""

from __future__ import annotations

from fractions import Fraction

from ..drawing import USUAL, Anchor, Drawing, Item, Line, LineType, Look, Text, width_of
from ..planning import Plan
from ..planning.headings.tabs import TabPlan
from .ladder import FAR_TICK, TICK, Lettering, across, ladder, length_of, rungs_of
from .said import plain


def draw(plan: Plan, look: Look = USUAL) -> list[Drawing]:
    """As many tabs as one sheet holds, and at least one; none for a heading without tabs."""
    tabs = plan.heading
    if not isinstance(tabs, TabPlan):
        return []
    rungs = rungs_of(tabs.length, plan.counts["tabs_needed"])
    once = float(length_of(rungs, tabs.length))
    return [
        ladder(
            "tab card",
            (
                "Lay the sewn and pressed tube between the long lines, its end at the left edge. Mark at the line that "
                "says cut, and cut straight across.",
                f"Fold at “fold”: both ends then lie {plain(plan, tabs.end_allowance)} below the panel's top edge.",
                "Short lines beside the fold: where the tab leaves the rod.",
            ),
            rungs=rungs,
            length=tabs.length,
            width=tabs.width,
            room_for_cut=tabs.end_allowance,
            rung=lambda start, index, top: _rung(plan, tabs, start, top, Lettering.of(look), 0 if index else once),
            look=look,
            inner=(
                ("top edge, one end", tabs.end_allowance),
                ("fold", tabs.length / 2),
                ("top edge, other end", tabs.length - tabs.end_allowance),
            ),
        )
    ]


def _rung(
    plan: Plan, tabs: TabPlan, start: Fraction, top: Fraction, lettering: Lettering, once: float
) -> list[Item]:
    """One tab: where the panel's top edge comes at either end, the fold over the rod, and how far it lies on that."""
    ends = start + tabs.end_allowance.mm, start + (tabs.length - tabs.end_allowance).mm
    fold = (ends[0] + ends[1]) / 2
    items = [*across(LineType.STITCH, ends[0], top), *across(LineType.FOLD, fold, top)]
    items += across(LineType.STITCH, ends[1], top)
    half = tabs.on_rod.mm / 2
    for way in (-1, 1):
        x = fold + way * half
        if x in ends:  # a tab without a gap lies on the rod from end to end
            continue
        items.append(Line(LineType.THIN, x, 0, x, TICK / 2))
        items.append(Line(LineType.THIN, x, top, x, top + FAR_TICK / 2))
    return [*items, *_labels(plan, tabs, start, lettering, once)]


def _labels(plan: Plan, tabs: TabPlan, start: Fraction, lettering: Lettering, once: float) -> list[Item]:
    """What the lines are, where a tab is long enough for it; else once, at the card's beginning.

    ``once`` is what room there is for that along the card, in mm; 0 but on the first tab.
    """
    size, row = lettering.size, lettering.rows[0]
    edge = f"top edge {plan.tape.read(tabs.end_allowance).number}"
    low, high = start + tabs.end_allowance.mm, start + (tabs.length - tabs.end_allowance).mm
    items: list[Item] = []
    if width_of(edge, size) + width_of("fold", size) / 2 + 3 < tabs.between.mm / 2:
        items += [
            Text(low, row, edge, size),
            Text(high, row, edge, size, Anchor.END),
            Text(start + tabs.length.mm / 2, row, "fold", size, Anchor.MIDDLE),
        ]
    elif once:
        items += lettering.once(once, edge, "fold in the middle")
    if width_of("on the rod", size) + 4 < tabs.on_rod.mm / 2:
        items.append(Text(start + tabs.length.mm / 2 - 2, lettering.between, "on the rod", size, Anchor.END))
    return items
