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

from ..lengths import NOTHING, Length, Tape
from ..spec import Spec
from .figures import Figure, Notice, Section


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
    tuck: Length = NOTHING
    """Cloth that a tuck takes up until it is let out; finish and cut are those of the flat cloth, before it is sewn."""

    @property
    def level(self) -> bool:
        """Whether every mark gives the same cut line."""
        return len({mark.cut for mark in self.marks}) == 1

    def gap(self, mark: DropMark) -> Length:
        """How far above the floor the finished edge hangs at a mark; negative below it.

        The flat cloth's finish line, what a tuck takes up and the hang shift, less the floor.
        """
        return mark.finish + self.tuck + self.hang_shift - mark.floor

    @property
    def gauged(self) -> tuple[DropMark, ...]:
        """The marks that need a gauge each; where the cut is level, the highest alone."""
        return (max(self.marks, key=lambda mark: mark.floor),) if self.level else self.marks

    @property
    def above_marks(self) -> bool:
        """Whether the cut is level though the marks are not."""
        return self.level and len({mark.floor for mark in self.marks}) > 1


@dataclass(frozen=True, slots=True)
class GaugeLine:
    """A line that a gauge card shows, the hem's or the heading's."""

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
    lines: tuple[GaugeLine, ...]
    """What the hem gauge card shows, from its base edge up."""
    steps: tuple[Length, ...]
    """What the steps of the card measure; from the lowest up, none twice."""
    sewn_on: Length = NOTHING
    """How far above the finished edge the panel's own front ends, where other cloth is sewn on below it."""


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
    lines: tuple[GaugeLine, ...] = ()
    """What the heading card shows, from the panel's top edge down; none where it needs no card."""
    needs: tuple[tuple[str, int], ...] = ()
    """What each panel takes that is bought by number, and how many: ("hooks", 9). Where there is any, the marks are
    places and no things."""
    mirrored: bool = False
    """Whether half of the panels are made the other way round: then the marks are those of the panels that hang on the
    left as seen from the front."""

    @property
    def count(self) -> int:
        """How many marks there are."""
        return len(self.marks)

    @property
    def on_each(self) -> int:
        """How many things each panel has: as many as marks, where each has one."""
        return len(self.marks)

    @property
    def spaced(self) -> bool:
        """Whether its marks stand at equal distances, alike from both edges, so that a spacing strip serves."""
        return bool(self.marks)


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
class MitrePlan:
    """The one straight fold of a corner."""

    hem: Length
    """Depth of the bottom hem, H."""
    side: Length
    """Depth of the side hem, S."""
    hem_allowance: Length
    """Below the finished bottom edge, H + T."""
    side_allowance: Length
    """Beside the finished side edge, S + U."""
    up_the_side: Length
    """Raw corner to the fold, up the side's raw edge."""
    along_the_bottom: Length
    """Raw corner to the fold, along the bottom's raw edge."""
    seam: Length
    """Length of the finished mitre, corner to inner corner."""
    beside_old: bool = False
    """Whether it is that of a corner beside the side hem that stays as it came."""

    @property
    def above_the_hem(self) -> Length:
        """Finished bottom edge up to where the fold meets the side's raw edge."""
        return self.up_the_side - self.hem_allowance


@dataclass(frozen=True, slots=True)
class ShrinkagePlan:
    """The cloth that is carried until the panel has been washed."""

    carried_in: Literal["hem", "tuck"]
    share: Fraction
    """How much of its length the cloth loses, of one."""
    length: Length
    """What has to be this long once it has shrunk: top edge to finished edge, and the hem's cloth where the hem is
    folded again."""
    extra: Length
    """The cloth carried: length / (1 − share) − length."""
    hem_depth: Length
    """The hem's depth once the panel has been washed and let down."""

    @property
    def short_by_rule(self) -> Length:
        """How much too little length × share would be."""
        return self.extra - self.length * self.share


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
    mitres: tuple[MitrePlan, ...]
    """The one fold of a corner, where corners are mitred; a second one for corners beside a side hem that stays and
    is not as deep."""
    shrinkage: ShrinkagePlan | None
    """What is carried for shrinkage; None where nothing is."""
    sections: tuple[Section, ...]
    """Every number, in the order of the work."""
    figures: Mapping[str, Figure]
    """The same by key: the keys that plan.json names, and more."""
    counts: Mapping[str, int]
    ratios: Mapping[str, Fraction]
    notices: tuple[Notice, ...]
    """Stops first, then warnings, then notes."""

    @property
    def mirrored_marks(self) -> tuple[HeadingMark, ...]:
        """The marks of the panels that are made the other way round, from the left end; none where all are alike."""
        if not self.heading.mirrored:
            return ()
        return tuple(HeadingMark(mark.label, self.width - mark.at) for mark in reversed(self.heading.marks))

    @property
    def stops(self) -> tuple[Notice, ...]:
        return tuple(notice for notice in self.notices if notice.level == "stop")
