"""From what was read on the hanging panel to what is done about it."""

from __future__ import annotations

from collections.abc import Sequence

from ...spec.hangs import HangReading
from ..choices import MADE_WITHIN
from ..plan import Plan
from .adjustment import Adjustment
from .hung import hung
from .remedies import remedies


def adjust(plan: Plan, readings: Sequence[HangReading], *, stitched: bool = False) -> Adjustment:
    """The ways to put the panel right; ``stitched`` says that the hem is stitched already, not only pinned.

    Panels are made within 1/4 in (UFGS-12491N): what is off by no more may stay as it is. Raises Refusal for a
    place that the panel has not got.
    """
    found = hung(plan, readings)
    worst = found.worst
    ways = remedies(plan, found, stitched) if worst else ()
    return Adjustment(hung=found, stitched=stitched, within=worst <= MADE_WITHIN, remedies=ways)
