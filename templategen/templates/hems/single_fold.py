"""What is said of a single fold with tape."""

from __future__ import annotations

from collections.abc import Iterator

from ...planning import Plan
from ...planning.plan import HemPlan
from ..said import Step, plain
from .face import HemWords


def card(plan: Plan, hem: HemPlan) -> tuple[str, ...]:
    """Base edge, line, step."""
    return (
        "Base edge on the raw edge: mark the cloth at the fold-to line, bring the raw edge to the mark, press.",
        "The step at the other side measures the hem.",
    )


def steps(plan: Plan, hem: HemPlan) -> Iterator[Step]:
    """Tape, fold."""
    yield (
        "Lay the hem tape over the raw edge, on the right side, half of it beyond, its ends turned under, and sew it "
        "along the edge.",
        True,
    )
    yield (
        "Hem: lay the hem gauge card's base edge on the raw edge, mark the fold-to line, bring the raw edge to the "
        f"mark, press a hem {plain(plan, hem.depth)} deep, and pin it by the tape. It is stitched when the panel has "
        "hung and is right.",
        True,
    )


SINGLE_FOLD = HemWords(name="single fold with tape", card=card, steps=steps)
