"""Lengths as they are said in a sentence about the work."""

from __future__ import annotations

from ..lengths import Length
from ..planning import Plan


def unit_of(plan: Plan) -> str:
    """What bare numbers are read in: "inches" or "millimetres"."""
    return "inches" if plan.tape.units == "inch" else "millimetres"


def plain(plan: Plan, length: Length) -> str:
    """A length as it is said in a sentence about the work: what rounding took away is said with the numbers."""
    return plan.tape.read(length).plain
