"""Paper: sixty kits against the fewest sheets that their templates could take.

    python -m tests.bench.sheets

Widths from 30 to 300 in, four papers, one to four templates. The bound is the
layout's own, by area and by rows (``templategen/layout/packing/bound.py``).
"""

from __future__ import annotations

from collections.abc import Iterator
from typing import NamedTuple

from templategen import Options, make_kit, make_plan, read_spec

WIDTHS = (30, 36, 42, 48, 54, 60, 66, 72, 84, 96, 120, 150, 200, 250, 300)
PAPERS = ("letter", "a4", "legal", "tabloid")
_TEMPLATES = (
    ("spacing strip",),
    ("spacing strip", "cut gauge"),
    ("spacing strip", "hem gauge card", "loop ladder"),
    ("spacing strip", "hem gauge card", "cut gauge", "loop ladder"),
)
_HEMS = ("3 in", "4 in", "2 in", "4 1/2 in", "3 1/2 in")
_JOB = """\
title = "Reading room, {width} in wide"
units = "inch"
rod = {{ length = "{width} in", diameter = "3/4 in" }}
panel = {{ count = 2, width = "{width} in", length = "96 in", casing = "3 in", hem = "2 in", turn_under = "3/8 in" }}
drop = {{ floor_marks = ["13 5/8 in"], clearance = "3/4 in" }}
hem = {{ depth = "{hem}", turn_under = "5/8 in" }}
heading = {{ style = "back loops" }}
"""


class Kit(NamedTuple):
    """One kit of the set: what it takes and what it could take."""

    width: int
    paper: str
    templates: int
    by_area: int
    by_rows: int
    sheets: int

    @property
    def bound(self) -> int:
        return max(self.by_area, self.by_rows)


def kits() -> Iterator[Kit]:
    """The set: every width on every paper, the number of templates and the hem changing from one to the next."""
    for i, width in enumerate(WIDTHS):
        plan = make_plan(read_spec(_JOB.format(width=width, hem=_HEMS[i % len(_HEMS)])))
        for j, paper in enumerate(PAPERS):
            only = _TEMPLATES[(i + j) % len(_TEMPLATES)]
            kit = make_kit(plan, Options(paper=paper, only=only))
            sheets = sum(bool(sheet.placed) for sheet in kit.sheets)
            yield Kit(width, paper, len(only), kit.bound.by_area, kit.bound.by_rows, sheets)


def table(all_kits: list[Kit]) -> Iterator[str]:
    """The set as a table a person can read, and what it comes to."""
    yield "width  paper    templates  bound by area  by rows  sheets"
    for kit in all_kits:
        more = f"  {kit.sheets - kit.bound} more" if kit.sheets > kit.bound else ""
        yield (
            f"{kit.width:>3} in  {kit.paper:<8} {kit.templates:>8} {kit.by_area:>14} {kit.by_rows:>8} {kit.sheets:>7}"
            + more
        )
    met = sum(kit.sheets == kit.bound for kit in all_kits)
    total = sum(kit.sheets for kit in all_kits)
    yield f"{met} of {len(all_kits)} kits take the fewest sheets there could be; {total} sheets in all"


if __name__ == "__main__":
    print("\n".join(table(list(kits()))))
