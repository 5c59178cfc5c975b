"""A map of what pieces make when they are joined: one long figure, every piece with its page, every join its letter."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from math import ceil
from typing import TYPE_CHECKING

from ..document.blocks import Block, Figure, Paragraph
from ..drawing import CAP, DESCENT, Anchor, Item, LineType, Text, capitalised, rectangle, width_of, wrap
from ..lengths import Length, Tape
from .pieces import Piece

if TYPE_CHECKING:
    from .placed import Placed

MOST_PIECES = 60
"""Pieces of one template that are drawn: our choice, as for sheets."""
_RAISED = 1.6
"""By how much every other piece stands higher, in mm."""
_BETWEEN_ROWS = 3.5


def joined_maps(
    sheets: Sequence[Sequence[Placed]], first: int, width: float, size: float, tape: Tape
) -> Iterator[Block]:
    """For each template of several pieces how they are joined; pages count from ``first`` on, mm, points."""
    pages: dict[str, dict[int, tuple[Piece, int]]] = {}
    for page, placed in enumerate(sheets, first):
        for each in placed:
            if each.piece.of > 1:
                pages.setdefault(each.piece.drawing.name, {})[each.piece.number] = (each.piece, page)
    for pieces in pages.values():
        yield from _joined([pieces[number] for number in sorted(pieces)], width, size, tape)


def _joined(pieces: Sequence[tuple[Piece, int]], width: float, size: float, tape: Tape) -> Iterator[Block]:
    drawing = pieces[0][0].drawing
    end_to_end = f"{tape.show_both(Length(drawing.length))} end to end"
    title = f"{capitalised(drawing.name)}: {len(pieces)} pieces, {end_to_end}"
    if len(pieces) > MOST_PIECES:
        joins = [piece.right.label for piece, _ in pieces if piece.right]
        yield Paragraph(f"{title}. In the order of their numbers, left to right; joins {joins[0]} to {joins[-1]}.")
        return
    rows = _rows(pieces, width, size)
    scale = min(width / sum(_seen(piece) for piece, _ in row) for row in rows)
    for i, row in enumerate(rows):
        items: list[Item] = []
        top = 0.0
        if not i:
            lines = (title,) if width_of(title, size, True) <= width else wrap(title, size, width, True)
            for line in lines:
                top -= size * 0.46
                items.append(Text(0, top + size * 0.11, line, size, bold=True))
            top -= 1.2
        drawn, height = _row(row, scale, top, size)
        words = f"{title if not i else capitalised(drawing.name)}: {_told(row)}."
        yield Figure(height + _BETWEEN_ROWS, (*items, *drawn), words)


def _seen(piece: Piece) -> float:
    """Length of a piece from match line to match line."""
    left = piece.left.at if piece.left else piece.drawing.start
    right = piece.right.at if piece.right else piece.drawing.end
    return float(right - left)


def _rows(pieces: Sequence[tuple[Piece, int]], width: float, size: float) -> list[Sequence[tuple[Piece, int]]]:
    """The pieces in rows of near-equal number, as few as leave every piece room for its page."""
    narrowest = width_of(_page(pieces[-1][1]), size) + 2
    rows: list[Sequence[tuple[Piece, int]]] = []
    for count in range(1, len(pieces) + 1):
        each = ceil(len(pieces) / count)
        rows = [pieces[i : i + each] for i in range(0, len(pieces), each)]
        scale = min(width / sum(_seen(piece) for piece, _ in row) for row in rows)
        if min(_seen(piece) for piece, _ in pieces) * scale >= narrowest:
            return rows
    return rows


def _page(page: int) -> str:
    return f"page {page}"


def _row(
    row: Sequence[tuple[Piece, int]], scale: float, top: float, size: float
) -> tuple[list[Item], float]:
    """Boxes side by side, every other one raised, over each join its letter; and how low they reach."""
    items: list[Item] = []
    letters = top - size * CAP
    high = letters - size * DESCENT - 0.6
    deep = 2 * size * 0.43 + 1.8
    x = 0.0
    last = len(row) - 1
    for i, (piece, page) in enumerate(row):
        right = x + _seen(piece) * scale
        up = high if piece.number % 2 else high - _RAISED
        items += rectangle(LineType.MARK, x, up - deep, right, up)
        middle = (x + right) / 2
        base = up - 1 - size * CAP
        if width_of(_page(page), size) <= right - x - 1:
            items.append(Text(middle, base, str(piece.number), size, Anchor.MIDDLE, bold=True))
            items.append(Text(middle, base - size * 0.43, _page(page), size, Anchor.MIDDLE))
        if piece.left and not i:
            items.append(Text(x, letters, piece.left.label, size, bold=True))
        if piece.right:
            anchor = Anchor.END if i == last else Anchor.MIDDLE
            items.append(Text(right, letters, piece.right.label, size, anchor, bold=True))
        x = right
    return items, -(high - _RAISED - deep)


def _told(row: Sequence[tuple[Piece, int]]) -> str:
    """The row in words: "piece 1 (page 5), join A, piece 2 (page 5)"."""
    parts: list[str] = []
    if row[0][0].left:
        parts.append(f"join {row[0][0].left.label}")
    for piece, page in row:
        parts.append(f"piece {piece.number} (page {page})")
        if piece.right:
            parts.append(f"join {piece.right.label}")
    return ", ".join(parts)
