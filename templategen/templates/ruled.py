"""Lines ruled across a gauge, each labelled, whatever the numbers.

Labels stand directly above their lines. Where another line would run through a
label it is interrupted there; where two labels would collide the later one
moves to the next column, and where no column is free it moves up on a leader.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass, replace
from fractions import Fraction

from ..drawing import Bounds, Item, Line, LineType, Number, Text, width_of

STRONG_SIZE = 15
PLAIN_SIZE = 10
TOLD_APART = Fraction(1, 2)
"""Lines nearer to each other than this, in mm, look like one."""
TICK = 11
"""Continuous from the datum edge, in mm, and never interrupted: at least 8 are promised."""
SHORTEST = 60
"""Least length of a template along its datum edge, in mm: our choice; it must hold its name, and be held."""
_LIFT = 1.3
_CAPS = 3.9
"""Height of a capital in STRONG_SIZE, in millimetres."""
_BREATH = 0.9
_BETWEEN = 1.5


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


@dataclass(frozen=True, slots=True)
class _Label:
    """A line's label, set no wider than its column."""

    rule: Rule
    strong_size: float
    plain_size: float

    @property
    def strong_width(self) -> float:
        return width_of(self.rule.strong, self.strong_size, True) + _BETWEEN if self.rule.strong else 0.0

    @property
    def width(self) -> float:
        return self.strong_width + width_of(self.rule.plain, self.plain_size)

    @property
    def base(self) -> float:
        """Where its base line stands if nothing is in the way."""
        return float(self.rule.at) + (-_LIFT - _CAPS if self.rule.below else _LIFT)

    def box(self, base: float, left: float) -> Bounds:
        return Bounds(base - 1.0, left - self.width, base + _CAPS + 0.6, left + 0.8)

    def items(self, base: float, left: float) -> Iterator[Item]:
        rule = self.rule
        if rule.strong:
            yield Text(base, left, rule.strong, self.strong_size, bold=True, turn=270)
        if rule.plain:
            yield Text(base, left - self.strong_width, rule.plain, self.plain_size, turn=270)
        if base > self.base + 0.01:
            yield Line(LineType.THIN, rule.at, left + 0.7, base + _CAPS, left + 0.7)


def rule(
    rules: Sequence[Rule], depth: Number, columns: int, size: float = STRONG_SIZE
) -> tuple[tuple[Item, ...], float]:
    """The lines and labels of a gauge whose datum edge is y = 0 and that lies at y < 0.

    ``depth`` is how far the lines run from the datum edge, ``size`` the size in points
    of what must be read at arm's length. Returns the items and how high the
    highest label reaches.
    """
    column_width = (float(depth) - TICK - 1) / columns
    boxes: list[Bounds] = []
    labels: list[Item] = []
    for each in _told_apart(rules):
        label = _fitted(each, size, column_width - _BREATH)
        base, left = _free_place(label, boxes, columns, column_width)
        boxes.append(label.box(base, left))
        labels += label.items(base, left)
    lines = [line for each in rules if each.kind for line in _interrupted(each, each.kind, depth, boxes)]
    top = max((float(box.right) for box in boxes), default=0.0)
    return (*lines, *labels), top


def _told_apart(rules: Sequence[Rule]) -> list[Rule]:
    """From the datum's zero up; lines that the eye cannot tell apart share one label."""
    told: list[Rule] = []
    for each in sorted(rules, key=lambda r: (r.at, r.below)):
        if not told or each.at - told[-1].at >= TOLD_APART:
            told.append(each)
            continue
        last = told[-1]
        joint = " = " if each.at == last.at else " and "
        if each.strong == last.strong:
            told[-1] = replace(last, plain=last.plain + joint + each.plain)
        elif not each.plain:
            told[-1] = replace(last, strong=last.strong + joint + each.strong)
        else:
            told[-1] = replace(last, plain=f"{last.plain}{joint}{each.strong} {each.plain}".strip())
    return told


def _fitted(each: Rule, size: float, room: float) -> _Label:
    """The label in its usual sizes, or in smaller ones where the column is too narrow."""
    label = _Label(each, size, PLAIN_SIZE)
    shrink = min(1.0, room / label.width) if label.width else 1.0
    return _Label(each, size * shrink, PLAIN_SIZE * shrink)


def _free_place(label: _Label, boxes: list[Bounds], columns: int, width: float) -> tuple[float, float]:
    """The base line and left end of the lowest place where the label meets no other."""
    base = label.base
    while True:
        for column in range(columns):
            left = -(TICK + 1 + column * width)
            if not any(label.box(base, left).meets(other, _BREATH) for other in boxes):
                return base, left
        base += 0.5


def _interrupted(each: Rule, kind: LineType, depth: Number, boxes: list[Bounds]) -> Iterator[Line]:
    """The line at ``each.at`` from y = 0 to y = -depth, less where it would run through a label.

    It begins with a continuous tick, whatever its type: that is what is marked at the edge.
    """
    yield Line(LineType.MARK, each.at, 0, each.at, -TICK)
    gaps = sorted((-box.top, -box.bottom) for box in boxes if box.left + 0.25 < each.at < box.right + 0.3)
    pen: Number = TICK
    for start, stop in gaps:
        if start > pen:
            yield Line(kind, each.at, -pen, each.at, -start)
        pen = max(pen, stop)
    if depth > pen:
        yield Line(kind, each.at, -pen, each.at, -depth)
