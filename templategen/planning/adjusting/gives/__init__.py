"""What each kind of heading can give, a module each and a line each in the table.

A heading that is not in it has nothing to move: only its hem can be folded anew.
"""

from __future__ import annotations

from collections.abc import Mapping

from .back_loops import BACK_LOOPS
from .face import HeadingGive

GIVES: Mapping[str, HeadingGive] = {
    give.style: give
    for give in (
        BACK_LOOPS,
    )
}  # fmt: skip
"""By the heading's style."""

__all__ = ["GIVES", "HeadingGive"]
