"""One value of one field: its kind, its unit, its limits."""

from __future__ import annotations

import unicodedata
from decimal import Decimal
from fractions import Fraction
from typing import Any

from ..errors import Fault, LengthError
from ..lengths import NOTHING, Length, read_length
from ..lengths.showing import Units
from ..lengths.tokens import MOST_DIGITS
from ..lengths.units import Unit, length_of
from .about import MORE_THAN_NOTHING, Limit
from .catalogue import SpecField
from .quantities import Quantity, QuantityError, quantity_of, read_quantity
from .typed import as_typed

MOST_MARKS = 200
LONGEST_TITLE = 120
BARE_UNITS: dict[Units, Unit] = {"inch": "in", "metric": "mm"}
"""The unit of a number that is typed without one."""
_NAMES: dict[Units, str] = {"inch": "inches", "metric": "millimetres"}


class Wrong(Exception):
    """A value that its field does not take; the faults say why."""

    def __init__(self, *faults: Fault) -> None:
        super().__init__(*faults)
        self.faults = faults


class Undecided(Exception):
    """A bare number while ``units`` is missing or wrong: nothing can be said of it yet."""


def read_value(field: SpecField, value: Any, units: Units | None) -> Any:
    """``value`` as ``field`` takes it.

    Raises Wrong, or Undecided where the value is a bare number and ``units`` is
    None, since nobody has said in what unit.
    """
    match field.kind:
        case "length":
            return _length(field, field.path, value, units)
        case "lengths":
            return _lengths(field, value, units)
        case "count":
            return _count(field, value)
        case "choice":
            return _choice(field, value)
        case "switch":
            return _switch(field, value)
        case "text":
            return _text(field, value)
        case "quantity":
            return _quantity(field, value)


def example(field: SpecField, units: Units | None = None) -> str:
    """The field's value in the starting spec, as it stands in the file: ``"54 in"``."""
    sample = field.about.sample(units or "inch")
    if isinstance(sample, tuple):
        return f"[{', '.join(map(as_typed, sample))}]"
    return as_typed(sample)


def _lengths(field: SpecField, value: Any, units: Units | None) -> tuple[Length, ...]:
    if not isinstance(value, list | tuple):
        raise _wrong(field, value, f"not a list; write the lengths in brackets, {example(field, units)}")
    if len(value) > MOST_MARKS:
        raise _wrong(field, value, f"too many; write at most {MOST_MARKS}")
    lengths: list[Length] = []
    faults: list[Fault] = []
    undecided = False
    for number, item in enumerate(value, start=1):
        try:
            lengths.append(_length(field, f"{field.path}[{number}]", item, units))
        except Wrong as wrong:
            for fault in wrong.faults:
                faults.append(Fault(fault.field, fault.read, f"(mark {number} from the left) {fault.right}"))
        except Undecided:
            undecided = True
    if faults:
        raise Wrong(*faults)
    if undecided:
        raise Undecided
    return tuple(lengths)


def _length(field: SpecField, path: str, value: Any, units: Units | None) -> Length:
    bare_unit = BARE_UNITS[units] if units else None
    sample = example(field, units).strip("[]")
    meaning = field.about.meaning
    if isinstance(value, str):
        try:
            length, bare = _from_text(value, bare_unit)
        except LengthError as error:
            raise Wrong(Fault(path, as_typed(value), str(error))) from None
    elif isinstance(value, int | float | Decimal) and not isinstance(value, bool):
        number = _exact_number(value)
        if number is None:
            right = f"not a number to measure with; write {sample}, say"
            raise Wrong(Fault(path, as_typed(value), right))
        if bare_unit is None:
            raise Undecided
        length, bare = length_of(number, bare_unit), True
    else:
        raise Wrong(Fault(path, as_typed(value), f"not a length; write {meaning}, for example {sample}"))
    if complaint := _beyond(field, length):
        where = f" (a number without a unit is in {_NAMES[units]} here)" if bare and units else ""
        raise Wrong(Fault(path, as_typed(value), f"{complaint}, for example {sample}{where}"))
    return length


def _from_text(text: str, bare_unit: Unit | None) -> tuple[Length, bool]:
    """The length, and whether its unit had to be supplied. Raises LengthError or Undecided."""
    try:
        return read_length(text), False
    except LengthError:
        length = read_length(text, bare_unit or "mm")
    if bare_unit is None:
        raise Undecided
    return length, True


def _exact_number(value: int | float | Decimal) -> Fraction | None:
    """The number exactly as typed; None where it is infinite, no number, or absurdly long."""
    number = Decimal(str(value)) if isinstance(value, float) else value
    if isinstance(number, int):
        return Fraction(number) if abs(number) < 10**MOST_DIGITS else None
    if not number.is_finite():
        return None
    _, digits, exponent = number.as_tuple()
    assert isinstance(exponent, int)
    if len(digits) > MOST_DIGITS or not -MOST_DIGITS <= exponent <= MOST_DIGITS:
        return None
    return Fraction(number)


def _quantity(field: SpecField, value: Any) -> Quantity:
    """A number with a unit of its own: per cent, grammes per square metre, kilogrammes."""
    assert field.quantity is not None
    sample, meaning = example(field), field.about.meaning
    try:
        if isinstance(value, str):
            quantity = read_quantity(field.quantity, value)
        else:
            number = None
            if isinstance(value, int | float | Decimal) and not isinstance(value, bool):
                number = _exact_number(value)
            if number is None:
                raise _wrong(field, value, f"not a number and its unit; write {meaning}, for example {sample}")
            quantity = quantity_of(field.quantity, number)
    except QuantityError as error:
        raise _wrong(field, value, f"{error}; write {meaning}, for example {sample}") from None
    if complaint := _beyond(field, quantity):
        raise _wrong(field, value, f"{complaint}, for example {sample}")
    return quantity


def _beyond(field: SpecField, value: Length | int | Quantity) -> str:
    """What is wrong with a value beyond its field's limits and what is within; "" where it is."""
    least, most = field.about.least, field.about.most
    if least is None or most is None:
        return ""
    within = f"write {field.about.meaning}, from {least.said} to {most.said}"
    if least is MORE_THAN_NOTHING:
        within = f"write {field.about.meaning}, at most {most.said}"
        if value == least.value:
            return f"no length at all, where only a positive one makes sense; {within}"
    if _less(value, least):
        if isinstance(value, Length) and value < NOTHING <= least.value:  # type: ignore[operator]
            return f"a negative length, where only a positive one makes sense; {within}"
        return f"less than {least.said}; {within}"
    if _less(most.value, Limit(value, "")):
        return f"more than {most.said}; {within}"
    return ""


def _less(value: Length | int | Quantity, limit: Limit) -> bool:
    return value < limit.value  # type: ignore[operator]


def _count(field: SpecField, value: Any) -> int:
    if isinstance(value, bool) or not isinstance(value, int):
        meaning = field.about.meaning
        raise _wrong(field, value, f"not a whole number; write {meaning}, for example {example(field)}")
    if complaint := _beyond(field, value):
        raise _wrong(field, value, f"{complaint}, for example {example(field)}")
    return value


def _choice(field: SpecField, value: Any) -> str:
    if isinstance(value, str) and value in field.choices:
        return value
    choices = [as_typed(choice) for choice in field.choices]
    listed = " or ".join(filter(None, (", ".join(choices[:-1]), choices[-1])))
    raise _wrong(field, value, f"not known here; write {listed}")


def _switch(field: SpecField, value: Any) -> bool:
    if isinstance(value, bool):
        return value
    meaning = field.about.meaning
    raise _wrong(field, value, f"neither true nor false; write true for {meaning}, else false, without quotation marks")


def _text(field: SpecField, value: Any) -> str:
    if not isinstance(value, str):
        raise _wrong(field, value, f"not a text; write it in quotation marks, for example {example(field)}")
    if not value.strip():
        raise _wrong(field, value, f"empty; write {field.about.meaning}, for example {example(field)}")
    if len(value) > LONGEST_TITLE:
        raise _wrong(field, value, f"{len(value)} characters; write at most {LONGEST_TITLE}")
    # Control characters, halves of a surrogate pair, line and paragraph separators.
    if any(unicodedata.category(character) in ("Cc", "Cs", "Zl", "Zp", "Cn") for character in value):
        raise _wrong(field, value, "a line break or a character that cannot be printed; write one plain line")
    return value.strip()


def _wrong(field: SpecField, value: Any, right: str) -> Wrong:
    return Wrong(Fault(field.path, as_typed(value), right))
