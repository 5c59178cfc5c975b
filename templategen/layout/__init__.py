"""Drawings and words to sheets: paper, splitting, joins, packing, what every sheet carries."""

from .alone import alone
from .kit import WORDS, Correction, Kit, Placed, Sheet, lay_out
from .paper import CATALOGUE, Paper, paper_of
from .pieces import Join, Piece
from .slicing import items_of
from .splitting import split

__all__ = [
    "CATALOGUE",
    "WORDS",
    "Correction",
    "Join",
    "Kit",
    "Paper",
    "Piece",
    "Placed",
    "Sheet",
    "alone",
    "items_of",
    "lay_out",
    "paper_of",
    "split",
]
