"""Lines ruled across a gauge, each labelled, whatever the numbers.

Labels stand directly above their lines. Where another line would run through a
label it is interrupted there; where two labels would collide the later one
moves to the next column, and where no column is free it moves up on a leader.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from fractions import Fraction

from ..drawing import Bounds, Item, Line, LineType, Number, Text, width_of

VALUE_SIZE = 15
NAME_SIZE = 9.5
_LIFT = 1.3
_CAPS = 3.9
"""Height of a capital in VALUE_SIZE, in millimetres."""
_BREATH = 0.9
TICK = 11
"""A line's first millimetres from the datum edge are never interrupted: at least 8 mm are promised."""


@dataclass(frozen=True, slots=True)
class Rule:
    """One line to be ruled across a gauge."""

    at: Fraction
    kind: LineType | None
    """None where an edge of the gauge is the line."""
    value: str
    name: str
    below: bool = False
    """Whether its label stands below the line: for the topmost edge."""


def rule(rules: Sequence[Rule], depth: Number, columns: int) -> tuple[tuple[Item, ...], float]:
    """The lines and labels of a gauge whose datum edge is y = 0 and that lies at y < 0.

    ``depth`` is how far the lines run from the datum edge. Returns the items
    and how high the highest label reaches.
    """
    column_width = (float(depth) - TICK) / columns
    boxes: list[Bounds] = []
    labels: list[Item] = []
    for each in sorted(rules, key=lambda r: (r.at, r.below)):
        base, column = _free_place(each, boxes, columns, column_width)
        left = -(TICK + 1 + column * column_width)
        box = _box(each, base, left)
        boxes.append(box)
        labels += _label(each, base, left)
        if base > float(each.at) + _LIFT + 0.01:
            labels.append(Line(LineType.THIN, each.at, left + 0.7, base + _CAPS, left + 0.7))
    lines = [line for each in rules if each.kind for line in _interrupted(each, depth, boxes)]
    top = max((float(box.right) for box in boxes), default=0.0)
    return (*lines, *labels), top


def _free_place(each: Rule, boxes: list[Bounds], columns: int, width: float) -> tuple[float, int]:
    base = float(each.at) - _LIFT - _CAPS if each.below else float(each.at) + _LIFT
    while True:
        for column in range(columns):
            box = _box(each, base, -(TICK + 1 + column * width))
            if not any(box.meets(other, _BREATH) for other in boxes):
                return base, column
        base += 0.5


def _box(each: Rule, base: float, left: float) -> Bounds:
    width = width_of(each.value, VALUE_SIZE, True) + 1.5 + width_of(each.name, NAME_SIZE)
    return Bounds(base - 1.0, left - width, base + _CAPS + 0.6, left + 0.8)


def _label(each: Rule, base: float, left: float) -> tuple[Item, ...]:
    after = left - width_of(each.value, VALUE_SIZE, True) - (1.5 if each.value else 0)
    value = (Text(base, left, each.value, VALUE_SIZE, bold=True, turn=270),) if each.value else ()
    return (*value, Text(base, after, each.name, NAME_SIZE, turn=270))


def _interrupted(each: Rule, depth: Number, boxes: list[Bounds]) -> list[Line]:
    """The line at ``each.at`` from y = 0 to y = -depth, less where it would run through a label."""
    assert each.kind is not None
    gaps = sorted((-box.top, -box.bottom) for box in boxes if box.left - 0.3 < each.at < box.right + 0.3)
    lines: list[Line] = []
    pen: Number = 0
    for start, stop in gaps:
        if start > pen:
            lines.append(Line(each.kind, each.at, -pen, each.at, -start))
        pen = max(pen, stop)
    if depth > pen:
        lines.append(Line(each.kind, each.at, -pen, each.at, -depth))
    return lines
