"""Loops sewn to the back of the casing, worked out."""

from __future__ import annotations

from dataclasses import dataclass

from ....lengths import Length
from ....spec.headings import BackLoops
from ...plan import HeadingPlan


@dataclass(frozen=True, slots=True, kw_only=True)
class LoopPlan(HeadingPlan):
    """The loops of one panel; each mark is the centre of one."""

    given: BackLoops
    """What the spec says of them."""
    length: Length
    """Cut length."""
    strip: Length
    """Cut width of the strip the loops are folded from."""
    lower_allowance: Length
    upper_turn: Length
    tube_depth: Length
    upper_seam: Length
    """Panel's top edge down to the loop's upper seam."""

    @property
    def width(self) -> Length:
        """Finished width."""
        return self.thing_width
