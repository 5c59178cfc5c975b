"""The items of each piece: its stretch of the drawing, its joins, its name."""

from __future__ import annotations

from bisect import bisect_left, bisect_right
from collections.abc import Sequence

from ..drawing import USUAL, Bounds, Item, Line, LineType, Look
from ..lengths import Tape
from .checks import Check, checks_of
from .joins import furniture
from .naming import name_items, signs_said
from .pieces import Piece

_SHORT = 200
"""Lines along that are no longer than this, in mm, are looked up by where they start."""


def items_of(pieces: Sequence[Piece], tape: Tape, look: Look = USUAL) -> list[list[Item]]:
    """Everything to be drawn for each of a drawing's ``pieces``, in the drawing's own coordinates.

    A line that runs along is cut to what the piece shows, an outline to the whole
    piece; all else is whole or absent. ``tape`` is what distances are shown on.
    """
    drawing = pieces[0].drawing
    if len(pieces) == 1:
        return [[*drawing.items, *name_items(pieces[0], tape, look=look)]]
    outline, checks = drawing.outline, _by_piece(pieces, tape)
    signs = signs_said(pieces, tape)
    risers = [line for line in outline.lines if not line.runs_along]
    along: list[Line] = []
    whole: list[tuple[Bounds, Item]] = []
    for item in drawing.items:
        if isinstance(item, Line) and item.runs_along:
            along.append(item)
        elif not (isinstance(item, Line) and item.kind is LineType.CUT):
            whole.append((item.bounds, item))
    whole.sort(key=lambda pair: float(pair[0].left))
    along.sort(key=_start)
    lefts = [float(bounds.left) for bounds, _ in whole]
    starts = [_start(line) for line in along]
    long_ones = [line for line in along if _length(line) > _SHORT]
    sliced: list[list[Item]] = []
    for piece in pieces:
        left, right = map(float, piece.shows)
        near = whole[bisect_left(lefts, left) : bisect_right(lefts, right)]
        short = along[bisect_left(starts, piece.start - _SHORT) : bisect_right(starts, piece.end)]
        lines = [*long_ones, *(line for line in short if _length(line) <= _SHORT)]
        sliced.append(
            [
                *(kept for line in lines if (kept := _cut_to(piece, line))),
                *(line for line in risers if piece.start <= line.x1 <= piece.end),
                *(item for bounds, item in near if float(bounds.right) <= right),
                *furniture(piece, outline, checks[piece.number], tape, look),
                *name_items(piece, tape, signs if piece.number == 1 else "", look),
            ]
        )
    return sliced


def _by_piece(pieces: Sequence[Piece], tape: Tape) -> dict[int, list[Check]]:
    """The check lengths that each piece has a part of; of the whole, its two ends."""
    checks: dict[int, list[Check]] = {piece.number: [] for piece in pieces}
    for check in checks_of(pieces, tape):
        first, last = check.first.number, check.last.number
        for number in (first, last) if check.whole else range(first, last + 1):
            checks[number].append(check)
    return checks


def _start(line: Line) -> float:
    return float(min(line.x1, line.x2))


def _length(line: Line) -> float:
    return abs(float(line.x2) - float(line.x1))


def _cut_to(piece: Piece, line: Line) -> Line | None:
    start, end = (piece.start, piece.end) if line.kind is LineType.CUT else piece.shows
    left = max(min(line.x1, line.x2), start)
    right = min(max(line.x1, line.x2), end)
    return Line(line.kind, left, line.y1, right, line.y2) if left < right else None
