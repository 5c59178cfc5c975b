"""Tabs: on the rod from the front, and one cut across."""

from __future__ import annotations

from ...document.view import Label, Note, Rise, Shape, Span, Stroke, View, Within
from ...drawing import LineType
from ...work_order.pictures.cloth import broken, broken_up, cloth, half_round, rod
from ..sections import front_back, head, lit, stitched
from .strip import seamed

WIDE, HALF = 60.0, 4.5
PLACES = (10.0, 30.0, 50.0)
ROD, GAP = 5.0, 10.0

def hung() -> View:
    """Tabs over the rod, from the front."""
    low, last = -24.0, PLACES[-1]
    spaces = zip((-8.0, *(x + HALF for x in PLACES)), (*(x - HALF for x in PLACES), WIDE + 6), strict=True)
    shapes: list[Shape] = [
        cloth((0, low), (0, 0), (WIDE, 0)),
        broken(0, WIDE, low, 1.5),
        broken_up(WIDE, low, 0, 1.5),
        *(Stroke(LineType.MARK, ((a, y), (b, y))) for a, b in spaces for y in (GAP, GAP + ROD)),
        *(
            Stroke(LineType.CUT, ((x - HALF, 0), (x - HALF, GAP + ROD + 1), (x + HALF, GAP + ROD + 1), (x + HALF, 0)),
                   "heading.count")
            for x in PLACES
        ),
    ]  # fmt: skip
    return View(
        title="Tabs over the rod, the front towards you",
        spoken=(
            "The panel's top from the front, its tabs over the rod. The gap is from the underside of the rod down to "
            "the panel's top edge. The inset is from the side edge to the centre of the end tab. From the centre of "
            "one tab to that of the next there is so much at the most. A tab's width is from side to side. Tabs are "
            "counted on one panel."
        ),
        shapes=tuple(shapes),
        notes=(
            Span("inset", 0, PLACES[0], GAP + ROD + 1, "above", "heading.edge_inset"),
            Span("apart, at most", PLACES[0], PLACES[1], GAP + ROD + 1, "above", "heading.max_pitch"),
            Rise("gap", 0, GAP, -8, "left", "heading.gap"),
            Span("width", last - HALF, last + HALF, 0, "below", "heading.tab_width"),
            *(
                Within(str(i), (x - HALF, 1), (x + HALF, GAP + ROD), about="heading.count")
                for i, x in enumerate(PLACES, 1)
            ),
            Within("front", (2, low + 3), (last - HALF - 2, -2)),
        ),
    )

def _round(table: str, allowance: str) -> tuple[list[Shape], list[Note]]:
    """A tab round the rod, its ends sewn to the back of the panel's top, cut across."""
    radius, gap, ends, apart, deep = 5.0, 11.0, 9.0, 1.6, 16.0
    edge = -radius - gap
    left, right = (half_round(radius, radius + gap, apart, side, apart * 0.6) for side in (-1, 1))
    at = -4 * apart
    shapes: list[Shape] = [
        *rod((0.0, 0.0), radius),
        cloth((-apart * 0.6, edge), *reversed(left), *right[1:], (apart * 0.6, edge)),
        *(lit(cloth((x, edge), (x, edge - ends)), allowance) for x in (-apart * 0.6, apart * 0.6)),
        *head(edge, deep, 0.0, edge - deep - 9, x=at),
        *(stitched(at, apart * 0.6, edge - y) for y in (1.8, ends - 1.5)),
    ]
    return shapes, [
        Rise("gap", edge, -radius, at, "left", f"{table}.gap"),
        Label("rod", (radius * 0.4, radius * 0.3)),
        *front_back(at, at + 3.6, edge - deep - 9, edge - deep + 1),
    ]

def across_it() -> View:
    """The strip that tabs are cut from, and one tab on the rod."""
    shapes, notes = _round("heading", "heading.end_allowance")
    return View(
        title="One tab: its strip, and on the rod, cut across",
        spoken=(
            "Above, the strip that tabs are cut from, folded wrong side out: the seam allowance is from the row of "
            "stitching to the raw edges. Below, a tab round the rod, cut across, the panel's front on the left: the "
            "gap is from the underside of the rod down to the panel's top edge; both ends of the tab are sewn to the "
            "panel's back, so far down from its top edge as the end allowance says."
        ),
        shapes=(*_moved(seamed(36, 14, 25, 4.5)), *shapes),
        notes=(
            Rise("seam", 20.5, 25, -18, "left", "heading.seam_allowance"),
            Rise("sewn on", -25.0, -16.0, 1.0, "right", "heading.end_allowance"),
            *notes,
        ),
    )

def _moved(shapes: tuple[Shape, ...]) -> tuple[Shape, ...]:
    """The strip, its middle over the rod's."""
    strokes = [shape for shape in shapes if isinstance(shape, Stroke)]
    return tuple(Stroke(s.kind, tuple((x - 18, y) for x, y in s.points), s.about) for s in strokes)

def old() -> View:
    """A tab that the panel came with."""
    shapes, notes = _round("panel.heading", "")
    return View(
        title="A tab that it came with, cut across",
        spoken=(
            "A tab round the rod, cut across, the panel's front on the left: the gap is from the underside of the rod "
            "down to the panel's top edge."
        ),
        shapes=tuple(shapes),
        notes=(*notes, Label("tab", (0.96, -22.0))),
    )
