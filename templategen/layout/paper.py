"""Paper: its sizes, its margins, and what of it can be drawn on."""

from __future__ import annotations

from dataclasses import dataclass
from difflib import get_close_matches
from fractions import Fraction

from ..errors import Fault, Refusal
from ..lengths import MM_PER_INCH
from ..spec import Spec

_MM = {
    # ISO 216: trimmed sizes, A series.
    "a0": (841, 1189),
    "a1": (594, 841),
    "a2": (420, 594),
    "a3": (297, 420),
    "a4": (210, 297),
    "a5": (148, 210),
    # JIS P 0138.
    "b4-jis": (257, 364),
}
_INCHES = {
    # ANSI/ASME Y14.1 A to E, and US office sizes.
    "letter": (Fraction(17, 2), 11),
    "legal": (Fraction(17, 2), 14),
    "tabloid": (11, 17),
    "ansi-c": (17, 22),
    "ansi-d": (22, 34),
    "ansi-e": (34, 44),
}


@dataclass(frozen=True, slots=True)
class Paper:
    """One size of sheet, the same for every page of a file. Millimetres."""

    name: str
    width: Fraction
    height: Fraction


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


CATALOGUE = {
    **{name: Paper(name, Fraction(w), Fraction(h)) for name, (w, h) in _MM.items()},
    **{name: Paper(name, w * MM_PER_INCH, h * MM_PER_INCH) for name, (w, h) in _INCHES.items()},
}


def paper_of(spec: Spec, name: str | None = None) -> Paper:
    """The paper that ``spec`` asks for; ``name`` takes its place where it is given.

    Without a word in the spec it is letter where numbers are shown in inches, A4
    where they are metric. Raises Refusal for a name that is not in the catalogue.
    """
    asked = spec.paper
    if name is None and asked.width is not None and asked.height is not None:
        return Paper("custom", asked.width.mm, asked.height.mm)
    wanted = name or asked.name or ("letter" if spec.units == "inch" else "a4")
    key = wanted.strip().lower().replace(" ", "-")
    if key not in CATALOGUE:
        near = get_close_matches(key, CATALOGUE, 1)
        hint = f"did you mean {near[0]}? " if near else ""
        raise Refusal(
            Fault(
                "paper.name" if name is None else "--paper",
                repr(wanted),
                f"no such paper is known; {hint}write one of {', '.join(sorted(CATALOGUE))}, "
                "or paper.width and paper.height",
            )
        )
    return CATALOGUE[key]
