"""Casing card: laid on the panel's top edge, it shows where the casing is stitched, and which old rows come out."""

from __future__ import annotations

from ..drawing import USUAL, Drawing, LineType, Look
from ..planning import Plan
from ..planning.headings.casing import CasingPlan
from .said import plain
from .top_card import TopLine, draw_top_card


def draw(plan: Plan, look: Look = USUAL) -> list[Drawing]:
    """The card; none for another heading, or for a casing that stays as it is."""
    casing = plan.heading
    if not isinstance(casing, CasingPlan) or not (casing.new_rows or casing.unpicked):
        return []
    lines = [TopLine("casing's stitch line", casing.stitch_line, LineType.STITCH)]
    if casing.header:
        lines.append(TopLine("stitch under the header", casing.header, LineType.STITCH))
    lines += [TopLine("unpick the old row", row, LineType.THIN) for row in casing.unpicked]
    caption = (
        "Upper edge on the panel's top edge, back towards you: mark the lines.",
        f"Held to the stitched casing, flat: it is {plain(plan, casing.depth)} deep.",
    )
    return [draw_top_card("casing card", sorted(lines, key=lambda line: line.at), caption, plan.tape, look=look)]
