"""What is said of a casing stitched anew."""

from __future__ import annotations

from collections.abc import Iterator

from ...planning import Plan
from ...planning.headings.casing import CasingPlan
from ..choices import Choices
from ..said import Step, plain
from .face import HeadingWords


def made(plan: Plan, casing: CasingPlan) -> str:
    """How deep it is."""
    header = f" under a header of {plain(plan, casing.header)}" if casing.header else ""
    return f"with a casing {plain(plan, casing.depth)} deep{header}"


def steps(plan: Plan, casing: CasingPlan, choices: Choices) -> Iterator[Step]:
    """The rows of stitching."""
    rows = [f"{plain(plan, casing.stitch_line)} below the top edge, for the casing's stitch line"]
    if casing.header:
        rows.insert(0, f"{plain(plan, casing.header)} below the top edge, under the header")
    where = " and again ".join(rows)
    yield f"Stitch right across, through both layers, {where}. Unpick old rows that would stop the rod.", True


CASING = HeadingWords(name="casing", made=made, hung="its casing", steps=steps, strip=lambda plan, casing: ())
