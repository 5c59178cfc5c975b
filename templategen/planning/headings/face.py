"""The face that every heading shows to the rest of the planner."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass

from ...lengths import Length, Tape
from ...spec import Spec
from .. import hanging
from ..plan import Figure, LoopPlan, Notice


@dataclass(frozen=True, slots=True)
class Hang:
    """How a panel hangs by one heading."""

    heading: str
    """"casing", "back loops"."""
    offset: Length
    """Where the bottom edge hangs, measured down from the top of the rod: what is added to the panel's
    flat length."""
    below_top: Length
    """The part of the offset that is where the tube begins: top edge of the panel down to the top of the
    tube; the header of a casing, the upper seam of a loop."""
    tube_depth: Length
    """Depth of the flat tube that goes round the rod."""
    least_tube: Length
    """The shallowest tube that this rod passes through."""
    take_up: Length
    """What the tube loses of its depth by going round the rod."""
    passes: bool
    """Whether the rod passes through the tube."""

    @classmethod
    def of_tube(cls, heading: str, below_top: Length, depth: Length, diameter: Length) -> Hang:
        """A heading that is a flat tube with its top ``below_top`` under the panel's top edge."""
        lost = hanging.take_up(diameter, depth)
        return cls(
            heading=heading,
            offset=-below_top - lost,
            below_top=below_top,
            tube_depth=depth,
            least_tube=hanging.least_tube(diameter),
            take_up=lost,
            passes=hanging.passes(diameter, depth),
        )


@dataclass(frozen=True, slots=True)
class HeadingMaker:
    """What is made along the top of a panel, and how it is planned."""

    lay_out: Callable[[Spec], LoopPlan]
    """The marks along the heading, and the sizes of what is sewn on there."""
    figures: Callable[[Spec, LoopPlan], tuple[Figure, ...]]
    """Its numbers, each with how it came about."""
    notices: Callable[[Spec, LoopPlan], tuple[Notice, ...]]
    """What looks wrong with it."""


@dataclass(frozen=True, slots=True)
class HeadingKind:
    """One kind of heading."""

    name: str
    edge: str
    """The edge its marks lie along: their key in plan.json's ``marks``."""
    hang: Callable[[Spec], Hang]
    explain: Callable[[Tape, Hang], str]
    """The sentence that says how the panel hangs by it."""
    maker: HeadingMaker | None = None
    """How it is made; none for a heading that panels only come with."""
