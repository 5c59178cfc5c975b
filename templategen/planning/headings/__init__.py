"""Headings: what holds a panel to its rod, a module each and a line each in the table.

A new kind of heading is a new module with a :class:`HeadingKind` in it, and
its line here.
"""

from __future__ import annotations

from collections.abc import Mapping

from .back_loops import BACK_LOOPS
from .casing import CASING
from .face import AnyHeading, Hang, HangTerm, HeadingKind, Tube
from .points import HOOKS, RINGS
from .tabs import TABS

HEADINGS: Mapping[str, AnyHeading] = {
    kind.name: kind
    for kind in (
        CASING,
        BACK_LOOPS,
        TABS,
        RINGS,
        HOOKS,
    )
}
"""Every kind of heading, by its style in a spec."""

__all__ = ["HEADINGS", "AnyHeading", "Hang", "HangTerm", "HeadingKind", "Tube"]
