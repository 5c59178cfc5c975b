"""How the top is cut and folded anew, where the new heading asks for it."""

from __future__ import annotations

from collections.abc import Iterator

from ..planning import Plan
from ..templates.said import plain
from .pictures.top import cut_off, folded, let_down, neatened, turned_under
from .step import Step


def refolding(plan: Plan, holds_the_fold: bool) -> Iterator[Step]:
    """Letting down or cutting off, then the folds; ``holds_the_fold`` where the heading's own stitching holds them."""
    top, cut, turn = plan.top, plan.spec.heading.top_cut, plan.spec.heading.top_turn
    if not top.refolded:
        return
    if cut:
        yield Step(
            "Cut the top",
            f"Draw a line right across {plain(plan, cut)} below the panel's top edge, with a long rule, and cut on it. "
            "Unpick what is left of the old heading and take its loose layers away.",
            view=cut_off(plan),
        )
    elif top.doubled:
        yield Step(
            "Let down",
            "Unpick the stitching of the old top, let it down and press it flat: its raw edge is now the top.",
            view=let_down(plan),
        )
    if not top.needed:
        yield Step(
            "Neaten",
            "Bind or zigzag the raw edge of the top closely: the new heading does not fold it over.",
            view=neatened(),
        )
        return
    edge = "raw edge"
    if turn:
        yield Step(
            "Turn under",
            f"Draw a line {plain(plan, 2 * turn)} from the raw edge, on the back, bring the edge to it and press: "
            f"{plain(plan, turn)} is turned under.",
            view=turned_under(plan),
        )
        edge = "fold"
    held = "Pin it: the rows of the new heading hold it." if holds_the_fold else "Stitch it close to its lower edge."
    yield Step(
        "Fold the top",
        f"The top is folded to the back. Draw a line {plain(plan, 2 * top.needed)} from the {edge}, bring the "
        f"{edge} to it and press: the top is {plain(plan, top.needed)} deep. {held} {_check(plan)}",
        view=folded(plan, holds_the_fold),
    )


def _check(plan: Plan) -> str:
    """What is measured to see that it is right: the finished length, where it is one."""
    finished = plan.figures.get("finished_length")
    if finished is None or not plan.drop.level:
        way = "above" if plan.top.lowered.mm < 0 else "below"
        return f"The new top edge lies {plain(plan, abs(plan.top.lowered))} {way} the old crease: check it there."
    return f"From the new top edge to the finished bottom edge it must measure {plain(plan, finished.value)}: check it."
