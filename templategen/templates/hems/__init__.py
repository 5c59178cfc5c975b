"""The words of each kind of hem, a module each and a line each in the table."""

from __future__ import annotations

from collections.abc import Mapping

from .double_fold import DOUBLE_FOLD
from .equal_fold import EQUAL_FOLD
from .face import AnyWords, HemWords
from .sewn_on import BORDER, FACED
from .single_fold import SINGLE_FOLD

HEM_WORDS: Mapping[str, AnyWords] = {
    words.name: words
    for words in (
        DOUBLE_FOLD,
        EQUAL_FOLD,
        SINGLE_FOLD,
        FACED,
        BORDER,
    )
}
"""By style, as in a spec."""

__all__ = ["HEM_WORDS", "AnyWords", "HemWords"]
