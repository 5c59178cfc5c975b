"""What is written of a double fold."""

from __future__ import annotations

from ...planning import Plan
from ...planning.hems.double_fold import DoubleFoldPlan
from .face import HemCaptions


def card(plan: Plan, hem: DoubleFoldPlan) -> tuple[str, ...]:
    """Base edge, lines, steps."""
    return (
        "Base edge on the raw edge: mark the cloth at fold-to line 1, bring the raw edge to the mark, press. "
        "Base edge on that fold: mark at fold-to line 2, bring the fold to the mark, press.",
        "The steps at the other side measure turn-under, hem, and both.",
    )


DOUBLE_FOLD = HemCaptions(name="double fold", card=card)
