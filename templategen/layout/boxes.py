"""Boxes to tick, one for each thing that a step is done to."""

from __future__ import annotations

from collections.abc import Iterator

from ..document.blocks import MOST_BOXES, Step
from ..drawing import Item, Line, LineType, Text, rectangle, width_of

BOX = 4.0
"""A box, in mm."""
BOX_PITCH = 13.5
"""From one to the next beside it, its number between them."""


def boxes_of(block: Step, left: float, top: float, small: float, in_a_row: int) -> Iterator[Item]:
    """A numbered box for each; beyond what a page can hold, a blank for a tally."""
    count = block.boxes
    if count > MOST_BOXES:
        tally = f"done, of {count} {block.each}s:"
        yield Text(left, top - BOX + 0.8, tally, small)
        start = left + width_of(tally, small) + 2
        yield Line(LineType.THIN, start, top - BOX, start + 40, top - BOX)
        return
    for i in range(count):
        row, column = divmod(i, in_a_row)
        x, y = left + column * BOX_PITCH, top - row * (BOX + 2)
        yield from rectangle(LineType.MARK, x, y - BOX, x + BOX, y)
        yield Text(x + BOX + 1.2, y - BOX + 0.8, str(i + 1), small)
