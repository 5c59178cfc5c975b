"""What can be chosen of the templates besides the job itself."""

from __future__ import annotations

from dataclasses import dataclass

from ..drawing import USUAL, Look


@dataclass(frozen=True, slots=True)
class Choices:
    """How the strips for the heading are made, and how every template is drawn."""

    half_strip: bool = False
    """Whether the spacing strip ends at the panel's centre, and is turned end for end for the other half."""
    strips: int = 1
    """How many there are of it, or of the pleat strip; 1 or more."""
    look: Look = USUAL
    """How large its type is and how heavy its lines are; where a mark stands is no part of it."""
