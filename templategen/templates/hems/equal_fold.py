"""What is said of a double fold of equal turns."""

from __future__ import annotations

from . import double_fold
from .face import HemWords

EQUAL_FOLD = HemWords(name="equal double fold", card=double_fold.card, steps=double_fold.steps)
