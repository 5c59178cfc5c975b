"""What is said of a double fold of equal turns."""

from __future__ import annotations

from . import double_fold
from .face import HemWork

EQUAL_FOLD = HemWork(name="equal double fold", steps=double_fold.steps)
