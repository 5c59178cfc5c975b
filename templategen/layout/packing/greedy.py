"""One by one: blocks too many to try every way, each where it fits best."""

from __future__ import annotations

from collections.abc import Callable, Iterator, Sequence

from .arranging import Placed
from .rectangles import Free, Size, cuts

_Order = Callable[[Size], tuple[int, ...]]
_ORDERS: tuple[_Order, ...] = (
    lambda size: (-size.area,),
    lambda size: (-max(size), -min(size)),
    lambda size: (-min(size), -max(size)),
)


def greedily(
    sizes: Sequence[Size], sheet: Size, least: int
) -> Iterator[tuple[list[tuple[int, Placed]], list[list[Free]]]]:
    """For several orders: where each block lies and on which sheet, and what is free on each sheet."""
    for order in _ORDERS:
        for cut in (0, 1):
            yield _in_order(sizes, sorted(range(len(sizes)), key=lambda i: (*order(sizes[i]), i)), cut, sheet, least)


def _in_order(
    sizes: Sequence[Size], order: Sequence[int], cut: int, sheet: Size, least: int
) -> tuple[list[tuple[int, Placed]], list[list[Free]]]:
    """Each block into the free rectangle that it leaves the least of, on the earliest sheet that takes it."""
    sheets: list[list[Free]] = []
    placed: dict[int, tuple[int, Placed]] = {}
    for i in order:
        number, (where, size) = _earliest(sizes[i], sheets, sheet)
        ways = list(cuts(where, size))
        left_over = ways[min(cut, len(ways) - 1)]
        sheets[number].remove(where)
        sheets[number] += [each for each in left_over if min(each.width, each.height) >= least]
        placed[i] = number, Placed(where.left, where.top, size != sizes[i])
    return [placed[i] for i in range(len(sizes))], sheets


def _earliest(size: Size, sheets: list[list[Free]], sheet: Size) -> tuple[int, tuple[Free, Size]]:
    """The first sheet that takes it, a new one if need be, and where on it."""
    for number, free in enumerate(sheets):
        if found := _best(size, free):
            return number, found
    sheets.append([Free(0, 0, *sheet)])
    found = _best(size, sheets[-1])
    assert found is not None, "every block fits an empty sheet"
    return len(sheets) - 1, found


def _best(size: Size, free: Sequence[Free]) -> tuple[Free, Size] | None:
    fitting = [(where, way) for where in free for way in (size, size.turned) if way.fits(where.size)]
    return min(
        fitting, default=None, key=lambda pair: min(pair[0].width - pair[1].width, pair[0].height - pair[1].height)
    )
