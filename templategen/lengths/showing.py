"""Lengths shown the way a tape measure reads.

Each reading is rounded by itself, from the exact length, to the nearest
graduation; a tie goes away from zero, so that a length and its negative read
alike. What rounding took away is not hidden: "a hair over" is said where the
true length is more than the reading, "a hair under" where it is less (of a
negative length too: -1 17/32 in reads "−1 1/2 in, a hair under").
"""

from __future__ import annotations

from dataclasses import dataclass
from fractions import Fraction
from functools import lru_cache
from typing import Literal

from .length import Length, inches, millimetres

Units = Literal["inch", "metric"]

STEPS: dict[Units, tuple[Length, ...]] = {
    "inch": (inches("1/4"), inches("1/8"), inches("1/16"), inches("1/32")),
    "metric": (millimetres(5), millimetres(1), millimetres("1/2")),
}
"""The graduations a tape can have. Our choice: those that tapes and rules are sold with."""

USUAL_STEP: dict[Units, Length] = {"inch": inches("1/16"), "metric": millimetres(1)}


@dataclass(frozen=True, slots=True)
class Reading:
    """A length as read off a tape."""

    value: Length
    """What is shown: the nearest graduation."""
    number: str
    """"8 5/16" or "211"; a negative one begins with a true minus, "−"."""
    unit: Literal["in", "mm"]
    sign: Literal["", "+", "−"]
    """"+" where the true length is a hair over what is shown, "−" where it is a hair under."""

    @property
    def text(self) -> str:
        """"8 5/16 in, a hair over"."""
        return f"{self.plain}{self.remark}"

    @property
    def plain(self) -> str:
        """"8 5/16 in", with nothing said of what rounding took away."""
        return f"{self.number} {self.unit}"

    @property
    def remark(self) -> str:
        """", a hair over": what rounding took away, in words, to follow the reading; "" where it took nothing."""
        return {"": "", "+": ", a hair over", "−": ", a hair under"}[self.sign]

    @property
    def label(self) -> str:
        """"8 5/16 +": the number and the sign alone, as there is room for beside a mark."""
        return f"{self.number} {self.sign}".rstrip()


@dataclass(frozen=True, slots=True)
class Tape:
    """A tape measure: its unit and its finest graduation."""

    units: Units
    step: Length

    @classmethod
    def of(cls, units: Units, step: Length | None = None) -> Tape:
        """The tape for ``units``; ``step`` left out: 1/16 in or 1 mm.

        Raises ValueError for a step that no tape of these units has (:data:`STEPS`).
        """
        if step is None:
            step = USUAL_STEP[units]
        elif step not in STEPS[units]:
            raise ValueError(f"no tape in {units} units is graduated in {step.exact('mm')}")
        return cls(units, step)

    def read(self, length: Length) -> Reading:
        """The graduation nearest to ``length``."""
        return _read(self, length)

    def show(self, length: Length) -> str:
        """"8 5/16 in, a hair over"."""
        return self.read(length).text

    def show_both(self, length: Length) -> str:
        """"8 5/16 in, a hair over (211 mm)": the second rounded from the exact length, not from the first."""
        other = Tape.of("metric" if self.units == "inch" else "inch")
        return f"{self.show(length)} ({other.read(length).plain})"


@lru_cache(maxsize=1024)
def _read(tape: Tape, length: Length) -> Reading:
    """Remembered: the same few lengths are read for the plan, every template and the work order."""
    value = tape.step * _nearest_whole(length / tape.step)
    unit: Literal["in", "mm"] = "in" if tape.units == "inch" else "mm"
    number = mixed_number(value.inches) if unit == "in" else _decimal(value.mm)
    sign: Literal["", "+", "−"] = "+" if length > value else "−" if length < value else ""
    return Reading(value, number, unit, sign)


def mixed_number(number: Fraction) -> str:
    """"8 5/16", "5/16", "8" or "−8 5/16": a whole number and a fraction in lowest terms."""
    whole, rest = divmod(abs(number), 1)
    words = [str(whole)] if whole or not rest else []
    if rest:
        words.append(str(rest))
    return ("−" if number < 0 else "") + " ".join(words)


def _nearest_whole(number: Fraction) -> int:
    nearest = int(abs(number) + Fraction(1, 2))
    return -nearest if number < 0 else nearest


def _decimal(halves: Fraction) -> str:
    """A number of whole or half millimetres: "211", "211.5"."""
    whole, rest = divmod(abs(halves), 1)
    return ("−" if halves < 0 else "") + str(whole) + (".5" if rest else "")
