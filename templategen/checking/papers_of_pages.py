"""Which paper a page is, and which paper a sheet says it is for."""

from __future__ import annotations

import re

from ..papers import CATALOGUE, Paper, paper_named

SAME = 1.5
"""Pages this near each other's sides, in mm, are one paper; the standard lets a sheet of A4 be 2 mm off (ISO 216)."""


def paper_said(name: str) -> tuple[float, float] | None:
    """Width and height in mm of the paper that a sheet's head names, by name or by size."""
    size = re.fullmatch(r"([\d.]+)x([\d.]+)mm", "".join(name.split()))
    try:
        if size:
            return float(size[1]), float(size[2])
        paper = paper_named(name)
    except ValueError:
        return None
    return (float(paper.width), float(paper.height)) if paper else None


def is_size(one: tuple[float, float], other: tuple[float, float]) -> bool:
    """Whether both are one size of paper, however it is turned."""
    return all(abs(a - b) <= SAME for a, b in zip(sorted(one), sorted(other), strict=True))


def paper_at(size: tuple[float, float]) -> Paper | None:
    """The paper of the catalogue that a page of this size is."""
    return next((each for each in CATALOGUE.values() if is_size((float(each.width), float(each.height)), size)), None)


def called(size: tuple[float, float]) -> str:
    """"A4", "letter", "206 x 269 mm"."""
    paper = paper_at(size)
    return paper.shown if paper else f"{size[0]:.0f} x {size[1]:.0f} mm"
