"""What is said of a single fold with tape."""

from __future__ import annotations

from collections.abc import Iterator

from ...planning import Plan
from ...planning.hems.single_fold import SingleFoldPlan
from ..said import Step, plain
from .face import HemWords, stitched


def card(plan: Plan, hem: SingleFoldPlan) -> tuple[str, ...]:
    """Base edge, line, step."""
    return (
        "Base edge on the raw edge: mark the cloth at the fold-to line, bring the raw edge to the mark, press.",
        "The step at the other side measures the hem.",
    )


def steps(plan: Plan, hem: SingleFoldPlan) -> Iterator[Step]:
    """Tape, fold."""
    if hem.bonded:
        yield (
            "Hem: lay the hem gauge card's base edge on the raw edge, mark the fold-to line, bring the raw edge to the "
            f"mark, press a hem {plain(plan, hem.depth)} deep, and pin it. Try the bonding web on a scrap of this "
            "cloth, and wash the scrap. It is bonded when the panel has hung and is right.",
            True,
        )
        return
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


def fixed(plan: Plan, hem: SingleFoldPlan) -> str:
    """Stitched, or bonded."""
    if not hem.bonded:
        return stitched(plan, hem)
    return (
        f"take it down, lay the web under the raw edge, its lower edge {plain(plan, hem.stitch_line)} above the "
        "finished edge, and bond it as the web's maker says"
    )


SINGLE_FOLD = HemWords(name="single fold with tape", card=card, steps=steps, fixed=fixed)
