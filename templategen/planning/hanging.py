"""How a flat tube of cloth hangs on a round rod: the teardrop.

A casing, or a loop together with the cloth it is sewn to, is a flat tube of
depth ``c`` between its top and its stitch line. On a rod of radius R it closes
to a teardrop: round the rod, then straight down both sides to the stitch line,
a distance s below the rod's centre, where

    R (2 pi - 2 a) + 2 sqrt(s^2 - R^2) = 2 c,   cos a = R / s.

The stitch line hangs R + s below the top of the rod and not c: the tube takes
up c - (R + s) of the panel's length.

A tab is one layer round the rod, its two ends together at the panel's top edge,
a gap g below the rod's underside. It closes to the same teardrop with s = R + g,
and what is wanted is its length.
"""

from __future__ import annotations

import math
from fractions import Fraction

from ..lengths import NOTHING, Length

_GRAIN = 10**9
"""Transcendental lengths enter the exact world rounded to 10^-9 mm."""


def enter(mm: float) -> Length:
    """A float's one way into the exact world.

    Rounded to 10^-9 mm: far coarser than the solver's error, so that the same
    rod and tube give the same fraction on any machine and whatever unit they
    were typed in; and from here on nothing more is rounded.
    """
    return Length(Fraction(round(mm * _GRAIN), _GRAIN))


def least_tube(diameter: Length) -> Length:
    """The shallowest flat tube that the rod passes through: half its girth, pi D / 2.

    Rounded up to 10^-9 mm, so that a tube of this depth always passes.
    """
    return Length(Fraction(math.ceil(float(diameter.mm) * math.pi / 2 * _GRAIN), _GRAIN))


def passes(diameter: Length, depth: Length) -> bool:
    """Whether the rod goes through a flat tube of this depth."""
    return depth.mm > 0 and depth >= least_tube(diameter)


def take_up(diameter: Length, depth: Length) -> Length:
    """How much of the panel's length a tube of ``depth`` loses by going round the rod.

    Where the rod does not pass, what the thickest rod that passes would take
    up, depth (1 - 2/pi): the limit of the law, so that a plan that has to be
    stopped still has numbers that do not jump. Nothing where there is no tube.
    """
    if depth.mm <= 0 or diameter.mm <= 0:
        return NOTHING
    if not passes(diameter, depth):
        return enter(float(depth.mm) * (1 - 2 / math.pi))
    radius = diameter.mm / 2
    x = _tangent_ratio(max(0.0, float(depth.mm / radius) - math.pi))
    # c - R - s with s = R sqrt(1 + x^2) and c = R (pi - atan x + x), and the two large terms joined:
    # x - sqrt(1 + x^2) = -1 / (x + sqrt(1 + x^2)), which keeps every digit however deep the tube.
    return enter(float(radius) * (math.pi - 1 - math.atan(x) - 1 / (x + math.hypot(1, x))))


def slant(up: Length, along: Length) -> Length:
    """The third side of a right-angled triangle, sqrt(up^2 + along^2)."""
    return enter(math.hypot(float(up.mm), float(along.mm)))


def gap_for(diameter: Length, over: Length) -> Length:
    """The gap below the rod that a strip of this length over it leaves; nothing where it only just goes round."""
    low, high = 0.0, float(over.mm)
    for _ in range(200):  # the strip grows with the gap, so halving cannot miss
        middle = (low + high) / 2
        if middle in (low, high):
            break
        reached = tab_length(diameter, Length(Fraction(middle))) < over
        low, high = (middle, high) if reached else (low, middle)
    return enter(low)


def rows_apart(diameter: Length, depth: Length, lift: Length) -> Length:
    """How far below a tube's upper seam a second row of stitching must lie to lift the panel by ``lift``.

    The row takes d off the depth c of the tube. A shallower tube takes up
    more, so the panel rises by more than d: lift = d + take_up(c - d) - take_up(c).
    A negative lift is answered by a negative distance, the seam moved up. The
    rod has to pass the tube that is left; the answer goes no farther than that.
    """
    start = float(take_up(diameter, depth).mm)
    wanted = float(lift.mm)
    low, high = min(wanted, 0.0), max(0.0, min(wanted, float((depth - least_tube(diameter)).mm)))
    for _ in range(200):  # the lift rises with the distance, so halving cannot miss
        middle = (low + high) / 2
        if middle in (low, high):
            break
        lifted = middle + float(take_up(diameter, Length(depth.mm - Fraction(middle))).mm) - start
        low, high = (middle, high) if lifted < wanted else (low, middle)
    return enter((low + high) / 2)


def tab_length(diameter: Length, gap: Length) -> Length:
    """How long a tab is between the two places where it leaves the panel's top edge.

    With s = R + gap: R (2 pi - 2 a) + 2 sqrt(s^2 - R^2), cos a = R / s, as the
    teardrop above. No gap, or less, and it goes once round the rod: pi D.
    """
    return on_rod(diameter, gap) + 2 * _straight(diameter, gap)


def on_rod(diameter: Length, gap: Length) -> Length:
    """How much of a tab lies on the rod, between the two places where it leaves it: R (2 pi - 2 a)."""
    radius = float(diameter.mm / 2)
    return enter(2 * radius * (math.pi - math.atan2(_tangent(diameter, gap), radius)))


def _straight(diameter: Length, gap: Length) -> Length:
    return enter(_tangent(diameter, gap))


def _tangent(diameter: Length, gap: Length) -> float:
    """sqrt(s^2 - R^2) = sqrt(g (g + D)), which keeps every digit of a small gap."""
    return math.sqrt(float(gap.mm * (gap.mm + diameter.mm))) if gap.mm > 0 else 0.0


def _tangent_ratio(k: float) -> float:
    """Solve x - atan x = k for x >= 0: a straight side of the teardrop, in radii.

    With x = tan a the law above reads x - atan x = c / R - pi. The left side
    rises and is convex, and k < x <= k + pi/2: Newton from the right end, held
    inside that bracket, cannot miss.
    """
    low, high = k, k + math.pi / 2
    x = high
    for _ in range(200):
        excess = x - math.atan(x) - k
        low, high = (low, x) if excess > 0 else (x, high)
        slope = x * x / (1 + x * x)
        step = x - excess / slope if slope else low
        following = step if low < step < high else (low + high) / 2
        if abs(following - x) <= 1e-15 * max(1.0, x):
            return following
        x = following
    return x
