"""The shapes of pleats, seen from above: the back is below, towards whoever sews, and the front above."""

from __future__ import annotations

from math import pi, sin

from ...document.view import Point
from ...planning.headings.pleats import PleatPlan
from ...spec.headings import PinchPleats
from .signs import mm


def loop(x: float, cloth: float, side: int = 1) -> tuple[Point, ...]:
    """A pleat brought together and not folded further, of so much ``cloth``; ``side`` is 1 to the front."""
    tall, half = cloth * 0.42, cloth * 0.09
    left = [(x - half * sin(pi * t / 12), side * tall * t / 12) for t in range(13)]
    return (*left, *((2 * x - a, b) for a, b in reversed(left)))


def folded(pleats: PleatPlan, x: float) -> tuple[Point, ...]:
    """A pleat as it is in the end, its seam at ``x``."""
    cloth = mm(pleats.pleat)
    if isinstance(pleats.given, PinchPleats):
        return fingers(x, cloth, pleats.given.fingers)
    return flattened(x, cloth, -1 if pleats.style == "inverted box pleats" else 1)


def fingers(x: float, cloth: float, count: int) -> tuple[Point, ...]:
    """Fingers side by side on one foot."""
    tall = cloth / (2 * count)
    apart = tall * 0.42
    points: list[Point] = []
    for i in range(count):
        middle = x + (i - (count - 1) / 2) * apart
        foot = tall * 0.15
        points += [
            (middle + apart * (t / 12 - 0.5) * 0.92, foot + (tall - foot) * min(1.0, sin(pi * t / 12) * 1.4))
            for t in range(13)
        ]
    return ((x - apart * 0.2, 0.0), *points, (x + apart * 0.2, 0.0))


def flattened(x: float, cloth: float, side: int) -> tuple[Point, ...]:
    """A box: as much to either side of its seam, pressed flat, the layers drawn apart."""
    half, gap = cloth / 4, side * cloth * 0.045
    near = cloth * 0.012
    return (
        (x - near, 0.0), (x - near, gap), (x - half, gap), (x - half, 2.2 * gap),
        (x + half, 2.2 * gap), (x + half, gap), (x + near, gap), (x + near, 0.0),
    )  # fmt: skip
