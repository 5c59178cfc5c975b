"""Lengths: exact inside, read from what people write, shown the way a tape reads."""

from .length import MM_PER_INCH, NOTHING, Length, inches, millimetres
from .reading import read_length
from .showing import Reading, Tape

__all__ = ["MM_PER_INCH", "NOTHING", "Length", "Reading", "Tape", "inches", "millimetres", "read_length"]
