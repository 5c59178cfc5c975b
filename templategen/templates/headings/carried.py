"""What is said of rings, clips and hooks."""

from __future__ import annotations

from collections.abc import Iterator

from ...planning import Plan
from ...planning.headings.carried import CarriedPlan
from ..choices import Choices
from ..said import Step, plain
from .face import HeadingWords
from .marking import marking


def _below(plan: Plan, carried: CarriedPlan) -> str:
    if not carried.below_edge:
        return "at the top edge"
    return f"{plain(plan, carried.below_edge)} below the top edge"


def rings_made(plan: Plan, carried: CarriedPlan) -> str:
    """How many there are."""
    return f"held {_below(plan, carried)} by {carried.count} rings or clips"


def hooks_made(plan: Plan, carried: CarriedPlan) -> str:
    """How many there are."""
    return f"with {carried.count} hooks set {_below(plan, carried)}"


def strip(plan: Plan, carried: CarriedPlan) -> tuple[str, ...]:
    """How far down the points are."""
    return (f"Each line: one {carried.thing}, {_below(plan, carried)}.",)


def ring_steps(plan: Plan, carried: CarriedPlan, choices: Choices) -> Iterator[Step]:
    """Marks, rings."""
    yield marking(plan, choices, "the back of the panel's top"), True
    yield (
        f"Sew a ring on at each mark, {_below(plan, carried)}, through the back layer only, with a dozen stitches; or "
        "grip the cloth there with a clip.",
        True,
    )


def hook_steps(plan: Plan, carried: CarriedPlan, choices: Choices) -> Iterator[Step]:
    """Marks, hooks."""
    yield marking(plan, choices, "the back of the panel's top"), True
    yield (
        f"Set a hook at each mark, its bend {_below(plan, carried)} by the heading card: sewn on, or pinned through "
        "the back layer only.",
        True,
    )


RINGS = HeadingWords(name="rings", made=rings_made, hung="its rings or clips", steps=ring_steps, strip=strip)
HOOKS = HeadingWords(name="hooks", made=hooks_made, hung="its hooks", steps=hook_steps, strip=strip)
