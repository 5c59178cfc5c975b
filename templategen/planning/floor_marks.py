"""Floor marks held against each other: which one, if any, was misread."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from fractions import Fraction

from ..lengths import Length


@dataclass(frozen=True, slots=True)
class Outlier:
    """The mark that fits the others least."""

    number: int
    """Counted from 1, left to right."""
    beyond: Length
    """How far it stands above the straight line through the others; negative below it."""
    others: Length
    """How far the worst of the others is from that line."""


def outlier(heights: Sequence[Length]) -> Outlier | None:
    """Leave each of the evenly spread marks out in turn and lay the best straight line through the rest.

    The mark without which the rest lie straightest is the one that stands
    out; of equals, the one that stands out least (among three marks any one
    may be wrong, and the middle one is named). None where fewer than three.
    """
    if len(heights) < 3:
        return None
    candidates = [_left_out(heights, place) for place in range(len(heights))]
    return min(candidates, key=lambda found: (found.others, abs(found.beyond)))


def _left_out(heights: Sequence[Length], place: int) -> Outlier:
    rest = [(at, height.mm) for at, height in enumerate(heights) if at != place]
    middle = Fraction(sum(at for at, _ in rest), len(rest))
    mean = sum((height for _, height in rest), Fraction(0)) / len(rest)
    across = sum(((at - middle) ** 2 for at, _ in rest), Fraction(0))
    slope = sum(((at - middle) * (height - mean) for at, height in rest), Fraction(0)) / across
    worst = max(abs(height - mean - slope * (at - middle)) for at, height in rest)
    return Outlier(
        number=place + 1,
        beyond=Length(heights[place].mm - mean - slope * (place - middle)),
        others=Length(worst),
    )
