"""What each kind of hem needs, a module each and a line each in the table."""

from __future__ import annotations

from collections.abc import Mapping

from .double_fold import DOUBLE_FOLD, EQUAL_FOLD
from .face import AnyNeeds, HemNeeds
from .sewn_on import BORDER, FACED
from .single_fold import SINGLE_FOLD

HEM_NEEDS: Mapping[str, AnyNeeds] = {
    needs.name: needs
    for needs in (
        DOUBLE_FOLD,
        EQUAL_FOLD,
        SINGLE_FOLD,
        FACED,
        BORDER,
    )
}
"""By style, as in a spec."""

__all__ = ["HEM_NEEDS", "AnyNeeds", "HemNeeds"]
