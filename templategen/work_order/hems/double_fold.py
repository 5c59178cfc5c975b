"""What is said of a double fold."""

from __future__ import annotations

from collections.abc import Iterator

from ...planning import Plan
from ...planning.hems.double_fold import DoubleFoldPlan
from ...templates.said import plain
from ..pictures.hem_folds import hem_turned_up, turn_under
from ..step import Step
from .face import CARD, HemWork


def steps(plan: Plan, hem: DoubleFoldPlan) -> Iterator[Step]:
    """Turn-under, hem."""
    yield Step(
        "Turn-under",
        "Lay the hem gauge card's base edge on the raw edge, mark fold-to line 1, bring the raw edge to the mark and "
        f"press a fold {plain(plan, hem.turn_under)} deep.",
        view=turn_under(plan, hem),
        uses=CARD,
    )
    yield Step(
        "Hem",
        "Lay the card's base edge on that fold, mark fold-to line 2, bring the fold to the mark, press a hem "
        f"{plain(plan, hem.depth)} deep, and pin it.",
        view=hem_turned_up(plan, hem),
        uses=CARD,
    )


DOUBLE_FOLD = HemWork(name="double fold", steps=steps)
