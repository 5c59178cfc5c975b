"""The key to the line types of a sheet: a sample of each, and what it means in a word or two."""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Mapping
from fractions import Fraction

from ..drawing import CAP, Item, Line, LineType, Look, Text, width_of
from .area import Area

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
_SHORT = {**KEY, LineType.TRIM: "trim", LineType.MARK: "mark", LineType.STITCH: "stitch", LineType.MATCH: "match"}
"""The same in one word, for large print."""
KEY_SIZE = 7.5
LARGE_ROW = Fraction(7)
"""From one row of the key to the next in large print, in mm."""
_ROW = 3.8
_ROWS, _LARGE_ROWS = 3, 2
"""Of the key, where its samples can be as short as that takes."""
_SAMPLES = (15, 11, 8)
"""Length of a sample of a line type, in mm: the longest with which the key fits."""
_LARGE_SAMPLES = (30, 24, 18, 15)
"""The same in large print, whose dashes are longer."""


def key_items(used: Iterable[LineType], left: float, top: float, room: float) -> Iterator[Item]:
    """A sample of each line type of a sheet in usual print, from this corner on, so wide, in mm."""
    rows, sample = _rows_in(_explained(KEY, used), room, KEY_SIZE, _SAMPLES, _ROWS)
    for i, row in enumerate(rows):
        y = top - _ROW * i
        for kind, x in row:
            yield Line(kind, left + x, y, left + x + sample, y)
            yield Text(left + x + sample + 1.5, y - 0.9, KEY[kind], KEY_SIZE)


def large_rows(used: Iterable[LineType], room: float, look: Look) -> int:
    """How many rows the key to these takes in large print."""
    return len(_rows_in(_explained(_SHORT, used), room, look.size(KEY_SIZE), _LARGE_SAMPLES, _LARGE_ROWS)[0])


def large_key_items(used: Iterable[LineType], whole: Area, foot: Fraction, look: Look) -> Iterator[Item]:
    """The same in large print: rows as wide as the sheet, the lowest from ``foot`` up."""
    size = look.size(KEY_SIZE)
    rows, sample = _rows_in(_explained(_SHORT, used), float(whole.width), size, _LARGE_SAMPLES, _LARGE_ROWS)
    for i, row in enumerate(rows):
        y = float(foot + LARGE_ROW * (len(rows) - 1 - i)) + size * CAP / 2 + 1
        for kind, x in row:
            start = float(whole.left) + x
            yield Line(kind, start, y, start + sample, y)
            yield Text(start + sample + 2, y - size * CAP / 2, _SHORT[kind], size)


def _explained(words: Mapping[LineType, str], used: Iterable[LineType]) -> list[tuple[LineType, str]]:
    """The line types among ``used`` that need a word, each with it."""
    kinds = set(used)
    return [(kind, word) for kind, word in words.items() if kind in kinds]


def _rows_in(
    kinds: list[tuple[LineType, str]], room: float, size: float, samples: tuple[int, ...], most: int
) -> tuple[list[list[tuple[LineType, float]]], int]:
    """The key's rows, and the longest sample with which they are few enough."""
    rows: list[list[tuple[LineType, float]]] = []
    sample = samples[0]
    for sample in samples:
        rows = _key_rows(kinds, sample, room, size)
        if len(rows) <= most:
            break
    return rows, sample


def _key_rows(
    kinds: list[tuple[LineType, str]], sample: float, room: float, size: float
) -> list[list[tuple[LineType, float]]]:
    """Each line type with where its sample begins, row by row."""
    rows: list[list[tuple[LineType, float]]] = [[]]
    x = 0.0
    for kind, word in kinds:
        wide = sample + 1.5 + width_of(word, size)
        if x + wide > room and rows[-1]:
            rows.append([])
            x = 0.0
        rows[-1].append((kind, x))
        x += wide + 4
    return rows
