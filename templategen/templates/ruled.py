"""Lines ruled across a gauge, each labelled, whatever the numbers.

Labels stand directly above their lines, or below where they are asked to. Where
a line would run through another's label the lines end short, and the labels stand
beside them, each at the end of a leader. In large print a label that is too wide
goes on in a second row, where usual print is set a little smaller.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass, replace
from fractions import Fraction
from itertools import pairwise

from ..drawing import USUAL, Bounds, Item, Line, LineType, Look, Number, Text, tied, width_of, wrap

STRONG_SIZE = 15
PLAIN_SIZE = 10
TOLD_APART = Fraction(1, 2)
"""Lines nearer to each other than this, in mm, look like one."""
TICK = 11
"""Continuous from the datum edge, in mm, and never interrupted: at least 8 are promised."""
SHORTEST = 60
"""Least length of a template along its datum edge, in mm: our choice; it must hold its name, and be held."""
_CAPS = 3.9
"""Height of a capital in STRONG_SIZE, in millimetres."""
_LIFT = 1.3
_TAILS = 1.0
"""From a label's line up to its base line, and how far its letters reach below that, likewise."""
_LOWEST = 1.2
"""Least height of the base line of a label that stands beside its line, likewise."""
_ROWS = 1.45
"""From one row of a label to the next, in heights of a capital: our choice, so that tails and capitals are apart."""
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
class Lettering:
    """How the labels of a gauge are set, and what room they take."""

    strong: float
    plain: float
    """In points."""
    least: float
    """They are never set smaller than this to make them fit."""
    grown: float
    """How many times the usual height they have, for which distances were chosen; they never shrink with it."""
    spare: float
    """What heavier lines take of the room beside them, in mm: as much as the heaviest is heavier than usual."""

    @classmethod
    def of(cls, look: Look, size: float) -> Lettering:
        strong = look.size(size)
        spare = look.width(LineType.CUT) - LineType.CUT.width
        return cls(strong, look.size(PLAIN_SIZE), look.least, max(strong / STRONG_SIZE, 1.0), spare)

    @property
    def caps(self) -> float:
        """Height of a capital, in mm."""
        return _CAPS * self.grown

    @property
    def lift(self) -> float:
        """From a label's line up to its base line, in mm."""
        return _LIFT * self.grown + self.spare

    @property
    def pitch(self) -> float:
        """From one row of a label to the next, in mm."""
        return _ROWS * self.caps


@dataclass(frozen=True, slots=True)
class _Label:
    """A line's label, set no wider than the room there is: in each row what is strong, and what is plain after it."""

    rule: Rule
    set: Lettering
    rows: tuple[tuple[str, str], ...]
    """From the topmost down."""

    def _strong_width(self, strong: str) -> float:
        return width_of(strong, self.set.strong, True) + _BETWEEN if strong else 0.0

    @property
    def width(self) -> float:
        return max(self._strong_width(strong) + width_of(plain, self.set.plain) for strong, plain in self.rows)

    @property
    def height(self) -> float:
        """From the lowest base line to the top of the topmost row's capitals, in mm."""
        return self.set.caps + self.set.pitch * (len(self.rows) - 1)

    @property
    def base(self) -> float:
        """The base line of its lowest row, directly above or below its line."""
        return float(self.rule.at) + (-self.set.lift - self.height if self.rule.below else self.set.lift)

    def box(self, base: float, left: float) -> Bounds:
        return Bounds(base - _TAILS * self.set.grown, left - self.width, base + self.height + 0.6, left + 0.8)

    def items(self, base: float, left: float, downward: bool) -> Iterator[Item]:
        for i, (strong, plain) in enumerate(self.rows):
            row = base + self.set.pitch * (i if downward else len(self.rows) - 1 - i)
            if strong:
                yield Text(row, left, strong, self.set.strong, bold=True, turn=270)
            if plain:
                yield Text(row, left - self._strong_width(strong), plain, self.set.plain, turn=270)


def rule(
    rules: Sequence[Rule], depth: Number, size: float = STRONG_SIZE, look: Look = USUAL, *, downward: bool = False
) -> tuple[tuple[Item, ...], float]:
    """The lines and labels of a gauge whose datum edge is y = 0 and that lies at y < 0.

    ``depth`` is how far the lines run from the datum edge, ``size`` the usual size in points
    of what must be read at arm's length; ``downward`` for a gauge that is turned over once it is
    ruled, so that a label's first row has to be its lowest. Returns the items and how high the
    highest label reaches.
    """
    left = -(TICK + 1.0)
    lettering = Lettering.of(look, size)
    # A label below its line stands nearer to the line before: where that crowds, all that have a line stand above.
    for tried in (rules, [replace(each, below=each.below and each.kind is None) for each in rules]):
        labels = [_fitted(each, lettering, float(depth) + left) for each in _told_apart(tried)]
        boxes = [label.box(label.base, left) for label in labels]
        if not _collide(rules, boxes):
            break
    else:
        return _beside(rules, float(depth), lettering, downward)
    lines = [line for each in rules if each.kind for line in _line(each.at, each.kind, float(depth))]
    texts = [item for label in labels for item in label.items(label.base, left, downward)]
    return (*lines, *texts), max(float(box.right) for box in boxes)


def _collide(rules: Sequence[Rule], boxes: Sequence[Bounds]) -> bool:
    """Whether any two labels meet, or a line runs through a label."""
    ordered = sorted(boxes, key=lambda box: box.left)
    if any(one.right + _BREATH > other.left for one, other in pairwise(ordered)):
        return True
    return any(box.left + 0.25 < each.at < box.right + 0.2 for box in boxes for each in rules)


def _beside(
    rules: Sequence[Rule], depth: float, lettering: Lettering, downward: bool
) -> tuple[tuple[Item, ...], float]:
    """The lines to half the depth, and the labels beside them, in the same order, each on a leader."""
    told = _told_apart(rules)
    widest = max(_Label(each, lettering, ((each.strong, each.plain),)).width for each in told)
    stop = max(depth - _LEADER - widest, TICK + 5.0)
    left = -(stop + _LEADER)
    labels = [_fitted(each, lettering, depth + left) for each in told]
    items: list[Item] = [line for each in rules if each.kind for line in _line(each.at, each.kind, stop)]
    base, lowest = 0.0, _LOWEST * lettering.grown + lettering.spare
    for label in labels:
        middle = label.height / 2
        base = max(base, float(label.rule.at) - middle, lowest)
        items += label.items(base, left, downward)
        if label.rule.kind or label.rule.at:
            items.append(Line(LineType.THIN, label.rule.at, -stop - 0.5, base + middle, left + 1))
        base += label.height + 2.2
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


def _fitted(each: Rule, lettering: Lettering, room: float) -> _Label:
    """The label in its own sizes, or in smaller ones where it would be too wide; in rows, where these may not be."""
    label = _Label(each, lettering, ((each.strong, each.plain),))
    wide = label.width
    if wide <= room:
        return label
    shrink = min(1.0, (room - _BETWEEN) / (wide - _BETWEEN))
    smaller = replace(lettering, strong=lettering.strong * shrink, plain=lettering.plain * shrink)
    if min(smaller.strong, smaller.plain) >= lettering.least:
        return replace(label, set=smaller)
    return replace(label, rows=tuple(_in_rows(each, lettering, room)))


def _in_rows(each: Rule, lettering: Lettering, room: float) -> Iterator[tuple[str, str]]:
    """What is strong in as few rows as hold it, and what is plain from where that ends."""
    strong, plain = "", tied(each.plain)
    if each.strong:
        *rows, strong = wrap(each.strong, lettering.strong, room - _BETWEEN, True)
        yield from ((row, "") for row in rows)
    left = room - width_of(strong, lettering.strong, True) - _BETWEEN if strong else room
    first = next(iter(wrap(plain, lettering.plain, left))) if left > 0 else ""
    if width_of(first, lettering.plain) > left or plain[len(first) : len(first) + 1].strip(" "):
        first = ""
    rest = plain[len(first) :].strip(" ")
    if strong or first:
        yield strong, first
    if rest:
        yield from (("", row) for row in wrap(rest, lettering.plain, room))


def _line(at: Fraction, kind: LineType, depth: float) -> Iterator[Line]:
    """A line from the datum edge inward.

    It begins with a continuous tick, whatever its type: that is what is marked at the edge.
    """
    yield Line(LineType.MARK, at, 0, at, -TICK)
    yield Line(kind, at, -TICK, at, -depth)
