"""Words beside a picture: a column of them on either side, each with a leader to what it speaks of."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from itertools import pairwise

from ..drawing import CAP, DESCENT, Anchor, Item, Line, LineType, Text, width_of, wrap
from .shapes import dot
from .view import Label

LEADING = 0.42
"""Line pitch in mm for each point of type, 1.2 times the size: labels are set closer than sentences."""
GUTTER = 6.0
"""Mm between the picture and a column, across which leaders slant."""
BETWEEN = 1.4
"""Least mm between two labels, one below the other."""
OFF = 1.0
"""Mm between the end of a leader and its words."""


@dataclass(frozen=True, slots=True)
class Column:
    """Labels of one side, set: their lines, how high each stands, and where its middle comes."""

    labels: tuple[Label, ...]
    lines: tuple[tuple[str, ...], ...]
    middles: tuple[float, ...]
    width: float


def column(labels: Sequence[Label], scale: float, size: float, most: float) -> Column:
    """Labels from the lowest up, wrapped at ``most`` mm, each as near to its height as the others let it."""
    ordered = tuple(sorted(labels, key=lambda label: (label.at[1], label.at[0])))
    lines = tuple(wrap(label.text, size, most) for label in ordered)
    heights = [_height(len(each), size) + BETWEEN for each in lines]
    middles = spread([label.at[1] * scale for label in ordered], heights)
    width = max((width_of(line, size) for each in lines for line in each), default=0.0)
    return Column(ordered, lines, tuple(middles), width)


def _height(lines: int, size: float) -> float:
    """Of so many lines, from the foot of the last to the head of the first."""
    return (lines - 1) * LEADING * size + (CAP + DESCENT) * size


def spread(wanted: Sequence[float], heights: Sequence[float]) -> list[float]:
    """Middles, in order, so far apart that nothing of these heights overlaps, all in all as near as can be.

    The sum of the squared distances is least: neighbours in each other's way are pooled and stand around the mean of
    where they want to be (isotonic regression by pooling adjacent violators; Barlow et al., 1972, from memory).
    """
    offsets = [0.0]
    for below, above in pairwise(heights):
        offsets.append(offsets[-1] + (below + above) / 2)
    pools: list[tuple[float, int]] = []
    for want, offset in zip(wanted, offsets, strict=False):
        pools.append((want - offset, 1))
        while len(pools) > 1 and pools[-2][0] > pools[-1][0]:
            (a, n), (b, m) = pools[-2:]
            pools[-2:] = [((a * n + b * m) / (n + m), n + m)]
    means = [mean for mean, count in pools for _ in range(count)]
    return [mean + offset for mean, offset in zip(means, offsets, strict=False)]


def set_column(
    column: Column, scale: float, size: float, edge: float, inward: int, grown: float, *, gutter: float = GUTTER,
    dots: bool = True,
) -> list[Item]:  # fmt: skip
    """The words and leaders of a column that begins a gutter beyond ``edge``; ``inward`` is 1 on the left side."""
    words = edge - inward * gutter * grown
    anchor = Anchor.END if inward == 1 else Anchor.START
    items: list[Item] = []
    for label, lines, middle in zip(column.labels, column.lines, column.middles, strict=True):
        x, y = label.at[0] * scale, label.at[1] * scale
        knee = (edge - inward * OFF, y)
        if dots:
            items.append(dot((x, y), grown, about=label.about))
        items.append(Line(LineType.THIN, x, y, *knee, label.about))
        items.append(Line(LineType.THIN, *knee, words + inward * OFF, middle, label.about))
        top = middle + _height(len(lines), size) / 2
        for i, line in enumerate(lines):
            base = top - CAP * size - i * LEADING * size
            items.append(Text(words, base, line, size, anchor, about=label.about))
    return items
