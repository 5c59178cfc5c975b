"""The plan: the whole job worked out, every number with how it came about.

A plan is data. It knows the trade (hems, headings, offcuts) and nothing of
paper, pages or files. Every height is measured up from the panel's old bottom
edge; every distance along the heading from the left end of the panel's top edge.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from fractions import Fraction
from typing import Literal

from ..lengths import Length, Tape
from ..spec import Spec

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
class Notice:
    """What looks wrong, and the number that would put it right."""

    code: str
    level: Level
    text: str


@dataclass(frozen=True, slots=True)
class DropMark:
    """One place across the width where the floor was marked, and what follows from it there."""

    at: Length
    floor: Length
    finish: Length
    cut: Length


@dataclass(frozen=True, slots=True)
class DropPlan:
    """From the floor to the cut."""

    hang_shift: Length
    clearance: Length
    marks: tuple[DropMark, ...]
    """Left to right as seen from the front; for one mark given, two alike, at the two edges."""

    @property
    def level(self) -> bool:
        """Whether every mark gives the same cut line."""
        return len({mark.cut for mark in self.marks}) == 1


@dataclass(frozen=True, slots=True)
class HemPlan:
    """The new double-fold hem."""

    depth: Length
    turn_under: Length
    fold_to_turn: Length
    """From the raw edge to the line that the raw edge is folded to: twice the turn-under."""
    fold_to_depth: Length
    """From the first fold to the line that it is folded to: twice the depth."""
    stitch_line: Length
    """From the finished bottom edge up to the row of stitching."""
    allowance: Length
    """Cloth below the finished edge: depth + turn-under."""


@dataclass(frozen=True, slots=True)
class HeadingMark:
    """One mark along the heading edge."""

    label: str
    at: Length


@dataclass(frozen=True, slots=True)
class LoopPlan:
    """Loops sewn to the back of the casing."""

    marks: tuple[HeadingMark, ...]
    """The centre of each loop."""
    edge_inset: Length
    pitch: Length
    length: Length
    """Cut length."""
    width: Length
    """Finished width."""
    strip: Length
    """Cut width of the strip the loops are folded from."""
    lower_allowance: Length
    upper_turn: Length
    tube_depth: Length
    upper_seam: Length
    """Panel's top edge down to the loop's upper seam."""

    @property
    def count(self) -> int:
        return len(self.marks)


@dataclass(frozen=True, slots=True)
class OffcutPlan:
    """What is cut off, and whether the loops can be cut from it."""

    depth: Length
    """As it hangs, old hem still folded: the least across the width; nothing where nothing comes off."""
    unpicked: Length
    """The same with the old hem let down."""
    clear: Length
    """Depth of single cloth above the old hem."""
    loops_per_strip: int
    strips_needed: int
    """Over all panels."""
    strips_clear: int
    """From all panels, above the old hem."""
    strips_as_cut: int
    strips_unpicked: int
    loops_needed: int
    loops_available: int
    loops_available_unpicked: int


@dataclass(frozen=True, slots=True)
class Plan:
    """The whole job."""

    spec: Spec
    tape: Tape
    drop: DropPlan
    hem: HemPlan
    heading: LoopPlan
    offcut: OffcutPlan
    figures: Mapping[str, Figure]
    """By key, in the order of the work; the keys that plan.json names, and more."""
    counts: Mapping[str, int]
    ratios: Mapping[str, Fraction]
    notices: tuple[Notice, ...]
    """Stops first, then warnings, then notes."""

    @property
    def stops(self) -> tuple[Notice, ...]:
        return tuple(notice for notice in self.notices if notice.level == "stop")
