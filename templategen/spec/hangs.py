"""How a panel hangs, as it is said after trying it: "left 1/4 in low, middle good, right 1/8 in high"."""

from __future__ import annotations

import re
from dataclasses import dataclass
from typing import Literal

from ..errors import Fault, LengthError, Refusal
from ..lengths import NOTHING, Length, read_length
from ..lengths.showing import Units
from .table import MOST_60_M
from .typed import quoted
from .values import BARE_UNITS

MOST_PLACES = 100
"""Our choice: nobody measures a hem at more."""
MOST_TEXT = 4000
FARTHEST_OFF = MOST_60_M

Side = Literal["left", "middle", "right"]
_SIDES: dict[str, Side] = {"left": "left", "middle": "middle", "centre": "middle", "center": "middle", "right": "right"}
_ENTRY = re.compile(
    r"""(?:at\s+)?(?:the\s+)?
    (?: (?P<side>left|middle|centre|center|right)(?:\s+(?:edge|side|end))?
      | (?:loop|tab|eyelet|ring|hook|pleat|mark)\s+(?P<mark>\d{1,4})
      | (?P<in>[^;]*?\S)\s+from\s+(?:the\s+)?left(?:\s+(?:edge|side|end))?
    )?\s*:?\s*
    (?: (?P<good>good|fine|ok|true)
      | (?P<off>[^;]*?\S)\s*(?:too\s+)?(?P<way>low|high)
    )""",
    re.VERBOSE | re.IGNORECASE,
)
_ENDS = "|".join(rf"(?<=\b{word})" for word in ("low", "high", "good", "fine", "ok", "true"))
_BEGINS = r"(?:at|the|left|middle|centre|center|right|loop|tab|eyelet|ring|hook|pleat|mark)\b"
_BETWEEN = re.compile(rf"(?:{_ENDS})\s*(?:,|\band\b)|,\s*(?={_BEGINS})|;|\n", re.IGNORECASE)
"""Between two readings: a comma only where one has come to its end or another begins, since others stand in
numbers."""
SAMPLE = '"left 1/4 in low, middle good, right 1/8 in high"'
_FORM = (
    f'write where, how far and which way, {SAMPLE}; where is left, middle or right as seen from the front, "20 in from '
    'the left", or the number of a mark, "loop 3"; what hangs right is "good"'
)


@dataclass(frozen=True, slots=True)
class HangReading:
    """How far the hem is off at one place."""

    low: Length
    """How far it hangs below where it is wanted; negative where it hangs above."""
    side: Side | None = None
    """As seen from the front."""
    mark: int | None = None
    """The number of a mark along the heading."""
    from_left: Length | None = None
    """Distance from the left edge, as seen from the front. Without any of the three: all along."""
    typed: str = ""


def read_hangs(text: str, units: Units, called: str = "--hangs") -> tuple[HangReading, ...]:
    """The readings that ``text`` says; a number without a unit is in that of ``units``.

    Raises Refusal, with a fault for each reading that is not understood for certain.
    """
    if len(text) > MOST_TEXT:
        raise Refusal(Fault(called, quoted(text), f"{len(text)} characters; write at most {MOST_TEXT}"))
    parts = [part.strip() for part in _BETWEEN.split(text) if part.strip()]
    if not parts:
        raise Refusal(Fault(called, quoted(text), f"nothing is said; {_FORM}"))
    if len(parts) > MOST_PLACES:
        raise Refusal(Fault(called, quoted(text), f"{len(parts)} places; write at most {MOST_PLACES}"))
    readings: list[HangReading] = []
    faults: list[Fault] = []
    for part in parts:
        try:
            readings.append(_reading(part, units))
        except LengthError as error:
            faults.append(Fault(called, quoted(part), str(error)))
    if faults:
        raise Refusal(*faults)
    return tuple(readings)


def _reading(part: str, units: Units) -> HangReading:
    """One reading. Raises LengthError, which says what would be right."""
    found = _ENTRY.fullmatch(part)
    if found is None:
        if re.search(r"\bright\s*$", part, re.IGNORECASE):
            raise LengthError(f'"right" is a side here; write "good" for what hangs right. {_FORM}')
        raise LengthError(f"not understood; {_FORM}")
    low = NOTHING
    if found["off"]:
        low = _length(found["off"], units)
        if low.mm < 0:
            raise LengthError("a negative length; write which way it is off, low or high")
        if low > FARTHEST_OFF.value:  # type: ignore[operator]
            raise LengthError(f"more than {FARTHEST_OFF.said}")
        low = low if found["way"].lower() == "low" else -low
    side = _SIDES[found["side"].lower()] if found["side"] else None
    mark = int(found["mark"]) if found["mark"] else None
    from_left = _length(found["in"], units) if found["in"] else None
    return HangReading(low, side, mark, from_left, part)


def _length(text: str, units: Units) -> Length:
    return read_length(text.strip(), BARE_UNITS[units])
