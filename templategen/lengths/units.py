"""The units of length, and the one place where Pint is asked to convert.

Only a number that is already exact and a unit that is already known come this
far: what people type is read in :mod:`.reading` and never shown to Pint, which
would read "1 3/8 inch" as 3/8 in and would work out "9**9**9" to the last digit.
"""

from __future__ import annotations

from fractions import Fraction
from functools import cache
from typing import Any, Literal

from .length import Length

Unit = Literal["in", "ft", "yd", "mm", "cm", "m"]

INCH_UNITS: tuple[Unit, ...] = ("yd", "ft", "in")
"""Largest first, the order in which a length in several units is written."""
METRIC_UNITS: tuple[Unit, ...] = ("m", "cm", "mm")

_DEFINITIONS = (
    "millimetre = [length] = mm",
    "centimetre = 10 * millimetre = cm",
    "metre = 100 * centimetre = m",
    "inch = 127/5 * millimetre = in",  # 25.4 mm exactly: NBS Circular 572, addendum, 1959
    "foot = 12 * inch = ft",
    "yard = 3 * foot = yd",
)


def length_of(amount: Fraction, unit: Unit) -> Length:
    """``amount`` of ``unit``, exactly."""
    return Length(amount * _millimetres_in(unit))


@cache
def _millimetres_in(unit: Unit) -> Fraction:
    factor: Fraction = _registry().Quantity(Fraction(1), unit).to("mm").magnitude
    return factor


@cache
def _registry() -> Any:  # Pint's registry is generic in a way that says nothing here
    # Imported late: it takes a quarter of a second, and a plan made from code needs none of it.
    from pint import UnitRegistry

    registry: Any = UnitRegistry(None, non_int_type=Fraction)
    for definition in _DEFINITIONS:
        registry.define(definition)
    return registry
