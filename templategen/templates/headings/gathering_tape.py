"""What is written of a gathering tape."""

from __future__ import annotations

from ...planning import Plan
from ...planning.headings.gathering_tape import TapePlan
from ..said import plain
from .face import HeadingCaptions


def strip(plan: Plan, tape: TapePlan) -> tuple[str, ...]:
    """What the divisions are for."""
    return (f"Divisions: drawn up, they stand {plain(plan, tape.gathered_division)} apart.",)


GATHERING_TAPE = HeadingCaptions(name="gathering tape", strip=strip)
