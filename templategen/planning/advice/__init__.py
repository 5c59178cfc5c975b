"""What looks wrong with the job, and the number that would put it right: a module for each part of it."""

from __future__ import annotations

from collections.abc import Iterable

from ..figures import Level, Notice
from .drop import drop_notices, hang_notices
from .fullness import fullness_notices
from .offcut import offcut_notices
from .old_hem import old_hem_notices
from .old_holes import old_holes_notices

_ORDER: dict[Level, int] = {"stop": 0, "warning": 1, "note": 2}


def worst_first(notices: Iterable[Notice]) -> tuple[Notice, ...]:
    """Stops, then warnings, then notes; within each in the order of the work."""
    return tuple(sorted(notices, key=lambda notice: _ORDER[notice.level]))


__all__ = [
    "drop_notices",
    "fullness_notices",
    "hang_notices",
    "offcut_notices",
    "old_hem_notices",
    "old_holes_notices",
    "worst_first",
]
