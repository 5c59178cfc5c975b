"""What is said of rings and clips."""

from __future__ import annotations

from collections.abc import Iterator

from ...planning import Plan
from ...planning.headings.points import PointPlan
from ...templates import Choices
from ...templates.said import plain
from ..pictures import points as pictures
from ..step import Step
from .face import HeadingWork
from .height_card import card_of, held_to
from .marking import marking
from .trying import trying


def made(plan: Plan, rings: PointPlan) -> str:
    """How many there are."""
    return f"with {rings.count} {rings.thing}s along its top"


def _place(plan: Plan, rings: PointPlan) -> str:
    return f"{plain(plan, rings.set_below)} below the top edge" if rings.set_below else "at the very top edge"


def steps(plan: Plan, rings: PointPlan, choices: Choices) -> Iterator[Step]:
    """Marks; rings tried and sewn, or clips put on."""
    yield marking(plan, choices, "the back of the panel")
    if rings.set_below:
        yield Step(
            "Heights",
            "At each mark lay the ring height card on the panel, its ledge level with the top edge, and mark at its "
            f"line “{rings.thing}s”: {plain(plan, rings.set_below)} below the top edge.",
            view=pictures.heights(plan, rings),
            uses=card_of(rings),
        )
    if rings.thing == "clip":
        yield Step(
            "Clip",
            f"Put a clip on at each mark, so that it bites {_place(plan, rings)}, through all layers.",
            view=pictures.hung(plan, rings),
        )
        return
    yield trying(plan, f"hold every ring with two stitches, {_place(plan, rings)}")
    yield Step(
        "Fasten",
        f"Sew a ring to the back at each mark, {_place(plan, rings)}, the ring standing up from it: by hand, with "
        "doubled button thread, through the back layers only; eight stitches, and the thread wound round them.",
        view=pictures.hung(plan, rings),
    )


RINGS = HeadingWork(name="rings", made=made, hung="", steps=steps, held_to=held_to, holding=card_of)
