"""The page as somebody sees it: matrices, strokes and letters, in millimetres from its lower left corner."""

from __future__ import annotations

import math
from dataclasses import dataclass
from typing import NamedTuple


class Point(NamedTuple):
    x: float
    y: float

    def __sub__(self, other: Point) -> Point:
        return Point(self.x - other.x, self.y - other.y)

    def plus(self, other: Point) -> Point:
        return Point(self.x + other.x, self.y + other.y)

    def times(self, factor: float) -> Point:
        return Point(self.x * factor, self.y * factor)

    def dot(self, other: Point) -> float:
        return self.x * other.x + self.y * other.y

    def cross(self, other: Point) -> float:
        """Positive where ``other`` lies to the left."""
        return self.x * other.y - self.y * other.x

    @property
    def length(self) -> float:
        return math.hypot(self.x, self.y)

    @property
    def unit(self) -> Point:
        length = self.length
        return Point(self.x / length, self.y / length)

    @property
    def left(self) -> Point:
        """The same, a quarter turn anticlockwise."""
        return Point(-self.y, self.x)


class Matrix(NamedTuple):
    """x' = a x + c y + e, y' = b x + d y + f (ISO 32000-1, 8.3.3)."""

    a: float = 1
    b: float = 0
    c: float = 0
    d: float = 1
    e: float = 0
    f: float = 0

    def point(self, x: float, y: float) -> Point:
        return Point(self.a * x + self.c * y + self.e, self.b * x + self.d * y + self.f)

    def then(self, after: Matrix) -> Matrix:
        """This one, and ``after`` it."""
        return Matrix(
            self.a * after.a + self.b * after.c,
            self.a * after.b + self.b * after.d,
            self.c * after.a + self.d * after.c,
            self.c * after.b + self.d * after.d,
            self.e * after.a + self.f * after.c + after.e,
            self.e * after.b + self.f * after.d + after.f,
        )


class Box(NamedTuple):
    """An upright rectangle."""

    left: float
    bottom: float
    right: float
    top: float

    def holds(self, point: Point, spare: float = 0) -> bool:
        """Whether ``point`` lies in it, or no farther outside than ``spare``."""
        return (
            self.left - spare <= point.x <= self.right + spare and self.bottom - spare <= point.y <= self.top + spare
        )

    def within(self, other: Box) -> Box:
        """What both have in common; turned inside out where that is nothing."""
        return Box(
            max(self.left, other.left),
            max(self.bottom, other.bottom),
            min(self.right, other.right),
            min(self.top, other.top),
        )


@dataclass(frozen=True, slots=True)
class Stroke:
    """A straight line that is drawn, or the middle of a thin bar that is filled."""

    start: Point
    end: Point

    @property
    def length(self) -> float:
        return (self.end - self.start).length

    @property
    def turned_round(self) -> Stroke:
        return Stroke(self.end, self.start)


class Letter(NamedTuple):
    """A character of a text, and where its base line begins."""

    text: str
    at: Point
