"""The lines that panels hang to: floor, sill, apron, radiator; what each is called, and how far from it is usual."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass

from ..lengths import Length
from ..spec import Spec
from .choices import APRON_RANGE, CLEARANCE_RANGE, RADIATOR_RANGE, SILL_RANGE


@dataclass(frozen=True, slots=True)
class Line:
    """One kind of line."""

    name: str
    """As it stands before "line" and "mark": "floor"."""
    the: str
    """The thing itself, "the lower edge of the apron"."""
    usual: tuple[Length, Length]
    """The least and the most that a panel usually ends above it; negative below it."""

    @property
    def The(self) -> str:
        return self.the[0].upper() + self.the[1:]

    @property
    def Name(self) -> str:
        return self.name.capitalize()


LINES: Mapping[str, Line] = {
    line.name: line
    for line in (
        Line("floor", "the floor", CLEARANCE_RANGE),
        Line("sill", "the sill", SILL_RANGE),
        Line("apron", "the lower edge of the apron", APRON_RANGE),
        Line("radiator", "the top of the radiator", RADIATOR_RANGE),
    )
}
"""By ``drop.to``."""


def line_of(spec: Spec) -> Line:
    """What the panels of this job hang to."""
    return LINES[spec.drop.to]
