"""Bound: how few sheets there could be at all, by area and by rows."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import dataclass
from functools import cache

from .rectangles import Free, Size, Strips
from .sharing import members_of, share

MOST_SHARED = 8
"""Up to so many blocks every way of sharing them among sheets is weighed; beyond, their area alone."""


@dataclass(frozen=True, slots=True)
class Bound:
    """Fewer sheets than this no layout takes."""

    by_area: int
    """From what each block and piece covers, taken up to the sheet's edge where nothing else fits beside it."""
    by_rows: int
    """From how many pieces the run takes where its joins may fall, and how many of them lie on a sheet: one to a row,
    all of them the same way round."""

    @property
    def sheets(self) -> int:
        return max(self.by_area, self.by_rows)


def bound_for(blocks: Sequence[Size], need: int, strips: Strips, overhead: int, least: int, sheet: Size) -> Bound:
    """How few sheets can hold the ``blocks`` and a run, all in micrometres, gaps included.

    ``need`` is the run's length without its joins, of which each piece brings its
    own length but for ``overhead``; ``strips`` says how its pieces lie and what a
    row of them is good for, and ``least`` is the least side of anything. Every way of sharing the blocks among
    sheets is weighed that their sizes, two by two, and their areas allow; beside
    each such group the run gets the area that is left. A block whose remaining
    width no other thing fits is counted with that width (Fekete and Schepers'
    dual feasible functions, here their simplest: from memory).
    """
    if not blocks and need <= 0:
        return Bound(0, 0)
    areas = [_covered(size, sheet, least) for size in blocks]
    longest = max(sheet)

    def beside(covered: int) -> int:
        """The most of the run that fits a sheet of which so much is covered, by area."""
        most = 0
        for pieces in range(1, sheet.area // (strips.depth * least) + 1):
            length = min((sheet.area - covered) // strips.depth, pieces * longest)
            most = max(most, length - pieces * overhead)
        return most

    in_rows = strips.room([Free(0, 0, *sheet)]) if need > 0 else 1
    if len(blocks) > MOST_SHARED:
        free = sum(areas) + max(0, need) * strips.depth
        return Bound(-(-free // sheet.area), -(-need // in_rows) if need > 0 else 0)
    together = _shared(blocks, areas, sheet)
    by_area = _fewest(together, areas, need, beside, beside(0) if need > 0 else 1)
    by_rows = _fewest(together, areas, need, lambda covered: min(in_rows, beside(covered)), in_rows)
    return Bound(by_area, by_rows)


def _covered(size: Size, sheet: Size, least: int) -> int:
    """What a block covers of the sheet, however it lies, with the edges beside it that nothing fits."""
    ways = []
    for each in (size, size.turned):
        if each.fits(sheet):
            wide = sheet.width if sheet.width - each.width < least else each.width
            high = sheet.height if sheet.height - each.height < least else each.height
            ways.append(wide * high)
    return min(ways)


def _shared(blocks: Sequence[Size], areas: Sequence[int], sheet: Size) -> list[bool]:
    """For each set of blocks, as the bits of a number, whether it may be that one sheet holds it."""

    @cache
    def pair(i: int, j: int) -> bool:
        for one in (blocks[i], blocks[i].turned):
            for other in (blocks[j], blocks[j].turned):
                beside = Size(one.width + other.width, max(one.height, other.height))
                above = Size(max(one.width, other.width), one.height + other.height)
                if beside.fits(sheet) or above.fits(sheet):
                    return True
        return False

    allowed = [True]
    for members in range(1, 1 << len(blocks)):
        inside = members_of(members)
        allowed.append(
            allowed[members & (members - 1)]
            and all(pair(inside[0], j) for j in inside[1:])
            and sum(areas[i] for i in inside) <= sheet.area
        )
    return allowed


def _fewest(
    together: Sequence[bool], areas: Sequence[int], need: int, beside: Callable[[int], int], whole: int
) -> int:
    """The fewest sheets over every way of sharing the blocks; ``whole`` of the run fits a sheet without blocks."""
    room = {
        group: beside(sum(areas[i] for i in members_of(group))) if need > 0 else 0
        for group, allowed in enumerate(together)
        if allowed and group
    }
    shared = share(len(areas), room)
    return min(sheets + max(0, -(-(need - way.room) // whole)) for sheets, way in shared.items())
