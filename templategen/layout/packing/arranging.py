"""Arranging: blocks on one sheet, so that the most of a run fits into what they leave free."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from math import inf
from typing import NamedTuple

from .rectangles import Free, Size, cuts

MOST_TRIED = 400
"""Arrangements of one sheet that are tried before the best so far will do: our choice, a few milliseconds."""
_ANY_ORDER = 3
"""Up to so many blocks are tried in any order; more, the largest first."""


class Placed(NamedTuple):
    """A block's left and top in micrometres, and whether it is turned."""

    left: int
    top: int
    turned: bool


class Arrangement(NamedTuple):
    """One sheet: where its blocks lie, in the order they were given, and what is free."""

    placed: tuple[Placed, ...]
    free: tuple[Free, ...]


class _Search:
    def __init__(
        self, sizes: Sequence[Size], least: int, liked: Callable[[Sequence[Free]], int], upright: bool
    ) -> None:
        self.sizes = sizes
        self.least = least
        self.liked = liked
        self.upright = upright
        self.tried = 0
        self.best: Arrangement | None = None
        self.best_key = (-inf, -inf)

    def place(self, todo: tuple[int, ...], free: list[Free], placed: dict[int, Placed]) -> None:
        if not todo:
            self.tried += 1
            liked, turned = self.liked(free), sum(each.turned for each in placed.values())
            key = (-turned, liked) if self.upright else (liked, -turned)
            if key > self.best_key:
                spots = tuple(placed[i] for i in range(len(self.sizes)))
                self.best, self.best_key = Arrangement(spots, tuple(free)), key
            return
        following = todo if len(self.sizes) <= _ANY_ORDER else todo[:1]
        seen: set[tuple[Size, Size]] = set()
        for i in following:
            rest = tuple(j for j in todo if j != i)
            for where in free:
                for size in dict.fromkeys((self.sizes[i], self.sizes[i].turned)):
                    if not size.fits(where.size) or (size, where.size) in seen or self.tried >= MOST_TRIED:
                        continue
                    seen.add((size, where.size))
                    for left_over in cuts(where, size):
                        useful = [each for each in left_over if min(each.width, each.height) >= self.least]
                        others = [each for each in free if each is not where]
                        spot = Placed(where.left, where.top, size != self.sizes[i])
                        self.place(rest, others + useful, {**placed, i: spot})


def arrange(
    sizes: Sequence[Size], sheet: Size, least: int, liked: Callable[[Sequence[Free]], int], upright: bool
) -> Arrangement | None:
    """All blocks of ``sizes`` on one sheet, in their corner of what is free; None where no way was found.

    ``least`` is the least side of anything that is still to be placed: what is
    narrower is of no use. The best leaves free what is ``liked`` most;
    ``upright``, it first turns as few blocks as it can.
    """
    search = _Search(sizes, least, liked, upright)
    largest_first = sorted(range(len(sizes)), key=lambda i: (-sizes[i].area, i))
    search.place(tuple(largest_first), [Free(0, 0, *sheet)], {})
    return search.best
