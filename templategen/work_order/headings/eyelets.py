"""What is said of eyelets."""

from __future__ import annotations

from collections.abc import Iterator

from ...planning import Plan
from ...planning.headings.eyelets import EyeletPlan
from ...templates import Choices
from ...templates.said import plain
from ..pictures import eyelets as pictures
from ..step import Step
from .face import HeadingWork
from .marking import marking


def made(plan: Plan, eyelets: EyeletPlan) -> str:
    """How many there are, and how wide."""
    return f"with {eyelets.count} eyelets along its top, {plain(plan, eyelets.inside)} wide inside"


def steps(plan: Plan, eyelets: EyeletPlan, choices: Choices) -> Iterator[Step]:
    """Stiffening, marks, circles, one ring on a scrap, rings."""
    yield Step(
        "Stiffen",
        f"Slip stiffening {plain(plan, eyelets.band)} deep between the two layers of the top, right up to the top edge "
        "and from side to side, and fix it there. Unpick rows of stitching that a ring would stand on.",
        view=pictures.stiff(plan, eyelets),
    )
    yield marking(plan, choices, "the back of the panel")
    yield Step(
        "Circles",
        "At each mark lay the eyelet card's upper edge on the panel's top edge, its line on the mark: "
        f"for a punch, prick its cross through, {plain(plan, eyelets.centre)} below the top edge; for scissors, cut "
        f"its circle out first, {plain(plan, eyelets.cut_circle)} across, and draw round inside it.",
        view=pictures.circles(plan, eyelets),
        uses=("eyelet card",),
    )
    yield Step(
        "Scrap",
        "Try one ring on a scrap of the same cloth, doubled and stiffened: cut the circle, close the ring, pull at it. "
        "If the cloth slips out or bunches, the circle is wrong: look at the packet, and put it right in the "
        "measurements.",
        "once",
    )
    yield Step(
        "Set",
        f"Punch the {eyelets.count} circles, or cut them just inside their lines with small sharp scissors from the "
        "middle outwards, all layers together. Put the rings' fronts in from the right side and close the backs on "
        "them.",
        view=pictures.ring(plan, eyelets),
    )


def put_on(plan: Plan, eyelets: EyeletPlan) -> str:
    """In and out, where their number is even."""
    if eyelets.count % 2:
        return ""
    return (
        "Put the rod in from the back through the first eyelet, out through the second, and so on: both side edges "
        "then turn to the wall."
    )


EYELETS = HeadingWork(
    name="eyelets", made=made, hung="its eyelets", steps=steps, put_on=put_on, on_the_rod=pictures.folds
)
