"""Setting a line of text: how wide it is, where each run of it goes, fractions built.

Sixteenths and most other fractions have no character of their own, so every
fraction is built alike: a smaller numerator raised, a fraction slash, a smaller
denominator on the base line. Every character is checked against the face:
what the face lacks is refused, since a PDF would show nothing in its place.
"""

from __future__ import annotations

import re
from dataclasses import dataclass
from fractions import Fraction
from functools import lru_cache
from typing import NamedTuple

from ..errors import MissingGlyph
from .faces import Face, face

MM_PER_POINT = 25.4 / 72
"""One point is 1/72 in: ISO 32000-1, table 30."""

_FRACTION = re.compile(r"(?<![\d/⁄.,])(?:(\d+)[ \u00a0])?(\d+)[/⁄](\d+)(?![\d/⁄])")
_TIED = re.compile(r"(?<=\d) (?=\d+/\d|(?:in|mm|cm|m|ft|lb|kg)\b|%)")
"""Blanks that a line is never broken at: between a whole number and its fraction, a number and its unit."""
_FRACTION_SIZE = 0.70
_NUMERATOR_RISE = 0.31
_THIN_SPACE = 0.10
_DESCENT = 0.21
"""Ems below the base line that g and y reach in Lato."""
CAP, DESCENT = 0.72 * MM_PER_POINT, _DESCENT * MM_PER_POINT
"""How high a capital reaches, and how far below the base line g and y do, in mm for each point of type."""


class Bounds(NamedTuple):
    """An upright box."""

    left: float | Fraction
    bottom: float | Fraction
    right: float | Fraction
    top: float | Fraction

    def meets(self, other: Bounds, gap: float = 0) -> bool:
        """Whether the boxes overlap, or come nearer to each other than ``gap``."""
        return (
            self.left < other.right + gap
            and other.left < self.right + gap
            and self.bottom < other.top + gap
            and other.bottom < self.top + gap
        )


@dataclass(frozen=True, slots=True)
class Run:
    """Characters set in one size: their offset from the start of the base line, in millimetres."""

    text: str
    dx: float
    dy: float
    size: float
    """In points."""


@dataclass(frozen=True, slots=True)
class Setting:
    """A line of text, set. Millimetres."""

    runs: tuple[Run, ...]
    width: float
    ascent: float
    descent: float


@lru_cache(maxsize=2048)
def set_text(text: str, size: float, bold: bool = False) -> Setting:
    """``text`` set in ``size`` points, its fractions built.

    Raises MissingGlyph where the face lacks a character.
    """
    chosen = face(bold)
    em = size * MM_PER_POINT
    runs: list[Run] = []
    pen = 0.0

    def add(piece: str, scale: float = 1.0, rise: float = 0.0) -> None:
        nonlocal pen
        if piece:
            runs.append(Run(piece, pen, rise * em, size * scale))
            pen += _ems(piece, chosen) * scale * em

    end = 0
    for found in _FRACTION.finditer(text):
        add(text[end : found.start()])
        whole, numerator, denominator = found.groups()
        if whole:
            add(whole)
            pen += _THIN_SPACE * em
        add(numerator, _FRACTION_SIZE, _NUMERATOR_RISE)
        add("⁄", _FRACTION_SIZE * 1.25)
        add(denominator, _FRACTION_SIZE)
        end = found.end()
    add(text[end:])
    return Setting(tuple(runs), pen, chosen.cap_height * em, _DESCENT * em)


def width_of(text: str, size: float, bold: bool = False) -> float:
    """How wide ``text`` is when set, in millimetres."""
    if "/" in text or "⁄" in text:
        return set_text(text, size, bold).width
    return _ems(text, face(bold)) * (size * MM_PER_POINT)  # as it is set where no fraction is built in it


@lru_cache(maxsize=2048)
def wrap(text: str, size: float, width: float, bold: bool = False) -> tuple[str, ...]:
    """``text`` broken at spaces into lines no wider than ``width`` millimetres.

    A no-break space holds; a number keeps its fraction and its unit.
    A single word that is wider than the line is broken between characters.
    """
    lines: list[str] = []
    line = ""
    for word in tied(text).split(" "):
        longer = f"{line} {word}" if line else word
        if width_of(longer, size, bold) <= width:
            line = longer
            continue
        if line:
            lines.append(line)
        while width_of(word, size, bold) > width and len(word) > 1:
            fits = next(n for n in range(len(word) - 1, 0, -1) if n == 1 or width_of(word[:n], size, bold) <= width)
            lines.append(word[:fits])
            word = word[fits:]
        line = word
    return (*lines, line)


def tied(text: str) -> str:
    """``text`` with no-break spaces where a line must not be broken: a number keeps its fraction and its unit."""
    return _TIED.sub("\u00a0", text)


def capitalised(text: str) -> str:
    """``text`` with its first letter a capital and the rest as it is."""
    return text[:1].upper() + text[1:]


def _ems(text: str, chosen: Face) -> float:
    try:
        return sum(map(chosen.advances.__getitem__, text))
    except KeyError as missing:
        character = missing.args[0]
        raise MissingGlyph(
            f"the font {chosen.name} has no character {character!r} (U+{ord(character):04X}), "
            f"which stands in {text!r}: write it another way"
        ) from None
