"""Papers: the sizes of sheet that are known by name."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from difflib import get_close_matches
from fractions import Fraction
from types import MappingProxyType

from .lengths import MM_PER_INCH

_MM: Mapping[str, tuple[int, int]] = {
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
_INCHES: Mapping[str, tuple[int | Fraction, int]] = {
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

    @property
    def shown(self) -> str:
        """What a sheet calls it: "letter", "A4"; paper without a name by its size, "200 x 280 mm"."""
        if self.name not in CATALOGUE:
            return f"{float(self.width):.6g} x {float(self.height):.6g} mm"
        written_large = self.name.startswith("ansi") or any(letter.isdigit() for letter in self.name)
        return self.name.upper().replace("-", " ") if written_large else self.name


CATALOGUE: Mapping[str, Paper] = MappingProxyType(
    {name: Paper(name, Fraction(wide), Fraction(high)) for name, (wide, high) in _MM.items()}
    | {name: Paper(name, wide * MM_PER_INCH, high * MM_PER_INCH) for name, (wide, high) in _INCHES.items()}
)


def paper_named(name: str) -> Paper | None:
    """The paper of that name, capitals and blanks aside; None where none is known by it."""
    return CATALOGUE.get("-".join(name.lower().split()))


def unknown_paper(name: str) -> str:
    """What is wrong with a name that no paper has, and what would be right."""
    near = get_close_matches(name.lower(), CATALOGUE, 1)
    hint = f"did you mean {near[0]}? " if near else ""
    return f"no paper is known by that name; {hint}write one of {', '.join(sorted(CATALOGUE))}"
