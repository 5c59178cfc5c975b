"""What each kind of heading can give, a module each and a line each in the table.

A heading that is not in it has nothing to move: only its hem can be folded anew.
"""

from __future__ import annotations

from collections.abc import Mapping

from .back_loops import BACK_LOOPS
from .carried import HOOKS, RINGS
from .casing import CASING
from .face import HeadingGive
from .tabs import TABS

GIVES: Mapping[str, HeadingGive] = {
    give.style: give
    for give in (
        BACK_LOOPS,
        CASING,
        TABS,
        RINGS,
        HOOKS,
    )
}
"""By the heading's style."""

__all__ = ["GIVES", "HeadingGive"]
