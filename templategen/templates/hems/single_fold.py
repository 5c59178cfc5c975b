"""What is written of a single fold with tape."""

from __future__ import annotations

from ...planning import Plan
from ...planning.hems.single_fold import SingleFoldPlan
from .face import HemCaptions


def card(plan: Plan, hem: SingleFoldPlan) -> tuple[str, ...]:
    """Base edge, line, step."""
    return (
        "Base edge on the raw edge: mark the cloth at the fold-to line, bring the raw edge to the mark, press.",
        "The step at the other side measures the hem.",
    )


SINGLE_FOLD = HemCaptions(name="single fold with tape", card=card)
