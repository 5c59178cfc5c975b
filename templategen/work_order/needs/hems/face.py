"""What a hem needs."""

from __future__ import annotations

from collections.abc import Callable, Iterable
from dataclasses import dataclass
from typing import Any, Generic, TypeVar

from ....planning import Plan
from ....planning.plan import HemPlan
from ..amounts import Seam, Thing

P = TypeVar("P", bound=HemPlan)


@dataclass(frozen=True, slots=True)
class HemNeeds(Generic[P]):
    """What one kind of hem needs, over all panels; P is its plan."""

    name: str
    """Its style in the spec."""
    seams: Callable[[Plan, P], Iterable[Seam]]
    """Every seam that is sewn for it."""
    things: Callable[[Plan, P], Iterable[Thing]] = lambda plan, hem: ()
    """What is bought or cut for it, besides thread."""


AnyNeeds = HemNeeds[Any]


def row(plan: Plan, name: str = "hem") -> Seam:
    """A row right across every panel."""
    return Seam(name, plan.width, plan.panels)
