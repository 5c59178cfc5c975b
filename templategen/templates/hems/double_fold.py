"""What is said of a double fold."""

from __future__ import annotations

from collections.abc import Iterator

from ...planning import Plan
from ...planning.hems.double_fold import DoubleFoldPlan
from ..said import Step, plain
from .face import HemWords


def card(plan: Plan, hem: DoubleFoldPlan) -> tuple[str, ...]:
    """Base edge, lines, steps."""
    return (
        "Base edge on the raw edge: mark the cloth at fold-to line 1, bring the raw edge to the mark, press. "
        "Base edge on that fold: mark at fold-to line 2, bring the fold to the mark, press.",
        "The steps at the other side measure turn-under, hem, and both.",
    )


def steps(plan: Plan, hem: DoubleFoldPlan) -> Iterator[Step]:
    """Turn-under, hem."""
    yield (
        "Turn-under: lay the hem gauge card's base edge on the raw edge, mark fold-to line 1, bring the raw edge to "
        f"the mark and press a fold {plain(plan, hem.turn_under)} deep.",
        True,
    )
    yield (
        "Hem: lay the base edge on that fold, mark fold-to line 2, bring the fold to the mark, press a hem "
        f"{plain(plan, hem.depth)} deep, and pin it. It is stitched when the panel has hung and is right.",
        True,
    )


DOUBLE_FOLD = HemWords(name="double fold", card=card, steps=steps)
