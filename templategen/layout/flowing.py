"""Flowing: blocks of words and pictures onto pages, top to bottom."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import replace
from typing import TypeAlias

from ..document.blocks import Block
from ..document.shapes import moved
from ..drawing import Item
from ..drawing.look import USUAL, Look
from . import step_strips  # noqa: F401 - it says how steps and pictures are set
from .area import Area
from .strips import Sizes, Strip, strips_of

_USUAL = Sizes(11, 9, 20, 13)
_SMALLER = (Sizes(10.5, 8.6, 19, 12.5), Sizes(10, 8.2, 18, 12))
"""Taken where they save a page, the larger first."""
_LED_ON = 0.4
"""Of a page, what must be free for the first of strips that ought to stay together and are more than a page."""
_MAY_SAVE = 0.12
"""What the smallest sizes save of each page's height, and a little: a last page that is fuller need not be tried."""
_COLUMN, _GUTTER = 160, 10
"""Least width of a column of words, where there is more than one, and what is left between two, in mm: our choice.
A line of 160 mm holds about eighty letters."""

_Column: TypeAlias = list[tuple[float, Strip]]
"""Strips that hold anything, each after the height on the page of its upper edge."""


def columns(area: Area, look: Look = USUAL) -> tuple[Area, ...]:
    """The columns that words are set in, side by side: one, unless the paper is so wide that lines get lost."""
    least = _COLUMN * look.size(_USUAL.body) / _USUAL.body
    count = max(1, int((float(area.width) + _GUTTER) // (least + _GUTTER)))
    width = (area.width + _GUTTER) / count - _GUTTER
    lefts = [area.left + i * (width + _GUTTER) for i in range(count)]
    return tuple(Area(left, area.bottom, left + width, area.top) for left in lefts)


def flow(blocks: Sequence[Block], area: Area, look: Look = USUAL) -> list[list[Item]]:
    """The items of each page, in page coordinates; the type a little smaller where that saves a page.

    In large print no type is made smaller.
    """
    beside = columns(area, look)
    flowed = [_put_down(column, beside[0]) for column in _flowed(blocks, beside, look)]
    return [_side_by_side(flowed[i : i + len(beside)], beside) for i in range(0, len(flowed), len(beside))]


def pages_of(blocks: Sequence[Block], area: Area, look: Look = USUAL) -> int:
    """How many pages ``flow`` takes."""
    beside = columns(area, look)
    return -(-len(_flowed(blocks, beside, look)) // len(beside))


def _flowed(blocks: Sequence[Block], beside: Sequence[Area], look: Look) -> list[_Column]:
    """The columns, in the largest type that is not smaller for nothing."""
    flowed, filled = _set(blocks, beside[0], _USUAL.seen(look))
    pages = -(-len(flowed) // len(beside))
    if pages > 1 and len(flowed) % len(beside) == 1 % len(beside) and filled < _MAY_SAVE * len(flowed):
        for sizes in _SMALLER if look is USUAL else ():
            fewer, _ = _set(blocks, beside[0], sizes)
            if -(-len(fewer) // len(beside)) < pages:
                return fewer
    return flowed


def _side_by_side(flowed: Sequence[list[Item]], beside: Sequence[Area]) -> list[Item]:
    shifts = [float(column.left - beside[0].left) for column in beside]
    return [moved(item, dx, 0) if dx else item for items, dx in zip(flowed, shifts, strict=False) for item in items]


def _set(blocks: Sequence[Block], area: Area, sizes: Sizes) -> tuple[list[_Column], float]:
    """The columns, and how much of the last one is filled, from 0 to 1."""
    return _dealt(strips_of(blocks, float(area.width), replace(sizes, page=float(area.height))), area)


def paged(strips: Sequence[Strip], area: Area) -> tuple[list[list[Item]], float]:
    """The items of each page, in page coordinates, and how much of the last page is filled, from 0 to 1.

    Strips that are to stay together do, unless no page could hold them all: then they go on over pages, the first of
    them where a good part of a page is left.
    """
    pages, filled = _dealt(strips, area)
    return [_put_down(page, area) for page in pages], filled


def _put_down(column: _Column, area: Area) -> list[Item]:
    left = float(area.left)
    return [moved(item, left, y) for y, strip in column for item in strip.items]


def _dealt(strips: Sequence[Strip], area: Area) -> tuple[list[_Column], float]:
    """The strips of each page, each after the height of its upper edge, and how much of the last page is filled."""
    pages: list[_Column] = [[]]
    y, low, whole = float(area.top), float(area.bottom), float(area.height)
    for group in _together(strips):
        height = sum(strip.height for strip in group)
        needed = height if height <= whole else max(group[0].height, _LED_ON * whole)
        for strip in group:
            if y - max(needed, strip.height) < low and pages[-1]:
                pages.append([])
                y = float(area.top)
            needed = 0.0
            if strip.items:
                pages[-1].append((y, strip))
            y -= strip.height
    return pages, (float(area.top) - y) / whole


def _together(strips: Sequence[Strip]) -> Iterator[list[Strip]]:
    """Strips that are to stay together, group by group."""
    group: list[Strip] = []
    for strip in strips:
        group.append(strip)
        if not strip.keep_with_next:
            yield group
            group = []
    if group:
        yield group
