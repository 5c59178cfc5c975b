"""A panel held at points along its top, worked out."""

from __future__ import annotations

from dataclasses import dataclass

from ....lengths import Length
from ....spec.headings import Hooks, Rings
from ...plan import HeadingPlan


@dataclass(frozen=True, slots=True, kw_only=True)
class PointPlan(HeadingPlan):
    """The rings, clips or hooks of one panel; each mark is the place of one."""

    given: Rings | Hooks
    """What the spec says of them."""
    drop: Length
    """Top of the rod down to where each is held."""
    set_below: Length
    """Panel's top edge down to the same place."""
    round_rod: bool
    """Whether it hangs by rings that go round the rod; else by gliders in a track."""

    @property
    def edge_below(self) -> Length:
        """Top of the rod down to the panel's top edge; negative where the edge stands above it."""
        return self.drop - self.set_below
