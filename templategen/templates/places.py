"""Places on the panel, in words that leave no doubt about which side is meant."""

from __future__ import annotations

from ..lengths import Length
from ..planning import Plan
from ..planning.plan import DropMark

MOST_PLACES = 60
"""Places of marks written out in the work order; beyond that the strip and the plan have them."""


def place_of(plan: Plan, mark: DropMark) -> str:
    """Where across the width a floor mark is; its panel hangs, and is looked at from the front."""
    if not mark.at:
        return "at the left edge as seen from the front"
    if mark.at == plan.spec.panel.width:
        return "at the right edge as seen from the front"
    return f"{plan.tape.read(mark.at).plain} from the left edge as seen from the front"


def above_old_edge(plan: Plan, height: Length) -> str:
    """A height on the panel, measured from its old bottom edge: "9 in, a hair under, above the old bottom edge"."""
    side = "below" if height.mm < 0 else "above"
    shown = plan.tape.show(abs(height))
    return f"{shown}{',' if ',' in shown else ''} {side} the old bottom edge"
