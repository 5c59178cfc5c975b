"""Papers: the sizes of sheet and the widths of roll that are known by name, and any other by its own."""

from .catalogue import CATALOGUE, FAMILIES, Family
from .naming import paper_named, unknown_paper
from .paper import LEAST, LONGEST, Orientation, Paper, roll_of, sheet_of

__all__ = [
    "CATALOGUE",
    "FAMILIES",
    "LEAST",
    "LONGEST",
    "Family",
    "Orientation",
    "Paper",
    "paper_named",
    "roll_of",
    "sheet_of",
    "unknown_paper",
]
