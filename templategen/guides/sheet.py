"""The paper: a sheet with its margins and check bars, a roll, and spacing strips."""

from __future__ import annotations

from ..document.view import Rise, Shape, Span, Stroke, View, Within
from ..drawing import LineType
from ..work_order.pictures.cloth import broken
from ..work_order.pictures.signs import across, box

WIDE, HIGH = 40.0, 54.0


def size() -> View:
    """A sheet's size, which way it is printed, and the bars that are measured."""
    left, low, long = 9.0, 9.0, 24.0
    return View(
        title="A sheet, printed side up",
        spoken=(
            "A sheet as it is read. Its width is from left to right, its height from bottom to top: upright it is "
            "printed in portrait, turned in landscape. Two bars are printed on it, one across the sheet and one along "
            "it: each is measured from end to end with a steel rule."
        ),
        shapes=(
            box(LineType.CUT, (0, 0), (WIDE, HIGH), "paper.orientation"),
            *_bar(left, low, long, True, "printer.across"),
            *_bar(left, low + 6, long, False, "printer.along"),
        ),
        notes=(
            Span("width", 0, WIDE, HIGH, "above", "paper.width"),
            Rise("height", 0, HIGH, 0, "left", "paper.height"),
            Within("across", (left, low), (left + long, low + 7), about="printer.across"),
            Within("along", (left + 2, low + 14), (left + long, low + 22), about="printer.along"),
            Within("upright, or turned", (left - 6, 42), (WIDE - 1, HIGH - 1), about="paper.orientation"),
        ),
    )


def _bar(x: float, y: float, long: float, level: bool, about: str) -> tuple[Shape, ...]:
    """A bar from one end mark to the other."""
    if level:
        return (
            across(LineType.CUT, x, x + long, y, about),
            *(Stroke(LineType.MARK, ((a, y - 1.6), (a, y + 1.6)), about) for a in (x, x + long)),
        )
    return (
        Stroke(LineType.CUT, ((x, y), (x, y + long)), about),
        *(across(LineType.MARK, x - 1.6, x + 1.6, b, about) for b in (y, y + long)),
    )


def margins() -> View:
    """What the printer cannot reach."""
    left, right, top, low = 7.0, 7.0, 8.0, 11.0
    inner = (left, low), (WIDE - right, HIGH - top)
    return View(
        title="The margins of a sheet, printed side up",
        spoken=(
            "A sheet as it is read. The margins at its left, right, top and bottom are what the printer leaves blank: "
            "from the edge of the sheet in to the dashed line."
        ),
        shapes=(box(LineType.CUT, (0, 0), (WIDE, HIGH)), box(LineType.FOLD, *inner)),
        notes=(
            Span("left", 0, left, HIGH, "above", "paper.margins.left"),
            Span("right", WIDE - right, WIDE, HIGH, "above", "paper.margins.right"),
            Rise("top", HIGH - top, HIGH, 0, "left", "paper.margins.top"),
            Rise("bottom", 0, low, 0, "left", "paper.margins.bottom"),
            Within("printed", (left + 1, low + 2), (WIDE - right - 1, HIGH - top - 2)),
        ),
    )


def roll() -> View:
    """A roll of paper."""
    wide, long, radius = 40.0, 30.0, 5.0
    return View(
        title="A roll of paper",
        spoken="A roll, its paper drawn off it. Its width is from one edge of the paper to the other.",
        shapes=(
            Stroke(LineType.CUT, ((0, 0), (0, long), (wide, long), (wide, 0)), "paper.roll"),
            broken(0, wide, 0, 1.2),
            box(LineType.CUT, (-2, long), (wide + 2, long + 2 * radius)),
            *(box(LineType.MARK, (x, long + radius - 2), (x + 4, long + radius + 2)) for x in (-6.0, wide + 2)),
        ),
        notes=(
            Span("width of the roll", 0, wide, 0, "below", "paper.roll"),
            Within("roll", (6, long), (wide - 6, long + 2 * radius)),
        ),
    )


def strips() -> View:
    """Spacing strips: how many, and one of half the length."""
    long, high = 64.0, 8.0
    rows = (28.0, 16.0)
    marks = [4.0 + i * 8 for i in range(8)]
    shapes: list[Shape] = []
    for y in rows:
        shapes.append(box(LineType.CUT, (0, y), (long, y + high), "paper.strips"))
        shapes += [Stroke(LineType.MARK, ((x, y), (x, y + 2.5)), "paper.strips") for x in marks]
    shapes += [
        box(LineType.CUT, (0, 0), (long / 2, high), "paper.half_strip"),
        *(Stroke(LineType.MARK, ((x, 0), (x, 2.5)), "paper.half_strip") for x in marks[:4]),
    ]
    return View(
        title="Spacing strips",
        spoken=(
            "Two spacing strips, each as long as the panel is wide: how many are printed is counted. Below them a "
            "strip of half the length, which is turned end for end for the panel's other half."
        ),
        shapes=tuple(shapes),
        notes=(
            *(
                Within(str(i), (4, y + 2.5), (12, y + high), about="paper.strips")
                for i, y in enumerate(rows, 1)
            ),
            Within("how many", (14, rows[0] + high + 0.5), (50, rows[0] + high + 9), about="paper.strips"),
            Within("half strip", (long / 2 + 1, 0), (long, high), about="paper.half_strip"),
        ),
    )  # fmt: skip
