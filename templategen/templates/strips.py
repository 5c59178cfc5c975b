"""What the spacing strip and the half strip have in common: depths, the lines at a mark, the last of what they say."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import replace
from fractions import Fraction

from ..drawing import Drawing, Line, LineType
from ..planning import Plan
from .headings import HEADING_CAPTIONS
from .places import MOST_PLACES
from .said import unit_of

TICK = 10
"""Centre line at a mark, from the datum edge, in mm; 8 are promised."""
EDGE_TICK = 7
"""The two edges of what stands there, shorter than its centre, in mm."""
DEPTH = 58
"""Three strips of this depth stand side by side on letter and on A4 paper."""
END_SIZE = 9.5
BETWEEN_LABELS = 9.5
"""Between two labels, in mm: room for a registration mark, should a join have to stand there."""


def copies(drawing: Drawing, count: int) -> list[Drawing]:
    """``drawing`` itself, or ``count`` of it, numbered: "spacing strip 1", "spacing strip 2"."""
    if count == 1:
        return [drawing]
    return [replace(drawing, name=f"{drawing.name} {number}") for number in range(1, count + 1)]


def thing_edges(at: Fraction, half_width: Fraction, end: Fraction) -> Iterator[Line]:
    """The two edges of a thing at the datum edge, so far as they lie on a strip that runs from 0 to ``end``.

    None of what is a point and has no edges.
    """
    if not half_width:
        return
    for edge in (max(at - half_width, Fraction(0)), min(at + half_width, end)):
        yield Line(LineType.THIN, edge, 0, edge, -EDGE_TICK)


def keys_without_distances(plan: Plan) -> tuple[str, ...]:
    """The same for a strip that has no room for distances."""
    found = ("The distances stand in the work order.",) if plan.heading.count <= MOST_PLACES else ()
    return (*found, *HEADING_CAPTIONS[plan.heading.style].strip(plan, plan.heading))


def keys_to_reading(plan: Plan, distances: Sequence[str], zero: str) -> tuple[str, ...]:
    """What the numbers and lines of a strip mean, and where the seams come; ``zero`` is what they are measured from."""
    signs = ("+ is a hair over, − a hair under.",) if any(label[-1] in "+−" for label in distances) else ()
    return (
        f"Distances: {unit_of(plan)} from {zero}.",
        *signs,
        *HEADING_CAPTIONS[plan.heading.style].strip(plan, plan.heading),
    )
