"""The words of each kind of hem, a module each and a line each in the table."""

from __future__ import annotations

from collections.abc import Mapping

from .double_fold import DOUBLE_FOLD
from .face import AnyWords, HemWords

HEM_WORDS: Mapping[str, AnyWords] = {
    words.name: words
    for words in (
        DOUBLE_FOLD,
    )
}  # fmt: skip
"""By style, as in a spec."""

__all__ = ["HEM_WORDS", "AnyWords", "HemWords"]
