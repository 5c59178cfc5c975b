"""What every sheet carries besides its pieces: title, page number, how to print it, and two bars to measure."""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from dataclasses import dataclass
from fractions import Fraction

from ..bars import BARS
from ..drawing import Anchor, Item, Line, LineType, Text, width_of
from .area import Area

HEADER = Fraction(11)
"""Height of the head of a sheet, in mm."""
FOOTER = Fraction(25, 2)
"""Height of its foot, which holds the bar across and the key to the lines, in mm."""
SIDE = Fraction(21, 2)
"""Width of its right-hand edge, which holds the bar along, in mm."""
LEAST_LIVE = 108
"""Width and height that must be left for pieces, in mm: the bar along stands beside them, with its ticks."""
BAR = BARS["100 mm"].mm
FOUR_INCHES = BARS["4 in"].mm
TICK = 2.2
"""Length of a tick at a bar's end, in mm."""
APART = Fraction(9, 5)
"""Between the bar of 100 mm and that of 4 in, in mm."""
HEAD_ROWS = (Fraction(4), Fraction(77, 10))
"""Base lines of a sheet's head below the margin, in mm: title and page; how to print it."""
PAGE = "page {number} of {of}"
HOW = "Print at actual size, 100 %, one-sided, on {paper} paper."
"""What the head of a sheet says, where whoever checks a printed file can read it again."""
BAR_ACROSS, BAR_ALONG = "100 mm across", "100 mm along"
_KEY_ROW = 3.8
_KEY_ROWS = 3
_KEY_SIZE = 7.5
_SAMPLES = (15, 11, 8)
"""Length of a sample of a line type, in mm: the longest with which the key fits."""
_BESIDE_THE_BAR = 70
"""Least width of a key beside the bar across, in mm; on narrower paper it stands above the bar."""

KEY = {
    LineType.CUT: "cut",
    LineType.TRIM: "trim at a join",
    LineType.MARK: "mark on the cloth",
    LineType.FOLD: "fold",
    LineType.STITCH: "stitching",
    LineType.CENTRE: "centre",
    LineType.MATCH: "match line",
}
"""What the line types mean, in a word or two; thin lines need no word."""


@dataclass(frozen=True, slots=True)
class Bar:
    """A bar to be measured: where it begins and ends on the sheet, and what it says."""

    start: tuple[Fraction, Fraction]
    end: tuple[Fraction, Fraction]
    nominal: Fraction


def live_area(whole: Area) -> Area:
    """What is left for pieces of the area inside the margins."""
    return Area(whole.left, whole.bottom + foot_height(whole), whole.right - SIDE, whole.top - HEADER)


def foot_height(whole: Area) -> Fraction:
    """Height of the foot: with the key above the bar where there is no room beside it."""
    return FOOTER if _room_beside(whole) >= _BESIDE_THE_BAR else 2 * FOOTER


def _room_beside(whole: Area) -> float:
    return float(whole.width - FOUR_INCHES) - 7


def bar_across(whole: Area) -> Bar:
    """The bar that runs across the sheet, at its foot."""
    start = (whole.left + 2, whole.bottom + 4)
    return Bar(start, (start[0] + BAR, start[1]), BAR)


def bars(whole: Area) -> tuple[Bar, Bar]:
    """The bar across and the bar along."""
    start = (whole.right - Fraction(18, 5), whole.bottom + foot_height(whole) + 2)
    return bar_across(whole), Bar(start, (start[0], start[1] + BAR), BAR)


def sheet_items(
    whole: Area, title: str, number: int, of: int, paper: str, used: Iterable[LineType], remark: str = ""
) -> list[Item]:
    """Head, foot and bars of sheet ``number``; ``used`` are the line types to be explained on it."""
    return [*_head(whole, title, number, of, paper, remark), *_along(bars(whole)[1]), *foot_items(whole, used)]


def foot_items(whole: Area, used: Iterable[LineType]) -> list[Item]:
    """The bar across, and the key to the line types in ``used``."""
    return [*_across(bar_across(whole)), *_key(whole, used)]


def _head(whole: Area, title: str, number: int, of: int, paper: str, remark: str) -> Iterator[Item]:
    base, below = (whole.top - down for down in HEAD_ROWS)
    page = PAGE.format(number=number, of=of)
    room = float(whole.width) - width_of(page, 10, True) - 6
    yield Text(whole.left, base, _shortened(title, 10, room), 10, bold=True)
    yield Text(whole.right, base, page, 10, Anchor.END, bold=True)
    how = f"{HOW.format(paper=paper)} {remark or 'Then measure both bars.'}"
    size = 8 * min(1.0, float(whole.width) / width_of(how, 8))
    yield Text(whole.left, below, how, size)


def _shortened(text: str, size: float, room: float) -> str:
    if width_of(text, size, True) <= room:
        return text
    while text and width_of(text + " …", size, True) > room:
        text = text[:-1].rstrip()
    return text + " …"


def _across(bar: Bar) -> Iterator[Item]:
    """100 mm, and beside it 4 in from the same zero: each a line of its own with a tick at either end."""
    x, y = bar.start
    for length, at, out, words in (
        (BAR, y, -1, BAR_ACROSS),
        (FOUR_INCHES, y + APART, 1, "4 in across"),
    ):
        yield Line(LineType.MARK, x, at, x + length, at)
        for end in (x, x + length):
            yield Line(LineType.MARK, end, at, end, at + out * TICK)
        yield Text(x + length - 1.5, at + 1 if out > 0 else at - 3.1, words, 8, Anchor.END)


def _along(bar: Bar) -> Iterator[Item]:
    """The same, along the sheet."""
    x, y = bar.start
    for length, at, out, words in (
        (BAR, x, 1, BAR_ALONG),
        (FOUR_INCHES, x - APART, -1, "4 in along"),
    ):
        yield Line(LineType.MARK, at, y, at, y + length)
        for end in (y, y + length):
            yield Line(LineType.MARK, at, end, at + out * TICK, end)
        yield Text(at + 3.0 if out > 0 else at - 1.6, y + length - 1.5, words, 8, Anchor.END, turn=90)


def _key(whole: Area, used: Iterable[LineType]) -> Iterator[Item]:
    """A sample of each line type on this sheet: beside the bar across, or above it on narrow paper."""
    explained = [kind for kind in KEY if kind in set(used)]
    beside = _room_beside(whole)
    above = beside < _BESIDE_THE_BAR
    left = float(whole.left) if above else float(whole.right) - beside
    top = float(whole.bottom + (2 * FOOTER if above else FOOTER)) - 2.2
    rows: list[list[tuple[LineType, float]]] = []
    sample = _SAMPLES[0]
    for sample in _SAMPLES:
        rows = _key_rows(explained, sample, float(whole.width) if above else beside)
        if len(rows) <= _KEY_ROWS:
            break
    for i, row in enumerate(rows):
        y = top - _KEY_ROW * i
        for kind, x in row:
            yield Line(kind, left + x, y, left + x + sample, y)
            yield Text(left + x + sample + 1.5, y - 0.9, KEY[kind], _KEY_SIZE)


def _key_rows(kinds: list[LineType], sample: float, room: float) -> list[list[tuple[LineType, float]]]:
    """Each line type with where its sample begins, row by row."""
    rows: list[list[tuple[LineType, float]]] = [[]]
    x = 0.0
    for kind in kinds:
        wide = sample + 1.5 + width_of(KEY[kind], _KEY_SIZE)
        if x + wide > room and rows[-1]:
            rows.append([])
            x = 0.0
        rows[-1].append((kind, x))
        x += wide + 4
    return rows
