"""An outside renderer with a ruler: the bars of a page as MuPDF draws it at 300 points to the inch."""

from __future__ import annotations

import warnings
from dataclasses import dataclass

import numpy as np
import numpy.typing as npt

with warnings.catch_warnings():
    warnings.simplefilter("ignore")  # what SWIG's own types say of themselves on import
    import pymupdf

DPI = 300
_LARGE = 1200
"""Points of 1/72 in: a page larger than this is drawn half as finely."""
_INK = 100
"""How dark a point of a line is at the least, of 255."""

Shade = npt.NDArray[np.uint8]


@dataclass(frozen=True)
class Seen:
    """What the bars of a page measure over 100 mm: those that lie level, and those that stand, as it is shown."""

    level: tuple[float, ...]
    upright: tuple[float, ...]


def bars_seen(pdf: bytes, index: int = 0) -> Seen:
    """Every pair of lines on the page whose lengths are as 100 mm to 4 in and that begin together."""
    with pymupdf.open(stream=pdf, filetype="pdf") as document:
        dpi = DPI if max(document[index].rect[2:]) < _LARGE else DPI // 2
        drawn = document[index].get_pixmap(dpi=dpi, colorspace=pymupdf.csGRAY, alpha=False)
    ink = 255 - np.frombuffer(drawn.samples, np.uint8).reshape(drawn.height, drawn.stride)[:, : drawn.width]
    return Seen(_pairs(ink, 25.4 / dpi), _pairs(np.ascontiguousarray(ink.T), 25.4 / dpi))


def _pairs(ink: Shade, mm: float) -> tuple[float, ...]:
    found = []
    lines = _lines(ink, 30 / mm)
    for middle, first, last, length in lines:
        for other_middle, other_first, other_last, other_length in lines:
            apart = abs(middle - other_middle) / length
            together = min(abs(first - other_first), abs(last - other_last)) < 0.006 * length
            if together and 0.01 < apart < 0.03 and abs(other_length / length / 1.016 - 1) < 0.004:
                found.append(length * mm / 100)
    return tuple(found)


def _lines(ink: Shade, shortest: float) -> list[tuple[float, float, float, float]]:
    """Middle, first, last and length of every dark line that is long enough along the rows, in points.

    The length is that of its ink, less the half width of a tick at either end.
    """
    dark = np.pad(ink > _INK, ((0, 0), (1, 1))).astype(np.int8)
    steps = np.diff(dark, axis=1)
    rows, starts = np.nonzero(steps == 1)
    _, ends = np.nonzero(steps == -1)
    long = ends - starts > shortest
    runs = [(int(r), int(s), int(e)) for r, s, e in zip(rows[long], starts[long], ends[long], strict=True)]
    groups: list[list[tuple[int, int, int]]] = []
    for run in runs:
        for group in groups:
            if group[-1][0] == run[0] - 1 and group[-1][1] < run[2] and run[1] < group[-1][2]:
                group.append(run)
                break
        else:
            groups.append([run])
    found = []
    for group in groups:
        if len(group) > 16:
            continue
        _, start, end = max(group, key=lambda run: run[2] - run[1])
        band = ink[max(0, group[0][0] - 2) : group[-1][0] + 3, start + (end - start) // 3 : end - (end - start) // 3]
        width = float(band.mean(axis=1).sum()) / 255
        middle = group[len(group) // 2][0]
        row = ink[middle, max(0, start - 3) : end + 3].astype(np.float64)
        length = float(row.sum()) / float(row[len(row) // 3 : -len(row) // 3].mean()) - width
        found.append((float(middle), float(start), float(end), length))
    return found
