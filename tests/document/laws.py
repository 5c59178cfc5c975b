"""What must hold of any picture that has been set."""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Sequence

import numpy as np

from templategen.document.setting import Setting
from templategen.document.shapes import meets_line, meets_ring
from templategen.drawing import Bounds, Item, Line, Ring, Text

GAP = 0.25
"""Mm that must be left between words and anything else; what sets them leaves twice that."""


def touching(items: Iterable[Item]) -> list[str]:
    """Words that touch other words, a line or a filled shape."""
    items = list(items)
    boxes = [item.bounds for item in items]
    texts = [i for i, item in enumerate(items) if isinstance(item, Text)]
    found = []
    for i, near in meeting(texts, boxes, GAP):
        text = items[i]
        assert isinstance(text, Text)
        for other in (items[j] for j in near if j > i or not isinstance(items[j], Text)):
            if isinstance(other, Text):
                found.append(f"{text.text!r} and {other.text!r}")
            elif _meets(boxes[i], other):
                found.append(f"{text.text!r} and {other}")
    return found


def meeting(some: Sequence[int], boxes: Sequence[Bounds], gap: float) -> Iterator[tuple[int, list[int]]]:
    """For each of ``some`` boxes, by number, those that it meets or comes nearer to than ``gap``: all at once."""
    left, bottom, right, top = np.array(boxes, float).reshape(-1, 4).T
    for i in some:
        box = boxes[i]
        met = (left < box.right + gap) & (right > box.left - gap) & (bottom < box.top + gap) & (top > box.bottom - gap)
        yield i, [int(j) for j in np.flatnonzero(met) if j != i]


def _meets(box: Bounds, item: Item) -> bool:
    if isinstance(item, Line):
        return meets_line(box, item, GAP)
    if isinstance(item, Ring):
        return meets_ring(box, item, GAP)
    return box.meets(item.bounds, GAP)


def outside(setting: Setting) -> list[Item]:
    """Items that stick out of the room that the picture says it takes."""
    return [
        item for item in setting.items
        if (box := item.bounds).left < -0.01 or box.right > setting.width + 0.01
        or box.top > 0.01 or box.bottom < -setting.height - 0.01
    ]  # fmt: skip
