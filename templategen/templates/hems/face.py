"""What is written of a hem on its gauge card."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass
from typing import Any, Generic, TypeVar

from ...planning import Plan
from ...planning.plan import HemPlan

P = TypeVar("P", bound=HemPlan)


@dataclass(frozen=True, slots=True)
class HemCaptions(Generic[P]):
    """What one kind of hem has written on its gauge card; P is its plan."""

    name: str
    """Its style in the spec."""
    card: Callable[[Plan, P], tuple[str, ...]]
    """How the card is used."""


AnyCaptions = HemCaptions[Any]
