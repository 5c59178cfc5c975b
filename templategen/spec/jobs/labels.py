"""Short names that tell windows from one another, on paper and in the names of files."""

from __future__ import annotations

import re
from collections.abc import Sequence


def slug(text: str) -> str:
    """The letters and figures of a text, for telling texts apart and for files: "east-window".

    Two texts that differ only in capitals, blanks or marks have one slug.
    """
    return "-".join(re.findall(r"[^\W_]+", text.casefold()))


def labels(named: Sequence[tuple[str, str]]) -> list[str]:
    """The label of each window, from (name, room): the shortest way in which no two are alike."""
    ways = (
        [name for name, _ in named],
        [f"{name} ({room})" if room else name for name, room in named],
        [f"window {number}" for number in range(1, len(named) + 1)],
    )
    return next(way for way in ways if len({slug(label) for label in way}) == len(way))
