"""What a plan says: worked numbers, each with how it came about, and what looks wrong."""

from __future__ import annotations

from dataclasses import dataclass
from fractions import Fraction
from typing import Literal

from ..lengths import Length

Level = Literal["stop", "warning", "note"]


@dataclass(frozen=True, slots=True)
class Figure:
    """One worked number: what it is called, what it comes to, and how it came about."""

    key: str
    """Its key in plan.json, ``cut_line``."""
    label: str
    """What a sewist calls it, "cut line"."""
    value: Length
    working: str
    """A sentence with the numbers in it: "finish line 9 1/4 in - hem 4 in - turn-under 5/8 in"."""


@dataclass(frozen=True, slots=True)
class Amount:
    """One worked number that is no length: a weight, a count."""

    key: str
    label: str
    value: Fraction
    unit: str
    """What the value counts, "kg"."""
    shown: str
    working: str


@dataclass(frozen=True, slots=True)
class Notice:
    """What looks wrong, and the number that would put it right."""

    code: str
    level: Level
    text: str


@dataclass(frozen=True, slots=True)
class Section:
    """Figures that belong together."""

    key: str
    """"hang", "drop", "hem", "heading", "offcut"."""
    title: str
    """"From the floor to the cut"."""
    figures: tuple[Figure, ...]
    amounts: tuple[Amount, ...] = ()
    """Those of its numbers that are no lengths."""
