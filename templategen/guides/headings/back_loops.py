"""Back loops: on the casing, from the back; and one by itself, flat and cut across."""

from __future__ import annotations

from ...document.view import Note, Rise, Shape, Span, View, Within
from ...drawing import LineType
from ...work_order.pictures.cloth import cloth, corner, turned
from ...work_order.pictures.signs import across, box
from ..sections import front_back, head, lit, stitched
from .strip import seamed

WIDE, DEEP = 60.0, 34.0
HALF = 4.5
"""Half a loop's width."""
PLACES = (10.0, 30.0, 50.0)
SEAM, LINE, END = 4.0, 22.0, 27.0
"""The upper seam, the casing's stitch line and the loop's end, below the top edge."""


def sewn() -> View:
    """The panel's corner from the back, loops on it."""
    shapes: list[Shape] = [*corner(WIDE, DEEP), across(LineType.STITCH, 0, WIDE, -LINE)]
    shapes += [box(LineType.CUT, (x - HALF, -END), (x + HALF, -SEAM), "heading.count") for x in PLACES]
    last = PLACES[-1]
    return View(
        title="Back loops on the casing, the back towards you",
        spoken=(
            "The panel's upper left corner, its back towards you, the first loops on the casing. The inset is from "
            "the side edge to the centre of the end loop. From the centre of one loop to that of the next there is so "
            "much at the most. A loop's width is from side to side. Loops are counted on one panel."
        ),
        shapes=tuple(shapes),
        notes=(
            Span("inset", 0, PLACES[0], 0, "above", "heading.edge_inset"),
            Span("apart, at most", PLACES[0], PLACES[1], 0, "above", "heading.max_pitch"),
            Span("width", last - HALF, last + HALF, -END, "below", "heading.loop_width"),
            *(
                Within(str(i), (x - HALF, -LINE + 2), (x + HALF, -SEAM - 2), about="heading.count")
                for i, x in enumerate(PLACES, 1)
            ),
            Within("back", (PLACES[0] + HALF, -DEEP), (PLACES[1] - HALF, -LINE - 1)),
        ),
    )


def alone() -> View:
    """The strip that loops are cut from, and one loop."""
    shapes, notes = _loop("heading")
    return View(
        title="One back loop: its strip, cut, and sewn on",
        spoken=(
            "Above, the strip that loops are cut from, folded wrong side out: the seam allowance is from the row of "
            f"stitching to the raw edges. {_SAID}"
        ),
        shapes=(*seamed(36, 10, 20, 4), *shapes),
        notes=(Rise("seam", 16, 20, 0, "left", "heading.seam_allowance"), *notes),
    )


def old() -> View:
    """A loop that the panel came with."""
    shapes, notes = _loop("panel.heading")
    return View("A back loop that it came with", _SAID, tuple(shapes), tuple(notes))


_SAID = (
    "On the left a loop laid flat: its cut length is from end to end. On the right it is sewn to the casing, cut "
    "across, the panel's front on the left: at its upper seam some of the loop is turned under, measured from the fold "
    "to the raw edge; below its lower seam, which lies on the casing's stitch line, the rest of it hangs down."
)


def _loop(table: str) -> tuple[list[Shape], list[Note]]:
    """A loop flat, and at the same heights sewn to the casing, cut across."""
    turn, at, gap = 6.0, 30.0, 3.6
    upper, low = -SEAM, -END
    whole, under, below = (f"{table}.{name}" for name in ("loop_length", "upper_turn", "lower_allowance"))
    bulge = [(at + 2 * gap + 4.5 * (1 - (2 * i / 12 - 1) ** 2), -LINE + (LINE - SEAM) * i / 12) for i in range(13)]
    left, right = at + 2 * gap, at + 1.5 * gap
    shapes: list[Shape] = [
        box(LineType.CUT, (0, low), (2 * HALF, upper + turn), whole),
        across(LineType.FOLD, 0, 2 * HALF, upper, under),
        across(LineType.STITCH, 0, 2 * HALF, -LINE, below),
        *head(0.0, LINE + 2, 0.0, -DEEP, x=at),
        cloth(*bulge),
        lit(cloth((left, -LINE), (left, low)), below),
        lit(cloth((left, upper), *turned(left, right, upper + 0.9), (right, upper - turn)), under),
        stitched(at + gap, left, -LINE),
        stitched(at + gap, left, upper - 1.6),
    ]
    return shapes, [
        Rise("cut length", low, upper + turn, 0, "left", whole),
        Rise("turned under", upper - turn, upper + 0.9, left, "right", under),
        Rise("below seam", low, -LINE, left, "right", below),
        *front_back(at, at + gap, -DEEP - 3, low),
    ]

