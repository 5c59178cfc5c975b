"""Strips of steps, gates and pictures: the words beside the picture where there is room, else above it."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import replace

from ..document.blocks import MOST_BOXES, Gate, Pictures, Step
from ..document.setting import Setting, set_view
from ..document.shapes import moved
from ..document.view import View
from ..drawing import Item, Line, LineType, Text, rectangle, width_of
from .strips import LEADING, Sizes, Strip, lines_of, strips

_BOX = 4.0
_BOXES_IN_A_ROW = 12
_BOX_PITCH = 13.5
_INDENT = 8.0
"""Mm from a step's number to its words."""
_BESIDE = 0.5
"""Of the width, what a picture beside its words may take."""
_LEAST_BESIDE = 7.0
"""A picture stands beside the words where half the width is this many times as wide, in mm, as the type is high, in
points: our choice. Large print has the picture below, so that neither is squeezed."""
_GUTTER = 6.0
_TALLEST_STEP, _TALLEST = 62.0, 100.0
"""How high the shapes of a step's picture may be, and of one that stands by itself, in mm: our choice; three steps to a
page, and two pictures."""
_APART = 2.4
"""Between one step and the next, in mm."""
_BEFORE = 2.0
"""Mm between words and the title of a picture below them."""
_UNDER = 1.2
"""Mm between a step's picture and its title."""
_NEARLY = 0.45
"""Pictures go side by side where none loses more than this of its height by it."""
_STACKED = 0.72
"""How high the shapes of several may be one below the other, of that: two and what leads to them then go on a page."""


@strips.register
def _(block: Step, width: float, sizes: Sizes) -> Iterator[Strip]:
    """The step's number, title and words, its boxes below them, its picture beside or below."""
    beside = _beside(block, width, sizes) if block.view is not None else None
    if beside is not None:
        yield beside
        return
    words = _divided(_words(block, width, sizes), sizes.page)
    if block.view is None:
        yield from words
        return
    yield from (replace(strip, keep_with_next=True) for strip in words)
    yield _below(block.view, width, sizes)


def _beside(block: Step, width: float, sizes: Sizes) -> Strip | None:
    """Words and picture side by side; None where one of them has no room there."""
    room = width * _BESIDE
    if block.view is None or room < _LEAST_BESIDE * sizes.body:
        return None
    words = _words(block, width - room - _GUTTER, sizes)
    setting = _set(block.view, room, sizes, _TALLEST_STEP, _APART + 0.6 + _UNDER + 2 * sizes.small * LEADING)
    if setting.width > room or words.height > sizes.page:
        return None
    setting = _named(block.view, setting, room, sizes)
    picture = _put(setting, width - room, -0.6, sizes)
    return Strip(max(words.height, setting.height + 0.6 + _told(setting, sizes) + _APART), (*words.items, *picture))


def _below(view: View, width: float, sizes: Sizes) -> Strip:
    """A picture under its words; told in words itself where even there it has no room."""
    indent = _INDENT * sizes.grown
    under = _UNDER + 2 * sizes.small * LEADING
    setting = _set(view, width - indent, sizes, _TALLEST_STEP * sizes.grown, _APART + under)
    if setting.width <= width - indent:
        setting = _named(view, setting, width - indent, sizes)
        return Strip(setting.height + _told(setting, sizes) + _APART, _put(setting, indent, 0, sizes))
    height, items = lines_of(view.spoken, sizes.small, indent, width)
    return Strip(height + _APART, tuple(items))


def _divided(strip: Strip, page: float) -> Iterator[Strip]:
    """A strip that is higher than a page, in several; else as it is."""
    start, items = 0.0, list[Item]()
    if strip.height > page:
        for item in sorted(strip.items, key=lambda item: -item.bounds.top):
            if float(item.bounds.bottom) < -start - page and items:
                foot = min(float(each.bounds.bottom) for each in items)
                yield Strip(-foot, tuple(items))
                start, items = start - foot, []
            items.append(moved(item, 0, start))
        strip = Strip(strip.height - start, tuple(items))
    yield strip


def _words(block: Step, width: float, sizes: Sizes) -> Strip:
    """All of a step but its picture."""
    indent = _INDENT * sizes.grown
    items: list[Item] = [Text(0, -sizes.body * LEADING * 0.75, f"{block.number}", sizes.body, bold=True)]
    y = 0.0
    for text, size, bold in _lines(block, sizes):
        height, lines = lines_of(text, size, indent, width, bold)
        items += [moved(line, 0, y) for line in lines]
        y -= height + (0.6 if bold else 0.0)
    if block.boxes == 1 and not block.title:
        side = _BOX * sizes.grown
        top = -sizes.body * LEADING - 0.9
        items += rectangle(LineType.MARK, 0, top - side, side, top)
        return Strip(max(-y, side - top) + _APART, tuple(items))
    below, boxes = _boxes(block, indent, y - 0.8, width, sizes)
    return Strip(-y + below + _APART, (*items, *boxes))


def _lines(block: Step, sizes: Sizes) -> Iterator[tuple[str, float, bool]]:
    if block.title:
        yield block.title, sizes.body, True
    yield block.text, sizes.body, False
    if block.templates_said:
        yield block.templates_said, sizes.small, False


def _boxes(block: Step, left: float, top: float, width: float, sizes: Sizes) -> tuple[float, list[Item]]:
    """A numbered box for each; beyond what a page can hold, a blank for a tally. And how high they are."""
    count, small, grown = block.boxes, sizes.small, sizes.grown
    side, pitch, row_height = _BOX * grown, _BOX_PITCH * grown, (_BOX + 2) * grown
    if count > MOST_BOXES:
        tally = f"done, of {count} {block.each}s:"
        start = left + width_of(tally, small) + 2
        base = top - side
        return row_height, [
            Text(left, base + 0.8, tally, small), Line(LineType.THIN, start, base, min(start + 40, width), base)
        ]  # fmt: skip
    in_a_row = max(1, min(_BOXES_IN_A_ROW, int((width - left) / pitch)))
    items: list[Item] = []
    for i in range(count):
        row, column = divmod(i, in_a_row)
        x, y = left + column * pitch, top - row * row_height
        items += rectangle(LineType.MARK, x, y - side, x + side, y)
        if count > 1:
            items.append(Text(x + side + 1.2, y - side + 0.8, str(i + 1), small))
    return -(-count // in_a_row) * row_height, items


def _set(view: View, width: float, sizes: Sizes, tallest: float, besides: float) -> Setting:
    """A picture so small that it goes on a page together with what else its strip holds, ``besides`` mm high."""
    setting = set_view(view, width, sizes.pictured, tallest)
    while setting.height + _told(setting, sizes) + besides > sizes.page and tallest > 1.0:
        tallest *= 0.8
        setting = set_view(view, width, sizes.pictured, tallest)
    return setting


def _named(view: View, setting: Setting, width: float, sizes: Sizes) -> Setting:
    """A picture with its title under it, in this width."""
    height, title = lines_of(view.title, sizes.small, 0, width)
    below = setting.height + _UNDER
    items = (*setting.items, *(moved(line, 0, -below) for line in title))
    return replace(setting, height=below + height, items=items)


def _put(setting: Setting, left: float, top: float, sizes: Sizes) -> tuple[Item, ...]:
    """A picture with its top left corner there, and its scale below it where it has one."""
    items = [moved(item, left, top) for item in setting.items]
    if setting.scale:
        base = top - setting.height - sizes.small * LEADING
        items.append(Text(left, base, f"Scale {setting.scale}", sizes.small))
    return tuple(items)


def _told(setting: Setting, sizes: Sizes) -> float:
    """The height of what is said of the scale."""
    return sizes.small * LEADING * 1.3 if setting.scale else 0.0


@strips.register
def _(block: Gate, width: float, sizes: Sizes) -> Iterator[Strip]:
    """Between two heavy lines right across, so that nobody passes it unread; its picture between them as well."""
    beside = block.view is not None and width * _BESIDE >= _LEAST_BESIDE * sizes.body
    height, words = lines_of(block.text, sizes.head, 0, width * (1 - _BESIDE) - _GUTTER if beside else width, bold=True)
    items = [moved(item, 0, -2.6) for item in words]
    if block.view is not None:
        room = width * _BESIDE if beside else width
        tallest = _TALLEST_STEP * (1 if beside else sizes.grown)
        setting = _set(block.view, room, sizes, tallest, height + 12 + _UNDER + 2 * sizes.small * LEADING)
        left, top = (width - room, -3.6) if beside else (0.0, -height - 4.6)
        if setting.width <= room:
            setting = _named(block.view, setting, room, sizes)
            items += _put(setting, left, top, sizes)
            seen = setting.height
        else:  # told in words where it has no room
            seen, said = lines_of(block.view.spoken, sizes.small, 0, room)
            items += [moved(item, left, top) for item in said]
        height = max(height, seen + 1.4) if beside else height + seen + 3.0
    low = -height - 4.2
    rules = (Line(LineType.TRIM, 0, y, width, y) for y in (-1.6, low))
    yield Strip(-low + 2.4, (*items, *rules))


@strips.register
def _(block: Pictures, width: float, sizes: Sizes) -> Iterator[Strip]:
    """Side by side where none gets much smaller by it, else one below the other; each under its title."""
    tallest = _TALLEST * min(sizes.grown, 1.3)
    above = max(lines_of(view.title, sizes.body, 0, width, True)[0] for view in block.views) * 2 + _BEFORE + 6.0
    alone = [_set(view, width, sizes, tallest, above) for view in block.views]
    if len(block.views) > 1:
        room = width - _GUTTER * (len(block.views) - 1)
        parts = [room * each.width / sum(other.width for other in alone) for each in alone]
        beside = [_set(v, part, sizes, tallest, above) for v, part in zip(block.views, parts, strict=True)]
        fits = all(each.width <= part for each, part in zip(beside, parts, strict=True))
        if fits and all(each.height >= _NEARLY * whole.height for each, whole in zip(beside, alone, strict=True)):
            lefts = [sum(parts[:i]) + i * _GUTTER for i in range(len(parts))]
            yield _row(block.views, beside, lefts, parts, sizes)
            return
        alone = [_set(view, width, sizes, tallest * _STACKED, above) for view in block.views]
    for view, setting in zip(block.views, alone, strict=True):
        if setting.width <= width:
            yield _row((view,), (setting,), (0.0,), (width,), sizes)
        else:
            height, items = lines_of(f"{view.title}. {view.spoken}", sizes.body, 0, width)
            yield Strip(height + _APART, tuple(items))


def _row(
    views: Sequence[View], settings: Sequence[Setting], lefts: Sequence[float], widths: Sequence[float], sizes: Sizes
) -> Strip:
    """Pictures side by side, their titles in one line above them."""
    titles = [lines_of(v.title, sizes.body, 0, w, True) for v, w in zip(views, widths, strict=True)]
    above = max(height for height, _ in titles) + 2.0
    items: list[Item] = []
    for (_, title), setting, left in zip(titles, settings, lefts, strict=True):
        items += [moved(line, left, -_BEFORE) for line in title]
        items += _put(setting, left, -_BEFORE - above, sizes)
    below = max(setting.height + _told(setting, sizes) for setting in settings)
    return Strip(_BEFORE + above + below + 4.0, tuple(items))
