"""The work on each kind of hem, a module each and a line each in the table."""

from __future__ import annotations

from collections.abc import Mapping

from .double_fold import DOUBLE_FOLD
from .equal_fold import EQUAL_FOLD
from .face import AnyHem, HemWork
from .sewn_on import BORDER, FACED
from .single_fold import SINGLE_FOLD

HEM_WORK: Mapping[str, AnyHem] = {
    work.name: work
    for work in (
        DOUBLE_FOLD,
        EQUAL_FOLD,
        SINGLE_FOLD,
        FACED,
        BORDER,
    )
}
"""By style, as in a spec."""

__all__ = ["HEM_WORK", "AnyHem", "HemWork"]
