"""What is said of a heading in the work order."""

from __future__ import annotations

from collections.abc import Callable, Iterator
from dataclasses import dataclass
from typing import Any, Generic, TypeVar

from ...document.view import View
from ...planning import Plan
from ...planning.plan import HeadingPlan
from ...templates import Choices
from ..step import Step

P = TypeVar("P", bound=HeadingPlan)


@dataclass(frozen=True, slots=True)
class HeadingWork(Generic[P]):
    """The work on one kind of heading; P is its plan, which every one of these is given beside the whole plan."""

    name: str
    """Its style in the spec."""
    made: Callable[[Plan, P], str]
    """What a panel has, "with 9 loops on the back of its casing"."""
    hung: str
    """What it hangs by, "its loops"; empty where it hangs by the things at its marks, rings or clips."""
    steps: Callable[[Plan, P, Choices], Iterator[Step]]
    """How it is made, in order, up to the hanging."""
    stage: str = ""
    """What the work on it is called, "Pleats"; empty where that is what its things are called, "Loops"."""
    put_on: Callable[[Plan, P], str] = lambda plan, heading: ""
    """How it is put on the rod, a sentence, where that is not plain."""
    on_the_rod: Callable[[Plan, P], View | None] = lambda plan, heading: None
    """How it looks on the rod; None where a step of its own has shown that."""
    held_to: Callable[[Plan, P], str] = lambda plan, heading: ""
    """How its card is held to the panel once it hangs, a sentence; nothing where it has none for that."""
    holding: Callable[[P], tuple[str, ...]] = lambda heading: ()
    """The templates that ``held_to`` speaks of."""
    holds_the_fold: bool = False
    """Whether its own stitching holds the fold along the top, where that is folded anew."""

    def stage_of(self, heading: P) -> str:
        """What the work on it is called."""
        return self.stage or f"{heading.thing}s".capitalize()

    def hung_by(self, heading: P) -> str:
        """What it hangs by, "its loops"."""
        return self.hung or f"its {heading.thing}s"


AnyHeading = HeadingWork[Any]
