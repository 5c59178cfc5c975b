"""Quantities that are no lengths: a share in per cent, the weight of cloth, a load, how many times as full.

Each is exact, and written as a number and its unit. The units are exact too:
1 lb = 0.45359237 kg and 1 yd = 0.9144 m (1959 agreement, NBS Circular 572, addendum), 1 lb = 16 oz.
"""

from __future__ import annotations

import re
from dataclasses import dataclass
from fractions import Fraction
from typing import ClassVar, TypeVar

from ..errors import LengthError
from ..lengths import read_length

_OUNCE = Fraction("453.59237") / 16
_SQUARE_YARD = Fraction("0.9144") ** 2
_PART = re.compile(r"(?P<number>[^a-z%×]+)(?P<unit>[a-z%×][a-z%×/².\s]*)?")
_SPELLINGS = (
    (r"\bper\b", "/"), (r"\bsquare\b", "sq"), (r"\bmet(re|er)s?\b", "m"), (r"\byards?\b", "yd"),
    (r"\bsq ?(m|yd)\b", r"\1²"), (r"\b(lb|kg|kilo|kilogram|kilogramme|gram|gramme|ounce|pound|time)s\b", r"\1"),
)  # fmt: skip
_NO_NUMBER = "no number that can be read for certain stands before its unit"
_MOST = 60
"""Characters; the longest way to write one takes about thirty."""


class QuantityError(ValueError):
    """A text that is no quantity of its kind, or not for certain; the message says what is wrong with it."""


@dataclass(frozen=True, slots=True, order=True)
class Quantity:
    """A number of one base unit, exactly."""

    UNITS: ClassVar[dict[str, Fraction]] = {}
    """How much of the base unit each unit is, by its spelling as :func:`_settled` leaves it."""
    BARE: ClassVar[str] = ""
    """What a number without a unit is in; "" where it is refused."""
    DOUBTFUL: ClassVar[dict[str, str]] = {}
    """Units that are refused, and why."""
    PAIRS: ClassVar[tuple[list[Fraction], ...]] = ()
    """Two units that may be written one after the other, as pounds and ounces are."""

    value: Fraction

    def __post_init__(self) -> None:
        if type(self.value) is not Fraction:
            object.__setattr__(self, "value", Fraction(self.value))


@dataclass(frozen=True, slots=True, order=True)
class Percent(Quantity):
    """A share, in per cent."""

    UNITS: ClassVar = {"%": Fraction(1), "/cent": Fraction(1), "percent": Fraction(1), "pct": Fraction(1)}
    BARE: ClassVar = "%"

    @property
    def share(self) -> Fraction:
        """Of one: 3 per cent is 3/100."""
        return self.value / 100


@dataclass(frozen=True, slots=True, order=True)
class ClothWeight(Quantity):
    """The weight of cloth, in grammes per square metre."""

    UNITS: ClassVar = {
        "g/m²": Fraction(1), "gsm": Fraction(1), "gram/m²": Fraction(1),
        "gramme/m²": Fraction(1), "kg/m²": Fraction(1000),
        "oz/yd²": _OUNCE / _SQUARE_YARD, "ounce/yd²": _OUNCE / _SQUARE_YARD,
    }  # fmt: skip
    _RUNNING: ClassVar = "a square yard and a running yard weigh different things; write oz/yd2 if it is a square yard"
    DOUBTFUL: ClassVar = {
        "oz": _RUNNING, "ounce": _RUNNING, "oz/yd": _RUNNING, "ounce/yd": _RUNNING,
        "g": "of a square metre or a running metre? Write g/m2 if it is a square metre",
        "g/m": "a running metre says nothing without the cloth's width; write what a square metre weighs, in g/m²",
    }  # fmt: skip


@dataclass(frozen=True, slots=True, order=True)
class Mass(Quantity):
    """A load, in kilogrammes."""

    UNITS: ClassVar = {
        "kg": Fraction(1), "kilo": Fraction(1), "kilogram": Fraction(1), "kilogramme": Fraction(1),
        "g": Fraction(1, 1000), "gram": Fraction(1, 1000), "gramme": Fraction(1, 1000),
        "lb": 16 * _OUNCE / 1000, "pound": 16 * _OUNCE / 1000, "oz": _OUNCE / 1000, "ounce": _OUNCE / 1000,
    }  # fmt: skip

    PAIRS: ClassVar = ([16 * _OUNCE / 1000, _OUNCE / 1000], [Fraction(1), Fraction(1, 1000)])


@dataclass(frozen=True, slots=True, order=True)
class Times(Quantity):
    """How many times as wide the cloth is as what it covers."""

    UNITS: ClassVar = {"time": Fraction(1), "x": Fraction(1), "×": Fraction(1)}
    BARE: ClassVar = "time"
    _TWO: ClassVar = (
        "said of fullness, 100 % is as wide as the rod to some (200 % is twice, UFGS-12491N) and twice as wide to "
        "others; write how many times, for example 2 times"
    )
    DOUBTFUL: ClassVar = {"%": _TWO, "/cent": _TWO, "percent": _TWO, "pct": _TWO}


Q = TypeVar("Q", bound=Quantity)


def read_quantity(kind: type[Q], text: str) -> Q:
    """The quantity that ``text`` writes. Raises QuantityError."""
    settled = " ".join(text.split())
    if not settled:
        raise QuantityError("empty")
    if len(settled) > _MOST:
        raise QuantityError(f"{len(settled)} characters; a number and its unit take fewer")
    parts = _parts(settled)
    units = [unit for _, unit in parts]
    if len(parts) > 1 and [kind.UNITS.get(_settled(unit)) for unit in units] not in kind.PAIRS:
        raise QuantityError("more than one number and unit; write one")
    numbers = [_number(number) for number, _ in parts]
    values = [number * _factor(kind, unit, number) for number, unit in zip(numbers, units, strict=True)]
    if len(values) == 2 and not 0 <= values[1] < kind.UNITS[_settled(units[0])]:
        raise QuantityError(f"{units[1]} are as many as one {units[0]} or more; write one number and its unit")
    return kind(sum(values, Fraction(0)))


def quantity_of(kind: type[Q], number: Fraction) -> Q:
    """A number that was typed without a unit. Raises QuantityError where that is not certain."""
    return kind(number * _factor(kind, "", number))


def _parts(text: str) -> list[tuple[str, str]]:
    """Each number with its unit: "2 lb 4 oz" is two. A square is written ², so that no unit has a digit in it."""
    text = re.sub(r"(?<=[md])\^?2(?![0-9])", "²", text.lower())
    found = []
    at = 0
    while at < len(text):
        match = _PART.match(text, at)
        if match is None:
            raise QuantityError(_NO_NUMBER)
        found.append((match["number"].strip(), (match["unit"] or "").strip()))
        at = match.end()
    return found


def _settled(unit: str) -> str:
    """A unit in one spelling: "grammes per square metre" and "g / m²" both become what UNITS knows."""
    unit = unit.replace(".", "")
    for pattern, spelt in _SPELLINGS:
        unit = re.sub(pattern, spelt, unit)
    return unit.replace(" ", "")


def _factor(kind: type[Quantity], unit: str, value: Fraction) -> Fraction:
    if not unit:
        if not kind.BARE:
            raise QuantityError("a number without a unit")
        if kind is Percent and 0 < abs(value) < 1:
            raise QuantityError(f"{float(value):g} could be a share or per cent; write {float(100 * value):g} % or "
                                f"{float(value):g} %")  # fmt: skip
        unit = kind.BARE
    settled = _settled(unit)
    if settled in kind.DOUBTFUL:
        raise QuantityError(kind.DOUBTFUL[settled])
    if settled not in kind.UNITS:
        raise QuantityError(f"“{unit[:20]}” is not a unit of it known here")
    return kind.UNITS[settled]


def _number(text: str) -> Fraction:
    """A number in any form that a length's is read in: 6.5, 6,5, 6 1/2, 6½."""
    try:
        return read_length(f"{text} mm").mm
    except LengthError as error:
        if str(error).startswith("its comma"):
            raise QuantityError(str(error)) from None
        raise QuantityError(_NO_NUMBER) from None
