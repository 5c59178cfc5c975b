"""What is said of rings and clips."""

from __future__ import annotations

from collections.abc import Iterator

from ...planning import Plan
from ...planning.headings.points import PointPlan
from ..choices import Choices
from ..said import Step, plain
from .face import HeadingWords
from .height_card import held_to
from .marking import marking


def made(plan: Plan, rings: PointPlan) -> str:
    """How many there are."""
    return f"with {rings.count} {rings.thing}s along its top"


def _place(plan: Plan, rings: PointPlan) -> str:
    return f"{plain(plan, rings.set_below)} below the top edge" if rings.set_below else "at the very top edge"


def strip(plan: Plan, rings: PointPlan) -> tuple[str, ...]:
    """How far down they hold."""
    return (f"The {rings.thing}s hold {_place(plan, rings)}.",)


def steps(plan: Plan, rings: PointPlan, choices: Choices) -> Iterator[Step]:
    """Marks; rings sewn, or clips put on."""
    yield marking(plan, choices, "the back of the panel"), True
    if rings.set_below:
        yield (
            "At each mark lay the ring height card on the panel, its ledge level with the top edge, and mark at its "
            f"line “{rings.thing}s”: {plain(plan, rings.set_below)} below the top edge.",
            True,
        )
    if rings.thing == "clip":
        yield f"Put a clip on at each mark, so that it bites {_place(plan, rings)}, through all layers.", True
        return
    yield (
        f"Sew a ring to the back at each mark, {_place(plan, rings)}, the ring standing up from it: by hand, with "
        "doubled button thread, through the back layers only; eight stitches, and the thread wound round them.",
        True,
    )


RINGS = HeadingWords(name="rings", made=made, hung="", held_to=held_to, steps=steps, strip=strip)
