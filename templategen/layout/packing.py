"""Packing: pieces onto sheets, as rectangles, the larger first, into the place they fit best."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from fractions import Fraction

GAP = Fraction(2)
"""Between pieces on a sheet, in mm: their outlines stay apart and scissors get in between."""


@dataclass(frozen=True, slots=True)
class Spot:
    """Where a rectangle lies: on which sheet, and its left and top from the live area's left and top edge."""

    sheet: int
    left: Fraction
    top: Fraction


@dataclass(slots=True)
class _Free:
    """A free rectangle of a sheet."""

    left: Fraction
    top: Fraction
    width: Fraction
    height: Fraction


@dataclass(slots=True)
class _Sheet:
    number: int
    free: list[_Free]


def pack(
    sizes: Sequence[tuple[Fraction, Fraction]], groups: Sequence[int], width: Fraction, height: Fraction
) -> list[Spot]:
    """A spot for each (width, height) of ``sizes`` on sheets of ``width`` by ``height``, all in mm.

    ``groups`` says which sizes belong together: they are placed one after
    another, in order, so that neighbours come to lie on the same sheet.
    Guillotine cuts, best short side first: each rectangle goes to the free
    rectangle that it leaves the least of, on the earliest sheet that takes it.
    Every size must fit an empty sheet.
    """
    sheets: list[_Sheet] = []
    spots: dict[int, Spot] = {}
    largest: dict[int, Fraction] = {}
    for size, group in zip(sizes, groups, strict=True):
        largest[group] = max(largest.get(group, Fraction(0)), *size)
    order = sorted(range(len(sizes)), key=lambda i: (-largest[groups[i]], groups[i], i))
    for i in order:
        wide, high = sizes[i][0] + GAP, sizes[i][1] + GAP
        spot = next((spot for sheet in sheets if (spot := _place(sheet, wide, high))), None)
        if spot is None:
            sheets.append(_Sheet(len(sheets), [_Free(Fraction(0), Fraction(0), width + GAP, height + GAP)]))
            spot = _place(sheets[-1], wide, high)
        assert spot is not None, f"{sizes[i]} does not fit an empty sheet of {width} by {height}"
        spots[i] = spot
    return [spots[i] for i in range(len(sizes))]


def _place(sheet: _Sheet, wide: Fraction, high: Fraction) -> Spot | None:
    fitting = [free for free in sheet.free if free.width >= wide and free.height >= high]
    if not fitting:
        return None
    chosen = min(fitting, key=lambda free: (min(free.width - wide, free.height - high), free.left, free.top))
    sheet.free.remove(chosen)
    right, below = chosen.width - wide, chosen.height - high
    if right > below:
        beside = _Free(chosen.left + wide, chosen.top, right, chosen.height)
        under = _Free(chosen.left, chosen.top + high, wide, below)
    else:
        beside = _Free(chosen.left + wide, chosen.top, right, high)
        under = _Free(chosen.left, chosen.top + high, chosen.width, below)
    sheet.free += [free for free in (beside, under) if free.width > GAP and free.height > GAP]
    return Spot(sheet.number, chosen.left, chosen.top)
