"""How the spacing strip is used."""

from __future__ import annotations

from ...planning import Plan
from ...templates import STRIP, Choices
from ..pictures import marking as pictures
from ..step import Step


def marking(plan: Plan, choices: Choices, place: str, each: str = "") -> Step:
    """How the strip is laid to the panel's top, ``place``, "the back of the casing": once, or half by half.

    ``each`` is what is marked, where it is not the centre of every thing that the heading has.
    """
    each = each or f"the centre of every {plan.heading.thing}"
    several = (
        f" There are {choices.strips} of them, all alike: as many panels can be marked at once."
        if choices.strips > 1
        else ""
    )
    if not choices.half_strip:
        return Step(
            "Mark",
            f"Pin {'a' if several else 'the'} spacing strip to {place}, its upper edge on the panel's "
            f"top edge, its ends at the side edges. Mark {each}.{several}",
            view=pictures.marking(plan, choices),
            uses=(STRIP,),
        )
    middle = f" That end is mark {plan.heading.count // 2 + 1} itself." if plan.heading.count % 2 else ""
    return Step(
        "Mark",
        "Measure the panel's width and mark its centre on the top edge with a pin. The back towards you, pin "
        f"{'a' if several else 'the'} half strip to {place}, number 1 upright, its upper edge on the panel's top "
        "edge, its left end at the left side edge. Its other end must come to the centre; if not, measure the panel "
        f"again.{middle} Mark {each} of the left half. Turn the strip end for end, its other long "
        "edge to the top edge, so that the other numbers are upright and the same end lies at the centre; mark the "
        f"right half.{several}",
        view=pictures.marking(plan, choices),
        uses=("half strip",),
    )
