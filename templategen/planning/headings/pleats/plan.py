"""Pleats folded by hand, worked out."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Literal

from ....lengths import Length
from ....spec.headings import BoxPleats, InvertedBoxPleats, PinchPleats
from ...plan import HeadingPlan

Pleats = PinchPleats | BoxPleats | InvertedBoxPleats
Edge = Literal["left", "right"]


@dataclass(frozen=True, slots=True, kw_only=True)
class PleatPlan(HeadingPlan):
    """The pleats of one panel; each has two marks, the lines that are brought together."""

    given: Pleats
    pleats: int
    flat: Length
    finished: Length
    """Of the panel, return and overlap with it."""
    pleat: Length
    """Cloth in one pleat, line to line."""
    space: Length
    first: Length
    """Return edge to the first pleat."""
    last: Length
    """Last pleat to the leading edge."""
    sizes: tuple[Length, Length]
    """The least and the most cloth that makes a good pleat."""
    hooks_below: Length
    """Panel's top edge down to the hooks' bends."""
    leading: Edge
    """Where the leading edge is, the back towards you; for a pair, on the panels that hang on the left as seen from
    the front."""

    @property
    def on_each(self) -> int:
        return self.pleats

    @property
    def spaced(self) -> bool:
        return False
