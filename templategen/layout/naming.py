"""What every piece says of itself: what it is, which of how many, which way is up, what lies beside it."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass

from ..drawing import Item, Solid, Text, width_of, wrap
from .pieces import Join, Piece

NAME_SIZE, TEXT_SIZE, SMALL_SIZE = 11, 8.5, 7.5
_ARROW = 3.2
_MARGIN = 2.5
_BESIDE_A_JOIN = 11
"""Clear of the join's letter, in mm; each further letter takes some more."""
_CHECK_ROW = 5.2
"""Kept free at the lane's foot for check lengths, where there are joins."""


@dataclass(frozen=True, slots=True)
class _Row:
    text: str
    size: float
    bold: bool = False

    @property
    def leading(self) -> float:
        return self.size * 0.44


def name_items(piece: Piece) -> list[Item]:
    """The piece's name and neighbours, written in the lane that its drawing leaves free."""
    lane = piece.drawing.lane
    left = float(piece.start) + _MARGIN
    right = float(piece.end) - _MARGIN
    if piece.left:
        left = float(piece.left.at) + _beside(piece.left)
    if piece.right:
        right = float(piece.right.at) - _beside(piece.right)
    height = float(lane.high) - float(lane.low) - (_CHECK_ROW if piece.joins else 0.8)
    return list(_set(piece, left, right, float(lane.high), height))


def _beside(join: Join) -> float:
    return _BESIDE_A_JOIN + 3.0 * (len(join.label) - 1)


def _set(piece: Piece, left: float, right: float, top: float, height: float) -> Iterator[Item]:
    """Rows from the lane's top, as many as it holds: the first ones matter most."""
    indent = _ARROW + 1.8
    width = right - left - indent
    title = _title(piece)
    size: float = NAME_SIZE
    while width_of(title, size, True) > width and size > SMALL_SIZE:
        size -= 0.5
    rows = [_Row(line, size, True) for line in wrap(title, size, width, True)]
    body = _sentences(piece)
    for text_size in (TEXT_SIZE, SMALL_SIZE):
        set_rows = rows + [_Row(line, text_size) for text in body for line in wrap(text, text_size, width)]
        if sum(row.leading for row in set_rows) <= height:
            break
    y = top - 0.6
    yield _arrow(piece, left, y - 0.2)
    for row in set_rows:
        y -= row.leading
        if top - y > height:
            break
        yield Text(left + indent, y + 0.5, row.text, row.size, bold=row.bold)


def _title(piece: Piece) -> str:
    name = piece.drawing.name
    name = name[0].upper() + name[1:]
    return f"{name} – piece {piece.number} of {piece.of}" if piece.of > 1 else name


def _sentences(piece: Piece) -> list[str]:
    drawing = piece.drawing
    sentences = [f"Arrow: {drawing.up}."]
    if piece.of > 1 or any(drawing.ends):
        sentences.append(f"Left: {_neighbour(piece, 0)}. Right: {_neighbour(piece, 1)}.")
    if piece.number == 1:
        sentences.append(drawing.caption)
    if any(join.crowded for join in piece.joins):
        sentences.append("Marks stand close here: those at the join are printed whole on both pieces.")
    return sentences


def _neighbour(piece: Piece, side: int) -> str:
    join = piece.right if side else piece.left
    if join is None:
        return piece.drawing.ends[side] or "end"
    return f"piece {piece.number + (1 if side else -1)} at {join.label}"


def _arrow(piece: Piece, left: float, top: float) -> Solid:
    """A solid arrow head that points to what is up when the piece is read."""
    size = _ARROW
    if piece.drawing.quarter_turns % 4 == 1:
        return Solid(((left, top), (left, top - size), (left + size, top - size / 2)))
    return Solid(((left, top - size), (left + size, top - size), (left + size / 2, top)))
