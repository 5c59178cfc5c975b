"""How far a sum of small errors strays, when no more is known of each than its limits.

An error known by its limits alone is as likely anywhere between them: JCGM 100:2008,
4.3.7, the rectangular distribution.
"""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterable
from functools import lru_cache
from math import pi, prod, sin

TERMS = 64
"""Terms of the series: our choice, because with more the result stays the same to a thousandth."""
_HALVINGS = 18


def within(limits: Iterable[float], share: float) -> float:
    """How far from zero the sum of independent errors stays in ``share`` of all cases.

    ``limits`` are the greatest size of each error, in the unit of the result;
    ``share`` lies between 0 and 1. The sum is never larger than all limits
    together, so the chance of it has a Fourier series on that stretch, of which
    each coefficient is a product over the errors.
    """
    counted = Counter(abs(limit) for limit in limits if limit)
    return _within(tuple(sorted(counted.items())), share)


@lru_cache(maxsize=256)
def _within(counted: tuple[tuple[float, int], ...], share: float) -> float:
    """The same for errors of which each size is given once, with how many there are: joins are much alike."""
    most = sum(limit * count for limit, count in counted)
    if not most:
        return 0.0
    waves = [k * pi / most for k in range(1, TERMS + 1)]
    heights = [
        2 / (wave * most) * prod((sin(limit * wave) / (limit * wave)) ** count for limit, count in counted)
        for wave in waves
    ]
    series = [(wave, height) for wave, height in zip(waves, heights, strict=True) if abs(height) > 1e-9]
    low, high = 0.0, most
    for _ in range(_HALVINGS):
        middle = (low + high) / 2
        if middle / most + sum(height * sin(wave * middle) for wave, height in series) < share:
            low = middle
        else:
            high = middle
    return (low + high) / 2
