"""A template alone, whole, on a sheet made to its measure: for a file that holds just one."""

from __future__ import annotations

from fractions import Fraction

from ..drawing import USUAL, Drawing, Line, Look, Ring
from ..lengths import Tape
from .area import Area
from .furniture import FOUR_INCHES, bar_across, foot_height, foot_items
from .kit import Sheet
from .pieces import Piece
from .placed import Placed, datum_of
from .slicing import items_of

ROOM = Fraction(1)
"""Around the template, in mm: half of an outline's width and to spare."""
_GAP = Fraction(3)


def alone(drawing: Drawing, tape: Tape, look: Look = USUAL) -> tuple[Sheet, Fraction, Fraction]:
    """The drawing, read upright, over a bar to be measured and a key to its lines; the sheet's width and height."""
    piece = Piece(drawing, 1, 1, None, None)
    (items,) = items_of([piece], tape, look)
    turn = 90 * (drawing.quarter_turns % 2)
    along, depth = piece.length, Fraction(drawing.depth)
    wide, tall = (depth, along) if turn else (along, depth)
    width = max(wide, FOUR_INCHES + 4) + 2 * ROOM
    foot = Area(ROOM, ROOM, width - ROOM, ROOM + tall)
    used = {item.kind for item in items if isinstance(item, Line | Ring)}
    height = tall + 2 * ROOM + _GAP + foot_height(foot, look, used)
    x, y = datum_of(piece, turn, ROOM, height - ROOM)
    placed = Placed(piece, x, y, turn, tuple(items))
    sheet = Sheet(
        number=1,
        holds=(drawing.name,),
        placed=(placed,),
        items=tuple(foot_items(foot, used, look)),
        bars=(bar_across(foot, look),),
    )
    return sheet, width, height
