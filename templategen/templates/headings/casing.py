"""What is written of a casing stitched anew."""

from __future__ import annotations

from ...planning import Plan
from ...planning.headings.casing import CasingPlan
from .face import HeadingCaptions


def _strip(plan: Plan, casing: CasingPlan) -> tuple[str, ...]:
    """Nothing: it has no marks, and so no strip."""
    return ()


CASING = HeadingCaptions(name="casing", strip=_strip)
