"""What is said of a single fold with tape."""

from __future__ import annotations

from collections.abc import Iterator

from ...planning import Plan
from ...planning.choices import HEM_TAPE
from ...planning.hems.single_fold import SingleFoldPlan
from ...templates.said import plain
from ..pictures.hem_done import sewn, tried
from ..pictures.hem_folds import taped, turned_once
from ..step import Step
from .face import CARD, HemWork, stitched


def steps(plan: Plan, hem: SingleFoldPlan) -> Iterator[Step]:
    """Tape, fold; for bonding a trial instead of the tape."""
    if hem.bonded:
        yield Step(
            "Try",
            "Try the bonding web on a scrap of this cloth, and wash the scrap.",
            "once",
            view=tried(plan, hem),
        )
    else:
        yield Step(
            "Tape",
            f"Lay the hem tape, {plain(plan, HEM_TAPE)} wide, over the raw edge, on the right side, half of it beyond, "
            "its ends turned under, and sew it to the cloth along its upper edge.",
            view=taped(plan, hem),
        )
    yield Step(
        "Hem",
        "Lay the hem gauge card's base edge on the raw edge, mark the fold-to line, bring the raw edge to the mark, "
        f"press a hem {plain(plan, hem.depth)} deep, and pin it{'' if hem.bonded else ' by the tape'}.",
        view=turned_once(plan, hem),
        uses=CARD,
    )


def sewing(plan: Plan, hem: SingleFoldPlan) -> tuple[Step, ...]:
    """Stitched, or bonded."""
    if not hem.bonded:
        return stitched(plan, hem, " by the free half of its tape,")
    return (
        Step(
            "Bond",
            f"Lay the web under the raw edge, its lower edge {plain(plan, hem.stitch_line)} above the finished edge. "
            "Take the pins out and count them: as many must come out as went in. Bond it as the web's maker says.",
            view=sewn(plan, hem),
        ),
    )


SINGLE_FOLD = HemWork(name="single fold with tape", steps=steps, sewing=sewing)
