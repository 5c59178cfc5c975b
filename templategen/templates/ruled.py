"""Lines ruled across a gauge, each labelled, whatever the numbers.

Labels stand directly above their lines. Where another line would run through a
label it is interrupted there; where two labels would collide the later one
moves to the next column, and where no column is free it moves up on a leader.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, replace
from fractions import Fraction

from ..drawing import Bounds, Item, Line, LineType, Number, Text, width_of

STRONG_SIZE = 15
PLAIN_SIZE = 10
_LIFT = 1.3
_CAPS = 3.9
"""Height of a capital in STRONG_SIZE, in millimetres."""
_BREATH = 0.9
TOLD_APART = Fraction(1, 2)
"""Lines nearer to each other than this, in mm, look like one."""
TICK = 11
"""A line's first millimetres from the datum edge are never interrupted: at least 8 mm are promised."""


@dataclass(frozen=True, slots=True)
class Rule:
    """One line to be ruled across a gauge."""

    at: Fraction
    kind: LineType | None
    """None where an edge of the gauge is the line."""
    strong: str
    """The part of its label that must be read at arm's length."""
    plain: str = ""
    below: bool = False
    """Whether its label stands below the line: for the topmost edge."""


def rule(
    rules: Sequence[Rule], depth: Number, columns: int, size: float = STRONG_SIZE
) -> tuple[tuple[Item, ...], float]:
    """The lines and labels of a gauge whose datum edge is y = 0 and that lies at y < 0.

    ``depth`` is how far the lines run from the datum edge, ``size`` the size in points
    of what must be read at arm's length. Returns the items
    and how high the highest label reaches.
    """
    column_width = (float(depth) - TICK) / columns
    boxes: list[Bounds] = []
    labels: list[Item] = []
    for each in _told_apart(rules):
        base, column = _free_place(each, boxes, columns, column_width, size)
        left = -(TICK + 1 + column * column_width)
        box = _box(each, base, left, size)
        boxes.append(box)
        labels += _label(each, base, left, size)
        if base > float(each.at) + _LIFT + 0.01:
            labels.append(Line(LineType.THIN, each.at, left + 0.7, base + _CAPS, left + 0.7))
    lines = [line for each in rules if each.kind for line in _interrupted(each, depth, boxes)]
    top = max((float(box.right) for box in boxes), default=0.0)
    return (*lines, *labels), top


def _told_apart(rules: Sequence[Rule]) -> list[Rule]:
    """From the datum's zero up; lines that the eye cannot tell apart share one label."""
    told: list[Rule] = []
    for each in sorted(rules, key=lambda r: (r.at, r.below)):
        if told and each.at - told[-1].at < TOLD_APART:
            last = told[-1]
            joint = " = " if each.at == last.at else " and "
            if each.strong == last.strong:
                told[-1] = replace(last, plain=last.plain + joint + each.plain)
            elif not each.plain:
                told[-1] = replace(last, strong=last.strong + joint + each.strong)
            else:
                told[-1] = replace(last, plain=f"{last.plain}{joint}{each.strong} {each.plain}")
        else:
            told.append(each)
    return told


def _free_place(each: Rule, boxes: list[Bounds], columns: int, width: float, size: float) -> tuple[float, int]:
    base = float(each.at) - _LIFT - _CAPS if each.below else float(each.at) + _LIFT
    while True:
        for column in range(columns):
            box = _box(each, base, -(TICK + 1 + column * width), size)
            if not any(box.meets(other, _BREATH) for other in boxes):
                return base, column
        base += 0.5


def _box(each: Rule, base: float, left: float, size: float) -> Bounds:
    width = _strong_width(each, size) + width_of(each.plain, PLAIN_SIZE)
    return Bounds(base - 1.0, left - width, base + _CAPS + 0.6, left + 0.8)


def _label(each: Rule, base: float, left: float, size: float) -> tuple[Item, ...]:
    strong = (Text(base, left, each.strong, size, bold=True, turn=270),) if each.strong else ()
    plain = (Text(base, left - _strong_width(each, size), each.plain, PLAIN_SIZE, turn=270),) if each.plain else ()
    return (*strong, *plain)


def _strong_width(each: Rule, size: float) -> float:
    return width_of(each.strong, size, True) + 1.5 if each.strong else 0.0


def _interrupted(each: Rule, depth: Number, boxes: list[Bounds]) -> list[Line]:
    """The line at ``each.at`` from y = 0 to y = -depth, less where it would run through a label."""
    assert each.kind is not None
    gaps = sorted((-box.top, -box.bottom) for box in boxes if box.left + 0.25 < each.at < box.right + 0.3)
    lines: list[Line] = []
    pen: Number = 0
    for start, stop in gaps:
        if start > pen:
            lines.append(Line(each.kind, each.at, -pen, each.at, -start))
        pen = max(pen, stop)
    if depth > pen:
        lines.append(Line(each.kind, each.at, -pen, each.at, -depth))
    return lines
