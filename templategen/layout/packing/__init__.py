"""Packing: whole pieces and runs of pieces onto the fewest sheets, and how few there could be.

A *block* is a rectangle that is printed whole; a *run* is a long template whose
pieces are cut to fit what the blocks leave free.
"""

from .bound import Bound, bound_for
from .pack import MOST_SEARCHED, Packing, Run, pack
from .rectangles import GAP, Size, Spot

__all__ = ["GAP", "MOST_SEARCHED", "Bound", "Packing", "Run", "Size", "Spot", "bound_for", "pack"]
