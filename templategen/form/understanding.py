"""What was understood of what was typed, field by field, whatever is wrong with the rest."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from fractions import Fraction
from typing import Any

from ..errors import LengthError
from ..lengths import Length, Tape
from ..lengths.showing import Units
from ..papers import paper_named
from ..spec import FIELDS, SpecField
from ..spec.jobs.reading import KEPT, WINDOW
from ..spec.quantities import ClothWeight, Mass, Percent, Quantity, Times
from ..spec.values import Undecided, Wrong, read_value
from .entries import value_at

_OUNCES, _POUND = ClothWeight.UNITS["oz/yd²"], Mass.UNITS["lb"]
"""Grammes per square metre that are one ounce per square yard; kilogrammes that are one pound."""


def understood(tables: Mapping[str, Any]) -> dict[str, str]:
    """By path as a fault names it, ``window[1].panel.width``: each length and quantity that could be read, said again.

    A length is said in the units that numbers are shown in, and in the others.
    """
    units = tables.get("units")
    known: Units | None = units if units in ("inch", "metric") else None
    tape = _tape(tables, known)
    said = dict(_read(tables, "", FIELDS, known, tape))
    said |= _read(tables, "", KEPT, known, tape)
    windows = tables.get(WINDOW, [])
    for number, entry in enumerate(windows if isinstance(windows, list) else [], 1):
        if isinstance(entry, Mapping):
            said |= _read(entry, f"{WINDOW}[{number}].", FIELDS, known, tape)
    return said


def _tape(tables: Mapping[str, Any], units: Units | None) -> Tape:
    step = tables.get("tape_step")
    try:
        return Tape.of(units or "inch", read_value(FIELDS["tape_step"], step, units) if step is not None else None)
    except (Wrong, Undecided, LengthError, ValueError):
        return Tape.of(units or "inch")


def _read(
    tables: Mapping[str, Any], before: str, fields: Mapping[str, SpecField], units: Units | None, tape: Tape
) -> Iterator[tuple[str, str]]:
    for path, field in fields.items():
        value = value_at(tables, path)
        if value is None:
            continue
        if field.kind == "lengths" and isinstance(value, list):
            for number, each in enumerate(value, 1):
                if said := _said(field, [each], units, tape):
                    yield f"{before}{path}[{number}]", said
        elif said := _said(field, value, units, tape):
            yield f"{before}{path}", said


def _said(field: SpecField, value: Any, units: Units | None, tape: Tape) -> str:
    """"" for what could not be read, and for what needs no saying again."""
    if field.kind not in ("length", "lengths", "quantity") and field.path != "paper.name":
        return ""
    try:
        read = read_value(field, value, units)
    except (Wrong, Undecided):
        return ""
    if isinstance(read, tuple):
        (read,) = read
    if isinstance(read, Length):
        return tape.show_both(read)
    if isinstance(read, Quantity):
        return said_of_quantity(read)
    paper = paper_named(read)
    return paper.said if paper else ""


def said_of_quantity(quantity: Quantity) -> str:
    """A quantity in the units that people have for it: "220 g/m² (6.5 oz/yd²)"."""
    value = quantity.value
    match quantity:
        case Percent():
            return f"{_short(value)} %"
        case Times():
            return f"{_short(value)} times as wide"
        case ClothWeight():
            return f"{_short(value)} g/m² ({_short(value / _OUNCES)} oz/yd²)"
        case Mass():
            return f"{_short(value)} kg ({_short(value / _POUND)} lb)"
    raise TypeError(type(quantity).__name__)


def _short(value: Fraction) -> str:
    """Three figures of a number; none of a whole number is lost."""
    if value.denominator == 1:
        return f"{value.numerator}"
    return f"{float(value):.3g}" if abs(value) < 1000 else f"{float(value):.0f}"
