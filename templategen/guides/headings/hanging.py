"""Rings, clips and hooks: along the top from the back, and one cut across."""

from __future__ import annotations

from math import cos, pi, sin

from ...document.view import Circle, Label, Note, Point, Rise, Shape, Span, Stroke, View, Within
from ...drawing import LineType
from ...work_order.pictures.cloth import corner, rod, thread
from ..sections import front_back, head

ROD, RING = 4.0, 9.0
"""Radius of the rod, and of the inside of a ring."""
HOLD = ROD - 2 * RING
"""Where a ring holds: below the rod's centre, at the lowest point of its inside."""
BELOW, DEEP, TAIL = 7.0, 17.0, 10.0
WIDE, PLACES = 60.0, (10.0, 30.0, 50.0)


def _row(thing: str, said: str, shapes: tuple[Shape, ...]) -> View:
    """The panel's corner from the back, with what holds it."""
    return View(
        title=f"{thing.capitalize()} along the top, the back towards you",
        spoken=(
            f"The panel's upper left corner, its back towards you. {said} The inset is from the side edge to the "
            "centre of the first. From the centre of one to that of the next there is so much at the most. "
            f"{thing.capitalize()} are counted on one panel."
        ),
        shapes=(*corner(WIDE, 28.0), *shapes),
        notes=(
            Span("inset", 0, PLACES[0], 8.0, "above", "heading.edge_inset"),
            Span("apart, at most", PLACES[0], PLACES[1], 8.0, "above", "heading.max_pitch"),
            Rise("set below", -6, 0, 0, "left", "heading.set_below"),
            *(
                Within(str(i), (x - 10, -17), (x - 2.5, -9), about="heading.count")
                for i, x in enumerate(PLACES, 1)
            ),
            Within("back", (PLACES[0], -27), (PLACES[1] - 2, -19)),
        ),
    )  # fmt: skip


def rings() -> View:
    """Rings sewn to the back of the top, or clips."""
    shapes: list[Shape] = [
        *(Circle(LineType.MARK, (x, 0.2), r, "heading.count") for x in PLACES for r in (6.2, 7.0)),
        *(Stroke(LineType.MARK, ((x - 1.5, y), (x + 1.5, y)), "heading.count") for x in PLACES for y in (-6.0, -7.2)),
    ]
    return _row("rings", "Rings are sewn to its back, so far below its top edge.", tuple(shapes))


def hooks() -> View:
    """Hooks on the back."""
    shapes: list[Shape] = []
    for x in PLACES:
        bend: list[Point] = [(x - 2.0 * cos(pi * i / 8), -8.0 + 2.0 * sin(pi * i / 8)) for i in range(9)]
        shapes.append(Stroke(LineType.CUT, ((x - 2.0, -16.0), *bend, (x + 2.0, -9.5)), "heading.count"))
    return _row("hooks", "Hooks stand on its back; their bends hold so far below its top edge.", tuple(shapes))


def _ring(about: str) -> tuple[Shape, ...]:
    return (
        *rod((0.0, 0.0), ROD),
        *(Circle(LineType.MARK, (0.0, ROD - RING), r, about) for r in (RING, RING + 1.1)),
    )


def _measures(table: str, front: float) -> list[Note]:
    """From the top of the rod down to where the ring holds; from the panel's top edge down to the same."""
    return [
        Rise("drop", HOLD, ROD, -RING, "left", f"{table}.drop"),
        Rise("set below", HOLD, HOLD + BELOW, front, "left", f"{table}.set_below"),
        Label("rod", (ROD * 0.5, ROD * 0.3)),
        *front_back(front, front + 3.6, HOLD + BELOW - DEEP - TAIL, HOLD + BELOW - DEEP + 1),
    ]


_DROP = (
    "The drop is from the top of the rod down to where the ring holds. The panel's top edge stands above that place by "
    "so much as is set below."
)


def ring_across(table: str = "heading") -> View:
    """A ring on the rod, sewn to the panel."""
    front, new = -7.0, table == "heading"
    holds = "heading.held_by" if new else ""
    notes = _measures(table, front)
    notes.append(Label("ring or clip", (RING * 0.7, ROD - RING - RING * 0.72), about=holds))
    if new:
        notes.append(Span("inside", -RING, RING, ROD - RING, "above", "heading.ring_inside"))
    inside = " The inside of a ring is straight across its opening." if new else ""
    return View(
        title="A ring on the rod, cut across" if new else "A ring that it came with, cut across",
        spoken=f"Rod and panel cut across, the front on the left, the ring at the panel's back. {_DROP}{inside}",
        shapes=(
            *_ring("heading.ring_inside" if new else ""),
            *head(HOLD + BELOW, DEEP, 0.0, HOLD + BELOW - DEEP - TAIL, x=front),
            *(_about(thread(front + 2.6, 1.4, HOLD - 0.5, high), holds) for high in (3.0, 1.6)),
        ),
        notes=tuple(notes),
    )


def _about(stroke: Stroke, about: str) -> Stroke:
    return Stroke(stroke.kind, stroke.points, about)


def hook_shape(front: float, about: str) -> tuple[Shape, ...]:
    """A hook from the panel's back over the ring's lowest point, and its stitches."""
    shank, y = front + 6.0, HOLD - 0.5
    wide = 2.6
    bend = [(shank + wide - wide * cos(pi * i / 10), y + wide * 0.9 * sin(pi * i / 10) - 0.6) for i in range(11)]
    points: tuple[Point, ...] = ((shank, y - 12), *bend, (shank + 2 * wide, y - 3))
    return (
        Stroke(LineType.CUT, points, about),
        *(_about(thread(front + 2.6, shank + 0.9, y - d, 1.8), about) for d in (4.5, 10.0)),
    )


def hook_across(
    table: str = "heading", fixed: str = "heading.fixed", title: str = "A hook on a ring, cut across"
) -> View:
    """A hook on the panel's back, in a ring on the rod; ``fixed`` is what its stitches are about."""
    front = -8.6
    notes = _measures(table, front)
    hooks_on = "heading.hooks_on" if fixed else ""
    notes.append(Label("ring or glider", (RING * 0.75, ROD - RING - RING * 0.66), about=hooks_on))
    if fixed:
        notes.append(Label("sewn, pinned", (front + 6.9, HOLD - 10.5), about=fixed))
        notes.append(Span("inside", -RING, RING, ROD - RING, "above", "heading.ring_inside"))
    inside = " The inside of a ring is straight across its opening." if fixed else ""
    return View(
        title=title,
        spoken=f"Rod and panel cut across, the front on the left, the hook at the panel's back. {_DROP}{inside}",
        shapes=(
            *_ring("heading.ring_inside" if fixed else ""),
            *head(HOLD + BELOW, DEEP, 0.0, HOLD + BELOW - DEEP - TAIL, x=front),
            *hook_shape(front, fixed),
        ),
        notes=tuple(notes),
    )
