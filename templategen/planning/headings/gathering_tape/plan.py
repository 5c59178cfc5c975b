"""Gathering tape on one panel, worked out."""

from __future__ import annotations

from dataclasses import dataclass
from fractions import Fraction

from ....lengths import Length
from ....spec.headings import GatheringTape
from ...plan import HeadingPlan


@dataclass(frozen=True, slots=True, kw_only=True)
class TapePlan(HeadingPlan):
    """The tape of one panel; its marks divide the flat panel, and are brought to the same divisions of the rod."""

    given: GatheringTape
    """What the spec says of it."""
    top: Length
    """Panel's top edge down to the tape's upper edge."""
    width: Length
    """Of the tape."""
    hook_set: Length
    """Panel's top edge down to where the hooks hold."""
    fold: Length
    """How deep the top is folded to the back under the tape."""
    flat: Length
    """The panel's width before it is gathered."""
    tape_length: Length
    """Of the piece of tape that one panel takes, its ends included."""
    gathered: Length
    """How wide the panel is when the tape is drawn up."""
    gathered_division: Length
    """How far apart two marks then are."""
    hooks: int
    """On each panel, one at either end of the tape."""
    hook_pitch: Length
    """Between two hooks, along the gathered heading."""

    @property
    def lower(self) -> Length:
        """Panel's top edge down to the tape's lower edge."""
        return self.top + self.width

    @property
    def fullness(self) -> Fraction:
        """Flat width over gathered width."""
        return self.flat / self.gathered
