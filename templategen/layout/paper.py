"""The paper that a job is laid out on, and what of it can be drawn on."""

from __future__ import annotations

from dataclasses import dataclass
from fractions import Fraction

from ..papers import CATALOGUE, Paper, paper_named
from ..spec import Spec


@dataclass(frozen=True, slots=True)
class Area:
    """An upright rectangle on a page, in millimetres from the page's lower left corner."""

    left: Fraction
    bottom: Fraction
    right: Fraction
    top: Fraction

    @property
    def width(self) -> Fraction:
        return self.right - self.left

    @property
    def height(self) -> Fraction:
        return self.top - self.bottom


def paper_of(spec: Spec, name: str | None = None) -> Paper:
    """The paper that ``spec`` asks for; the one called ``name`` takes its place where that is given.

    Without a word in the spec it is letter where numbers are shown in inches, A4
    where they are metric. Raises KeyError for a name that is not in the catalogue:
    the spec and the options have been checked by then.
    """
    asked = spec.paper
    if name is None and asked.width is not None and asked.height is not None:
        return Paper("custom", asked.width.mm, asked.height.mm)
    wanted = name or asked.name or ("letter" if spec.units == "inch" else "a4")
    paper = paper_named(wanted)
    if paper is None:
        raise KeyError(wanted)
    return paper


__all__ = ["CATALOGUE", "Area", "Paper", "paper_of"]
