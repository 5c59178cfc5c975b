"""What a heading needs."""

from __future__ import annotations

from collections.abc import Callable, Iterable
from dataclasses import dataclass
from typing import Any, Generic, TypeVar

from ....planning import Plan
from ....planning.plan import HeadingPlan
from ..amounts import Seam, Thing

P = TypeVar("P", bound=HeadingPlan)


@dataclass(frozen=True, slots=True)
class HeadingNeeds(Generic[P]):
    """What one kind of heading needs, over all panels; P is its plan, which every one of these is given."""

    name: str
    """Its style in the spec."""
    seams: Callable[[Plan, P], Iterable[Seam]] = lambda plan, heading: ()
    """Every seam that is sewn for it, besides the one that holds a top folded anew."""
    things: Callable[[Plan, P], Iterable[Thing]] = lambda plan, heading: ()
    """What is bought or cut for it, besides thread."""
    tools: Callable[[Plan, P], Iterable[str]] = lambda plan, heading: ()
    """Its own tools, besides those that any job takes."""
    unpicks: Callable[[Plan, P], bool] = lambda plan, heading: False
    """Whether old stitching is unpicked for it, besides that of a top folded anew."""
    pins: Callable[[Plan, P], int] = lambda plan, heading: 0
    """How many pins hold or mark it on each panel."""


AnyNeeds = HeadingNeeds[Any]
