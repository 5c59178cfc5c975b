"""Drawings and words to sheets: paper, splitting, joins, packing, what every sheet carries."""

from .alone import alone
from .kit import WORDS, Correction, Kit, Sheet, lay_out
from .pieces import Join, Piece
from .placed import Placed
from .slicing import items_of
from .splitting import split

__all__ = [
    "WORDS",
    "Correction",
    "Join",
    "Kit",
    "Piece",
    "Placed",
    "Sheet",
    "alone",
    "items_of",
    "lay_out",
    "split",
]
