"""Hems: how the bottom edge is finished, a module each and a line each in the table.

A new kind of hem is a new module with a :class:`HemKind` in it, and its line here.
"""

from __future__ import annotations

from collections.abc import Mapping

from .double_fold import DOUBLE_FOLD
from .equal_fold import EQUAL_FOLD
from .face import AnyHem, HemKind
from .sewn_on import BORDER, FACED
from .single_fold import SINGLE_FOLD

HEMS: Mapping[str, AnyHem] = {
    kind.name: kind
    for kind in (
        DOUBLE_FOLD,
        EQUAL_FOLD,
        SINGLE_FOLD,
        FACED,
        BORDER,
    )
}
"""Every kind of hem, by its style in a spec."""

__all__ = ["HEMS", "AnyHem", "HemKind"]
