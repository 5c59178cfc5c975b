"""The jobs that speed is measured on, and the same marks as bare coordinates."""

from __future__ import annotations

from typing import Any

from templategen.drawing import Line, Ring, Text, set_text
from templategen.layout import Kit
from templategen.writers.numbers import POINTS_PER_MM
from templategen.writers.pdf import frames

ORDINARY = """\
title = "Reading room, east window"
units = "inch"
rod = { length = "60 in", diameter = "3/4 in" }
panel = { count = 4, width = "54 in", length = "96 in", casing = "3 in", hem = "2 in", turn_under = "3/8 in" }
drop = { floor_marks = ["13 5/8 in"], clearance = "3/4 in" }
hem = { depth = "4 in", turn_under = "5/8 in" }
heading = { style = "back loops" }
"""


def with_marks(count: int) -> str:
    """A job with ``count`` loops, 2 in apart: the more loops, the wider the panel."""
    return (
        ORDINARY.replace('width = "54 in"', f'width = "{2 * (count - 1) + 3} in"')
        .replace('length = "60 in"', f'length = "{min(2 * count + 2, 2300)} in"')
        .replace('style = "back loops"', f'style = "back loops", count = {count}, edge_inset = "1 1/2 in"')
    )


def stage_curtain() -> str:
    """A curtain for a stage, 100 ft wide with 150 loops, on A4."""
    text = ORDINARY.replace('width = "54 in"', 'width = "100 ft"').replace('length = "60 in"', 'length = "100 ft"')
    return text.replace('style = "back loops"', 'style = "back loops", count = 150') + 'paper = { name = "a4" }\n'


def bare_marks(kit: Kit) -> dict[str, Any]:
    """Every line and string of the kit's pages, in points, as a bare script would have them."""
    pages = []
    for sheet in kit.sheets:
        lines: dict[tuple[float, tuple[float, ...]], list[Any]] = {}
        rings: list[Any] = []
        texts: list[Any] = []
        for frame, items in frames(sheet, kit.correction):
            for item in items:
                if isinstance(item, Line):
                    style = (item.kind.width * POINTS_PER_MM, tuple(d * POINTS_PER_MM for d in item.kind.dashes))
                    ends = (
                        *frame.point(float(item.x1), float(item.y1)),
                        *frame.point(float(item.x2), float(item.y2)),
                    )
                    lines.setdefault(style, []).append(ends)
                elif isinstance(item, Ring):
                    rings.append((*frame.point(float(item.x), float(item.y)), float(item.radius) * frame.across))
                elif isinstance(item, Text):
                    font = "Lato-Bold" if item.bold else "Lato-Regular"
                    turn = (item.turn + frame.turn) % 360
                    where = frame.point(float(item.x), float(item.y))
                    texts += [
                        (font, run.size, turn, *where, run.text)
                        for run in set_text(item.text, item.size, item.bold).runs
                    ]
        pages.append({"lines": [(*style, ends) for style, ends in lines.items()], "rings": rings, "texts": texts})
    size = (float(kit.paper.width) * POINTS_PER_MM, float(kit.paper.height) * POINTS_PER_MM)
    return {"size": size, "pages": pages}
