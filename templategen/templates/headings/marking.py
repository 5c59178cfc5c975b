"""How the spacing strip is used."""

from __future__ import annotations

from ...planning import Plan
from ..choices import Choices


def marking(plan: Plan, choices: Choices, place: str) -> str:
    """How the strip is laid to the panel's top, ``place``, "the back of the casing": once, or half by half."""
    thing = plan.heading.thing
    each = "every line" if thing == "mark" else f"the centre of every {thing}"
    several = (
        f" There are {choices.strips} of them, all alike: as many panels can be marked at once."
        if choices.strips > 1
        else ""
    )
    if not choices.half_strip:
        return (
            f"Pin {'a' if several else 'the'} spacing strip to {place}, its upper edge on the panel's "
            f"top edge, its ends at the side edges. Mark {each}.{several}"
        )
    middle = f" That end is mark {plan.heading.count // 2 + 1} itself." if plan.heading.count % 2 else ""
    return (
        "Measure the panel's width and mark its centre on the top edge with a pin. The back towards you, pin "
        f"{'a' if several else 'the'} half strip to {place}, number 1 upright, its upper edge on the panel's top "
        "edge, its left end at the left side edge. Its other end must come to the centre; if not, measure the panel "
        f"again.{middle} Mark {each} of the left half. Turn the strip end for end, its other long "
        "edge to the top edge, so that the other numbers are upright and the same end lies at the centre; mark the "
        f"right half.{several}"
    )
