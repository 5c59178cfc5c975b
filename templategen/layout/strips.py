"""Strips: blocks of words set in a column's width, to be put one below the other; what is drawn is in other modules."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass, replace
from functools import singledispatch
from math import inf

from ..document.blocks import (
    MOST_BLANKS,
    Blanks,
    Block,
    Figure,
    Finding,
    Findings,
    Heading,
    Lines,
    NumberRow,
    Numbers,
    Paragraph,
    Points,
    Remark,
    Step,
)
from ..document.shapes import moved
from ..drawing import Item, Line, LineType, Text, width_of, wrap
from ..drawing.look import Look

USUAL_BODY, USUAL_SMALL = 11.0, 9.0


@dataclass(frozen=True, slots=True)
class Sizes:
    """Sizes of type, in points."""

    body: float
    small: float
    title: float
    head: float
    page: float = inf
    """How high a page is, in mm: nothing that no page divides may be higher."""

    @property
    def grown(self) -> float:
        """How many times their usual size boxes, indents and lines to write on have, so that they suit the type."""
        return max(self.body / USUAL_BODY, 0.8)

    @property
    def pictured(self) -> float:
        """What is said in pictures is no smaller where the rest is, to save a page: a picture is set once."""
        return max(self.small, USUAL_SMALL)

    def seen(self, look: Look) -> Sizes:
        """The same in a look: what goes on paper in usual type, set so that the look's own reader can read it."""
        sizes = Sizes(*(look.size(each) for each in (self.body, self.small, self.title, self.head)))
        return sizes if look.least <= self.small else Sizes(sizes.body, sizes.small, sizes.body * 1.5, sizes.body * 1.2)


LEADING = 0.46
"""Line pitch in mm for each point of type: 1.3 times the size."""
_MOST_TOGETHER = 12
"""Lines of a paragraph that no page divides: our choice. A longer one goes on wherever there is room."""
_MEANING_COLUMN = 0.32
"""Of what the readings leave; what to do has the rest."""
_LABEL_COLUMN = 0.26
_VALUE_COLUMN = 0.32
_SIDE_BY_SIDE = 12.5
"""Numbers and their working stand side by side where a column is this many times as wide, in mm, as the type is high,
in points: our choice."""
_VALUE_AT = 0.55
"""Where else the value begins, of the width."""
_TWO_COLUMNS = 12.0
"""Points are set in two columns where a column is this many times as wide, in mm, as the type is high, in points."""
_TO_WRITE_ON = 9.0
"""Mm from one line to write on to the next: our choice, as in ruled paper for handwriting, and a little."""


@dataclass(frozen=True, slots=True)
class Strip:
    """An unbreakable strip of a page: its height, and its items from its top left corner."""

    height: float
    items: tuple[Item, ...]
    keep_with_next: bool = False


def strips_of(blocks: Sequence[Block], width: float, sizes: Sizes) -> list[Strip]:
    """Blocks set in this width, in mm, as strips to be put one below the other.

    What is remarked before a step stays with it, and so does what is to be written down before it.
    """
    found: list[list[Strip]] = []
    leads = False
    for block in reversed(blocks):
        each = list(strips(block, width, sizes))
        if leads and not isinstance(block, Step):
            each[-1] = replace(each[-1], keep_with_next=True)
        leads = isinstance(block, Step | Blanks) or (leads and isinstance(block, Remark))
        found.append(each)
    return [strip for each in reversed(found) for strip in each]


def height_of(strips: Sequence[Strip]) -> float:
    """Of all of them, one below the other, in mm."""
    return sum(strip.height for strip in strips)


@singledispatch
def strips(block: Block, width: float, sizes: Sizes) -> Iterator[Strip]:
    raise TypeError(f"no way to set a {type(block).__name__}")


def lines_of(text: str, size: float, left: float, width: float, bold: bool = False) -> tuple[float, list[Item]]:
    """Wrapped text from a strip's top; returns its height."""
    leading = size * LEADING
    rows = wrap(text, size, width - left, bold)
    return leading * len(rows), [
        Text(left, -(i + 1) * leading + leading * 0.25, row, size, bold=bold) for i, row in enumerate(rows)
    ]


@strips.register
def _(block: Heading, width: float, sizes: Sizes) -> Iterator[Strip]:
    size = sizes.title if block.first else sizes.head
    height, items = lines_of(block.text, size, 0, width, bold=True)
    above = 3.0 if block.first else 3.5
    rule = [] if block.first else [Line(LineType.THIN, 0, -height - 0.6, width, -height - 0.6)]
    yield Strip(above, (), True)
    yield Strip(height + 2.0, (*items, *rule), True)


@strips.register
def _(block: Paragraph, width: float, sizes: Sizes) -> Iterator[Strip]:
    height, items = lines_of(block.text, sizes.body, 0, width)
    if len(items) <= _MOST_TOGETHER:
        yield Strip(height + 1.2, tuple(items))
        return
    leading = height / len(items)
    for i, line in enumerate(items):
        yield Strip(leading + (1.2 if i == len(items) - 1 else 0.0), (moved(line, 0, i * leading),))


@strips.register
def _(block: Remark, width: float, sizes: Sizes) -> Iterator[Strip]:
    indent = max(width_of(word, sizes.body, True) for word in (block.word, "Warning")) + 3
    height, items = lines_of(block.text, sizes.body, indent, width)
    word = Text(0, -sizes.body * LEADING * 0.75, block.word, sizes.body, bold=True)
    yield Strip(height + 1.2, (word, *items))


@strips.register
def _(block: Numbers, width: float, sizes: Sizes) -> Iterator[Strip]:
    yield from _named(block.name, width, sizes)
    for row in block.rows:
        yield _number_row(row, width, sizes)


def _named(name: str, width: float, sizes: Sizes) -> Iterator[Strip]:
    """What the rows below are, where that is said."""
    if name:
        height, items = lines_of(name, sizes.body, 0, width, bold=True)
        yield Strip(height + 2.4, tuple(moved(item, 0, -1.6) for item in items), True)


def _number_row(row: NumberRow, width: float, sizes: Sizes) -> Strip:
    """Label, value and working in three columns, each wrapped in its own; in large type the working below them."""
    if width < _SIDE_BY_SIDE * sizes.body:
        value_at = width * _VALUE_AT
        height, items = _beside(row, value_at, width, sizes)
        below, working = lines_of(row.working, sizes.small, 6.0, width) if row.working else (0.0, [])
        return Strip(height + below + 1.6, (*items, *(moved(item, 0, -height) for item in working)))
    value_at = width * _LABEL_COLUMN
    working_at = width * (_LABEL_COLUMN + _VALUE_COLUMN)
    columns = [
        lines_of(row.label, sizes.body, 0, value_at - 2),
        lines_of(row.value, sizes.body, value_at, working_at - 2, bold=True),
        lines_of(row.working, sizes.small, working_at, width) if row.working else (0.0, []),
    ]
    height = max(height for height, _ in columns)
    return Strip(height + 0.9, tuple(item for _, items in columns for item in items))


def _beside(row: NumberRow, value_at: float, end: float, sizes: Sizes) -> tuple[float, list[Item]]:
    """Label and value side by side; their height."""
    label, below = lines_of(row.label, sizes.body, 0, value_at - 2)
    value, beside = lines_of(row.value, sizes.body, value_at, end, bold=True)
    return max(label, value), [*below, *beside]


@strips.register
def _(block: Blanks, width: float, sizes: Sizes) -> Iterator[Strip]:
    """A line to write on for each thing to be measured, up to as many as there is room for."""
    beside = width >= _SIDE_BY_SIDE * sizes.body
    value_at, end, left = (width * 0.41, width * 0.64 - 2, width * 0.64) if beside else (width * _VALUE_AT, width, 0.0)
    for i, row in enumerate(block.rows):
        height, items = _beside(row, value_at, end, sizes)
        base = -sizes.body * LEADING * 0.75 - 0.4
        if not beside:
            base -= height + 2.0
            height += _TO_WRITE_ON * sizes.grown
        places = _places(min(block.times, MOST_BLANKS), left, width, base, sizes)
        yield Strip(max(height, 7.0) + 1.0, (*items, *places), i + 1 < len(block.rows))


def _places(count: int, start: float, end: float, base: float, sizes: Sizes) -> Iterator[Item]:
    """Lines to write on side by side, numbered where there are several."""
    each = (end - start) / count
    for i in range(count):
        left = start + i * each
        if count > 1:
            yield Text(left, base + 0.4, str(i + 1), sizes.small)
        yield Line(LineType.THIN, left + (3 * sizes.grown if count > 1 else 0), base, left + each - 3, base)


@strips.register
def _(block: Findings, width: float, sizes: Sizes) -> Iterator[Strip]:
    """Reading, meaning and remedy in three columns, under a line that says so."""
    readings = [(reading, sizes.body, True) for row in block.rows for reading in row.readings]
    meaning_at = max(width_of(*reading) for reading in [*readings, (block.heads[0], sizes.small, False)]) + 4
    remedy_at = meaning_at + max((width - meaning_at) * _MEANING_COLUMN, width_of(block.heads[1], sizes.small) + 3)
    columns = (0.0, meaning_at, remedy_at)
    base = -sizes.small * LEADING * 0.75
    heads = (Text(left, base, head, sizes.small) for left, head in zip(columns, block.heads, strict=True))
    yield Strip(sizes.small * LEADING + 0.8, tuple(heads), True)
    for row in block.rows:
        yield _finding(row, columns, width, sizes)


def _finding(row: Finding, columns: tuple[float, float, float], width: float, sizes: Sizes) -> Strip:
    """The first of the readings in bold; what else it may be called below it."""
    _, meaning_at, remedy_at = columns
    leading = sizes.body * LEADING
    readings = [
        Text(0, -(i + 0.75) * leading, reading, sizes.body, bold=not i) for i, reading in enumerate(row.readings)
    ]
    meaning = lines_of(row.meaning, sizes.body, meaning_at, remedy_at - 3, bold=True)
    remedy = lines_of(row.remedy, sizes.body, remedy_at, width)
    height = max(len(readings) * leading, meaning[0], remedy[0])
    return Strip(height + 1.6, (*readings, *meaning[1], *remedy[1]))


@strips.register
def _(block: Figure, width: float, sizes: Sizes) -> Iterator[Strip]:
    yield Strip(block.height, block.items)


@strips.register
def _(block: Points, width: float, sizes: Sizes) -> Iterator[Strip]:
    """A short dash before each; side by side in two columns where they are wide enough."""
    yield from _named(block.name, width, sizes)
    count = 2 if width / 2 >= _TWO_COLUMNS * sizes.body / 2 else 1
    each, indent = width / count, 4.0 * sizes.grown
    for i in range(0, len(block.rows), count):
        items: list[Item] = []
        tallest = 0.0
        for column, point in enumerate(block.rows[i : i + count]):
            left = column * each
            height, words = lines_of(point, sizes.body, left + indent, left + each - 3)
            items += [Text(left, -sizes.body * LEADING * 0.75, "–", sizes.body), *words]
            tallest = max(tallest, height)
        yield Strip(tallest + 0.8, tuple(items))
    yield Strip(1.0, ())


@strips.register
def _(block: Lines, width: float, sizes: Sizes) -> Iterator[Strip]:
    pitch = _TO_WRITE_ON * sizes.grown
    height, items = lines_of(block.words, sizes.body, 0, width, bold=True)
    yield Strip(height, tuple(items), True)
    for _ in range(block.count):
        yield Strip(pitch, (Line(LineType.THIN, 0, -pitch + 0.6, width, -pitch + 0.6),))
    yield Strip(2.0, ())
