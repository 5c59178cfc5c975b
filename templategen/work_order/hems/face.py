"""What is said of a hem."""

from __future__ import annotations

from collections.abc import Callable, Iterator
from dataclasses import dataclass
from typing import Any, Generic, TypeVar

from ...planning import Plan
from ...planning.plan import HemPlan
from ...templates.said import plain
from ..pictures.hem_done import pressed, sewn
from ..step import Step

P = TypeVar("P", bound=HemPlan)
CARD = ("hem gauge card",)


def stitched(plan: Plan, hem: HemPlan, by: str = "") -> tuple[Step, ...]:
    """A row of stitching, ``by`` what it is held, and the hem pressed."""
    return (
        Step(
            "Sew",
            f"Stitch the hem{by} {plain(plan, hem.stitch_line)} above the finished edge. Begin and end with a few "
            "stitches back. Take the pins out as you come to them, and count them: as many must come out as went in.",
            view=sewn(plan, hem),
        ),
        Step("Press", "The finished hem once more, from the back.", view=pressed(plan, hem)),
    )


@dataclass(frozen=True, slots=True)
class HemWork(Generic[P]):
    """The work on one kind of hem; P is its plan."""

    name: str
    """Its style in the spec."""
    steps: Callable[[Plan, P], Iterator[Step]]
    """How it is folded, in order, and pinned."""
    sewing: Callable[[Plan, P], tuple[Step, ...]] = stitched
    """How the pinned hem is fixed; the first of these steps is called what that is, "Sew"."""


AnyHem = HemWork[Any]
