"""What every piece says of itself: what it is, which of how many, which way is up, what lies beside it."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass, replace

from ..drawing import CAP, USUAL, Item, Look, Solid, Text, capitalised, width_of, wrap
from ..lengths import Length, Tape
from .joins import LARGE_BASES, distance_of, room_beside, room_beside_letter
from .pieces import Join, Piece

NAME_SIZES = (14, 12, 10, 8.5)
TEXT_SIZES = (10.5, 9.5, 8.5, 7.5)
"""Points; the largest with which all that is to be said fits the lane."""
SIGNS = "+ is a hair over, − a hair under."
_SMALLEST = (7.5, 7)
"""Name and text on the shortest of pieces, where the neighbours' numbers would find no room otherwise."""
_ARROW = 5.5
_INDENT = _ARROW + 2
_MARGIN = 2.5
_CHECK_ROW = 5.6
"""Kept free at the lane's foot for check lengths, where there are joins."""
_LEADING = 0.43
"""Line pitch in mm for each point of type: a little over 1.2 times the size."""


@dataclass(frozen=True, slots=True)
class _Row:
    text: str
    size: float
    bold: bool = False

    @property
    def leading(self) -> float:
        return self.size * _LEADING


def name_items(piece: Piece, tape: Tape, besides: str = "", look: Look = USUAL) -> list[Item]:
    """The piece's name and neighbours, written in the lane that its drawing leaves free.

    ``tape`` is what distances are shown on; ``besides`` is said last, if there is room.
    """
    if look != USUAL and piece.joins:
        return list(_large_name(piece, look))
    lane = piece.drawing.lane
    left = float(piece.start) + _MARGIN
    right = float(piece.end) - _MARGIN
    if piece.left:
        left = float(piece.left.at) + room_beside(piece.left, tape)
    if piece.right:
        right = float(piece.right.at) - room_beside(piece.right, tape)
    height = float(lane.high) - float(lane.low) - (_CHECK_ROW if piece.joins else 0.8)
    sentences = [*_sentences(piece, tape), *([besides] if besides else [])]
    width = right - left - _INDENT
    rows = _rows(_title(piece), sentences, width, height, look)
    if piece.of > 1 and all(row.bold for row in rows):
        rows = _terse(piece, width, height)
    return list(_set(piece, rows, left, float(lane.high)))


def signs_said(pieces: Sequence[Piece], tape: Tape) -> str:
    """What the sign beside a join's distance means, where there is one; nothing where the drawing says it already."""
    signed = any(distance_of(join, tape)[-1] in "+−" for piece in pieces for join in piece.joins)
    return SIGNS if signed and SIGNS not in pieces[0].drawing.caption else ""


def _set(piece: Piece, rows: Sequence[_Row], left: float, top: float) -> Iterator[Item]:
    """The name and as much of what is to be said as the lane holds, in whole sentences, from its top."""
    y = top - 0.4
    yield _arrow(piece, left, y - 0.4)
    for row in rows:
        y -= row.leading
        yield Text(left + _INDENT, y + row.size * 0.09, row.text, row.size, bold=row.bold)


def _rows(title: str, sentences: Sequence[str], width: float, height: float, look: Look) -> list[_Row]:
    """The most sentences that fit, in the largest type in which they do.

    What stands last is what the work order says as well, and is left out first.
    """
    rows: list[_Row] = []
    sizes = dict.fromkeys((look.size(name), look.size(text)) for name, text in zip(NAME_SIZES, TEXT_SIZES, strict=True))
    for count in range(len(sentences), -1, -1):
        for name_size, text_size in sizes:
            rows = [_Row(line, name_size, True) for line in wrap(title, name_size, width, True)]
            if count:
                rows += [_Row(line, text_size) for line in wrap(" ".join(sentences[:count]), text_size, width)]
            if sum(row.leading for row in rows) <= height:
                return rows
    while look != USUAL and len(rows) > 1 and sum(row.leading for row in rows) > height:
        rows = [*rows[:-2], replace(rows[-2], text=f"{rows[-2].text} …")]
    return rows


def _large_name(piece: Piece, look: Look) -> Iterator[Item]:
    """The name of a piece with joins in large print: one row between the letters, over their distances; as much of it
    as there is room for, its number last."""
    left = float(piece.left.at) + room_beside_letter(piece.left, look) if piece.left else float(piece.start) + _MARGIN
    right = float(piece.right.at) - room_beside_letter(piece.right, look) if piece.right else float(piece.end) - _MARGIN
    top, size = float(piece.drawing.lane.high), look.size(NAME_SIZES[0])
    if right - left >= _ARROW:
        yield _arrow(piece, left, top - LARGE_BASES[0] + size * CAP, size * CAP)
    number = f"{piece.number} of {piece.of}"
    for said in (_title(piece), f"Piece {number}", number, str(piece.number)):
        if width_of(said, size, True) <= right - left - _INDENT:
            yield Text(left + _INDENT, top - LARGE_BASES[0], said, size, bold=True)
            return


def _terse(piece: Piece, width: float, height: float) -> list[_Row]:
    """The name and the neighbours' numbers in the smallest type; without these, or the number alone, if need be."""
    name_size, text_size = _SMALLEST
    start, end = _sides(piece)
    sides = ((start, -1, piece.left), (end, 1, piece.right))
    neighbours = " ".join(f"{side}: piece {piece.number + step}." for side, step, join in sides if join)
    number = f"{piece.number} of {piece.of}"
    rows: list[_Row] = []
    for name, text in ((_title(piece), neighbours), (_title(piece), ""), (f"piece {number}", ""), (number, "")):
        rows = [_Row(line, name_size, True) for line in wrap(name, name_size, width, True)]
        rows += [_Row(line, text_size) for line in wrap(text, text_size, width) if line]
        if sum(row.leading for row in rows) <= height:
            break
    return rows


def _title(piece: Piece) -> str:
    name = capitalised(piece.drawing.name)
    return f"{name} – piece {piece.number} of {piece.of}" if piece.of > 1 else name


def _sides(piece: Piece) -> tuple[str, str]:
    """What its start and its end are called by somebody who reads the template upright."""
    return ("Below", "Above") if piece.drawing.quarter_turns % 4 == 1 else ("Left", "Right")


def _sentences(piece: Piece, tape: Tape) -> list[str]:
    """What stands beside the piece, which way is up, and, on the first, what to do with the template."""
    drawing = piece.drawing
    sentences: list[str] = []
    if piece.of > 1 or any(drawing.ends):
        start, end = _sides(piece)
        sentences.append(f"{start}: {_neighbour(piece, 0)}. {end}: {_neighbour(piece, 1)}.")
    if piece.of == 1 and any(drawing.ends):
        sentences.append(f"From end to end: {tape.show(Length(drawing.length))}.")
    if crowded := [join for join in piece.joins if join.crowded]:
        sentences.append(_close_at(crowded))
    sentences.append(f"Arrow: {drawing.up}.")
    if piece.number == 1:
        sentences += drawing.caption
    return sentences


def _close_at(joins: Sequence[Join]) -> str:
    """What is said where marks stand so close that no place between them was clear of everything."""
    named = " and ".join(join.label for join in joins)
    return f"Marks stand close at join{'s' if len(joins) > 1 else ''} {named}: they are whole on both pieces."


def _neighbour(piece: Piece, side: int) -> str:
    join = piece.right if side else piece.left
    if join is None:
        return piece.drawing.ends[side] or "end"
    return f"piece {piece.number + (1 if side else -1)}, join {join.label}"


def _arrow(piece: Piece, left: float, top: float, size: float = _ARROW) -> Solid:
    """A solid arrow head that points to what is up when the piece is read."""
    if piece.drawing.quarter_turns % 4 == 1:
        return Solid(((left, top), (left, top - size), (left + size, top - size / 2)))
    return Solid(((left, top - size), (left + size, top - size), (left + size / 2, top)))
