"""What can be chosen of the templates besides the job itself."""

from __future__ import annotations

from dataclasses import dataclass


@dataclass(frozen=True, slots=True)
class Choices:
    """How the spacing strip is made."""

    half_strip: bool = False
    """Whether it ends at the panel's centre, and is turned end for end for the other half."""
    strips: int = 1
    """How many of them there are, 1 or more."""
