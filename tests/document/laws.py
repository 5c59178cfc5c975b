"""What must hold of any picture that has been set."""

from __future__ import annotations

from collections.abc import Iterable

from templategen.document.setting import Setting
from templategen.document.shapes import meets_line, meets_ring
from templategen.drawing import Bounds, Item, Line, Ring, Text

GAP = 0.25
"""Mm that must be left between words and anything else; what sets them leaves twice that."""


def touching(items: Iterable[Item]) -> list[str]:
    """Words that touch other words, a line or a filled shape."""
    items = list(items)
    texts = [(item.text, item.bounds) for item in items if isinstance(item, Text)]
    found = []
    for i, (text, box) in enumerate(texts):
        found += [f"{text!r} and {other!r}" for other, there in texts[i + 1 :] if box.meets(there, GAP)]
        found += [f"{text!r} and {item}" for item in items if not isinstance(item, Text) and _meets(box, item)]
    return found


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
