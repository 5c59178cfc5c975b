"""The cloth carried for shrinkage: how its tuck is sewn, and what is done once the panel has been washed."""

from __future__ import annotations

from collections.abc import Iterator

from ..planning import Plan
from ..templates.said import plain
from .pictures.finishing import let_out, tucked
from .pictures.hem_done import let_down_later
from .step import Step


def tucking(plan: Plan) -> Iterator[Step]:
    """The tuck across the back; none where nothing is carried in one."""
    if plan.shrinkage is None or plan.shrinkage.carried_in == "hem":
        return
    low, high = (plan.figures[key].value for key in ("tuck_lower_line", "tuck_upper_line"))
    yield Step(
        "Tuck",
        f"On the back, draw two lines across, {plain(plan, low)} and {plain(plan, high)} above the finish line. "
        f"Bring one to the other, so that a fold {plain(plan, plan.shrinkage.extra / 2)} deep stands on the back; "
        "stitch through both on the lines with long stitches, and press the fold down behind the hem.",
        view=tucked(plan),
    )


def letting_out(plan: Plan) -> Iterator[Step]:
    """After the first washing."""
    if plan.shrinkage is None:
        return
    if plan.shrinkage.carried_in == "tuck":
        yield Step(
            "Let out",
            "When it has been washed and has shrunk: take out the tuck's stitches and press its lines flat.",
            view=let_out(plan),
        )
        return
    yield Step(
        "Let down",
        "When it has been washed and has shrunk: unpick the hem, hang the panel, pin the hem anew, "
        f"{plain(plan, plan.shrinkage.hem_depth)} deep, and stitch it.",
        view=let_down_later(plan),
    )
