"""Twelve panels for a village library, and the kits made for them.

Widths, insets and counts are chosen so that the spacing comes out in thirds,
sevenths and the like, which no tape and no decimal can show.
"""

from __future__ import annotations

import json
from dataclasses import dataclass, field
from fractions import Fraction
from functools import lru_cache
from typing import Any

from templategen import kit_files, make_plan, read_spec
from templategen.layout import Kit
from templategen.planning import Plan


@dataclass(frozen=True)
class Panel:
    """One panel as it is asked for: lengths in inches, or in millimetres where ``units`` is metric."""

    units: str
    paper: str
    width: str
    count: int
    inset: str
    hem: str = "4"
    turn_under: str = "5/8"
    loop_length: str = "3 1/4"
    floor_marks: tuple[str, ...] = ("13 5/8",)
    clearance: str = "1/2"
    printer: tuple[str, str] = ("100 mm", "100 mm")
    panels: int = 4
    loop_width: str = ""
    """Left out: as the program chooses."""


_METRIC = {"hem": "100", "turn_under": "15", "loop_length": "85", "floor_marks": ("346",), "clearance": "12"}

PANELS = {
    "42 in, 4 loops, letter": Panel("inch", "letter", "42", 4, "1 1/4"),
    "48 in, 3 loops, A4": Panel("inch", "a4", "48", 3, "2 1/3", hem="3", turn_under="3/8", loop_length="4"),
    "54 in, 8 loops, letter": Panel("inch", "letter", "54", 8, "1 1/4", floor_marks=("13 5/8", "13", "14 1/7")),
    "60 1/3 in, 7 loops, letter": Panel("inch", "letter", "60 1/3", 7, "1 3/8", hem="6", turn_under="1 1/3"),
    "72 in, 15 loops, A4": Panel("inch", "a4", "72", 15, "1 1/2", hem="2", turn_under="2", loop_length="3 3/7"),
    "84 3/7 in, 10 loops, letter": Panel("inch", "letter", "84 3/7", 10, "1 2/7", clearance="-1"),
    "96 in, 22 loops, A4": Panel("inch", "a4", "96", 22, "1", hem="5 1/3", turn_under="1/2"),
    "108 in, 25 loops, letter": Panel("inch", "letter", "108", 25, "1 1/4", loop_length="3 1/3"),
    "120 in, 25 loops, letter": Panel("inch", "letter", "120", 25, "1 2/3", hem="3 2/3", panels=1),
    "1100 mm, 4 loops, A4": Panel("metric", "a4", "1100", 4, "32", **_METRIC),
    "1370 mm, 8 loops, letter": Panel("metric", "letter", "1370", 8, "25", **_METRIC),
    "3000 mm, 13 loops, A4": Panel("metric", "a4", "3000", 13, "35", **_METRIC),
}

CROWDED = {
    "60 in, 210 loops, letter": Panel("inch", "letter", "60", 210, "1 1/4", loop_width="1/4"),
    "1500 mm, 150 loops, A4": Panel("metric", "a4", "1500", 150, "20", loop_width="9.2", **_METRIC),
}
"""Panels whose loops stand so close that no join finds a free place between two of them."""


@dataclass(frozen=True)
class Made:
    """A panel's kit: what was planned, what was laid out, and the files."""

    panel: Panel
    source: str
    plan: Plan = field(repr=False)
    kit: Kit = field(repr=False)
    files: dict[str, bytes] = field(repr=False)

    @property
    def record(self) -> dict[str, Any]:
        """kit.json."""
        record: dict[str, Any] = json.loads(self.files["kit.json"])
        return record


def spec_text(panel: Panel) -> str:
    """The spec as somebody would write it."""
    unit = "in" if panel.units == "inch" else "mm"
    casing, length, old_hem = ("3 in", "96 in", "2 in") if unit == "in" else ("76 mm", "2440 mm", "50 mm")
    marks = ", ".join(f'"{mark} {unit}"' for mark in panel.floor_marks)
    return f"""title = "Village library, reading room: {panel.width} {unit}"
units = "{panel.units}"
cloth = "medium"

[rod]
length = "{'60 in' if unit == 'in' else '1500 mm'}"
diameter = "{'3/4 in' if unit == 'in' else '20 mm'}"

[panel]
count = {panel.panels}
width = "{panel.width} {unit}"
length = "{length}"
casing = "{casing}"
hem = "{old_hem}"
turn_under = "{'3/8 in' if unit == 'in' else '10 mm'}"

[drop]
floor_marks = [{marks}]
hung_by = "casing"
clearance = "{panel.clearance} {unit}"

[hem]
depth = "{panel.hem} {unit}"
turn_under = "{panel.turn_under} {unit}"

[heading]
style = "back loops"
count = {panel.count}
edge_inset = "{panel.inset} {unit}"
loop_length = "{panel.loop_length} {unit}"
{f'loop_width = "{panel.loop_width} {unit}"' if panel.loop_width else ''}

[paper]
name = "{panel.paper}"

[printer]
across = "{panel.printer[0]}"
along = "{panel.printer[1]}"
"""


@lru_cache(maxsize=16)
def made(panel: Panel) -> Made:
    """The kit of ``panel``, by the steps that every face takes."""
    source = spec_text(panel)
    plan = make_plan(read_spec(source))
    kit, files = kit_files(plan)
    return Made(panel, source, plan, kit, files)


def millimetres(text: str, units: str) -> Fraction:
    """A length of a panel as asked for, worked out here and not by the program under test."""
    sign = -1 if text.startswith("-") else 1
    amount = sum((Fraction(part) for part in text.lstrip("-").split()), Fraction(0))
    return sign * amount * (Fraction(254, 10) if units == "inch" else 1)


def loop_positions(panel: Panel) -> list[Fraction]:
    """Where every loop's centre belongs, in mm from the panel's left edge."""
    width, inset = (millimetres(text, panel.units) for text in (panel.width, panel.inset))
    return [inset + (width - 2 * inset) * i / (panel.count - 1) for i in range(panel.count)]
