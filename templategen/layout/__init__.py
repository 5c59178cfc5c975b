"""Drawings and words to sheets: paper, splitting, joins, packing, what every sheet carries."""

from .alone import alone
from .first_page import CHECK, PrintCheck
from .kit import WORDS, Correction, Kit, Sheet, lay_out
from .pieces import Join, Piece
from .placed import Placed
from .slicing import items_of
from .splitting import split

__all__ = [
    "CHECK",
    "WORDS",
    "Correction",
    "Join",
    "Kit",
    "Piece",
    "Placed",
    "PrintCheck",
    "Sheet",
    "alone",
    "items_of",
    "lay_out",
    "split",
]
