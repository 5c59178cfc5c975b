"""What is written of eyelets."""

from __future__ import annotations

from ...planning import Plan
from ...planning.headings.eyelets import EyeletPlan
from ..said import plain
from .face import HeadingCaptions


def strip(plan: Plan, eyelets: EyeletPlan) -> tuple[str, ...]:
    """Edges of the circles, and how far down their centres lie."""
    return (
        "Short lines: the edges of the circles to cut.",
        f"Their centres: {plain(plan, eyelets.centre)} below the panel's top edge.",
    )


EYELETS = HeadingCaptions(name="eyelets", strip=strip)
