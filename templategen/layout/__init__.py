"""Drawings and words to sheets: paper, splitting, joins, packing, what every sheet carries."""

from .alone import alone
from .first_page import CHECK
from .kit import WORDS, Contents, Correction, Kit, Sheet, lay_out
from .kit_words import tell_on_paper, tell_sheets
from .pieces import Join, Piece
from .placed import Placed
from .slicing import items_of
from .splitting import split

__all__ = [
    "CHECK",
    "WORDS",
    "Contents",
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
    "tell_on_paper",
    "tell_sheets",
]
