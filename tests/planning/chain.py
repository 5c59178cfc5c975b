"""A rubber chain hung on a rod with a weight at its lowest point, relaxed until nothing moves: knows no formula.

Points on springs of no length of their own, which slide on the rod without friction: at rest the
chain is pulled equally tight everywhere, and lies as a taut band of its length lies.
"""

from __future__ import annotations

import math
from dataclasses import dataclass
from functools import lru_cache

import numpy as np

POINTS = 500
SWEEPS = 3500


@dataclass(frozen=True)
class Hung:
    """The chain at rest."""

    around: float
    """Its whole length."""
    below: float
    """Its lowest point, below the rod's centre."""
    touching: float
    """How much of it lies on the rod."""


@lru_cache(maxsize=8)
def hung_chain(radius: float, weight: float) -> Hung:
    """Relaxed from a ring round the rod. ``weight`` is in spring constants times the unit of length.

    Every other point at a time goes to the middle of its neighbours, and a little further (over-relaxation), and
    out of the rod again where that is in it.
    """
    angles = np.arange(POINTS) * (2 * math.pi / POINTS) - math.pi / 2
    chain = 1.2 * radius * np.exp(1j * angles)  # point 0 is the lowest
    pull = np.zeros(POINTS, dtype=complex)
    pull[0] = -0.5j * weight
    further = 2 / (1 + math.sin(math.pi / POINTS))
    for _ in range(SWEEPS):
        for first in (0, 1):
            half = slice(first, None, 2)
            middle = (np.roll(chain, 1)[half] + np.roll(chain, -1)[half]) / 2 + pull[half]
            moved = chain[half] + further * (middle - chain[half])
            away = np.abs(moved)
            chain[half] = np.where(away < radius, moved * (radius / away), moved)
    steps = np.abs(np.diff(chain, append=chain[:1]))
    on = np.abs(chain) < radius * (1 + 1e-9)
    lying = on & np.roll(on, -1)
    steps = np.where(lying, 2 * radius * np.arcsin(np.minimum(steps / (2 * radius), 1)), steps)  # round it, not through
    return Hung(float(steps.sum()), float(-chain[0].imag), float(steps[lying].sum()))
