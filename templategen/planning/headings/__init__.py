"""Headings: what holds a panel to its rod, a module each and a line each in the table.

A new kind of heading is a new module with a :class:`HeadingKind` in it, and
its line here.
"""

from __future__ import annotations

from collections.abc import Mapping

from .back_loops import BACK_LOOPS
from .casing import CASING
from .eyelets import EYELETS
from .face import AnyHeading, Hang, HangTerm, HeadingKind, Tube
from .pleats import BOX_PLEATS, INVERTED_BOX_PLEATS, PINCH_PLEATS
from .points import HOOKS, RINGS
from .tabs import TABS
from .tape import GATHERING_TAPE

HEADINGS: Mapping[str, AnyHeading] = {
    kind.name: kind
    for kind in (
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
"""Every kind of heading, by its style in a spec."""

__all__ = ["HEADINGS", "AnyHeading", "Hang", "HangTerm", "HeadingKind", "Tube"]
