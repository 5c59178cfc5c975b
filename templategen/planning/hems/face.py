"""The face that every hem shows to the rest of the planner."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass
from typing import Any, Generic, TypeVar

from ...lengths import Length, Tape
from ...spec import Spec
from ..choices import STITCH_BELOW_FOLD
from ..figures import Figure, Notice
from ..plan import HemPlan

H = TypeVar("H")
P = TypeVar("P", bound=HemPlan)


@dataclass(frozen=True, slots=True)
class HemKind(Generic[H, P]):
    """One kind of hem: H is what the spec says of it, P its plan."""

    name: str
    """Its style in the spec."""
    plan: Callable[[Spec, H], P]
    terms: Callable[[Spec, P], str]
    """What it takes below the finished edge, as terms of a sum that begins with the finish line."""
    figures: Callable[[Spec, P], tuple[Figure, ...]]
    """Its numbers in the order of the sewing, each with how it came about."""
    notices: Callable[[Spec, P], tuple[Notice, ...]]
    """What looks wrong with it."""
    said: Callable[[Tape, P], str]
    """It in words, "a hem of 4 in with a turn-under of 5/8 in"."""
    shallower: Callable[[Tape, P, Length], str]
    """Where the panel is so much too short for it: the hem of its kind that would do; "" where none would."""


AnyHem = HemKind[Any, Any]


def fold_to(depth: Length) -> Length:
    """How far from the present edge the line lies that the edge is brought to for a fold of this depth.

    The fold law: a line 2 d from the present edge, the edge brought to it (FM 10-16, General Fabric Repair,
    24 May 2000, single-edge hem: a line 1 in from the raw edge gives a turn of 1/2 in, a line 2 in from that
    fold a hem of 1 in).
    """
    return 2 * depth


def stitch_line(depth: Length) -> Length:
    """Finished edge up to the stitching: just below the upper fold, a quarter of the depth at most,
    so that it stays in the upper half of a narrow hem."""
    return depth - min(STITCH_BELOW_FOLD, depth / 4)
