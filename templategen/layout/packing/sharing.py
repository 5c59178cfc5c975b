"""Sharing: every way of dealing blocks out to sheets, weighed at once."""

from __future__ import annotations

from collections.abc import Mapping
from typing import NamedTuple


class Shared(NamedTuple):
    """Blocks dealt out to sheets: each group is a set of blocks as the bits of a number."""

    groups: tuple[int, ...]
    room: int
    """How much of a run fits beside them, all sheets together."""


def share(count: int, room: Mapping[int, int]) -> dict[int, Shared]:
    """For each number of sheets that can hold ``count`` blocks the way that leaves most room for a run.

    ``room`` says for each group that one sheet holds how much of the run fits beside it.
    """
    best: list[dict[int, Shared]] = [{0: Shared((), 0)}]
    for members in range(1, 1 << count):
        lowest = members & -members
        found: dict[int, Shared] = {}
        part = members
        while part:
            if part & lowest and part in room:
                for sheets, shared in best[members ^ part].items():
                    total = shared.room + room[part]
                    if sheets + 1 not in found or total > found[sheets + 1].room:
                        found[sheets + 1] = Shared((*shared.groups, part), total)
            part = (part - 1) & members
        best.append(found)
    return best[-1]


def members_of(group: int) -> list[int]:
    """The blocks in a group, by number."""
    return [i for i in range(group.bit_length()) if group >> i & 1]
