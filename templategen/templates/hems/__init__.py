"""What is written on the templates of each kind of hem, a module each and a line each in the table."""

from __future__ import annotations

from collections.abc import Mapping

from .double_fold import DOUBLE_FOLD
from .equal_fold import EQUAL_FOLD
from .face import AnyCaptions, HemCaptions
from .sewn_on import BORDER, FACED
from .single_fold import SINGLE_FOLD

HEM_CAPTIONS: Mapping[str, AnyCaptions] = {
    captions.name: captions
    for captions in (
        DOUBLE_FOLD,
        EQUAL_FOLD,
        SINGLE_FOLD,
        FACED,
        BORDER,
    )
}
"""By style, as in a spec."""

__all__ = ["HEM_CAPTIONS", "AnyCaptions", "HemCaptions"]
