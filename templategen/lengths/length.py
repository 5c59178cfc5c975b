"""A length: exact, with its unit settled once and for all."""

from __future__ import annotations

from dataclasses import dataclass
from fractions import Fraction
from typing import overload

MM_PER_INCH = Fraction(127, 5)
"""1 in = 25.4 mm exactly: the 1959 agreement, NBS Circular 572, addendum."""


@dataclass(frozen=True, slots=True, order=True)
class Length:
    """A length, held as an exact number of millimetres.

    Lengths add, subtract and compare with lengths; they are multiplied and
    divided by numbers; a length over a length is a number.
    """

    mm: Fraction

    def __post_init__(self) -> None:
        if type(self.mm) is not Fraction:
            object.__setattr__(self, "mm", Fraction(self.mm))

    @property
    def inches(self) -> Fraction:
        """The same length as an exact number of inches."""
        return self.mm / MM_PER_INCH

    def exact(self, unit: str) -> str:
        """The length with nothing rounded, as one fraction of ``unit`` ("in" or "mm"): "103/16 in"."""
        number = self.inches if unit == "in" else self.mm
        return f"{number} {unit}"

    def __add__(self, other: Length) -> Length:
        return Length(self.mm + other.mm)

    def __sub__(self, other: Length) -> Length:
        return Length(self.mm - other.mm)

    def __mul__(self, factor: int | Fraction) -> Length:
        return Length(self.mm * factor)

    __rmul__ = __mul__

    @overload
    def __truediv__(self, other: Length) -> Fraction: ...
    @overload
    def __truediv__(self, other: int | Fraction) -> Length: ...
    def __truediv__(self, other: Length | int | Fraction) -> Fraction | Length:
        if isinstance(other, Length):
            return self.mm / other.mm
        return Length(self.mm / other)

    def __floordiv__(self, other: Length) -> int:
        return self.mm // other.mm

    def __neg__(self) -> Length:
        return Length(-self.mm)

    def __abs__(self) -> Length:
        return Length(abs(self.mm))

    def __bool__(self) -> bool:
        return bool(self.mm)


NOTHING = Length(Fraction(0))


def inches(number: int | str | Fraction) -> Length:
    """A length of so many inches, from an exact number: ``inches("3/8")``."""
    return Length(Fraction(number) * MM_PER_INCH)


def millimetres(number: int | str | Fraction) -> Length:
    """A length of so many millimetres, from an exact number."""
    return Length(Fraction(number))
