"""What is said of a hem."""

from __future__ import annotations

from collections.abc import Callable, Iterator
from dataclasses import dataclass
from typing import Any, Generic, TypeVar

from ...planning import Plan
from ...planning.plan import HemPlan
from ..said import Step, plain

P = TypeVar("P", bound=HemPlan)


def stitched(plan: Plan, hem: HemPlan) -> str:
    """How a pinned hem is fixed: by a row of stitching."""
    return f"stitch it, {plain(plan, hem.stitch_line)} above the finished edge"


@dataclass(frozen=True, slots=True)
class HemWords(Generic[P]):
    """The words of one kind of hem; P is its plan."""

    name: str
    """Its style in the spec."""
    card: Callable[[Plan, P], tuple[str, ...]]
    """How the hem gauge card is used; written on it."""
    steps: Callable[[Plan, P], Iterator[Step]]
    """How it is folded, in order, and pinned; it is stitched when the panel has hung."""
    fixed: Callable[[Plan, P], str] = stitched
    """How the pinned hem is fixed once the panel has hung and is right."""


AnyWords = HemWords[Any]
