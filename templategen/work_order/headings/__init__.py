"""The work on each kind of heading, a module each and a line each in the table."""

from __future__ import annotations

from collections.abc import Mapping

from .back_loops import BACK_LOOPS
from .casing import CASING
from .eyelets import EYELETS
from .face import AnyHeading, HeadingWork
from .gathering_tape import GATHERING_TAPE
from .hooks import HOOKS
from .pleats import BOX_PLEATS, INVERTED_BOX_PLEATS, PINCH_PLEATS
from .rings import RINGS
from .tabs import TABS

HEADING_WORK: Mapping[str, AnyHeading] = {
    work.name: work
    for work in (
        CASING,
        BACK_LOOPS,
        TABS,
        RINGS,
        HOOKS,
        EYELETS,
        PINCH_PLEATS,
        BOX_PLEATS,
        INVERTED_BOX_PLEATS,
        GATHERING_TAPE,
    )
}
"""By style, as in a spec."""

__all__ = ["HEADING_WORK", "AnyHeading", "HeadingWork"]
