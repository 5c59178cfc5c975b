"""What is said of a heading: in the work order and on the strip."""

from __future__ import annotations

from collections.abc import Callable, Iterator
from dataclasses import dataclass
from typing import Any, Generic, TypeVar

from ...planning import Plan
from ...planning.plan import HeadingPlan
from ..choices import Choices
from ..said import Step

P = TypeVar("P", bound=HeadingPlan)


@dataclass(frozen=True, slots=True)
class HeadingWords(Generic[P]):
    """The words of one kind of heading; P is its plan, which every one of these is given beside the whole plan."""

    name: str
    """Its style in the spec."""
    made: Callable[[Plan, P], str]
    """What a panel has, "with 9 loops on the back of its casing"."""
    hung: str
    """What it hangs by, "its loops"; empty where it hangs by the things at its marks, rings or clips."""
    steps: Callable[[Plan, P, Choices], Iterator[Step]]
    """How it is made, in order, up to the hanging."""
    strip: Callable[[Plan, P], tuple[str, ...]]
    """What the lines of the spacing strip mean, besides the centres, and what else its user must know."""
    card: Callable[[Plan, P], tuple[str, ...]] = lambda plan, heading: ()
    """How the heading card is used; written on it."""
    held_to: Callable[[Plan, P], str] = lambda plan, heading: ""
    """How its card is held to the panel once it hangs, a sentence; nothing where it has none for that."""
    holds_the_fold: bool = False
    """Whether its own stitching holds the fold along the top, where that is folded anew."""


AnyWords = HeadingWords[Any]
