"""A casing: from the back, and cut across on the rod."""

from __future__ import annotations

from math import pi

from ...document.view import Label, Rise, View, Within
from ...drawing import LineType
from ...work_order.pictures.cloth import cloth, corner, half_round, rod
from ...work_order.pictures.signs import across
from ..sections import front_back, lit, stitched


def flat() -> View:
    """The panel's corner from the back."""
    wide, deep, header, depth = 46.0, 40.0, 10.0, 19.0
    return View(
        title="A new casing, the back towards you",
        spoken=(
            "The panel's upper left corner, its back towards you. The header is from the top edge down to the "
            "casing's upper row of stitching; the casing's depth from there down to its stitch line."
        ),
        shapes=(
            *corner(wide, deep),
            across(LineType.STITCH, 0, wide, -header, "heading.header"),
            across(LineType.STITCH, 0, wide, -header - depth, "heading.depth"),
        ),
        notes=(
            Rise("header", -header, 0, 0, "left", "heading.header"),
            Rise("depth", -header - depth, -header, 0, "left", "heading.depth"),
            Within("rod goes in here", (1, -header - depth), (wide - 1, -header)),
            Within("back", (1, -deep), (wide * 0.45, -header - depth)),
        ),
    )


def across_it() -> View:
    """The rod in the casing, and its depth flat beside it."""
    radius, off, below, up, tail, apart = 6.0, 1.8, 14.0, 10.0, 12.0, 1.2
    back, front = (half_round(radius, below, off, side, apart) for side in (1, -1))
    top = radius + off
    edge = top + up
    line = -below * (radius + off) / radius * 0.9
    flat = -34.0
    half = (top - line) * pi / 5
    return View(
        title="A new casing, cut across, flat and on the rod",
        spoken=(
            "On the left the panel's top cut across, flat, its front on the left: the header stands above the casing, "
            "the depth of which is from its upper row of stitching down to its stitch line. On the right the rod is in "
            "it, and both layers go round the rod."
        ),
        shapes=(
            lit(cloth((flat, edge - up), (flat, edge - 1.8), (flat + 0.5, edge - 0.6), (flat + 1.8, edge),
                      (flat + 3.1, edge - 0.6), (flat + 3.6, edge - 1.8), (flat + 3.6, edge - up)), "heading.header"),
            lit(cloth((flat, edge - up), (flat, edge - up - half * 1.6)), "heading.depth"),
            lit(cloth((flat + 3.6, edge - up), (flat + 3.6, edge - up - half * 1.6)), "heading.depth"),
            cloth((flat, edge - up - half * 1.6), (flat, line - tail)),
            stitched(flat, flat + 3.6, edge - up, "heading.header"),
            stitched(flat, flat + 3.6, edge - up - half * 1.6, "heading.depth"),
            *rod((0.0, 0.0), radius),
            cloth(*front[1:], (-apart, line - tail)),
            cloth(*back[1:], (apart, line - 2.0)),
            cloth(front[1], (-apart, top + 1.0), (-apart, edge - 1.0), (0, edge), (apart, edge - 1.0),
                  (apart, top + 1.0), back[1]),
            stitched(-apart, apart, top + 0.6),
            stitched(-apart, apart, line),
        ),
        notes=(
            Rise("header", edge - up, edge, flat, "left", "heading.header"),
            Rise("depth", edge - up - half * 1.6, edge - up, flat, "left", "heading.depth"),
            Label("rod", (radius * 0.5, radius * 0.3)),
            *front_back(flat, flat + 3.6, line - tail, edge - up - half * 1.6 - 1),
        ),
    )  # fmt: skip
