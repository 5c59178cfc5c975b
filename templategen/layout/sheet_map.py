"""A map of the sheets: a small picture of each, with its pieces as outlines in place.

A map is to be looked at, not measured: it is drawn in floats, and to scale.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass, replace
from math import ceil
from typing import TYPE_CHECKING

from ..drawing import MM_PER_POINT, Anchor, Item, LineType, Text, rectangle, wrap
from ..drawing.blocks import Block, Figure, Paragraph
from .flowing import LEADING

if TYPE_CHECKING:
    from .kit import Placed

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
_INSET = 0.5
"""From an outline to a label in it, in mm."""
_CAP, _DESCENT = 0.72 * MM_PER_POINT, 0.21 * MM_PER_POINT
_LEADING = 0.41
"""Line pitch of a label in mm for each point of type."""


@dataclass(frozen=True, slots=True)
class Room:
    """Where the map may go: the column's width, what is left of this page's height, and all of the next, in mm."""

    width: float
    left: float
    page: float
    body: float
    """The size in points of what is told in words."""


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
    if len(sheets) > MOST_SHEETS:
        yield Paragraph(" ".join(listed))
        return
    grid = _grid(len(sheets), paper[1] / paper[0], room, size)
    every_name = _names_all(sheets, grid.width / paper[0], size)
    if not every_name:
        listing = (len(wrap(" ".join(listed), room.body, room.width)) + 0.5) * room.body * LEADING
        grid = _grid(len(sheets), paper[1] / paper[0], replace(room, left=room.left - listing), size)
    scale = grid.width / paper[0]
    for start in range(0, len(sheets), grid.columns):
        row = range(start, min(start + grid.columns, len(sheets)))
        items: list[Item] = []
        for i in row:
            left = (i - start) * (grid.width + grid.apart)
            items += _sheet(sheets[i], left, grid, scale, size)
            items.append(Text(left, -grid.height - size * _CAP - 1.4, f"page {first + i}", size, bold=True))
        words = " ".join(listed[start : row.stop]) if every_name else ""
        yield Figure(grid.height + _below(size), tuple(items), words)
    if not every_name:
        yield Paragraph(" ".join(listed))


def _names_all(sheets: Sequence[Sequence[Placed]], scale: float, size: float) -> bool:
    return all(_label(each, scale, size).names for placed in sheets for each in placed)


def _grid(count: int, ratio: float, room: Room, size: float) -> Grid:
    """The largest sheets that fit what is left of this page, or all of the next; or the smallest, on several pages."""
    grow = size / _USUAL_SIZE
    for height in (room.left, room.page):
        grid = grid_for(count, ratio, room.width, height, size)
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
    return size * _CAP + 4.4


def _sheet(placed: Sequence[Placed], left: float, grid: Grid, scale: float, size: float) -> Iterator[Item]:
    """The sheet's outline, its upper left corner at (left, 0), and its pieces."""
    yield from rectangle(LineType.THIN, left, -grid.height, left + grid.width, 0)
    for each in placed:
        box = each.area
        x1, x2 = (left + float(x) * scale for x in (box.left, box.right))
        y1, y2 = (float(y) * scale - grid.height for y in (box.bottom, box.top))
        yield from rectangle(LineType.THIN, x1, y1, x2, y2)
        yield from _set(_label(each, scale, size), (x1 + x2) / 2, (y1 + y2) / 2, size)


@dataclass(frozen=True, slots=True)
class _Label:
    """A piece's label on the map."""

    lines: tuple[str, ...]
    upright: bool
    """Whether it reads upward."""
    names: bool
    """Whether it says what the piece is: its number alone may have room, or nothing."""


def _label(placed: Placed, scale: float, size: float) -> _Label:
    """The fullest label for which the piece has room: on one line rather than several, level rather than upright."""
    piece, box = placed.piece, placed.area
    room = float(box.width) * scale - 2 * _INSET, float(box.height) * scale - 2 * _INSET
    number = f"\N{NO-BREAK SPACE}{piece.number}" if piece.of > 1 else ""
    named = piece.drawing.name + number
    for text, names in ((named, True), (number[1:], False)):
        if not text:
            continue
        ways = [(wrap(text, size, max(room[upright] - 0.4, 1.0)), upright) for upright in (False, True)]
        for lines, upright in sorted(ways, key=lambda way: len(way[0])):
            if " ".join(lines) == text and _height(lines, size) <= room[not upright]:
                return _Label(lines, upright, names)
    return _Label((), False, False)


def _height(lines: Sequence[str], size: float) -> float:
    """From the top of the first line's capitals to the last base line, and as much room on either side as letters
    reach below it."""
    return (len(lines) - 1) * size * _LEADING + size * (_CAP + 2 * _DESCENT)


def _set(label: _Label, x: float, y: float, size: float) -> Iterator[Item]:
    """A label round a point."""
    below = (len(label.lines) - 1) / 2 * size * _LEADING - size * _CAP / 2
    for i, line in enumerate(label.lines):
        base = below - i * size * _LEADING
        if label.upright:
            yield Text(x - base, y, line, size, Anchor.MIDDLE, turn=90)
        else:
            yield Text(x, y + base, line, size, Anchor.MIDDLE)


def _holdings(placed: Sequence[Placed]) -> str:
    """What a sheet holds: "spacing strip pieces 1, 2, 3; cut gauge"."""
    pieces: dict[str, list[int]] = {}
    for each in placed:
        pieces.setdefault(each.piece.drawing.name, [])
        if each.piece.of > 1:
            pieces[each.piece.drawing.name].append(each.piece.number)
    return "; ".join(f"{name}{_numbered(sorted(numbers))}" for name, numbers in pieces.items())


def _numbered(numbers: Sequence[int]) -> str:
    if not numbers:
        return ""
    return f" {'pieces' if len(numbers) > 1 else 'piece'} {', '.join(map(str, numbers))}"
