"""Lengths as they are said in a sentence about the work."""

from __future__ import annotations

from typing import Literal

from ..lengths import Length
from ..planning import Plan

AS_BOUGHT: Literal["as bought"] = "as bought"
Step = tuple[str, bool | Literal["as bought"]]
"""What is done, and whether it is done on every panel: on each that is made, or on each as it was bought, before it is
split."""


def plain(plan: Plan, length: Length) -> str:
    """A length as it is said in a sentence about the work: what rounding took away is said with the numbers."""
    return plan.tape.read(length).plain
