"""What is printed where two pieces meet: match line, registration marks, key, check length.

A join is made so that only the right partner fits. Across the match line, between
its two registration marks, stand short teeth like the cuts of a key; no two joins of
a template share a key, so a wrong neighbour's teeth do not meet.
"""

from __future__ import annotations

from collections.abc import Iterator
from fractions import Fraction
from functools import cache
from itertools import count
from math import gcd

from ..drawing import Anchor, Drawing, Item, Line, LineType, Number, Ring, Text, width_of
from .pieces import TONGUE, Join, Piece

RING = 2.5
"""Radius of a registration mark's ring, in mm."""
ARM = 3.5
"""Half of its cross, in mm."""
TOOTH = 3
"""Half of a tooth's length, in mm."""
TOOTH_PITCH = 2.4
"""Between two places for teeth, in mm: our choice. A wrong tooth is then off by more than a match line is wide."""
_MOST_TEETH = 12
_FIRST_TOOTH = 6
"""From a registration mark to the first place for a tooth, in mm."""
LETTER = 14
_LETTER_OFF = 5
_CHECKS = (Fraction(100), Fraction(50))
"""Check lengths over a join, in mm: the longest for which both pieces have room."""
_CHECK_ROW = 2.6
_CHECK_SIZE = 8
_HINT_SIZE = 8


def furniture(piece: Piece) -> list[Item]:
    """Everything that the joins of ``piece`` print on it, in the drawing's coordinates."""
    items: list[Item] = []
    for join in piece.joins:
        trimmed_here = join is piece.left
        items += _match_line(piece.drawing, join, trimmed_here)
        for y in piece.drawing.registration:
            items += registration_mark(join.at, y)
        items += [
            Line(LineType.MARK, join.at - TOOTH, y, join.at + TOOTH, y) for y in key_of(piece.drawing, join.number)
        ]
        items += _letter(piece.drawing, join, trimmed_here)
        items += _check_length(piece, join, trimmed_here)
        items += _hint(piece, join, trimmed_here)
    if piece.right:
        low, high = piece.drawing.low, piece.drawing.high
        items.append(Line(LineType.CUT, piece.end, low, piece.end, high))
    return items


def registration_mark(x: Number, y: Number) -> list[Item]:
    """A ring with a cross in it: the printer's registration mark."""
    return [
        Ring(LineType.MARK, x, y, RING),
        Line(LineType.THIN, x - ARM, y, x + ARM, y),
        Line(LineType.THIN, x, y - ARM, x, y + ARM),
    ]


def key_of(drawing: Drawing, number: int) -> tuple[float, ...]:
    """The heights of the teeth of join ``number``.

    Every key has an even number of teeth, so any two differ by two teeth at least.
    They are taken in strides, so that those of neighbouring joins look nothing alike.
    """
    places = _tooth_places(drawing)
    keys = _keys(len(places))
    stride = next(step for step in count(len(keys) * 5 // 13 + 1) if gcd(step, len(keys)) == 1)
    chosen = keys[(number + 1) * stride % len(keys)]
    return tuple(place for bit, place in enumerate(places) if chosen >> bit & 1)


def check_length(join: Join) -> Fraction | None:
    """The longest check length over ``join`` for which both its pieces have room."""
    return next((length for length in _CHECKS if length / 2 + 3 <= join.room), None)


def _tooth_places(drawing: Drawing) -> list[float]:
    low, high = sorted(float(y) for y in drawing.registration)
    check = float(drawing.lane.low) + _CHECK_ROW
    places: list[float] = []
    y = low + _FIRST_TOOTH
    while y <= high - _FIRST_TOOTH and len(places) < _MOST_TEETH:
        if abs(y - check) > 1.5:
            places.append(y)
        y += TOOTH_PITCH
    return places


@cache
def _keys(places: int) -> tuple[int, ...]:
    """All keys of two, four, six ... teeth; of one, where there is but one place."""
    return tuple(key for key in range(1, 1 << places) if key.bit_count() % 2 == 0) or (1,)


def _match_line(drawing: Drawing, join: Join, trimmed_here: bool) -> Iterator[Item]:
    """The match line, drawn from the datum edge inward; on the piece that is trimmed, the line to cut."""
    inner, outer = (drawing.low, drawing.high) if drawing.inward > 0 else (drawing.high, drawing.low)
    yield Line(LineType.TRIM if trimmed_here else LineType.MATCH, join.at, inner, join.at, outer)


def _letter(drawing: Drawing, join: Join, trimmed_here: bool) -> Iterator[Item]:
    """The join's letter, on the side of the match line that stays in sight."""
    base = float(drawing.lane.high) - 5.2
    if trimmed_here:
        yield Text(join.at + _LETTER_OFF, base, join.label, LETTER, bold=True)
    else:
        yield Text(join.at - _LETTER_OFF, base, join.label, LETTER, Anchor.END, bold=True)


def _hint(piece: Piece, join: Join, trimmed_here: bool) -> Iterator[Item]:
    """What to do with the paper beyond the match line: cut it off, or lay the neighbour on it."""
    hint, largest = ("cut off", 7) if trimmed_here else (f"piece {piece.number + 1} lies on this", _HINT_SIZE)
    wide = width_of(hint, largest)
    low, high = _hint_room(piece.drawing, join, wide)
    x = join.at - TOOTH - 1 if trimmed_here else join.at + TONGUE - Fraction(5, 2)
    size = largest if trimmed_here else min(largest, largest * (high - low) / wide)
    yield Text(x, (low + high) / 2, hint, size, Anchor.MIDDLE, turn=90)


def _hint_room(drawing: Drawing, join: Join, wide: float) -> tuple[float, float]:
    """From and to between the registration marks: all of it, or what of it is clear of the check length's line."""
    low, high = sorted(float(y) for y in drawing.registration)
    low, high = low + RING + 0.5, high - RING - 0.5
    check = float(drawing.lane.low) + _CHECK_ROW
    if check_length(join) is None or abs(check - (low + high) / 2) > wide / 2:
        return low, high
    return max((low, check - 0.8), (check + 0.8, high), key=lambda part: part[1] - part[0])


def _check_length(piece: Piece, join: Join, trimmed_here: bool) -> Iterator[Item]:
    """This piece's half of a length that a steel rule can prove once the join is taped."""
    length = check_length(join)
    if length is None:
        return
    y = float(piece.drawing.lane.low) + _CHECK_ROW
    text = f"{length} mm over {join.label}"
    if trimmed_here:
        end = join.at + length / 2
        yield Line(LineType.THIN, piece.start, y, end, y)
        yield Text(end - 1, y + 0.8, text, _CHECK_SIZE, Anchor.END)
    else:
        end = join.at - length / 2
        yield Line(LineType.THIN, end, y, piece.end, y)
        yield Text(end + 1, y + 0.8, text, _CHECK_SIZE)
    yield Line(LineType.MARK, end, y - 2, end, y + 2)
