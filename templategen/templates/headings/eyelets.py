"""What is said of eyelets."""

from __future__ import annotations

from collections.abc import Iterator

from ...planning import Plan
from ...planning.headings.eyelets import EyeletPlan
from ..choices import Choices
from ..said import Step, plain
from .face import HeadingWords
from .marking import marking


def made(plan: Plan, eyelets: EyeletPlan) -> str:
    """How many there are."""
    return f"with {eyelets.count} eyelets {plain(plan, eyelets.inside)} wide inside"


def strip(plan: Plan, eyelets: EyeletPlan) -> tuple[str, ...]:
    """Edges, and how deep the centres lie."""
    return (
        "Short lines: an eyelet's outer edges.",
        f"Centres: {plain(plan, eyelets.centre_below)} below the panel's top edge.",
    )


def card(plan: Plan, eyelets: EyeletPlan) -> tuple[str, ...]:
    """What the heading card measures."""
    return ("Mark the eyelets' centres at its line; the doubled band must reach to its fold line.",)


def steps(plan: Plan, eyelets: EyeletPlan, choices: Choices) -> Iterator[Step]:
    """Band, marks, holes, rings."""
    yield (
        "Lay stiffening into the doubled band along the top, as deep as the heading card's fold line, and press.",
        True,
    )
    yield marking(plan, choices, "the back of the doubled band"), True
    yield (
        f"Lay the eyelet card's upper edge on the top edge, its centre line on each mark: draw the hole, "
        f"{plain(plan, eyelets.hole)} wide. Try hole and ring on a doubled scrap before the panel.",
        True,
    )
    yield (
        "Cut the holes, away from the hand that holds; press the two halves of each ring together. Thread the rod to "
        "and fro, both side edges towards the wall.",
        True,
    )


EYELETS = HeadingWords(name="eyelets", made=made, hung="its eyelets", steps=steps, strip=strip, card=card)
