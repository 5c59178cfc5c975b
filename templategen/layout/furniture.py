"""What every sheet carries besides its pieces: title, page number, how to print it, and two bars to measure."""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from dataclasses import dataclass
from fractions import Fraction

from ..drawing import Anchor, Item, Line, LineType, Text, width_of
from ..lengths import MM_PER_INCH
from .paper import Area

HEADER = Fraction(11)
"""Height of the head of a sheet, in mm."""
FOOTER = Fraction(11)
"""Height of its foot, which holds the bar across, in mm."""
SIDE = Fraction(9)
"""Width of its right-hand edge, which holds the bar along, in mm."""
BAR = Fraction(100)
FOUR_INCHES = 4 * MM_PER_INCH
_HALF_TICK = 2.2
_SAMPLE = {False: 9, True: 15}
"""Length of a sample of a line type, in mm: continuous, dashed."""

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
    return Area(whole.left, whole.bottom + FOOTER, whole.right - SIDE, whole.top - HEADER)


def bars(whole: Area) -> tuple[Bar, Bar]:
    """The bar across and the bar along."""
    across = (whole.left + 2, whole.bottom + 4)
    along = (whole.right - 3, whole.bottom + FOOTER + 2)
    return (
        Bar(across, (across[0] + BAR, across[1]), BAR),
        Bar(along, (along[0], along[1] + BAR), BAR),
    )


def sheet_items(
    whole: Area, title: str, number: int, of: int, used: Iterable[LineType], remark: str = ""
) -> list[Item]:
    """Head, foot and bars of sheet ``number``; ``used`` are the line types to be explained on it."""
    return [*_head(whole, title, number, of, remark), *_bars(whole), *_key(whole, used)]


def _head(whole: Area, title: str, number: int, of: int, remark: str) -> Iterator[Item]:
    base = whole.top - 4
    page = f"page {number} of {of}"
    room = float(whole.width) - width_of(page, 10, True) - 6
    yield Text(whole.left, base, _shortened(title, 10, room), 10, bold=True)
    yield Text(whole.right, base, page, 10, Anchor.END, bold=True)
    how = "Print at actual size, 100 %, one-sided. Then measure both bars."
    yield Text(whole.left, base - Fraction(37, 10), f"{how} {remark}".rstrip(), 8)


def _shortened(text: str, size: float, room: float) -> str:
    if width_of(text, size, True) <= room:
        return text
    while text and width_of(text + " …", size, True) > room:
        text = text[:-1].rstrip()
    return text + " …"


def _bars(whole: Area) -> Iterator[Item]:
    """Each bar is two lengths from one zero: 100 mm on one side of its line, 4 in on the other."""
    for i, bar in enumerate(bars(whole)):
        x, y = bar.start
        if i == 0:
            yield Line(LineType.MARK, x, y, x + FOUR_INCHES, y)
            yield Line(LineType.MARK, x, y - _HALF_TICK, x, y + _HALF_TICK)
            yield Line(LineType.MARK, x + BAR, y - _HALF_TICK, x + BAR, y)
            yield Line(LineType.MARK, x + FOUR_INCHES, y, x + FOUR_INCHES, y + _HALF_TICK)
            yield Text(x + BAR - 1.5, y - 3.1, "100 mm across", 8, Anchor.END)
            yield Text(x + FOUR_INCHES - 1.5, y + 1, "4 in across", 8, Anchor.END)
        else:
            yield Line(LineType.MARK, x, y, x, y + FOUR_INCHES)
            yield Line(LineType.MARK, x - _HALF_TICK, y, x + _HALF_TICK, y)
            yield Line(LineType.MARK, x, y + BAR, x + _HALF_TICK, y + BAR)
            yield Line(LineType.MARK, x - _HALF_TICK, y + FOUR_INCHES, x, y + FOUR_INCHES)
            yield Text(x + 3.0, y + BAR - 1.5, "100 mm along", 8, Anchor.END, turn=90)
            yield Text(x - 1, y + FOUR_INCHES - 1.5, "4 in along", 8, Anchor.END, turn=90)


def _key(whole: Area, used: Iterable[LineType]) -> Iterator[Item]:
    """A sample of each line type on this sheet, right of the bar across, in up to three rows."""
    explained = [kind for kind in KEY if kind in set(used)]
    x0 = float(whole.left + FOUR_INCHES) + 8
    room = float(whole.right) - x0
    x, row = x0, 0
    for kind in explained:
        sample = _SAMPLE[bool(kind.dashes)]
        wide = sample + 1.5 + width_of(KEY[kind], 8)
        if x + wide > x0 + room:
            x, row = x0, row + 1
        y = float(whole.bottom) + 8 - 3.9 * row
        yield Line(kind, x, y, x + sample, y)
        yield Text(x + sample + 1.5, y - 1, KEY[kind], 8)
        x += wide + 4
