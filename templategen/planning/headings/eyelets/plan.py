"""Eyelets along the top, worked out."""

from __future__ import annotations

from dataclasses import dataclass

from ....lengths import Length
from ....spec.headings import Eyelets
from ...folds import Fold
from ...plan import HeadingPlan


@dataclass(frozen=True, slots=True, kw_only=True)
class EyeletPlan(HeadingPlan):
    """The eyelets of one panel; each mark is the centre of one, ``thing_width`` the circle cut for it."""

    given: Eyelets
    """What the spec says of them."""
    inside: Length
    """Inner diameter of a ring."""
    outside: Length
    """Its outer diameter."""
    centre: Length
    """Panel's top edge down to the centre of a ring."""
    band: Length
    """How deep the cloth has to be doubled and stiffened."""
    spacing: Length
    """Centre to centre on the rod, where the panels are drawn out to cover their run."""
    fold: Fold
    """What the cloth between two eyelets does then."""

    @property
    def cut_circle(self) -> Length:
        """Diameter of the hole in the cloth."""
        return self.thing_width

    @property
    def above(self) -> Length:
        """How far the panel's top edge stands above the rod's top."""
        return self.centre - self.inside / 2
