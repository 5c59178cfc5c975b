"""How deep cloth folds to and fro between points on a rod that stand nearer to each other than they do on the cloth."""

from __future__ import annotations

import math
from fractions import Fraction

from ..lengths import NOTHING, Length
from .hanging import enter


def sharp(cloth: Length, apart: Length) -> Length:
    """Depth of the sharpest fold, two straight sides: half of sqrt(cloth^2 - apart^2). No fold is deeper.

    ``cloth`` is what lies between two points, ``apart`` how far apart they stand; derived, by Pythagoras.
    """
    if apart >= cloth:
        return NOTHING
    difference = float((cloth - apart).mm) * float((cloth + apart).mm)
    return enter(math.sqrt(difference) / 2)


def rounded(cloth: Length, apart: Length) -> Length:
    """Depth of a fold with a round back: two straight sides and half a circle as wide as the points are apart.

    cloth = 2 side + pi apart / 2, depth = side + apart / 2; derived. Where the cloth does not reach round the half
    circle it lies shallower than that, and the sharp fold is the bound.
    """
    side = Fraction(cloth.mm) / 2 - Fraction(math.pi) * apart.mm / 4
    if side < 0:
        return sharp(cloth, apart)
    return enter(float(side + apart.mm / 2))
