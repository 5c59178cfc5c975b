"""A map of the sheets: a small picture of each, with its pieces as outlines in place.

A map is to be looked at, not measured: it is drawn in floats, and to scale.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass, replace
from math import ceil
from typing import TYPE_CHECKING

from ..document.blocks import Block, Figure, Paragraph
from ..drawing import CAP, DESCENT, Anchor, Item, LineType, Text, capitalised, rectangle, width_of, wrap
from ..lengths.counting import runs_of
from .strips import LEADING

if TYPE_CHECKING:
    from .placed import Placed

MOST_SHEETS = 60
"""Sheets that are drawn: our choice, because five rows of them fill half a page. More are told in words."""
_APART = 4.0
"""Between two sheets, in mm."""
_MOST_APART = 12.0
"""The same where a row is spread over the column."""
_SMALLEST = 13.0
"""Width of the smallest sheet, in mm: its page number has just room below it."""
_EASY = 22.0
"""Width from which on sheets are not made larger by a further row, in mm."""
_WIDEST, _TALLEST = 42.0, 60.0
_USUAL_SIZE = 8.5
"""The size of type, in points, for which these hold; in larger type they grow with it."""
_INSET = 0.7
"""From an outline to a label in it, in mm."""
_LEADING = 0.41
"""Line pitch of a label in mm for each point of type."""


@dataclass(frozen=True, slots=True)
class Room:
    """Where the map may go: the column's width, what is left of this page's height, and a page's height, in mm."""

    width: float
    left: float
    page: float
    body: float
    """The size in points of what is told in words."""

    def less(self, height: float) -> Room:
        """The same, so much of the height being taken."""
        return replace(self, left=self.left - height, page=self.page - height)


@dataclass(frozen=True, slots=True)
class Grid:
    """Sheets in rows, all of one size. Millimetres."""

    columns: int
    width: float
    height: float
    apart: float


def sheet_map(
    sheets: Sequence[Sequence[Placed]], first: int, paper: tuple[float, float], room: Room, size: float
) -> Iterator[Block]:
    """Each sheet with its pieces, numbered from page ``first`` on, in type of ``size`` points.

    ``paper`` is the sheet as it comes out of the printer, in mm. A list in words
    follows where there is no room for every name, and stands alone where there
    are more than ``MOST_SHEETS`` sheets.
    """
    listed = [f"Page {page}: {_holdings(placed)}." for page, placed in enumerate(sheets, first)]
    found = Paragraph(_found(sheets, first))
    if len(sheets) > MOST_SHEETS:
        yield found
        return
    ratio = paper[1] / paper[0]
    grid = _grid(len(sheets), ratio, room, size)
    named = _named(sheets, grid.width / paper[0], size)
    listing = bool({each.piece.drawing.name for placed in sheets for each in placed} - named)
    if listing:
        lines = len(wrap(found.text, room.body, room.width)) + 0.5
        grid = _grid(len(sheets), ratio, room.less(lines * room.body * LEADING), size)
        named = _named(sheets, grid.width / paper[0], size)
    for start in range(0, len(sheets), grid.columns):
        row = range(start, min(start + grid.columns, len(sheets)))
        items: list[Item] = []
        for i in row:
            left = (i - start) * (grid.width + grid.apart)
            items += _sheet(sheets[i], left, grid, grid.width / paper[0], size, named)
            items.append(Text(left, -grid.height - size * CAP - 1.4, f"page {first + i}", size, bold=True))
        words = "" if listing else " ".join(listed[start : row.stop])
        yield Figure(grid.height + _below(size), tuple(items), words)
    if listing:
        yield found


def _named(sheets: Sequence[Sequence[Placed]], scale: float, size: float) -> set[str]:
    """The templates all of whose pieces have room for their name."""
    pieces = [each for placed in sheets for each in placed]
    nameless = {each.piece.drawing.name for each in pieces if not _label(each, scale, size, True).lines}
    return {each.piece.drawing.name for each in pieces} - nameless


def _grid(count: int, ratio: float, room: Room, size: float) -> Grid:
    """The largest sheets that fit what is left of this page; the smallest, on several pages, where none do."""
    grow = size / _USUAL_SIZE
    grid = grid_for(count, ratio, room.width, room.left, size)
    if grid.width >= _SMALLEST * grow:
        return grid
    columns = max(1, int((room.width + _APART * grow) / ((_SMALLEST + _APART) * grow)))
    return grid_for(columns, ratio, room.width, room.page, size)


def grid_for(count: int, ratio: float, width: float, height: float, size: float) -> Grid:
    """The largest sheets, ``ratio`` times as high as wide, of which ``count`` fit ``width`` by ``height`` mm.

    Where they are easy to see in fewer rows, they stand in fewer.
    """
    grow = size / _USUAL_SIZE
    apart = _APART * grow

    def in_columns(columns: int) -> float:
        return min((width - (columns - 1) * apart) / columns, _WIDEST * grow, _TALLEST * grow / ratio)

    best = Grid(1, 0.0, 0.0, apart)
    for rows in range(1, count + 1):
        if best.width >= _EASY * grow:
            break
        columns = ceil(count / rows)
        wide = min(in_columns(columns), (height / rows - _below(size)) / ratio)
        if wide > best.width:
            best = Grid(columns, wide, wide * ratio, apart)
    spread = (width - best.columns * best.width) / max(best.columns - 1, 1)
    return replace(best, apart=min(max(spread, apart), _MOST_APART * grow))


def _below(size: float) -> float:
    """From a sheet's foot to the next row of sheets: its page number, and room."""
    return size * CAP + 4.4


def _sheet(
    placed: Sequence[Placed], left: float, grid: Grid, scale: float, size: float, named: set[str]
) -> Iterator[Item]:
    """The sheet's outline, its upper left corner at (left, 0), and its pieces."""
    yield from rectangle(LineType.THIN, left, -grid.height, left + grid.width, 0)
    for each in placed:
        box = each.area
        x1, x2 = (left + float(x) * scale for x in (box.left, box.right))
        y1, y2 = (float(y) * scale - grid.height for y in (box.bottom, box.top))
        yield from rectangle(LineType.THIN, x1, y1, x2, y2)
        label = _label(each, scale, size, each.piece.drawing.name in named)
        yield from _set(label, (x1 + x2) / 2, (y1 + y2) / 2, size)


@dataclass(frozen=True, slots=True)
class _Label:
    """A piece's label on the map; of no lines where there is no room for it."""

    lines: tuple[str, ...] = ()
    upright: bool = False
    """Whether it reads upward."""


def _label(placed: Placed, scale: float, size: float, named: bool) -> _Label:
    """A piece's name and number, or its number alone: on one line rather than several, level rather than upright."""
    piece, box = placed.piece, placed.area
    room = float(box.width) * scale - 2 * _INSET, float(box.height) * scale - 2 * _INSET
    number = str(piece.number) if piece.of > 1 else ""
    text = number
    if named:
        serves = f", {piece.drawing.serves}" if piece.drawing.serves else ""
        text = f"{piece.drawing.own_name}\N{NO-BREAK SPACE}{number}".rstrip() + serves
    fitting: list[_Label] = []
    for upright in (False, True) if text else ():
        lines = wrap(text, size, max(room[upright], 1.0))
        longest = max(width_of(line, size) for line in lines)
        if " ".join(lines) == text and longest <= room[upright] and _height(lines, size) <= room[not upright]:
            fitting.append(_Label(lines, upright))
            if len(lines) == 1:
                break
    return min(fitting, key=lambda label: len(label.lines), default=_Label())


def _height(lines: Sequence[str], size: float) -> float:
    """Of a label's lines, with as much room above them as letters reach below."""
    return (len(lines) - 1) * size * _LEADING + size * (CAP + 2 * DESCENT)


def _set(label: _Label, x: float, y: float, size: float) -> Iterator[Item]:
    """A label round a point."""
    below = (len(label.lines) - 1) / 2 * size * _LEADING - size * CAP / 2
    for i, line in enumerate(label.lines):
        base = below - i * size * _LEADING
        if label.upright:
            yield Text(x - base, y, line, size, Anchor.MIDDLE, turn=90)
        else:
            yield Text(x, y + base, line, size, Anchor.MIDDLE)


def _holdings(placed: Sequence[Placed]) -> str:
    """What a sheet holds: "spacing strip pieces 1 to 3; cut gauge"."""
    return "; ".join(f"{name}{_numbered(numbers)}" for name, numbers in _pieces_of(placed).items())


def _pieces_of(placed: Sequence[Placed]) -> dict[str, list[int]]:
    """The numbers of the pieces of each template on a sheet, in order; none of one that is in one piece."""
    pieces: dict[str, list[int]] = {}
    for each in sorted(placed, key=lambda each: each.piece.number):
        numbers = pieces.setdefault(each.piece.drawing.name, [])
        if each.piece.of > 1:
            numbers.append(each.piece.number)
    return pieces


def _found(sheets: Sequence[Sequence[Placed]], first: int) -> str:
    """Where each piece is: "Spacing strip, piece by piece: 1 to 3 on page 6, 4 on page 7. Loop ladder: page 8."."""
    pages: dict[str, list[str]] = {}
    several: set[str] = set()
    for page, placed in enumerate(sheets, first):
        for name, numbers in _pieces_of(placed).items():
            if numbers:
                several.add(name)
            said = f"{_runs(numbers)} on page {page}" if numbers else f"page {page}"
            pages.setdefault(name, []).append(said.replace(" ", "\N{NO-BREAK SPACE}"))
    return " ".join(
        f"{capitalised(name)}{', piece by piece' if name in several else ''}: {', '.join(said)}."
        for name, said in pages.items()
    )


def _numbered(numbers: Sequence[int]) -> str:
    """" pieces 1 to 3, 7": what follows a template's name; nothing where it is in one piece."""
    return f" {'pieces' if len(numbers) > 1 else 'piece'} {_runs(numbers)}" if numbers else ""


def _runs(numbers: Sequence[int]) -> str:
    """"1 to 3, 7": numbers in order, those that follow each other told by the first and the last."""
    return ", ".join(
        f"{run[0]} to {run[-1]}" if len(run) > 2 else ", ".join(map(str, run)) for run in runs_of(numbers)
    )
