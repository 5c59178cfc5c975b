"""What each kind of heading needs, a module each and a line each in the table."""

from __future__ import annotations

from collections.abc import Mapping

from .back_loops import BACK_LOOPS
from .casing import CASING
from .eyelets import EYELETS
from .face import AnyNeeds, HeadingNeeds
from .gathering_tape import GATHERING_TAPE
from .pleats import BOX_PLEATS, INVERTED_BOX_PLEATS, PINCH_PLEATS
from .points import HOOKS, RINGS
from .tabs import TABS

HEADING_NEEDS: Mapping[str, AnyNeeds] = {
    needs.name: needs
    for needs in (
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

__all__ = ["HEADING_NEEDS", "AnyNeeds", "HeadingNeeds"]
