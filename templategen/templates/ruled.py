"""Lines ruled across a gauge, each labelled, whatever the numbers.

Labels stand directly above their lines, or below where they are asked to. Where
a line would run through another's label the lines end short, and the labels stand
beside them, each at the end of a leader.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass, replace
from fractions import Fraction
from itertools import pairwise

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
_LEADER = 8
"""Length of a leader across the gauge, in mm."""


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
    """Whether its label stands below the line: at the topmost edge, or just under another line."""


@dataclass(frozen=True, slots=True)
class _Label:
    """A line's label, set no wider than the room there is."""

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
        """Its base line, directly above or below its line."""
        return float(self.rule.at) + (-_LIFT - _CAPS if self.rule.below else _LIFT)

    def box(self, base: float, left: float) -> Bounds:
        return Bounds(base - 1.0, left - self.width, base + _CAPS + 0.6, left + 0.8)

    def items(self, base: float, left: float) -> Iterator[Item]:
        if self.rule.strong:
            yield Text(base, left, self.rule.strong, self.strong_size, bold=True, turn=270)
        if self.rule.plain:
            yield Text(base, left - self.strong_width, self.rule.plain, self.plain_size, turn=270)


def rule(rules: Sequence[Rule], depth: Number, size: float = STRONG_SIZE) -> tuple[tuple[Item, ...], float]:
    """The lines and labels of a gauge whose datum edge is y = 0 and that lies at y < 0.

    ``depth`` is how far the lines run from the datum edge, ``size`` the size in points
    of what must be read at arm's length. Returns the items and how high the
    highest label reaches.
    """
    left = -(TICK + 1.0)
    # A label below its line stands nearer to the line before: where that crowds, all that have a line stand above.
    for tried in (rules, [replace(each, below=each.below and each.kind is None) for each in rules]):
        labels = [_fitted(each, size, float(depth) + left) for each in _told_apart(tried)]
        boxes = [label.box(label.base, left) for label in labels]
        if not _collide(rules, boxes):
            break
    else:
        return _beside(rules, float(depth), size)
    lines = [line for each in rules if each.kind for line in _line(each.at, each.kind, float(depth))]
    texts = [item for label in labels for item in label.items(label.base, left)]
    return (*lines, *texts), max(float(box.right) for box in boxes)


def _collide(rules: Sequence[Rule], boxes: Sequence[Bounds]) -> bool:
    """Whether any two labels meet, or a line runs through a label."""
    ordered = sorted(boxes, key=lambda box: box.left)
    if any(one.right + _BREATH > other.left for one, other in pairwise(ordered)):
        return True
    return any(box.left + 0.25 < each.at < box.right + 0.2 for box in boxes for each in rules)


def _beside(rules: Sequence[Rule], depth: float, size: float) -> tuple[tuple[Item, ...], float]:
    """The lines to half the depth, and the labels beside them, in the same order, each on a leader."""
    told = _told_apart(rules)
    widest = max(_Label(each, size, PLAIN_SIZE).width for each in told)
    stop = max(depth - _LEADER - widest, TICK + 5.0)
    left = -(stop + _LEADER)
    labels = [_fitted(each, size, depth + left) for each in told]
    items: list[Item] = [line for each in rules if each.kind for line in _line(each.at, each.kind, stop)]
    base = 0.0
    for label in labels:
        base = max(base, float(label.rule.at) - _CAPS / 2, 1.2)
        items += label.items(base, left)
        if label.rule.kind or label.rule.at:
            items.append(Line(LineType.THIN, label.rule.at, -stop - 0.5, base + _CAPS / 2, left + 1))
        base += _CAPS + 2.2
    return tuple(items), base - 1.2


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
    """The label in its usual sizes, or in smaller ones where it would be too wide."""
    wide = _Label(each, size, PLAIN_SIZE).width
    shrink = min(1.0, (room - _BETWEEN) / (wide - _BETWEEN)) if wide > room else 1.0
    return _Label(each, size * shrink, PLAIN_SIZE * shrink)


def _line(at: Fraction, kind: LineType, depth: float) -> Iterator[Line]:
    """A line from the datum edge inward.

    It begins with a continuous tick, whatever its type: that is what is marked at the edge.
    """
    yield Line(LineType.MARK, at, 0, at, -TICK)
    yield Line(kind, at, -TICK, at, -depth)
