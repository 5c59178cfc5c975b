"""Marks as data: what a template is made of before anybody thinks of paper."""

from .drawing import Drawing, Lane, Mark
from .items import TURNS, Anchor, Item, Line, LineType, Number, Ring, Solid, Text, path, rectangle
from .lettering import CAP, DESCENT, MM_PER_POINT, Bounds, Setting, capitalised, set_text, tied, width_of, wrap
from .look import LARGE, USUAL, Look
from .outline import Outline

__all__ = [
    "CAP",
    "DESCENT",
    "LARGE",
    "MM_PER_POINT",
    "TURNS",
    "USUAL",
    "Anchor",
    "Bounds",
    "Drawing",
    "Item",
    "Lane",
    "Line",
    "LineType",
    "Look",
    "Mark",
    "Number",
    "Outline",
    "Ring",
    "Setting",
    "Solid",
    "Text",
    "capitalised",
    "path",
    "rectangle",
    "set_text",
    "tied",
    "width_of",
    "wrap",
]
