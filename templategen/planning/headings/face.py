"""The face that every heading shows to the rest of the planner."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass
from typing import Any, Generic, Literal, TypeVar

from ...lengths import NOTHING, Length, Tape
from ...spec import Spec
from .. import hanging
from ..figures import Figure, Notice
from ..plan import HeadingPlan, Pieces
from ..wording import near


@dataclass(frozen=True, slots=True)
class HangTerm:
    """One of the lengths that add up to how a panel hangs."""

    label: str
    """"take-up", "header"."""
    raises: Length
    """How far it raises the bottom edge; negative where it lowers it."""


@dataclass(frozen=True, slots=True)
class Tube:
    """A flat tube of two layers that goes round the rod: a casing, or a loop and the cloth it is sewn to."""

    top: Length
    """Panel's top edge down to where the tube begins: the header of a casing, the upper seam of a loop."""
    depth: Length
    """Of the flat tube."""
    least: Length
    """The shallowest tube that this rod passes through."""
    take_up: Length
    """What the tube loses of its depth by going round the rod."""
    passes: bool
    """Whether the rod passes through it."""


@dataclass(frozen=True, slots=True)
class Hang:
    """How a panel hangs by one heading."""

    heading: str
    """"casing", "back loops"."""
    terms: tuple[HangTerm, ...]
    """What it adds up to, from the panel's top edge down."""
    tube: Tube | None = None
    """Where it is a tube."""

    @property
    def offset(self) -> Length:
        """Where the bottom edge hangs, measured down from the top of the rod: what is added to the panel's
        flat length, from the heading's own top edge down."""
        total = NOTHING
        for term in self.terms:
            total = total - term.raises
        return total

    @classmethod
    def of_tube(cls, heading: str, label: str, top: Length, depth: Length, diameter: Length) -> Hang:
        """A heading that is a flat tube with its top, called ``label``, at ``top`` under the panel's top edge."""
        lost = hanging.take_up(diameter, depth)
        tube = Tube(top, depth, hanging.least_tube(diameter), lost, hanging.passes(diameter, depth))
        return cls(heading, (HangTerm(label, top), HangTerm("take-up", lost)), tube)


def beside_the_top(tape: Tape, hang: Hang) -> str:
    """Where a panel's top edge hangs: "1 in above the top of the rod"."""
    if not hang.offset:
        return "level with the top of the rod"
    side = "below" if hang.offset > NOTHING else "above"
    return f"{near(tape, abs(hang.offset))} {side} the top of the rod"


TakesUp = Literal["flat", "gathered", "pleated"]
H = TypeVar("H")
P = TypeVar("P", bound=HeadingPlan)


@dataclass(frozen=True, slots=True)
class HeadingKind(Generic[H, P]):
    """One kind of heading: H is what the spec says of it, P its plan."""

    name: str
    """Its style in the spec."""
    title: str
    """What its numbers stand under, "The loops"."""
    marks_said: str
    """What its marks are, "Loop centres"; "" where it has none."""
    edge: str
    """The edge its marks lie along: their key in plan.json's ``marks``."""
    hang: Callable[[Spec, H], Hang]
    explain: Callable[[Tape, Hang], str]
    """How a panel hangs by it, as a clause that follows "hung": "by its loops, ..."."""
    doubled: Callable[[Spec, H], Length]
    """How deep the cloth must be doubled along the top for it."""
    lay_out: Callable[[Spec, H], P]
    """The marks along the heading, and the sizes of what is sewn on there."""
    hang_figures: Callable[[Spec, P], tuple[Figure, ...]]
    """Those of its numbers that say how the panel hangs by it, each with how it came about."""
    figures: Callable[[Spec, P], tuple[Figure, ...]]
    """Its other numbers."""
    notices: Callable[[Spec, P], tuple[Notice, ...]]
    """What looks wrong with it."""
    takes_up: TakesUp = "flat"
    """How it takes up the cloth that is more than it covers."""
    pieces: Callable[[P], Pieces | None] = lambda plan: None
    """The pieces it takes, to be cut from the offcuts; None where it takes none."""


AnyHeading = HeadingKind[Any, Any]
