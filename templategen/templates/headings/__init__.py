"""The words of each kind of heading, a module each and a line each in the table."""

from __future__ import annotations

from collections.abc import Mapping

from .back_loops import BACK_LOOPS
from .casing import CASING
from .face import AnyWords, HeadingWords
from .gathering_tape import GATHERING_TAPE

HEADING_WORDS: Mapping[str, AnyWords] = {
    words.name: words
    for words in (
        CASING,
        BACK_LOOPS,
        GATHERING_TAPE,
    )
}
"""By style, as in a spec."""

__all__ = ["HEADING_WORDS", "AnyWords", "HeadingWords"]
