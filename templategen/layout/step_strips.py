"""Strips of steps and pictures: the words beside the picture where there is room, above it where there is not."""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from ..document.blocks import MOST_BOXES, Pictures, Step
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
_NEARLY = 0.6
"""Pictures go side by side where none loses more than this of its height by it."""


@strips.register
def _(block: Step, width: float, sizes: Sizes) -> Iterator[Strip]:
    """The step's number, title and words, its boxes below them, its picture beside or below."""
    if block.view is None:
        yield _words(block, width, sizes)
        return
    if width * _BESIDE < _LEAST_BESIDE * sizes.body:
        words = _words(block, width, sizes)
        yield Strip(words.height, words.items, True)
        setting = set_view(block.view, width - _INDENT * sizes.grown, sizes.pictured, _TALLEST_STEP * sizes.grown)
        yield Strip(setting.height + _APART, _put(setting, _INDENT * sizes.grown, 0, sizes))
        return
    words = _words(block, width * (1 - _BESIDE) - _GUTTER, sizes)
    setting = set_view(block.view, width * _BESIDE, sizes.pictured, _TALLEST_STEP)
    picture = _put(setting, width * (1 - _BESIDE), -0.6, sizes)
    yield Strip(max(words.height, setting.height + 0.6 + _told(setting, sizes) + _APART), (*words.items, *picture))


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
def _(block: Pictures, width: float, sizes: Sizes) -> Iterator[Strip]:
    """Side by side where none gets much smaller by it, else one below the other; each under its title."""
    tallest = _TALLEST * min(sizes.grown, 1.3)
    alone = [set_view(view, width, sizes.pictured, tallest) for view in block.views]
    if len(block.views) > 1:
        room = width - _GUTTER * (len(block.views) - 1)
        parts = [room * each.width / sum(other.width for other in alone) for each in alone]
        beside = [set_view(v, part, sizes.pictured, tallest) for v, part in zip(block.views, parts, strict=True)]
        fits = all(each.width <= part for each, part in zip(beside, parts, strict=True))
        if fits and all(each.height >= _NEARLY * whole.height for each, whole in zip(beside, alone, strict=True)):
            lefts = [sum(parts[:i]) + i * _GUTTER for i in range(len(parts))]
            yield _row(block.views, beside, lefts, parts, sizes)
            return
    for view, setting in zip(block.views, alone, strict=True):
        yield _row((view,), (setting,), (0.0,), (width,), sizes)


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
