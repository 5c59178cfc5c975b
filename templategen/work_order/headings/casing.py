"""What is said of a casing stitched anew."""

from __future__ import annotations

from collections.abc import Iterator

from ...planning import Plan
from ...planning.headings.casing import CasingPlan
from ...templates import Choices
from ...templates.said import plain
from ..pictures import casing as pictures
from ..step import Step
from .face import HeadingWork


def made(plan: Plan, casing: CasingPlan) -> str:
    """How deep it is."""
    header = f" under a header of {plain(plan, casing.header)}" if casing.header else ""
    return f"with a casing {plain(plan, casing.depth)} deep{header}"


def steps(plan: Plan, casing: CasingPlan, choices: Choices) -> Iterator[Step]:
    """The rows that are unpicked, and those that are stitched."""
    if casing.unpicked:
        rows = " and ".join(plain(plan, row) for row in casing.unpicked)
        yield Step(
            "Unpick",
            f"Unpick the old stitching {rows} below the top edge: it would stop the rod.",
            view=pictures.unpicked(plan, casing),
        )
    if not casing.new_rows:
        yield Step(
            "Look",
            "The casing is stitched as it is to be: look whether its rows still hold.",
            view=pictures.stitched(plan, casing),
        )
        return
    said = {casing.header: "under the header", casing.stitch_line: "for the casing's stitch line"}
    where = " and again ".join(f"{plain(plan, row)} below the top edge, {said[row]}" for row in casing.new_rows)
    yield Step(
        "Stitch",
        "Lay the casing card's upper edge on the panel's top edge, here and there along it, and mark its lines. Stitch "
        f"right across, through both layers, {where}. Leave the ends open for the rod.",
        view=pictures.stitched(plan, casing),
        uses=("casing card",),
    )


CASING = HeadingWork(
    name="casing",
    made=made,
    hung="its casing",
    steps=steps,
    stage="Casing",
    on_the_rod=pictures.hung,
    holds_the_fold=True,
)
