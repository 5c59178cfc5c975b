"""The catalogue as a page of text."""

from __future__ import annotations

import textwrap
from collections.abc import Iterator
from fractions import Fraction

from ..lengths import MM_PER_INCH
from ..lengths.showing import Units
from .catalogue import ALSO_CALLED, FAMILIES, Family
from .paper import Paper

_WIDTH = 88
_CLOSING = """\
Any other size has a name of its own after PWG 5101.1: custom_banner_300x1200mm, \
custom_own_12.5x18in. Names of that standard, the last column, are taken wherever a paper's \
name is, and capitals do not matter."""


def tell_papers(units: Units) -> str:
    """Every paper by family, with its sizes in ``units`` and its PWG 5101.1 name; inches to a hundredth."""
    lines = [line for family in FAMILIES for line in _family(family, units)]
    return "\n".join([*lines, *textwrap.wrap(_CLOSING, _WIDTH)]) + "\n"


def _family(family: Family, units: Units) -> Iterator[str]:
    yield family.title
    yield from _indented(f"Source: {family.source}.")
    if family.note:
        yield from _indented(family.note)
    for paper in family.papers:
        yield f"    {paper.name:<18} {_size(paper, units):<19} {paper.pwg or ''}".rstrip()
    also = [f"{paper.name} is {' or '.join(others)}" for paper in family.papers if (others := _other_names(paper))]
    if also:
        yield from _indented(f"By other names, {', '.join(also)}.")
    yield ""


def _other_names(paper: Paper) -> list[str]:
    return [other for other, name in ALSO_CALLED.items() if name == paper.name]


def _indented(text: str) -> list[str]:
    return textwrap.wrap(text, _WIDTH, initial_indent="  ", subsequent_indent="  ", break_on_hyphens=False)


def _size(paper: Paper, units: Units) -> str:
    one, unit = (MM_PER_INCH, "in") if units == "inch" else (Fraction(1), "mm")
    wide, high = (f"{round(float(side / one), 2):g}" for side in (paper.width, paper.height))
    return f"{wide} {unit} wide" if paper.roll else f"{wide} × {high} {unit}"
