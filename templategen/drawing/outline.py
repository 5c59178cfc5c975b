"""An outline: what of a template is paper, at any place along it."""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from dataclasses import dataclass
from fractions import Fraction

from .items import Line, LineType, Number


@dataclass(frozen=True, slots=True)
class Outline:
    """The lines that a template is cut out along."""

    lines: tuple[Line, ...]

    @classmethod
    def among(cls, items: Iterable[object]) -> Outline:
        """The outline that stands among a drawing's items."""
        return cls(tuple(item for item in items if isinstance(item, Line) and item.kind is LineType.CUT))

    def span(self, x: Number) -> tuple[Number, Number] | None:
        """From which height to which the template reaches at ``x``; None where it has no paper there.

        At a stair's riser, where it reaches up to either side.
        """
        heights = [y for line in self.lines for y in _heights(line, x)]
        return (min(heights), max(heights)) if heights else None


def _heights(line: Line, x: Number) -> Iterator[Number]:
    """Where ``line`` stands above ``x``: nowhere, at one height, or from one to another."""
    if not min(line.x1, line.x2) <= x <= max(line.x1, line.x2):
        return
    if line.x1 == line.x2:
        yield from (line.y1, line.y2)
    elif line.runs_along:
        yield line.y1
    else:
        part = (Fraction(x) - Fraction(line.x1)) / (Fraction(line.x2) - Fraction(line.x1))
        yield line.y1 + (line.y2 - line.y1) * part
