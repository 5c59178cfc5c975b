"""Flowing: blocks of words onto pages, top to bottom."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from functools import singledispatch

from ..document.blocks import (
    MOST_BLANKS,
    MOST_BOXES,
    Blanks,
    Block,
    Figure,
    Finding,
    Findings,
    Gate,
    Heading,
    Lines,
    NumberRow,
    Numbers,
    Paragraph,
    Points,
    Remark,
    Step,
)  # fmt: skip
from ..drawing import Item, Line, LineType, Number, Ring, Solid, Text, rectangle, width_of, wrap
from .area import Area
from .boxes import BOX, BOX_PITCH, boxes_of


@dataclass(frozen=True, slots=True)
class Sizes:
    """Sizes of type, in points."""

    body: float
    small: float
    title: float
    head: float


_USUAL = Sizes(11, 9, 20, 13)
_SMALLER = (Sizes(10.5, 8.6, 19, 12.5), Sizes(10, 8.2, 18, 12))
"""Taken where they save a page, the larger first."""
_MAY_SAVE = 0.12
"""What the smallest sizes save of each page's height, and a little: a last page that is fuller need not be tried."""
_COLUMN, _GUTTER = 160, 10
"""Least width of a column of words, where there is more than one, and what is left between two, in mm: our choice.
A line of 160 mm holds about eighty letters."""
LEADING = 0.46
"""Line pitch in mm for each point of type: 1.3 times the size."""
_MOST_TOGETHER = 12
"""Lines of a paragraph that no page divides: our choice. A longer one goes on wherever there is room."""
_BOXES_IN_A_ROW = 12
_MEANING_COLUMN = 0.32
"""Of what the readings leave; what to do has the rest."""
_LABEL_COLUMN = 0.26
_VALUE_COLUMN = 0.32


@dataclass(frozen=True, slots=True)
class Strip:
    """An unbreakable strip of a page: its height, and its items from its top left corner."""

    height: float
    items: tuple[Item, ...]
    keep_with_next: bool = False


def columns(area: Area) -> tuple[Area, ...]:
    """The columns that words are set in, side by side: one, unless the paper is so wide that lines get lost."""
    count = max(1, int((area.width + _GUTTER) // (_COLUMN + _GUTTER)))
    width = (area.width + _GUTTER) / count - _GUTTER
    lefts = [area.left + i * (width + _GUTTER) for i in range(count)]
    return tuple(Area(left, area.bottom, left + width, area.top) for left in lefts)


def flow(blocks: Sequence[Block], area: Area) -> list[list[Item]]:
    """The items of each page, in page coordinates; the type a little smaller where that saves a page."""
    beside = columns(area)
    flowed, filled = _flowed(blocks, beside[0], _USUAL)
    pages = -(-len(flowed) // len(beside))
    if pages > 1 and len(flowed) % len(beside) == 1 % len(beside) and filled < _MAY_SAVE * len(flowed):
        for sizes in _SMALLER:
            fewer, _ = _flowed(blocks, beside[0], sizes)
            if -(-len(fewer) // len(beside)) < pages:
                flowed = fewer
                break
    return [_side_by_side(flowed[i : i + len(beside)], beside) for i in range(0, len(flowed), len(beside))]


def _side_by_side(flowed: Sequence[list[Item]], beside: Sequence[Area]) -> list[Item]:
    shifts = [column.left - beside[0].left for column in beside]
    return [_moved(item, dx, 0) if dx else item for items, dx in zip(flowed, shifts, strict=False) for item in items]


def _flowed(blocks: Sequence[Block], area: Area, sizes: Sizes) -> tuple[list[list[Item]], float]:
    """The columns, and how much of the last one is filled, from 0 to 1."""
    return paged(strips_of(blocks, float(area.width), sizes), area)


def strips_of(blocks: Sequence[Block], width: float, sizes: Sizes) -> list[Strip]:
    """Blocks set in this width, in mm, as strips to be put one below the other."""
    return [strip for block in blocks for strip in _strips(block, width, sizes)]


def height_of(strips: Sequence[Strip]) -> float:
    """Of all of them, one below the other, in mm."""
    return sum(strip.height for strip in strips)


def paged(strips: Sequence[Strip], area: Area) -> tuple[list[list[Item]], float]:
    """The items of each page, in page coordinates, and how much of the last page is filled, from 0 to 1."""
    pages: list[list[Item]] = [[]]
    y = float(area.top)
    for i, strip in enumerate(strips):
        needed = strip.height
        follow = i
        while strips[follow].keep_with_next and follow + 1 < len(strips):
            follow += 1
            needed += strips[follow].height
        if y - needed < float(area.bottom) and pages[-1]:
            pages.append([])
            y = float(area.top)
        pages[-1] += [_moved(item, float(area.left), y) for item in strip.items]
        y -= strip.height
    return pages, (float(area.top) - y) / float(area.height)


def _moved(item: Item, dx: Number, dy: Number) -> Item:
    """The same item, so much farther to the right and up, in mm."""
    if isinstance(item, Line):
        return Line(item.kind, item.x1 + dx, item.y1 + dy, item.x2 + dx, item.y2 + dy)
    if isinstance(item, Ring):
        return Ring(item.kind, item.x + dx, item.y + dy, item.radius)
    if isinstance(item, Solid):
        return Solid(tuple((x + dx, y + dy) for x, y in item.points))
    return Text(item.x + dx, item.y + dy, item.text, item.size, item.anchor, item.bold, item.turn)


@singledispatch
def _strips(block: Block, width: float, sizes: Sizes) -> Iterator[Strip]:
    raise TypeError(f"no way to set a {type(block).__name__}")


def _lines(text: str, size: float, left: float, width: float, bold: bool = False) -> tuple[float, list[Item]]:
    """Wrapped text from a strip's top; returns its height."""
    leading = size * LEADING
    rows = wrap(text, size, width - left, bold)
    return leading * len(rows), [
        Text(left, -(i + 1) * leading + leading * 0.25, row, size, bold=bold) for i, row in enumerate(rows)
    ]


@_strips.register
def _(block: Heading, width: float, sizes: Sizes) -> Iterator[Strip]:
    size = sizes.title if block.first else sizes.head
    height, items = _lines(block.text, size, 0, width, bold=True)
    above = 3.0 if block.first else 3.5
    rule = [] if block.first else [Line(LineType.THIN, 0, -height - 0.6, width, -height - 0.6)]
    yield Strip(above, (), True)
    yield Strip(height + 2.0, (*items, *rule), True)


@_strips.register
def _(block: Paragraph, width: float, sizes: Sizes) -> Iterator[Strip]:
    height, items = _lines(block.text, sizes.body, 0, width)
    if len(items) <= _MOST_TOGETHER:
        yield Strip(height + 1.2, tuple(items))
        return
    leading = height / len(items)
    for i, line in enumerate(items):
        yield Strip(leading + (1.2 if i == len(items) - 1 else 0.0), (_moved(line, 0, i * leading),))


@_strips.register
def _(block: Remark, width: float, sizes: Sizes) -> Iterator[Strip]:
    indent = max(width_of(word, sizes.body, True) for word in (block.word, "Warning")) + 3
    height, items = _lines(block.text, sizes.body, indent, width)
    word = Text(0, -sizes.body * LEADING * 0.75, block.word, sizes.body, bold=True)
    yield Strip(height + 1.2, (word, *items))


@_strips.register
def _(block: Points, width: float, sizes: Sizes) -> Iterator[Strip]:
    for row in block.rows:
        height, items = _lines(row, sizes.body, 4, width)
        yield Strip(height, (Text(0, -sizes.body * LEADING * 0.75, "–", sizes.body), *items))


@_strips.register
def _(block: Lines, width: float, sizes: Sizes) -> Iterator[Strip]:
    for i in range(block.count):
        words = () if i else (Text(0, -7.2, f"{block.words}:", sizes.small),)
        yield Strip(8.0, (Line(LineType.THIN, 0, -8, width, -8), *words))


@_strips.register
def _(block: Gate, width: float, sizes: Sizes) -> Iterator[Strip]:
    height, items = _lines(block.text, sizes.body, 0, width, bold=True)
    rules = (Line(LineType.CUT, 0, y, width, y) for y in (-1.0, -height - 3.4))
    yield Strip(height + 4.4, (*rules, *(_moved(item, 0, -2.2) for item in items)))


@_strips.register
def _(block: Numbers, width: float, sizes: Sizes) -> Iterator[Strip]:
    if block.name:
        height, items = _lines(block.name, sizes.body, 0, width, bold=True)
        yield Strip(height + 2.4, tuple(_moved(item, 0, -1.6) for item in items), True)
    for row in block.rows:
        yield _number_row(row, width, sizes)


def _number_row(row: NumberRow, width: float, sizes: Sizes) -> Strip:
    """Label, value and working in three columns, each wrapped in its own."""
    value_at = width * _LABEL_COLUMN
    working_at = width * (_LABEL_COLUMN + _VALUE_COLUMN)
    columns = [
        _lines(row.label, sizes.body, 0, value_at - 2),
        _lines(row.value, sizes.body, value_at, working_at - 2, bold=True),
        _lines(row.working, sizes.small, working_at, width) if row.working else (0.0, []),
    ]
    height = max(height for height, _ in columns)
    return Strip(height + 0.9, tuple(item for _, items in columns for item in items))


@_strips.register
def _(block: Blanks, width: float, sizes: Sizes) -> Iterator[Strip]:
    """A line to write on for each thing to be measured, up to as many as there is room for."""
    value_at, blank_at = width * 0.41, width * 0.64
    blanks = min(block.times, MOST_BLANKS)
    each = (width - blank_at) / blanks
    for row in block.rows:
        label = _lines(row.label, sizes.body, 0, value_at - 2)
        value = _lines(row.value, sizes.body, value_at, blank_at - 2, bold=True)
        height = max(label[0], value[0], 7.0)
        base = -sizes.body * LEADING * 0.75 - 0.4
        places: list[Item] = []
        for i in range(blanks):
            left = blank_at + i * each
            if blanks > 1:
                places.append(Text(left, base + 0.4, str(i + 1), sizes.small))
            start = left + (3 if blanks > 1 else 0)
            places.append(Line(LineType.THIN, start, base, left + each - 3, base))
        yield Strip(height + 1.0, (*label[1], *value[1], *places))


@_strips.register
def _(block: Step, width: float, sizes: Sizes) -> Iterator[Strip]:
    """The step's number and words; under the number a box, or under the words one for each thing it is done to."""
    indent, height, items = 8.0, 0.0, list[Item]()
    for words, size in ((block.title, sizes.body), (block.text, sizes.body), (block.templates_said, sizes.small)):
        more, lines = _lines(words, size, indent, width, words == block.title) if words else (0.0, [])
        items += (_moved(line, 0, -height) for line in lines)
        height += more
    number = Text(0, -sizes.body * LEADING * 0.75, f"{block.number}", sizes.body, bold=True)
    if block.boxes == 1:
        top = -sizes.body * LEADING - 0.9
        box = rectangle(LineType.MARK, 0, top - BOX, BOX, top)
        yield Strip(max(height, BOX - top) + 1.6, (number, *items, *box))
        return
    in_a_row = max(1, min(_BOXES_IN_A_ROW, int((width - indent) / BOX_PITCH)))
    rows = -(-min(block.boxes, MOST_BOXES) // in_a_row)
    boxes = boxes_of(block, indent, -height - 0.8, sizes.small, in_a_row)
    yield Strip(height + rows * (BOX + 2) + 1.6, (number, *items, *boxes))


@_strips.register
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
    meaning = _lines(row.meaning, sizes.body, meaning_at, remedy_at - 3, bold=True)
    remedy = _lines(row.remedy, sizes.body, remedy_at, width)
    height = max(len(readings) * leading, meaning[0], remedy[0])
    return Strip(height + 1.6, (*readings, *meaning[1], *remedy[1]))


@_strips.register
def _(block: Figure, width: float, sizes: Sizes) -> Iterator[Strip]:
    yield Strip(block.height, block.items)
