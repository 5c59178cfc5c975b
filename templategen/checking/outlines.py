"""Outlines that are drawn or filled, and the straight lines in them."""

from __future__ import annotations

from collections.abc import Iterator
from enum import Enum, auto
from typing import NamedTuple

from .geometry import Point, Stroke

_THIN = 1.0
"""A filled bar up to this wide is a line, in mm."""


class Kind(Enum):
    """What a step of an outline is (ISO 32000-1, 8.5.2)."""

    BEGIN = auto()
    LINE = auto()
    CURVE = auto()


class Step(NamedTuple):
    """One step: what it is, where it goes, and whether the outline closes with it."""

    kind: Kind
    to: Point
    closes: bool


def lines_of(steps: Iterator[Step]) -> Iterator[Stroke]:
    """The straight lines of an outline that is drawn."""
    begun = at = Point(0, 0)
    for kind, to, closes in steps:
        if kind is Kind.BEGIN:
            begun = to
        elif kind is Kind.LINE:
            yield Stroke(at, to)
        at = to
        if closes:
            yield Stroke(at, begun)
            at = begun


def thin_bars_of(steps: Iterator[Step]) -> list[Stroke]:
    """The middle lines of the thin four-cornered outlines among those that are filled; none where any is curved."""
    outlines: list[list[Point]] = []
    for kind, to, _ in steps:
        if kind is Kind.BEGIN:
            outlines.append([to])
        elif kind is Kind.LINE and outlines:
            outlines[-1].append(to)
        else:
            return []
    return [middle for corners in outlines for middle in _middle(corners)]


def _middle(corners: list[Point]) -> Iterator[Stroke]:
    if len(corners) == 5 and (corners[0] - corners[4]).length < 1e-3:
        corners = corners[:4]
    if len(corners) != 4:
        return
    a, b, c, d = corners
    if (b - a).length < (c - b).length:
        a, b, c, d = b, c, d, a
    if max((c - b).length, (a - d).length) <= _THIN and (b - a).length > 2 * (c - b).length:
        yield Stroke(a.plus(d).times(0.5), b.plus(c).times(0.5))
