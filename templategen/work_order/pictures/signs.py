"""What pictures of the work have in common: figures on dimensions, and outlines of things."""

from __future__ import annotations

from math import cos, pi, sin

from ...document.view import Point, Stroke
from ...drawing import LineType
from ...lengths import Length
from ...planning import Plan


def figure(plan: Plan, length: Length) -> str:
    """A length as it stands on a dimension line, "8 5/16 in +": with the sign of what rounding took away."""
    reading = plan.tape.read(length)
    return f"{reading.plain} {reading.sign}".rstrip()


def mm(length: Length) -> float:
    """A length as a picture takes it."""
    return float(length.mm)


def box(kind: LineType, low: Point, high: Point, about: str = "") -> Stroke:
    """An upright rectangle."""
    (x1, y1), (x2, y2) = low, high
    return Stroke(kind, ((x1, y1), (x2, y1), (x2, y2), (x1, y2), (x1, y1)), about)


def across(kind: LineType, left: float, right: float, y: float, about: str = "") -> Stroke:
    """A level line."""
    return Stroke(kind, ((left, y), (right, y)), about)


def arc(kind: LineType, centre: Point, radius: float, start: float, end: float, steps: int = 24) -> Stroke:
    """Part of a circle, from one angle to another in degrees anticlockwise."""
    turns = [(start + (end - start) * i / steps) * pi / 180 for i in range(steps + 1)]
    return Stroke(kind, tuple((centre[0] + radius * cos(t), centre[1] + radius * sin(t)) for t in turns))
