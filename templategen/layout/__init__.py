"""Drawings and words to sheets: paper, splitting, joins, packing, what every sheet carries."""

from .alone import alone
from .kit import WORDS, Correction, Kit, Placed, Sheet, lay_out
from .orienting import Orientation, turned
from .pieces import Join, Piece
from .slicing import items_of
from .splitting import split

__all__ = [
    "WORDS",
    "Correction",
    "Join",
    "Kit",
    "Orientation",
    "Piece",
    "Placed",
    "Sheet",
    "alone",
    "items_of",
    "lay_out",
    "split",
    "turned",
]
