"""What is written of a double fold of equal turns."""

from __future__ import annotations

from . import double_fold
from .face import HemCaptions

EQUAL_FOLD = HemCaptions(name="equal double fold", card=double_fold.card)
