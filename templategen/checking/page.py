"""What a page of a PDF holds, as far as a check asks for it."""

from __future__ import annotations

from dataclasses import dataclass

from .geometry import Letter, Stroke


@dataclass(frozen=True, slots=True)
class Page:
    """A page as it will be shown: turned as the file says, its visible box alone. Millimetres."""

    number: int
    """In the file, from 1."""
    width: float
    height: float
    turn: int
    """Clockwise, in degrees, as the file says beside the page: 0, 90, 180 or 270."""
    user_unit: float
    """How many points a unit of the page stands for (ISO 32000-1, table 30)."""
    strokes: tuple[Stroke, ...]
    letters: tuple[Letter, ...]
    cut: int
    """How many strokes and letters lie outside the visible part, wholly or in part."""
    pictures: tuple[float, ...]
    """Points to the inch of every picture on it."""
    missing_fonts: frozenset[str]
    """Names of the fonts that are used and not in the file."""

    @property
    def upright(self) -> bool:
        return self.height >= self.width


@dataclass(frozen=True, slots=True)
class File:
    """What the file says of itself."""

    pages: int
    asks_actual_size: bool
    """PrintScaling None (ISO 32000-1, table 150)."""
    asks_two_sides: bool
    attachments: int
    may_be_printed: bool
    """Bit 3 of an encrypted file's permissions (ISO 32000-1, table 22)."""


@dataclass(frozen=True, slots=True)
class Picture:
    """A page as it is drawn: a byte for each point, 0 black and 255 white, rows from the top down."""

    points: bytes
    columns: int
    rows: int
    mm: float
    """Side of a point."""
