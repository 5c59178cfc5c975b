"""What is said about a field of the spec, beside its type, so that one table serves every face.

The reader takes its limits from here, the starting spec its comments and its
values, the questions their wording, and the form all of these.
"""

from __future__ import annotations

from dataclasses import dataclass

from ..lengths import NOTHING, Length
from ..lengths.showing import Units
from .quantities import Quantity


@dataclass(frozen=True, slots=True)
class Limit:
    """The least or the most that a field takes."""

    value: Length | int | Quantity
    said: str
    """The limit as a message says it, "100 mm (about 4 in)"."""


MORE_THAN_NOTHING = Limit(NOTHING, "more than nothing")
"""The least of most lengths; the one limit that is not itself allowed."""
NOTHING_OR_MORE = Limit(NOTHING, "0")


@dataclass(frozen=True, slots=True)
class About:
    """The meaning of one field, how to measure it, and what it can be."""

    meaning: str
    """What it is, so that it can follow "write": "the finished width, side hem to side hem"."""
    inch: str | int | bool | tuple[str, ...]
    """Its value in the starting spec in inch units, as it is typed."""
    metric: str | int | bool | tuple[str, ...]
    """The same in metric units."""
    measure: str = ""
    """How to measure it or choose it, in whole sentences."""
    left_out: str = ""
    """What happens where an optional field is left out."""
    least: Limit | None = None
    most: Limit | None = None
    asked: bool = True
    """Whether the starting spec has it as a value, and it is asked for; not only as a comment."""

    def sample(self, units: Units) -> str | int | bool | tuple[str, ...]:
        """Its value in the starting spec."""
        return self.inch if units == "inch" else self.metric
