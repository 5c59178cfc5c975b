"""Eyelets: along the top, and one ring by itself."""

from __future__ import annotations

from ...document.view import Circle, Note, Rise, Shape, Span, View, Within
from ...drawing import LineType
from ...work_order.pictures.cloth import corner
from ...work_order.pictures.signs import across, box

WIDE, PLACES, CENTRE, BAND = 60.0, (12.0, 31.0, 50.0), 11.0, 21.0


def flat() -> View:
    """The panel's corner from the back."""
    shapes: list[Shape] = [
        *corner(WIDE, 34.0),
        across(LineType.MARK, 0, WIDE, -BAND, "heading.band"),
        *(Circle(LineType.CUT, (x, -CENTRE), r, "heading.count") for x in PLACES for r in (3.4, 6.2)),
    ]
    x = 4.0
    shapes.append(box(LineType.THIN, (0, -33.0), (x, 0), "heading.side_hem"))
    return View(
        title="Eyelets along the top, the back towards you",
        spoken=(
            "The panel's upper left corner, its back towards you. The centre of an eyelet is measured from the top "
            "edge straight down. The band is how deep the cloth is doubled and stiffened, from the top edge. The inset "
            "is from the side edge to the centre of the first. From the centre of one to that of the next there is so "
            "much at the most. The side hem is from the side edge in to its stitching. Eyelets are counted on one "
            "panel."
        ),
        shapes=tuple(shapes),
        notes=(
            Span("inset", 0, PLACES[0], 0, "above", "heading.edge_inset"),
            Span("apart, at most", PLACES[0], PLACES[1], 0, "above", "heading.max_pitch"),
            Rise("centre", -CENTRE, 0, 0, "left", "heading.eyelet_centre"),
            Rise("band", -BAND, 0, WIDE, "right", "heading.band"),
            Span("side hem", 0, x, -34.0, "below", "heading.side_hem"),
            *(
                Within(str(i), (x - 3.2, -CENTRE - 3.2), (x + 3.2, -CENTRE + 3.2), about="heading.count")
                for i, x in enumerate(PLACES, 1)
            ),
            Within("back", (6, -33), (27, -BAND - 1)),
        ),
    )


def _ring(table: str) -> tuple[list[Shape], list[Note]]:
    """One ring, face on, and beside it the panel's top cut across, at the same heights."""
    inside, x, deep = 7.0, 0.0, 30.0
    shapes: list[Shape] = [
        Circle(LineType.CUT, (x, -CENTRE - 6), inside, f"{table}.eyelet_inside"),
        across(LineType.CENTRE, x - 3.0, x + 3.0, -CENTRE - 6, f"{table}.eyelet_centre"),
        across(LineType.MARK, -20, 20, 0),
    ]
    notes: list[Note] = [
        Span("inside", x - inside, x + inside, -CENTRE - 6, "below", f"{table}.eyelet_inside"),
        Rise("centre", -CENTRE - 6, 0, -20, "left", f"{table}.eyelet_centre"),
        Within("back", (10, -deep), (20, -1)),
    ]
    return shapes, notes


def ring() -> View:
    """A ring by itself, and the circle that is cut for it."""
    shapes, notes = _ring("heading")
    y = -CENTRE - 6
    shapes += [
        Circle(LineType.CUT, (0, y), 14.0, "heading.eyelet_outside"),
        Circle(LineType.THIN, (0, y), 9.2, "heading.cut_circle"),
    ]
    return View(
        title="One eyelet, the back towards you",
        spoken=(
            "One ring in the panel's top, its back towards you. The inside is straight across the opening, the outside "
            "straight across the whole ring, rim to rim. The circle that is cut in the cloth lies between the two, "
            "hidden by the ring. The centre is measured from the top edge straight down."
        ),
        shapes=tuple(shapes),
        notes=(
            *notes,
            Span("outside", -14, 14, y, "below", "heading.eyelet_outside"),
            Span("cut circle", -9.2, 9.2, y, "above", "heading.cut_circle"),
        ),
    )


def old() -> View:
    """An eyelet that the panel came with."""
    shapes, notes = _ring("panel.heading")
    shapes.append(Circle(LineType.CUT, (0, -CENTRE - 6), 14.0))
    return View(
        title="An eyelet that it came with, the back towards you",
        spoken=(
            "One ring in the panel's top, its back towards you. The inside is straight across the opening. The centre "
            "is measured from the top edge straight down: down to the upper and to the lower edge of the opening, and "
            "the middle of the two."
        ),
        shapes=tuple(shapes),
        notes=tuple(notes),
    )


