"""What every sheet carries besides its pieces: title, page number, how to print it, and two bars to measure."""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from dataclasses import dataclass
from fractions import Fraction

from ..bars import BARS
from ..drawing import CAP, USUAL, Anchor, Item, Line, LineType, Look, Text, width_of, wrap
from .area import Area
from .key import KEY, LARGE_ROW, key_items, large_key_items, large_rows

HEADER = Fraction(11)
"""Height of the head of a sheet, in mm."""
FOOTER = Fraction(25, 2)
"""Height of its foot, which holds the bar across and the key to the lines, in mm."""
SIDE = Fraction(21, 2)
"""Width of its right-hand edge, which holds the bar along, in mm."""
LEAST_LIVE = 108
"""Width and height that must be left for pieces, in mm: the bar along stands beside them, with its ticks."""
LARGE_LEAST_LIVE = 120
"""The same in large print, where what the bar of 4 in is called stands beyond its end."""
BAR = BARS["100 mm"].mm
FOUR_INCHES = BARS["4 in"].mm
TICK = 2.2
"""Length of a tick at a bar's end, in mm."""
APART = Fraction(9, 5)
"""Between the bar of 100 mm and that of 4 in, in mm."""
HEAD_ROWS = (Fraction(4), Fraction(77, 10))
"""Base lines of a sheet's head below the margin, in mm: title and page; how to print it."""
LARGE_HEAD_ROWS = (Fraction(5), Fraction(12))
"""The same in large print, where how to print it goes on in further rows, each as far below the one before it."""
LARGE_FOOTER = Fraction(11)
"""Height of the foot in large print but for the key, in mm: so much that the bar along begins at no height at which it
does in usual print."""
_UNDER_THE_HEAD = Fraction(3)
"""Below the last row of a head in large print, in mm."""
IN_FROM_EDGES = (Fraction(4), Fraction(18, 5))
"""From the margins to the bars, in mm: from the foot up to the bar across, and from the right to the bar along."""
LARGE_IN_FROM_EDGES = (Fraction(31, 5), Fraction(34, 5))
"""The same in large print, whose words stand there."""
LARGE_SIDE = Fraction(58, 5)
"""Three strips of usual depth stand side by side on A4 paper in large print too."""
PAGE = "page {number} of {of}"
HOW = "Print at actual size, 100 %, one-sided, on {paper} paper."
"""What the head of a sheet says, where whoever checks a printed file can read it again."""
BAR_ACROSS, BAR_ALONG = "100 mm across", "100 mm along"
FOUR = "4 in"
"""What the other bar is called in large print."""
_BEYOND = 1.5
"""From a bar's end to what it is called there, in mm."""
_TITLE_SIZE, _SMALL = 10, 8
_BESIDE_THE_BAR = 70
"""Least width of a key beside the bar across, in mm; on narrower paper it stands above the bar."""


def least_live(look: Look) -> int:
    """Width and height that must be left for pieces, in mm."""
    return LEAST_LIVE if look == USUAL else LARGE_LEAST_LIVE


@dataclass(frozen=True, slots=True)
class Bar:
    """A bar to be measured: where it begins and ends on the sheet, and what it says."""

    start: tuple[Fraction, Fraction]
    end: tuple[Fraction, Fraction]
    nominal: Fraction


@dataclass(frozen=True, slots=True)
class Says:
    """What the sheets of a kit say alike, and how it is set."""

    title: str
    paper: str
    """What its paper is called."""
    remark: str = ""
    """What is said of a correction; "" where there is none."""
    look: Look = USUAL

    @property
    def how(self) -> str:
        """How a sheet is printed; in large print a sheet says no more than it must."""
        then = "" if self.look != USUAL else "Then measure both bars."
        return f"{HOW.format(paper=self.paper)} {self.remark or then}".rstrip()

    def how_rows(self, whole: Area) -> tuple[str, ...]:
        """How a sheet is printed, in as many rows as large print takes; in usual print it is one, set to fit."""
        large = self.look != USUAL
        return wrap(self.how, self.look.size(_SMALL), float(whole.width)) if large else (self.how,)


def live_area(whole: Area, says: Says) -> Area:
    """What is left for pieces of the area inside the margins."""
    head, side = HEADER, SIDE
    if says.look != USUAL:
        title, first = LARGE_HEAD_ROWS
        head = title + (first - title) * len(says.how_rows(whole)) + _UNDER_THE_HEAD
        side = LARGE_SIDE
    return Area(whole.left, whole.bottom + foot_height(whole, says.look), whole.right - side, whole.top - head)


def foot_height(whole: Area, look: Look = USUAL, explained: Iterable[LineType] = KEY) -> Fraction:
    """Height of the foot: with the key above the bar where there is no room beside it, and always in large print."""
    if look != USUAL:
        return LARGE_FOOTER + LARGE_ROW * large_rows(explained, float(whole.width), look)
    return FOOTER if _room_beside(whole) >= _BESIDE_THE_BAR else 2 * FOOTER


def _room_beside(whole: Area) -> float:
    return float(whole.width - FOUR_INCHES) - 7


def bar_across(whole: Area, look: Look = USUAL) -> Bar:
    """The bar that runs across the sheet, at its foot."""
    up, _ = LARGE_IN_FROM_EDGES if look != USUAL else IN_FROM_EDGES
    start = (whole.left + 2, whole.bottom + up)
    return Bar(start, (start[0] + BAR, start[1]), BAR)


def bars(whole: Area, look: Look = USUAL) -> tuple[Bar, Bar]:
    """The bar across and the bar along."""
    _, aside = LARGE_IN_FROM_EDGES if look != USUAL else IN_FROM_EDGES
    start = (whole.right - aside, whole.bottom + foot_height(whole, look) + 2)
    return bar_across(whole, look), Bar(start, (start[0], start[1] + BAR), BAR)


def beyond_the_bars(look: Look) -> float:
    """From the end of a bar of 4 in to where something else may stand in line with it, in mm."""
    return 4.0 if look == USUAL else _BEYOND + width_of(FOUR, look.size(_SMALL)) + 4


def sheet_items(whole: Area, says: Says, number: int, of: int, used: Iterable[LineType]) -> list[Item]:
    """Head, foot and bars of sheet ``number``; ``used`` are the line types to be explained on it."""
    along = _along(bars(whole, says.look)[1], says.look)
    return [*_head(whole, says, number, of), *along, *foot_items(whole, used, says.look)]


def foot_items(whole: Area, used: Iterable[LineType], look: Look = USUAL) -> list[Item]:
    """The bar across, and the key to the line types in ``used``."""
    return [*_across(bar_across(whole, look), look), *_key(whole, used, look)]


def _head(whole: Area, says: Says, number: int, of: int) -> Iterator[Item]:
    first, second = LARGE_HEAD_ROWS if says.look != USUAL else HEAD_ROWS
    page, size = PAGE.format(number=number, of=of), says.look.size(_TITLE_SIZE)
    room = float(whole.width) - width_of(page, size, True) - 6
    yield Text(whole.left, whole.top - first, _shortened(says.title, size, room), size, bold=True)
    yield Text(whole.right, whole.top - first, page, size, Anchor.END, bold=True)
    small = says.look.size(_SMALL)
    for i, row in enumerate(says.how_rows(whole)):
        fitted = small * min(1.0, float(whole.width) / width_of(row, small))
        yield Text(whole.left, whole.top - second - i * (second - first), row, fitted)


def _shortened(text: str, size: float, room: float) -> str:
    if width_of(text, size, True) <= room:
        return text
    while text and width_of(text + " …", size, True) > room:
        text = text[:-1].rstrip()
    return text + " …"


def _across(bar: Bar, look: Look) -> Iterator[Item]:
    """100 mm, and beside it 4 in from the same zero: each a line of its own with a tick at either end."""
    x, y = bar.start
    size = look.size(_SMALL)
    for length, at, out in ((BAR, y, -1), (FOUR_INCHES, y + APART, 1)):
        yield Line(LineType.MARK, x, at, x + length, at)
        for end in (x, x + length):
            yield Line(LineType.MARK, end, at, end, at + out * TICK)
    if look == USUAL:
        yield Text(x + BAR - 1.5, y - 3.1, BAR_ACROSS, size, Anchor.END)
        yield Text(x + FOUR_INCHES - 1.5, y + APART + 1, "4 in across", size, Anchor.END)
    else:
        yield Text(x + BAR - 1.5, y - size * CAP - 1.2, BAR_ACROSS, size, Anchor.END)
        yield Text(x + FOUR_INCHES + _BEYOND, y + APART - size * CAP / 2, FOUR, size)


def _along(bar: Bar, look: Look) -> Iterator[Item]:
    """The same, along the sheet."""
    x, y = bar.start
    size = look.size(_SMALL)
    for length, at, out in ((BAR, x, 1), (FOUR_INCHES, x - APART, -1)):
        yield Line(LineType.MARK, at, y, at, y + length)
        for end in (y, y + length):
            yield Line(LineType.MARK, at, end, at + out * TICK, end)
    if look == USUAL:
        yield Text(x + 3.0, y + BAR - 1.5, BAR_ALONG, size, Anchor.END, turn=90)
        yield Text(x - APART - 1.6, y + FOUR_INCHES - 1.5, "4 in along", size, Anchor.END, turn=90)
    else:
        yield Text(x + size * CAP + 0.9, y + BAR - 1.5, BAR_ALONG, size, Anchor.END, turn=90)
        yield Text(x - APART + size * CAP / 2, y + FOUR_INCHES + _BEYOND, FOUR, size, turn=90)


def _key(whole: Area, used: Iterable[LineType], look: Look) -> Iterator[Item]:
    """Samples of its line types: beside the bar across, or above it on narrow paper and in large print."""
    if look != USUAL:
        yield from large_key_items(used, whole, whole.bottom + LARGE_FOOTER + Fraction(1, 2), look)
        return
    beside = _room_beside(whole)
    above = beside < _BESIDE_THE_BAR
    left = float(whole.left) if above else float(whole.right) - beside
    top = float(whole.bottom + (2 * FOOTER if above else FOOTER)) - 2.2
    yield from key_items(used, left, top, float(whole.width) if above else beside)
