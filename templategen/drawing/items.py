"""Device-independent marks: data first, so they can be measured, sliced and replayed on any device.

Millimetres, x along the datum edge, y to the left of x (up, where x runs to the
right). A place that matters is an exact ``Fraction`` or ``int``; nothing here rounds.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from dataclasses import dataclass
from enum import Enum
from fractions import Fraction
from itertools import pairwise
from typing import TypeAlias

from .lettering import Bounds, Run, set_text

Number: TypeAlias = int | float | Fraction


class LineType(Enum):
    """What a line means; the value is (width in mm, dash and gap lengths in line widths).

    Line types and their dash lengths follow ISO 128-2:2020, table 1 and its
    rules for lengths (values from memory): dash 12 d, long dash 24 d, gap 3 d,
    spaced gap 18 d, dot half a d. Widths are of the ISO 128 series and never
    under 0.18 mm (half a point), which home printers still draw unbroken.
    """

    CUT = (0.5, ())
    """01.2, continuous wide: an outline, cut along it."""
    TRIM = (0.7, ())
    """01.2, continuous, wider: cut here and nowhere else, where two pieces meet."""
    MARK = (0.35, ())
    """01.1, continuous: a place to mark on the cloth."""
    THIN = (0.25, ())
    """01.1, continuous narrow: outlines of other parts, dimension and leader lines."""
    FOLD = (0.35, (12, 3))
    """02, dashed: a fold comes here."""
    STITCH = (0.35, (12, 18))
    """03, dashed spaced: a row of stitching."""
    CENTRE = (0.25, (24, 3, 0.5, 3))
    """04, long-dashed dotted: a centre line."""
    MATCH = (0.35, (24, 3, 0.5, 3, 0.5, 3))
    """05, long-dashed double-dotted: the neighbour's trimmed edge comes here."""

    @property
    def width(self) -> float:
        """Line width in millimetres."""
        width: float = self.value[0]
        return width

    @property
    def dashes(self) -> tuple[float, ...]:
        """Lengths of dashes and gaps in millimetres; empty for a continuous line."""
        width, dashes = self.value
        return tuple(width * length for length in dashes)


TURNS = {0: (1, 0), 90: (0, 1), 180: (-1, 0), 270: (0, -1)}
"""The direction in which a turned text reads, by its turn in degrees: cosine and sine, exact."""


class Anchor(Enum):
    """Which point of a text stands at its place."""

    START = 0.0
    MIDDLE = 0.5
    END = 1.0


@dataclass(frozen=True, slots=True)
class Line:
    kind: LineType
    x1: Number
    y1: Number
    x2: Number
    y2: Number
    about: str = ""
    """What of a picture it belongs to, for a reader that points at parts of it; "" for nothing in particular."""

    @property
    def runs_along(self) -> bool:
        """Whether it runs parallel to the datum edge, so that a join may cross it."""
        return self.y1 == self.y2

    @property
    def bounds(self) -> Bounds:
        x1, x2 = (self.x2, self.x1) if self.x2 < self.x1 else (self.x1, self.x2)
        y1, y2 = (self.y2, self.y1) if self.y2 < self.y1 else (self.y1, self.y2)
        return Bounds(x1, y1, x2, y2)


@dataclass(frozen=True, slots=True)
class Ring:
    """A circle, not filled."""

    kind: LineType
    x: Number
    y: Number
    radius: Number
    about: str = ""

    @property
    def bounds(self) -> Bounds:
        return Bounds(self.x - self.radius, self.y - self.radius, self.x + self.radius, self.y + self.radius)


@dataclass(frozen=True, slots=True)
class Solid:
    """A small filled polygon: an arrow head. Never large: toner rubs off on cloth."""

    points: tuple[tuple[Number, Number], ...]
    about: str = ""

    @property
    def bounds(self) -> Bounds:
        xs = [x for x, _ in self.points]
        ys = [y for _, y in self.points]
        return Bounds(min(xs), min(ys), max(xs), max(ys))


@dataclass(frozen=True, slots=True)
class Text:
    """One line of text; a fraction in it (5/16) is set as a built fraction."""

    x: Number
    y: Number
    """The anchor's place on the base line."""
    text: str
    size: float
    """In points of 1/72 in."""
    anchor: Anchor = Anchor.START
    bold: bool = False
    turn: int = 0
    """Reading direction, in degrees anticlockwise from x: 0, 90, 180 or 270."""
    about: str = ""

    def runs(self) -> Iterator[tuple[Run, float, float]]:
        """Each run of the text, set, with where on its base line it begins."""
        setting = set_text(self.text, self.size, self.bold)
        cos, sin = TURNS[self.turn]
        back = setting.width * self.anchor.value
        x, y = float(self.x) - cos * back, float(self.y) - sin * back
        for run in setting.runs:
            yield run, x + cos * run.dx - sin * run.dy, y + sin * run.dx + cos * run.dy

    @property
    def bounds(self) -> Bounds:
        setting = set_text(self.text, self.size, self.bold)
        before = setting.width * self.anchor.value
        after = setting.width - before
        up, down = setting.ascent, setting.descent
        x, y = float(self.x), float(self.y)
        match self.turn:
            case 0:
                return Bounds(x - before, y - down, x + after, y + up)
            case 90:
                return Bounds(x - up, y - before, x + down, y + after)
            case 180:
                return Bounds(x - after, y - up, x + before, y + down)
            case _:
                return Bounds(x - down, y - after, x + up, y + before)


Item: TypeAlias = Line | Ring | Solid | Text


def path(kind: LineType, points: Iterable[tuple[Number, Number]], about: str = "") -> tuple[Line, ...]:
    """The lines that join ``points`` in order."""
    return tuple(Line(kind, *a, *b, about) for a, b in pairwise(points))


def rectangle(kind: LineType, x1: Number, y1: Number, x2: Number, y2: Number) -> tuple[Line, ...]:
    """The four sides of an upright rectangle."""
    return path(kind, [(x1, y1), (x2, y1), (x2, y2), (x1, y2), (x1, y1)])
