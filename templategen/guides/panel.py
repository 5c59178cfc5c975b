"""The panel as it came: flat, cut across, and those that are alike."""

from __future__ import annotations

from ..document.view import Rise, Shape, Span, Stroke, View, Within
from ..drawing import LineType
from ..work_order.pictures.cloth import broken
from ..work_order.pictures.signs import across, box
from .sections import GAP, foot, front_back, head, stitched

WIDE, HIGH = 44.0, 56.0
HEADER, CASING, HEM = 8.0, 12.0, 8.0


def flat() -> View:
    """A panel flat, its back up."""
    top = HIGH - HEADER
    return View(
        title="The panel as it came, flat, its back up",
        spoken=(
            "The panel as it came, laid flat, its back up. Its width is from side edge to side edge, along the top; "
            "its length from the top edge to the bottom edge. The header is from the top edge down to the casing's "
            "upper row of stitching, the casing from there down to its stitch line. The hem is from the bottom edge up "
            "to its stitching."
        ),
        shapes=(
            box(LineType.CUT, (0, 0), (WIDE, HIGH)),
            *(Stroke(LineType.THIN, ((x, 0), (x, HIGH))) for x in (1.6, WIDE - 1.6)),
            across(LineType.STITCH, 0, WIDE, top, "panel.header"),
            across(LineType.STITCH, 0, WIDE, top - CASING, "panel.casing"),
            across(LineType.STITCH, 0, WIDE, HEM, "panel.hem"),
        ),
        notes=(
            Span("width", 0, WIDE, HIGH, "above", "panel.width"),
            Rise("length", 0, HIGH, WIDE, "right", "panel.length"),
            Rise("header", top, HIGH, 0, "left", "panel.header"),
            Rise("casing", top - CASING, top, 0, "left", "panel.casing"),
            Rise("hem", 0, HEM, 0, "left", "panel.hem"),
            Within("back, up", (2, HEM), (WIDE - 2, top - CASING)),
        ),
    )


def cut_across() -> View:
    """Its top and its hem in section, with what is turned under inside."""
    up, break_at = 62.0, 29.0
    hem, turn, casing, header = 17.0, 7.0, 17.0, 7.0
    line = up - header - casing
    shapes: list[Shape] = [
        *head(up, header + casing, turn, break_at + 1.5, "panel.casing", "panel.top_turn"),
        *foot(hem, turn, break_at - 1.5, "panel.hem", "panel.turn_under"),
        stitched(0, GAP, up - header, "panel.header"),
        stitched(0, GAP, line + 1.2, "panel.casing"),
        stitched(0, 2 * GAP, hem - 1.2, "panel.hem"),
        *(broken(-4, 4, y, 0.8) for y in (break_at + 1.5, break_at - 1.5)),
    ]
    return View(
        title="The panel as it came, cut across",
        spoken=(
            "Top and hem of the panel cut across, the front on the left and the back on the right. Above, the header "
            "stands over the casing, the tube for the rod; inside the casing, along its stitch line, some cloth is "
            "turned under. Below, the hem is turned up to the back; inside it, some cloth is turned under, from the "
            "hem's upper edge down to the raw edge. Casing and hem are measured to their stitching."
        ),
        shapes=tuple(shapes),
        notes=(
            Rise("header", up - header, up, 0, "left", "panel.header"),
            Rise("casing", line + 1.2, up - header, 0, "left", "panel.casing"),
            Rise("hem", 0, hem - 1.2, 0, "left", "panel.hem"),
            Rise("turned under", line, line + turn, GAP, "right", "panel.top_turn"),
            Rise("turned under", hem - turn, hem, 2 * GAP, "right", "panel.turn_under"),
            *front_back(0, 2 * GAP, hem + 1, break_at + 6),
        ),
    )


def alike() -> View:
    """Panels that are alike, and one of another lot."""
    wide, high, apart, longer = 11.0, 44.0, 4.0, 5.0
    lefts = [i * (wide + apart) for i in range(3)]
    other = lefts[-1] + wide + 3 * apart
    return View(
        title="Panels alike, and of another lot",
        spoken=(
            "Three panels that are alike, side by side, seen from the front: how many there are is counted. Beside "
            "them one that was bought at another time and is longer: its own length is from its top edge to its bottom "
            "edge."
        ),
        shapes=(
            *(box(LineType.CUT, (x, 0), (x + wide, high), "panel.count") for x in lefts),
            *(across(LineType.STITCH, x, x + wide, y) for x in lefts for y in (6, high - 7)),
            box(LineType.CUT, (other, -longer), (other + wide, high), "panel.lots"),
            *(across(LineType.STITCH, other, other + wide, y) for y in (6 - longer, high - 7)),
        ),
        notes=(
            *(
                Within(str(i), (x, 8), (x + wide, high - 9), about="panel.count")
                for i, x in enumerate(lefts, 1)
            ),
            Within("how many alike", (0, -14), (lefts[-1] + wide, -1), about="panel.count"),
            Rise("other lot", -longer, high, other + wide, "right", "panel.lots"),
        ),
    )  # fmt: skip
