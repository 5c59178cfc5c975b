"""How deep cloth folds between two places on a rod that it is held at.

Eyelets a pitch p apart along the cloth stand a chord c apart on the rod. What
is between two of them bows out to the front, the next to the back, and so on.

However it bows, it comes no further out than cloth creased into two straight
halves: sqrt(p^2 - c^2) / 2. (All points whose distances to the two ends add up
to p lie on an ellipse; the crease is the end of its minor axis.)

Cloth that is not creased bends as little as it can. Each bow then is the curve
of a thin elastic strip between two places where its curvature turns round, the
elastica: with K and E the complete elliptic integrals of modulus k,

    c / p = 2 E / K - 1,    depth = k p / K,    angle to the rod at its ends = 2 asin k.

Beyond the fullness at which that angle is a right angle the strip would lean
over into its neighbours; there it stands straight up instead, with the same
round top. (Elastica and integrals: A. E. H. Love, A Treatise on the Mathematical
Theory of Elasticity, chapter XIX, from memory; tests hold them against a chain
of points that is let relax.)
"""

from __future__ import annotations

import math
from dataclasses import dataclass

from ..lengths import NOTHING, Length
from .hanging import enter


@dataclass(frozen=True, slots=True)
class Fold:
    """The cloth between two neighbours on a rod, drawn to its run."""

    depth: Length
    """From the rod's centre line out, of cloth that is not creased."""
    creased: Length
    """The same of cloth that is creased sharply: nothing comes further out."""
    steepness: float
    """Sine of the angle between cloth and rod where the cloth crosses it; 1 where it crosses squarely."""


def fold(pitch: Length, chord: Length) -> Fold:
    """The fold of cloth ``pitch`` long over a ``chord`` of the rod; none where the cloth is stretched flat."""
    if chord.mm >= pitch.mm or pitch.mm <= 0:
        return Fold(NOTHING, NOTHING, 0.0)
    p, c = float(pitch.mm), max(0.0, float(chord.mm))
    creased = min(enter(math.sqrt((p - c) * (p + c)) / 2), pitch / 2)
    depth, steepness = _rounded(p, c)
    return Fold(min(enter(depth), creased), creased, steepness)


def turning_ring(diameter: Length, fold: Fold) -> Length | None:
    """The narrowest ring that stands on a rod of this diameter as the cloth of ``fold`` crosses it.

    A ring whose axis leans from the rod by an angle t leaves an opening d cos t
    wide across the rod, and cos t is the sine of the angle between cloth and
    rod. None where the cloth is stretched flat, which no ring can follow.
    """
    return enter(float(diameter.mm) / fold.steepness) if fold.steepness > 1e-3 else None


def _rounded(p: float, c: float) -> tuple[float, float]:
    """Depth, and sine of the angle at the rod, of cloth that bends as little as it can."""
    upright = p * _SQUARE[0]
    if c <= upright:
        return c * _SQUARE[1] / _SQUARE[0] + (p - c / _SQUARE[0]) / 2, 1.0
    low, high = 0.0, 0.5
    for _ in range(60):
        middle = (low + high) / 2
        low, high = (middle, high) if _chord(middle) > c / p else (low, middle)
    whole, _ = _integrals(low)
    k = math.sqrt(low)
    return k * p / whole, 2 * k * math.sqrt(1 - low)  # sin(2 asin k)


def _chord(m: float) -> float:
    """c / p at k^2 = m."""
    first, second = _integrals(m)
    return 2 * second / first - 1


def _integrals(m: float) -> tuple[float, float]:
    """The complete elliptic integrals K and E at k^2 = m, by arithmetic and geometric means.

    Abramowitz and Stegun, Handbook of Mathematical Functions, 17.6 (from memory).
    """
    a, b, c = 1.0, math.sqrt(1 - m), math.sqrt(m)
    weight, total = 0.5, m / 2
    while c > 1e-16:
        a, b, c = (a + b) / 2, math.sqrt(a * b), (a - b) / 2
        weight *= 2
        total += weight * c * c
    first = math.pi / (2 * a)
    return first, first * (1 - total)


def _square() -> tuple[float, float]:
    """Chord and depth over pitch where the cloth crosses the rod squarely: k^2 = 1/2."""
    first, _ = _integrals(0.5)
    return _chord(0.5), math.sqrt(0.5) / first


_SQUARE = _square()
