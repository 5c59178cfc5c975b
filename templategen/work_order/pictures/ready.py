"""What is got ready: a sheet whose bars are measured, and two pieces that are taped together."""

from __future__ import annotations

from ...document.view import Circle, Label, Shape, Span, Stroke, View, Within
from ...drawing import LineType
from .cloth import broken
from .signs import arc, box


def bars() -> View:
    """A sheet with its two bars, and a rule laid along one of them."""
    wide, high, across, along = 216.0, 150.0, (12.0, 112.0), (36.0, 136.0)
    shapes: list[Shape] = [
        Stroke(LineType.MARK, ((0, high), (0, 0), (wide, 0), (wide, high))),
        broken(0, wide, high, 3.0),
        *_bar((across[0], 14.0), (across[1], 14.0)),
        *_bar((202.0, along[0]), (202.0, along[1])),
        box(LineType.CUT, (6.0, 17.0), (172.0, 34.0)),
        *(Stroke(LineType.THIN, ((12.0 + 10 * i, 17.0), (12.0 + 10 * i, 17.0 + (8 if i % 5 == 0 else 4))))
          for i in range(16)),
    ]  # fmt: skip
    return View(
        title="A sheet and its two bars",
        spoken=(
            "The lower part of a printed sheet. At its foot a bar runs across, at its right edge one runs along. A "
            "steel rule is laid along the lower one, its zero on the bar's end: each bar must be 100 mm long."
        ),
        shapes=tuple(shapes),
        notes=(
            Span("100 mm", *across, 0, "below"),
            Label("bar along the sheet", (202.0, 90.0)),
            Label("steel rule", (172.0, 25.0)),
            Label("bar across the sheet", (112.0, 14.0)),
            Within("sheet", (20.0, 60.0), (180.0, 130.0)),
        ),
    )


def _bar(start: tuple[float, float], end: tuple[float, float]) -> tuple[Shape, ...]:
    tick = 4.0
    dx, dy = (tick, 0.0) if start[0] == end[0] else (0.0, tick)
    ends = (Stroke(LineType.MARK, ((x - dx, y - dy), (x + dx, y + dy))) for x, y in (start, end))
    return (Stroke(LineType.CUT, (start, end)), *ends)


def taping() -> View:
    """A join: the right-hand piece cut along its trim line and laid on the left-hand one, edge on the match line."""
    shapes: list[Shape] = [
        Stroke(LineType.MARK, ((0, 0), (0, 40), (96, 40), (96, 0), (0, 0))),
        Stroke(LineType.MATCH, ((80, -6), (80, 46))),
        Stroke(LineType.MARK, ((104, 12), (104, 52), (190, 52), (190, 12))),
        Stroke(LineType.TRIM, ((104, 6), (104, 58))),
        Stroke(LineType.MARK, ((104, 12), (190, 12))),
        *(Circle(LineType.MARK, (80, y), 4.0) for y in (8.0, 34.0)),
        *(arc(LineType.MARK, (104, y), 4.0, -90, 90, 12) for y in (20.0, 46.0)),
    ]  # fmt: skip
    return View(
        title="Two pieces at a join",
        spoken=(
            "Two pieces of a strip side by side. The left-hand piece has a match line and, beyond it, a tongue; the "
            "right-hand piece is cut along its heavy trim line. Its cut edge is laid on the match line, so that the "
            "halves of each ring become whole."
        ),
        shapes=tuple(shapes),
        notes=(
            Label("match line", (80, -6), "left"),
            Label("tongue, lies below", (93, 3)),
            Label("trim line: cut here", (104, 58)),
            Label("rings meet", (104, 46.0 + 4.0)),
            Within("piece 1", (4, 10), (74, 30), "left"),
            Within("piece 2", (112, 20), (186, 46)),
        ),
    )
