"""What is written of a facing and of a border."""

from __future__ import annotations

from ...planning import Plan
from ...planning.hems.sewn_on import SewnOnPlan
from .face import HemCaptions


def facing_card(plan: Plan, hem: SewnOnPlan) -> tuple[str, ...]:
    """What each line measures."""
    return (
        "Base edge on the facing's upper raw edge: mark the cloth at its fold-to line, bring the edge to it, press.",
        "The other lines measure the facing's depth, its cut width and the seam.",
    )


def border_card(plan: Plan, hem: SewnOnPlan) -> tuple[str, ...]:
    """What each line measures."""
    if hem.own_hem is None:
        return ("The lines measure the border's depth, half its cut width, and the seam.",)
    return (
        "Base edge on the border's lower raw edge: mark the cloth at the fold-to line, bring the edge to it, press. "
        "Base edge on that fold: the same again.",
        "The other lines measure the border's depth, its cut width and the seam.",
    )


FACED = HemCaptions(name="faced", card=facing_card)
BORDER = HemCaptions(name="border", card=border_card)
