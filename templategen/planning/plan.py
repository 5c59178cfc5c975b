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
class HemLine:
    """A line that the hem gauge card shows."""

    name: str
    length: Length
    """From the card's base edge up."""
    kind: Literal["fold", "mark", "stitch"]


@dataclass(frozen=True, slots=True, kw_only=True)
class HemPlan:
    """The new hem; each kind of hem has a plan of its own that adds to this."""

    style: str
    depth: Length
    """Finished depth."""
    allowance: Length
    """Cloth of the panel below the finished edge; negative where the hem is sewn on and the panel ends above it."""
    stitch_line: Length
    """From the finished bottom edge up to the row of stitching that holds the hem."""
    lines: tuple[HemLine, ...]
    """What the hem gauge card shows, from its base edge up."""
    steps: tuple[Length, ...]
    """What the steps of the card measure; from the lowest up, none twice."""


@dataclass(frozen=True, slots=True)
class HeadingMark:
    """One mark along the heading edge."""

    label: str
    at: Length


@dataclass(frozen=True, slots=True)
class TopPlan:
    """The cloth along the top: what the new heading needs doubled, and whether the top is folded anew for it."""

    doubled: Length
    """How deep the cloth is doubled along the top, as the panel came and after anything cut off."""
    needed: Length
    """How deep the new heading needs it doubled."""
    refolded: bool
    """Whether the old top is let down, or cut off, and folded over again."""
    lowered: Length
    """How far the new top edge lies below the old one; negative where it lies above it."""

    @property
    def reach(self) -> Length:
        """From the new top edge down to where the heading ends."""
        return self.needed if self.refolded else max(self.doubled, self.needed)


@dataclass(frozen=True, slots=True, kw_only=True)
class HeadingPlan:
    """The new heading of one panel; each kind of heading has a plan of its own that adds to this."""

    style: str
    thing: str
    """What stands at each mark: "loop", "eyelet"."""
    marks: tuple[HeadingMark, ...]
    """Where the centre of each is, from the left end of the top edge, the back towards you; none for a heading
    without marks."""
    thing_width: Length
    """How wide it is along the edge; nothing where it is a point."""
    edge_inset: Length
    """Panel edge to the first centre."""
    pitch: Length
    """Centre to centre; nothing where there are fewer than two."""
    needs: tuple[tuple[str, int], ...] = ()
    """What each panel takes that is bought by number, and how many: ("hooks", 9). Where there is any, the marks are
    places and no things."""

    @property
    def count(self) -> int:
        return len(self.marks)


@dataclass(frozen=True, slots=True)
class Pieces:
    """Small pieces that a heading takes, all alike, cut off strips: loops, tabs."""

    thing: str
    """"loop"."""
    on_each: int
    """How many each panel takes."""
    length: Length
    """Cut length of one, along its strip."""
    strip: Length
    """Cut width of the strip: twice the finished width and the seam allowance."""
    seam_allowance: Length
    """On the long seam of the strip."""


@dataclass(frozen=True, slots=True)
class PiecesPlan:
    """Whether the pieces can be cut from the offcuts."""

    pieces: Pieces
    per_strip: int
    strips_needed: int
    """Over all panels."""
    strips_clear: int
    """From all panels, above the old hem."""
    strips_as_cut: int
    strips_unpicked: int
    needed: int
    available: int
    available_unpicked: int


@dataclass(frozen=True, slots=True)
class OffcutPlan:
    """What is cut off, and what it yields."""

    depth: Length
    """As it hangs, old hem still folded: the least across the width; nothing where nothing comes off."""
    unpicked: Length
    """The same with the old hem let down."""
    clear: Length
    """Depth of single cloth above the old hem."""
    pieces: PiecesPlan | None = None
    """The pieces that the heading takes; None where it takes none."""


@dataclass(frozen=True, slots=True)
class Section:
    """Figures that belong together."""

    key: str
    """"hang", "drop", "hem", "heading", "offcut"."""
    title: str
    """"From the floor to the cut"."""
    figures: tuple[Figure, ...]


@dataclass(frozen=True, slots=True)
class Plan:
    """The whole job."""

    spec: Spec
    tape: Tape
    width: Length
    """Finished width of a panel as it is made."""
    panels: int
    """How many panels are made."""
    drop: DropPlan
    hem: HemPlan
    top: TopPlan
    heading: HeadingPlan
    offcut: OffcutPlan
    sections: tuple[Section, ...]
    """Every number, in the order of the work."""
    figures: Mapping[str, Figure]
    """The same by key: the keys that plan.json names, and more."""
    counts: Mapping[str, int]
    ratios: Mapping[str, Fraction]
    notices: tuple[Notice, ...]
    """Stops first, then warnings, then notes."""

    @property
    def stops(self) -> tuple[Notice, ...]:
        return tuple(notice for notice in self.notices if notice.level == "stop")
