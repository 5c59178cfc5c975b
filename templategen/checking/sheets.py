"""Sheets of a kit on a page: each pair of bars makes one, with what its head says of it."""

from __future__ import annotations

import math
import re
from collections import Counter, defaultdict
from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass
from fractions import Fraction

from ..layout.area import Area
from ..layout.furniture import (
    FOOTER,
    HEAD_ROWS,
    HOW,
    IN_FROM_EDGES,
    LARGE_FOOTER,
    LARGE_HEAD_ROWS,
    LARGE_IN_FROM_EDGES,
    PAGE,
    bars,
)
from ..layout.key import LARGE_ROW
from ..layout.kit import CORRECTED
from .bars import Bar
from .geometry import Letter, Point
from .page import Page

_LEFT = float(bars(Area(*map(Fraction, (0, 0, 1000, 1000))))[0].start[0])
"""Where the bar across begins, in mm from the left-hand edge of what is printed on."""
_ALONG_FROM = 2
"""Where the bar along begins, in mm above the foot."""


@dataclass(frozen=True, slots=True)
class _Print:
    """Where bars and head stand on a sheet, in usual or in large print, in mm."""

    low: float
    """From the lower edge of what is printed on up to the bar across."""
    right: float
    """From the bar along to the right-hand edge of what is printed on."""
    ups: tuple[float, ...]
    """How far the bar along may begin above the bar across."""
    rows_apart: float
    """From the row that says how to print up to the title."""
    raised: float
    """How far above its line a built fraction may begin."""
    how_rows: int
    """In how many rows a sheet may say how it is printed."""

    @classmethod
    def of(
        cls,
        in_from_edges: tuple[Fraction, Fraction],
        feet: Sequence[Fraction],
        head_rows: tuple[Fraction, Fraction],
        raised: float,
        how_rows: int,
    ) -> _Print:
        low, right = in_from_edges
        ups = tuple(float(foot + _ALONG_FROM - low) for foot in feet)
        return cls(float(low), float(right), ups, float(head_rows[1] - head_rows[0]), raised, how_rows)


_USUAL = _Print.of(IN_FROM_EDGES, [FOOTER, 2 * FOOTER], HEAD_ROWS, 1.8, 1)
"""With the key beside the bar across, or above it."""
_LARGE = _Print.of(
    LARGE_IN_FROM_EDGES, [LARGE_FOOTER + LARGE_ROW * rows for rows in range(1, 8)], LARGE_HEAD_ROWS, 2.8, 5
)
"""With as many rows of the key as there are line types at the most, and a correction told on narrow paper."""


@dataclass(frozen=True, slots=True)
class Head:
    """What the head of a sheet says."""

    title: str
    number: int
    of: int
    paper: str
    corrected: tuple[float, float]
    """What the printer makes of 1 across and along; 1 where the kit is corrected for none."""


@dataclass(frozen=True, slots=True)
class Sheet:
    """A sheet of a kit as it stands on a page of the file."""

    page: int
    across: Bar | None
    along: Bar | None
    head: Head | None
    picture: bool = False

    @property
    def ratios(self) -> tuple[float | None, float | None]:
        """What the bars measure over what they say."""
        return self.across.ratio if self.across else None, self.along.ratio if self.along else None

    @property
    def mirrored(self) -> bool:
        return not _first(self.across, self.along).four_on_the_left

    @property
    def turn(self) -> float:
        """Anticlockwise, in degrees from 0 to 360, as the page is shown."""
        run = self.across.run if self.across else _first(self.along).run.left.times(1 if self.mirrored else -1)
        return math.degrees(math.atan2(run.y, run.x)) % 360

    @property
    def off_square(self) -> float:
        """By how many degrees the angle between across and along is not a right one."""
        if not (self.across and self.along):
            return 0.0
        one, other = self.across.run.unit, self.along.run.unit
        return math.degrees(math.asin(max(-1.0, min(1.0, abs(one.dot(other))))))

    @property
    def corners(self) -> tuple[Point, ...]:
        """Of what is printed on, left and right at the foot: all that the bars tell."""
        if not (self.across and self.along):
            return ()
        frame = Frame.of(self.across, self.along)
        printed = _print_of(frame, self.along)
        return (frame.on_page(-_LEFT, -printed.low), frame.on_page(frame.width + printed.right, -printed.low))


@dataclass(frozen=True, slots=True)
class Looked:
    """A page and the sheets that were found on it."""

    page: Page
    sheets: tuple[Sheet, ...]
    says_how: bool
    """Whether its text says how to print it, as the head of every sheet of a kit does."""
    names_bar: bool
    """Whether its text names a bar: what else a sheet says should then be readable too."""
    within: float
    """How exactly its bars could be measured, as a part of their length: 0 where they were read as lines."""


@dataclass(frozen=True, slots=True)
class Frame:
    """The sheet's own millimetres, x across and y along from the zero of the bar across, laid on the page."""

    zero: Point
    x: Point
    y: Point
    width: float
    """From the zero of the bar across to the bar along."""

    @classmethod
    def of(cls, across: Bar, along: Bar) -> Frame:
        x, y = across.run.times(0.01), along.run.times(0.01)
        frame = cls(across.start, x, y, 0)
        return cls(across.start, x, y, frame.on_sheet(along.start).x)

    def on_page(self, x: float, y: float) -> Point:
        return self.zero.plus(self.x.times(x)).plus(self.y.times(y))

    def on_sheet(self, point: Point) -> Point:
        whole, away = self.x.cross(self.y), point - self.zero
        return Point(away.cross(self.y) / whole, self.x.cross(away) / whole)


def sheets_of(page: int, found: Sequence[Bar], letters: Sequence[Letter], picture: bool = False) -> list[Sheet]:
    """The sheets that the bars on a page belong to, in reading order as far as their heads tell."""
    left = list(found)
    sheets = []
    while pair := _closest_pair(left):
        across, along = pair
        left = [bar for bar in left if bar not in pair]
        frame = Frame.of(across, along)
        sheets.append(Sheet(page, across, along, read_head(frame, letters, _print_of(frame, along)), picture))
    for bar in left:
        lies = _runs_across(bar, sheets)
        sheets.append(Sheet(page, bar if lies else None, None if lies else bar, None, picture))
    return sheets


def _closest_pair(found: Sequence[Bar]) -> tuple[Bar, Bar] | None:
    """A bar across and the bar along of the same sheet: the narrowest sheet first."""
    fits = [
        (frame.width, across, along)
        for across in found
        for along in found
        if across is not along and _at_right_angles(across, along)
        for frame in [Frame.of(across, along)]
        if frame.width > 30 and _in_place(frame, along)
    ]
    return min(fits, key=lambda fit: fit[0])[1:] if fits else None


def _at_right_angles(across: Bar, along: Bar) -> bool:
    """Whether ``along`` is what a quarter turn makes of ``across``, mirrored as that is."""
    if across.four_on_the_left != along.four_on_the_left:
        return False
    upward = across.run.unit.left.times(1 if across.four_on_the_left else -1)
    return upward.dot(along.run.unit) > 0.98


def _in_place(frame: Frame, along: Bar) -> bool:
    rise = frame.on_sheet(along.start).y
    return any(abs(rise - up) < 1.5 for printed in (_USUAL, _LARGE) for up in printed.ups)


def _print_of(frame: Frame, along: Bar) -> _Print:
    """What a sheet is printed in, by how far its bar along begins above its bar across."""
    rise = frame.on_sheet(along.start).y
    return min((_USUAL, _LARGE), key=lambda printed: min(abs(rise - up) for up in printed.ups))


def _runs_across(bar: Bar, beside: Sequence[Sheet]) -> bool:
    """Whether a bar alone is the one across: as on the other sheets of the page, or as it lies."""
    for sheet in beside:
        if sheet.across:
            return abs(sheet.across.run.unit.dot(bar.run.unit)) > 0.7
    return abs(bar.run.x) > abs(bar.run.y)


def _first(*bars: Bar | None) -> Bar:
    return next(bar for bar in bars if bar)


def _pattern(words: str, filled: str = ".+?") -> str:
    """Reads what a form of words was filled with, whatever blanks are in it: readers of PDF are free with them."""
    literal = r"\s*".join(re.escape(word) for word in words.split())
    return re.sub(r"\\\{(\w+)\\\}", lambda field: f"(?P<{field[1]}>{filled})", literal) + r"\s*"


_HOW, _CORRECTED = re.compile(_pattern(HOW)), re.compile(_pattern(CORRECTED, ".*?"))
_PAGE = re.compile(_pattern(PAGE, "[0-9]{1,5}") + "$")


def read_head(frame: Frame, letters: Iterable[Letter], printed: _Print) -> Head | None:
    """The head of the sheet in ``frame``, ``printed`` so; None where it has no text, or another's."""
    rows: dict[int, list[tuple[float, float, str]]] = defaultdict(list)
    for letter in letters:
        x, y = frame.on_sheet(letter.at)
        if -_LEFT - 8 < x < frame.width + printed.right + 8 and 20 < y < 2000:
            rows[round(y)].append((x, y, letter.text))
    for row in sorted(rows):
        for x, y, text in rows[row]:
            if text == HOW[0] and abs(x + _LEFT) < 8:
                how = _HOW.match("".join(_row(rows, y - i * printed.rows_apart) for i in range(printed.how_rows)))
                if how:
                    above = range(row + 2, row + 4 + round(printed.rows_apart))
                    return _head(how, [each for key in above for each in rows.get(key, ())], y, printed)
    return None


def _row(rows: Mapping[int, Sequence[tuple[float, float, str]]], y: float) -> str:
    """What stands on the base line at ``y``."""
    near = (each for key in range(round(y) - 1, round(y) + 2) for each in rows.get(key, ()))
    return "".join(text for _, high, text in _from_the_left(near) if abs(high - y) < 0.3)


def _from_the_left(letters: Iterable[tuple[float, float, str]]) -> list[tuple[float, float, str]]:
    """In the order in which they stand; those that stand at one point stay in the order in which they were read."""
    return sorted(letters, key=lambda letter: letter[0])


def _head(how: re.Match[str], above: list[tuple[float, float, str]], y: float, printed: _Print) -> Head | None:
    """``above`` are letters over the row that says how to print; a built fraction stands a little off its line."""
    # What shares a place with others is the text that a built fraction is spoken as: it all stands where its line
    # begins, or anywhere on the page once that was put into a form.
    places = Counter(each[:2] for each in above if each[2] != " ")
    line = _from_the_left(
        each
        for each in above
        if -0.8 < each[1] - y - printed.rows_apart < printed.raised
        and (places[each[:2]] <= 1 or abs(each[0] + _LEFT) < 0.5)
    )
    said = "".join(text for _, _, text in line)
    page = _PAGE.search(said)
    if not page:
        return None
    corrected = _CORRECTED.match(how.string, how.end())
    return Head(
        " ".join(said[: page.start()].split()),
        int(page["number"]),
        int(page["of"]),
        how["paper"],
        (float(corrected["across"]) / 100, float(corrected["along"]) / 100) if corrected else (1.0, 1.0),
    )
