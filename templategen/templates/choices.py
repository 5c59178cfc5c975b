"""What can be chosen of the templates besides the job itself."""

from __future__ import annotations

from dataclasses import dataclass


@dataclass(frozen=True, slots=True)
class Choices:
    """How the strips for the heading are made."""

    half_strip: bool = False
    """Whether the spacing strip ends at the panel's centre, and is turned end for end for the other half."""
    strips: int = 1
    """How many there are of it, or of the pleat strip; 1 or more."""
