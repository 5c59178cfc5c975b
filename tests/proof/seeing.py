"""Seeing: a page rendered by PDFium, the pieces cut out of it, and the strokes in a piece's picture.

Nothing here knows what a template should look like. The list of what lies
where on the paper serves as a pair of scissors and for nothing else.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass, replace
from math import ceil
from typing import Any

import cv2
import numpy as np
import numpy.typing as npt
import pypdfium2

DPI = 600
MM_PER_INCH = 25.4
_SPARE = 0.9
"""Around a piece that is cut out, in mm: pieces lie 2 mm apart."""
_ROUND_A_BAR = (3.0, 3.0, 3.0, 3.0)
"""Around a bar that is cut out, in mm."""
_INK = 0.5
"""How dark a profile must be, from 0 to 1, to count as a stroke."""

Shade = npt.NDArray[np.uint8]
Profile = npt.NDArray[np.float64]


@dataclass(frozen=True)
class Stroke:
    """A line seen across a profile: where its middle is, and how wide its ink, in mm."""

    at: float
    ink: float


@dataclass(frozen=True)
class Picture:
    """Ink from 0 (paper) to 255 (black), x to the right and y down, with the size of a picture's point in mm."""

    ink: Shade
    mm_x: float
    mm_y: float

    @property
    def width(self) -> float:
        return self.ink.shape[1] * self.mm_x

    @property
    def height(self) -> float:
        return self.ink.shape[0] * self.mm_y

    def part(self, left: float, top: float, right: float, bottom: float) -> tuple[Shade, float, float]:
        """The points between these limits in mm, and where the first of them begins."""
        x1, x2 = _limits(left / self.mm_x, right / self.mm_x, self.ink.shape[1])
        y1, y2 = _limits(top / self.mm_y, bottom / self.mm_y, self.ink.shape[0])
        return self.ink[y1:y2, x1:x2], x1 * self.mm_x, y1 * self.mm_y

    def strokes_across(
        self, left: float, top: float, right: float, bottom: float, ink: float = _INK
    ) -> list[Stroke]:
        """Upright lines that run the whole height of a box, or ``ink`` of it at the least, from left to right."""
        part, start, _ = self.part(left, top, right, bottom)
        return list(strokes(_mean(part, 0), start, self.mm_x, ink))

    def strokes_down(self, left: float, top: float, right: float, bottom: float) -> list[Stroke]:
        """Level lines that run the whole width of a box, from the top down."""
        part, _, start = self.part(left, top, right, bottom)
        return list(strokes(_mean(part, 1), start, self.mm_y))


@dataclass(frozen=True)
class CutOut:
    """A piece as it lies on the table, its template's direction to the right."""

    template: str
    number: int
    """What the piece is called in the list, to name it in a message."""
    picture: Picture
    datum_above: bool
    """Whether its datum edge is the upper edge of the picture."""


def _limits(low: float, high: float, size: int) -> tuple[int, int]:
    return max(0, round(low)), min(size, round(high))


def _mean(part: Shade, axis: int) -> Profile:
    return np.asarray(part.mean(axis=axis, dtype=np.float64) / 255)


def strokes(profile: Profile, start: float, step: float, least: float = _INK) -> Iterator[Stroke]:
    """Where the profile is as dark as that: the middle of the ink, to a part of a point."""
    dark = np.concatenate([[False], profile > least, [False]])
    turns = np.flatnonzero(dark[1:] != dark[:-1])
    for first, last in zip(turns[::2], turns[1::2], strict=True):
        low, high = max(0, int(first) - 2), min(len(profile), int(last) + 2)
        ink = profile[low:high]
        middle = float((ink * (np.arange(low, high) + 0.5)).sum() / ink.sum())
        yield Stroke(start + middle * step, float(ink.sum()) * step)


class Pages:
    """The pages of a PDF as PDFium draws them, each rendered when it is asked for.

    ``prints`` is what a printer makes of a length, across the sheet and along it.
    """

    def __init__(self, pdf: bytes, prints: tuple[float, float] = (1, 1)) -> None:
        self._prints = prints
        self._document = pypdfium2.PdfDocument(pdf)
        self._drawn: tuple[int, Picture] | None = None

    def __len__(self) -> int:
        return len(self._document)

    def page(self, number: int) -> Picture:
        """A page, counted from 1."""
        if self._drawn is None or self._drawn[0] != number:
            self._drawn = (number, self._rendered(number))
        return self._drawn[1]

    def bar(self, number: int, bar: dict[str, Any]) -> Picture:
        """A bar of a page, cut out; no more of the page is rendered than that."""
        if self._drawn is not None and self._drawn[0] == number:
            return cut_out_bar(self._drawn[1], bar)
        (wide, high), mm_x, mm_y = self._size(number)
        left, top, right, bottom = _box(_ends(bar, high * mm_y), _ROUND_A_BAR)
        (x1, x2), (y1, y2) = _limits(left / mm_x, right / mm_x, wide), _limits(top / mm_y, bottom / mm_y, high)
        part = self._rendered(number, (x1, high - y2, wide - x2, y1))
        return _turned(part) if _stands(bar) else part

    def _rendered(self, number: int, without: tuple[int, int, int, int] = (0, 0, 0, 0)) -> Picture:
        """A page, so many of its picture's points left off at the left, the bottom, the right and the top."""
        # PDFium makes whole points of a number that is rounded up.
        crop = tuple(max(0.0, points - 0.5) * 72 / DPI for points in without)
        ink = self._document[number - 1].render(scale=DPI / 72, grayscale=True, crop=crop).to_numpy()
        _, mm_x, mm_y = self._size(number)
        return Picture(np.asarray(cv2.bitwise_not(ink.reshape(ink.shape[:2])), np.uint8), mm_x, mm_y)

    def _size(self, number: int) -> tuple[tuple[int, int], float, float]:
        """Of a page's picture, in points, and of a point in mm: PDFium stretches each way to whole points by itself."""
        width, height = self._document[number - 1].get_size()
        wide, high = ceil(width * (DPI / 72)), ceil(height * (DPI / 72))
        across, along = self._prints
        return (wide, high), width / 72 * MM_PER_INCH / wide * across, height / 72 * MM_PER_INCH / high * along

    def close(self) -> None:
        self._document.close()


def cut_out(page: Picture, piece: dict[str, Any], by_eye: np.random.Generator) -> CutOut:
    """A piece cut out of its page, a little too large and nowhere exactly, turned to be read along."""
    (dx, dy), (ix, iy) = piece["direction"], piece["inward"]
    x, y = piece["datum"]["x_mm"], page.height - piece["datum"]["y_mm"]
    length, depth = piece["along_mm"][1] - piece["along_mm"][0], piece["depth_mm"]
    corners = complex(x, y), complex(x + dx * length + ix * depth, y - dy * length - iy * depth)
    spare = (_SPARE + by_eye.uniform(-0.2, 0.2, 4)).tolist()
    picture = _region(page, corners, spare, bool(dy))
    return CutOut(piece["template"], piece["piece"], picture, ix > 0 if dy else iy < 0)


def cut_out_bar(page: Picture, bar: dict[str, Any]) -> Picture:
    """A bar with its ticks, turned to be read along."""
    return _region(page, _ends(bar, page.height), _ROUND_A_BAR, _stands(bar))


def _ends(bar: dict[str, Any], height: float) -> tuple[complex, complex]:
    """Of a bar, from the upper left corner of a page of this height."""
    (x1, y1), (x2, y2) = bar["from"], bar["to"]
    return complex(x1, height - y1), complex(x2, height - y2)


def _stands(bar: dict[str, Any]) -> bool:
    return bool(bar["from"][0] == bar["to"][0])


def _region(page: Picture, corners: tuple[complex, complex], spare: Sequence[float], turned: bool) -> Picture:
    """The part of a page between two corners and a little more, a quarter turned clockwise or not."""
    ink, _, _ = page.part(*_box(corners, spare))
    part = replace(page, ink=ink)
    return _turned(part) if turned else replace(part, ink=ink.copy())


def _box(corners: tuple[complex, complex], spare: Sequence[float]) -> tuple[float, float, float, float]:
    """From the left, the top, to the right and the bottom."""
    left, right = sorted(corner.real for corner in corners)
    top, bottom = sorted(corner.imag for corner in corners)
    return left - spare[0], top - spare[1], right + spare[2], bottom + spare[3]


def _turned(picture: Picture) -> Picture:
    """A quarter turned clockwise."""
    ink = np.asarray(cv2.rotate(picture.ink, cv2.ROTATE_90_CLOCKWISE), np.uint8)
    return Picture(ink, picture.mm_y, picture.mm_x)


def upside_down(picture: Picture) -> Picture:
    """Turned by half a turn."""
    return replace(picture, ink=np.asarray(cv2.rotate(picture.ink, cv2.ROTATE_180), np.uint8))


# Registration marks: a ring of 2.5 mm with a cross of 3.5 mm arms.
_RING, _ARM, _REACH = 2.5, 3.5, 4.0
_COARSE = 4
_LIKENESS = 0.55


def registration_marks(picture: Picture) -> list[complex]:
    """The centres of all rings with a cross in them, in mm, x + y i."""
    small = cv2.resize(
        picture.ink, (picture.ink.shape[1] // _COARSE, picture.ink.shape[0] // _COARSE), interpolation=cv2.INTER_AREA
    )
    pattern = _pattern()
    likeness = cv2.matchTemplate(small, pattern, cv2.TM_CCOEFF_NORMED)
    peaks = (likeness > _LIKENESS) & (likeness == cv2.dilate(likeness, np.ones((21, 21))))
    half = pattern.shape[0] / 2
    found = []
    for row, column in zip(*np.nonzero(peaks), strict=True):
        guess = complex((column + half) * _COARSE * picture.mm_x, (row + half) * _COARSE * picture.mm_y)
        centre = _cross(picture, _cross(picture, guess))
        if centre is not None and _is_ringed(picture, centre):
            found.append(centre)
    return found


def _pattern() -> Shade:
    """A registration mark at the coarse scale, line widths those of a thin pen."""
    points = DPI / MM_PER_INCH
    size = 2 * int(_REACH * points / _COARSE) * _COARSE
    ink = np.zeros((size, size), np.uint8)
    middle = size // 2
    cv2.circle(ink, (middle, middle), round(_RING * points), 255, 8, cv2.LINE_AA)
    arm = round(_ARM * points)
    cv2.line(ink, (middle - arm, middle), (middle + arm, middle), 255, 6)
    cv2.line(ink, (middle, middle - arm), (middle, middle + arm), 255, 6)
    return cv2.resize(ink, (size // _COARSE, size // _COARSE), interpolation=cv2.INTER_AREA)


def _cross(picture: Picture, guess: complex | None) -> complex | None:
    """The middle of the cross near ``guess``, from its arms inside the ring: of each pair one may be printed over."""
    if guess is None:
        return None
    x, y = guess.real, guess.imag
    halves = (-2.0, -0.7), (0.7, 2.0)
    ups = [picture.strokes_across(x - 0.9, y + low, x + 0.9, y + high) for low, high in halves]
    levels = [picture.strokes_down(x + low, y - 0.9, x + high, y + 0.9) for low, high in halves]
    ups, levels = ([arm for arm in arms if len(arm) == 1] for arms in (ups, levels))
    if not ups or not levels:
        return None
    across, down = (sum(stroke.at for (stroke,) in arms) / len(arms) for arms in (ups, levels))
    return complex(across, down)


def _is_ringed(picture: Picture, centre: complex) -> bool:
    """Whether a ring of the right size stands round ``centre``, most of it not printed over."""
    angles = np.radians([a for a in range(0, 360, 5) if 20 < a % 90 < 70])
    radii = np.arange(_RING - 0.5, _RING + 0.5, 0.02)
    xs = (centre.real + np.outer(np.cos(angles), radii)) / picture.mm_x - 0.5
    ys = (centre.imag + np.outer(np.sin(angles), radii)) / picture.mm_y - 0.5
    ink = cv2.remap(picture.ink, xs.astype(np.float32), ys.astype(np.float32), cv2.INTER_LINEAR).astype(float)
    middles = (ink * radii).sum(axis=1) / np.maximum(ink.sum(axis=1), 1)
    right = (ink.max(axis=1) > 200) & (abs(middles - _RING) < 0.06)
    return bool(right.mean() > 0.7)
