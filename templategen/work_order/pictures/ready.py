"""What is got ready: a sheet whose bars are measured, and two pieces that are taped together."""

from __future__ import annotations

from collections.abc import Iterator

from ...document.view import Label, Shape, Span, Stroke, View, Within
from ...drawing import LineType
from .cloth import broken, broken_up
from .sections import numbered
from .signs import arc, box

RING = 4.0
"""Radius of a registration mark's ring, larger than it is beside so short a piece."""


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
    """1: two pieces, the right-hand one trimmed. 2: laid on the left-hand one, edge on the match line."""
    high, match, away, end, low = 30.0, 34.0, 62.0, 98.0, -56.0
    shapes: list[Shape] = [
        *_from_left(match + 14, 0, high),
        Stroke(LineType.MARK, ((match + 14, 0), (match + 14, high))),
        Stroke(LineType.MATCH, ((match, 0), (match, high))),
        *_join(match, high, left=True),
        *_to_right(away, end, 0, high),
        Stroke(LineType.TRIM, ((away, -5), (away, high + 5))),
        *_join(away, high, right=True),
        *_from_left(match, low, high),
        *_to_right(match, end, low, high),
        Stroke(LineType.TRIM, ((match, low), (match, low + high))),
        *_join(match, high, low, left=True, right=True),
    ]
    return View(
        title="Two pieces at a join: trimmed, and taped together",
        spoken=(
            "1: two pieces of a strip side by side. The left-hand piece has a match line and, beyond it, a tongue; the "
            "right-hand piece is cut along its heavy trim line. 2: its cut edge is laid on the match line, over the "
            "tongue, so that the halves of each ring become whole and the little figures are closed."
        ),
        shapes=tuple(shapes),
        notes=(
            Label("match line", (match, high * 0.93), "left"),
            Label("tongue", (match + 12, high * 0.05), "left"),
            Label("trim line: cut", (away, high + 4)),
            Label("rings whole", (match + RING, low + high * 0.8)),
            Label("figures closed", (match + 7, low + high * 0.5)),
            *numbered(((match + away) / 2,), -2.0, 1.0),
            Within("2", (match - 6, low - 12), (match + 6, low - 1), at=(match, low)),
        ),
    )


def _from_left(right: float, low: float, high: float) -> tuple[Shape, ...]:
    """The end of a piece that comes from the left."""
    return (
        broken_up(0, low, low + high, 1.5),
        Stroke(LineType.MARK, ((0, low), (right, low))),
        Stroke(LineType.MARK, ((0, low + high), (right, low + high))),
    )


def _to_right(left: float, right: float, low: float, high: float) -> tuple[Shape, ...]:
    """The beginning of a piece that goes on to the right."""
    return (
        broken_up(right, low, low + high, 1.5),
        Stroke(LineType.MARK, ((left, low), (right, low))),
        Stroke(LineType.MARK, ((left, low + high), (right, low + high))),
    )


def _join(
    x: float, high: float, foot: float = 0.0, *, left: bool = False, right: bool = False
) -> Iterator[Shape]:
    """Two registration marks and a sign: what the left-hand piece shows of them, what the right-hand one, or both.

    Every mark stands across the line, the part beyond the piece's own edge hidden or cut off.
    """
    for y in (foot + high * 0.2, foot + high * 0.8):
        for side, there in ((90, left), (-90, right)):
            if there:
                yield arc(LineType.MARK, (x, y), RING, side, side + 180, 12)
    low, top, tooth = foot + high * 0.4, foot + high * 0.6, 5.0
    if left:
        yield Stroke(LineType.MARK, ((x, low), (x - tooth, low), (x - tooth, top), (x, top)))
    if right:
        yield Stroke(LineType.MARK, ((x, low), (x + tooth, low), (x + tooth * 1.6, (low + top) / 2),
                                     (x + tooth, top), (x, top)))  # fmt: skip
