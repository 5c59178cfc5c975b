"""What is written of a heading on its strip and its card."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass
from typing import Any, Generic, TypeVar

from ...planning import Plan
from ...planning.plan import HeadingPlan

P = TypeVar("P", bound=HeadingPlan)


@dataclass(frozen=True, slots=True)
class HeadingCaptions(Generic[P]):
    """What one kind of heading has written on its templates; P is its plan, given beside the whole plan."""

    name: str
    """Its style in the spec."""
    strip: Callable[[Plan, P], tuple[str, ...]]
    """What the lines of the spacing strip mean, besides the centres, and what else its user must know."""
    card: Callable[[Plan, P], tuple[str, ...]] = lambda plan, heading: ()
    """How the heading card is used."""


AnyCaptions = HeadingCaptions[Any]
