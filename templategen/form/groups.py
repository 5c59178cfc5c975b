"""The fields of a spec in the order in which one measures, in short groups."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from dataclasses import dataclass
from types import MappingProxyType

from ..spec import FIELDS


@dataclass(frozen=True, slots=True)
class Group:
    """Fields that are measured at one place."""

    key: str
    name: str
    about: str
    """What is done here, in a sentence."""
    tables: tuple[str, ...]
    """The tables of the spec whose fields stand here; one that is named by itself, "title", is a field."""
    guides: tuple[str, ...] = ()
    """The pictures of what is measured; a field in braces stands for its value: "hem: {hem.style}"."""
    whole: tuple[str, ...] = ()
    """Fields that stand in sight although a starting spec does not have them."""

    @property
    def paths(self) -> Iterator[str]:
        """Every field of the group, in the order of the file."""
        for path, field in FIELDS.items():
            if path in self.tables or field.table in self.tables:
                yield path

    @property
    def fields(self) -> tuple[str, ...]:
        """Those that are always in sight."""
        return tuple(path for path in self.paths if self._in_sight(path))

    @property
    def more(self) -> tuple[str, ...]:
        """Those that fold away."""
        return tuple(path for path in self.paths if not self._in_sight(path))

    def _in_sight(self, path: str) -> bool:
        field = FIELDS[path]
        return field.about.asked or field.required or path in self.whole


GROUPS = (
    Group(
        "job", "The job", "What it is called, and how you want to read your numbers.",
        ("title", "units", "cloth", "tape_step"),
    ),
    Group(
        "rod", "The rod", "Measured where it hangs, with a steel or wooden rule.",
        ("rod",), ("window", "rod from above"),
    ),
    Group(
        "panel", "The panel as it is", "Laid flat, before anything is unpicked or cut.",
        ("panel", "panel.heading"),
        ("panel", "panel cut across", "panels", "old heading: {panel.heading.style}", "window"),
        ("panel.heading.style",),
    ),
    Group(
        "drop", "Where the floor is", "Marked on the hanging panel, or measured down from the rod; best both.",
        ("drop",), ("floor", "floor marks"), ("drop.to",),
    ),
    Group(
        "heading", "The new heading", "How the panels are to hang.",
        ("heading",), ("heading: {heading.style}", "heading: {heading.style}, closer", "heading top"),
    ),
    Group(
        "hem", "The new hem", "How the bottom edge is to be finished.",
        ("hem",), ("hem: {hem.style}",), ("hem.style",),
    ),
    Group(
        "sides", "Sides", "Only where a panel is made narrower, split, or given mitred corners.",
        ("sides",), ("sides", "sides: split", "sides: hems", "sides: corners"),
    ),
    Group(
        "lining", "Lining and weights", "Only where there are some.",
        ("lining", "weights"), ("lining", "lining cut across", "lining as cut", "weights"),
    ),
    Group(
        "fabric", "The cloth", "Its weight, how it shrinks, its pattern, and what is left over.",
        ("fabric",), ("cloth", "cloth: shrinkage", "cloth: tie-back"),
    ),
    Group(
        "paper", "Paper and printer", "What the kit is printed on, and what the printer makes of it.",
        ("paper", "paper.margins", "printer"), ("sheet", "sheet: margins", "roll", "strips"),
        ("paper.large_print", "printer.across", "printer.along"),
    ),
)  # fmt: skip
"""In the order of measuring: our choice."""

WITH: Mapping[str, tuple[str, ...]] = MappingProxyType({
    "panel.top_turn": ("panel.casing",),
    "drop.hung_by": ("drop.floor_marks",),
    "drop.follows": ("drop.floor_marks",),
    "sides.cut_edge": ("sides.finished_width",),
    "sides.hem": ("sides.finished_width", "sides.split", "sides.mitre"),
    "sides.turn_under": ("sides.finished_width", "sides.split", "sides.mitre"),
    "sides.old_hem": ("sides.finished_width", "sides.split"),
    "sides.old_turn_under": ("sides.finished_width", "sides.split"),
    "lining.hem": ("lining.cut_shorter", "lining.ends_above"),
    "lining.turn_under": ("lining.cut_shorter", "lining.ends_above"),
    "lining.narrower": ("lining.cut_shorter", "lining.ends_above"),
    "weights.size": ("weights.every",),
    "fabric.washed": ("fabric.shrinkage",),
    "fabric.shrinkage_in": ("fabric.shrinkage",),
    "fabric.repeat_at": ("fabric.repeat",),
    "fabric.repeat_above_hem": ("fabric.repeat",),
    "fabric.tie_back_length": ("fabric.leftovers",),
    "fabric.tie_back_width": ("fabric.leftovers",),
    "printer.bar": ("printer.across", "printer.along"),
})  # fmt: skip
"""Fields that mean something only beside one of others: they are there where one of these is filled in."""
