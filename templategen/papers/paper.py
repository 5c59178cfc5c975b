"""One paper: a sheet of a given width and height, or a roll of a given width."""

from __future__ import annotations

from dataclasses import dataclass, replace
from fractions import Fraction
from typing import Literal

from ..errors import PaperError
from ..lengths import MM_PER_INCH

LONGEST = Fraction(5080)
"""The longest side of a page, in mm: 14,400 units of 1/72 in, 200 in. ISO 32000-1, Annex C."""
LEAST = Fraction(90)
"""The shortest side of a paper, in mm. Our choice: on less there is no room for the bar that proves the print."""

Orientation = Literal["portrait", "landscape", "least"]
"""How sheets lie: upright, on their side, or whichever way takes fewer of them."""
_MOST_DECIMALS = 12
"""Our choice: a millionth of a micrometre; a length with more is no paper that anybody measured."""


@dataclass(frozen=True, slots=True)
class Paper:
    """One size of sheet, the same for every page of a file; or a roll. Millimetres, exact."""

    name: str
    """What it is asked for by: "letter", "roll-24in"; "custom" for a size that has no name."""
    width: Fraction
    height: Fraction
    """A roll has none of its own: there it is the longest that a page can be."""
    pwg: str | None = None
    """Its self-describing name after PWG 5101.1, "na_letter_8.5x11in"; None where it has none."""
    roll: bool = False

    @property
    def turned(self) -> Paper:
        """The same by a quarter of a turn."""
        return replace(self, width=self.height, height=self.width)

    @property
    def size(self) -> str:
        """"215.9 x 279.4 mm"."""
        return f"{float(self.width):g} x {float(self.height):g} mm"

    @property
    def shown(self) -> str:
        """What a sheet calls it, and can be read again: "letter", "A4", "letter or A4"; by its size where it is a roll
        or has no other name, "200 x 280 mm"."""
        if self.roll or self.name.startswith("custom"):
            return self.size
        large = self.name.startswith(("ansi", "arch"))
        words = self.name.split("-")
        return " ".join(
            word.upper() if large or word in ("iso", "jis") or any(map(str.isdigit, word)) else word for word in words
        )

    @property
    def said(self) -> str:
        """As a sentence has it: "letter paper", "letter or A4 paper", "roll paper 24 in wide"."""
        if self.roll:
            amount, unit = self.name.removeprefix("roll-")[:-2], self.name[-2:]
            return f"roll paper {amount} {unit} wide"
        return f"{self.shown} paper"


def sheet_of(width: Fraction, height: Fraction) -> Paper:
    """A sheet of a size of its own, in mm."""
    size = written_size(width, height)
    return Paper("custom", width, height, f"custom_{size}_{size}" if size else None)


def roll_of(width: Fraction) -> Paper:
    """A roll of that width, in mm; its page may be as long as a page can be.

    One width has one name: in inches where the tape has a mark for it, else in
    millimetres. The name can be read again, and gives the same width.
    """
    inches = width / MM_PER_INCH
    on_tape = inches.denominator & (inches.denominator - 1) == 0
    unit, amount = ("in", inches) if on_tape else ("mm", width)
    plain = decimal(amount)
    pwg = f"roll_{plain}{unit}_{plain}x0{unit}" if plain else None
    return Paper(f"roll-{plain or amount}{unit}", width, LONGEST, pwg, roll=True)


def written_size(width: Fraction, height: Fraction) -> str | None:
    """"8.5x11in" or "210x297mm", whichever is shorter; None where neither can be written exactly."""
    ways = []
    for unit, one in (("mm", Fraction(1)), ("in", MM_PER_INCH)):
        wide, high = decimal(width / one), decimal(height / one)
        if wide and high:
            ways.append(f"{wide}x{high}{unit}")
    return min(ways, key=len, default=None)


def decimal(number: Fraction) -> str | None:
    """"8.5": a positive number exactly, as a decimal; None where its decimals do not end."""
    for places in range(_MOST_DECIMALS + 1):
        scaled = number * 10**places
        if scaled.denominator == 1:
            whole, part = divmod(scaled.numerator, 10**places)
            return f"{whole}.{part:0{places}d}" if places else str(whole)
    return None


def check_limits(*sides: Fraction) -> None:
    """Refuses a side, in mm, that no page can have or that leaves no room. Raises PaperError."""
    for side in sides:
        if not LEAST <= side <= LONGEST:
            beyond = "is too short" if side < LEAST else "is longer than a page can be"
            raise PaperError(
                f"a side of {float(side):.6g} mm {beyond}; write sides from 90 mm (about 3 1/2 in) to 5080 mm (200 in)"
            )
