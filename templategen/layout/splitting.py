"""Splitting: a drawing into the fewest pieces, of near-equal length, joined where nothing is cut."""

from __future__ import annotations

from collections.abc import Sequence
from fractions import Fraction
from itertools import pairwise
from math import ceil, floor

from ..drawing import Drawing
from .free_places import FreePlaces, Stretch, at_or_before, exact, free_places, nearest
from .pieces import TONGUE, TRIMMED, Join, Piece


def split(
    drawing: Drawing, longest: Fraction, first_join: int = 0, places: FreePlaces | None = None
) -> tuple[Piece, ...]:
    """``drawing`` as the fewest pieces of near-equal length, none longer than ``longest``, in mm.

    ``first_join`` is the number of its first join in the kit, ``places`` where it
    can be joined, if that is known already. Of the clearances
    that give the fewest pieces the largest is kept. Where marks stand too close
    for any, joins keep clear of texts and marks at least, and are called crowded.
    """
    if drawing.length <= longest:
        return (Piece(drawing, 1, 1, None, None),)
    fewest = -int(-(drawing.length - TONGUE - TRIMMED) // (longest - TONGUE - TRIMMED))
    best: list[Fraction] | None = None
    places = places or free_places(drawing)
    for stretches in places.free:
        found = _places(drawing, stretches, longest)
        if found is not None and (best is None or len(found) < len(best)):
            best = found
            if len(best) + 1 == fewest:
                break
    crowded = best is None
    if best is None:
        tried = (_places(drawing, stretches, longest) for stretches in places.crowded)
        best = next((found for found in tried if found is not None), None)
    chosen = _equal(drawing, fewest) if best is None else best
    return _between(drawing, _joins(drawing, chosen, first_join, crowded))


def _equal(drawing: Drawing, count: int) -> list[Fraction]:
    """The match lines that make ``count`` pieces of equal length on paper, overlaps and all."""
    on_paper = (drawing.length + (count - 1) * (TONGUE + TRIMMED)) / count
    first, step = drawing.start + on_paper - TONGUE, on_paper - TONGUE - TRIMMED
    return [first + step * i for i in range(count - 1)]


def _joins(drawing: Drawing, places: Sequence[Fraction], first: int, crowded: bool) -> tuple[Join, ...]:
    # A neighbouring join needs half of what lies between.
    stops = [2 * drawing.start - places[0], *places, 2 * drawing.end - places[-1]]
    return tuple(
        Join(first + i, at, min(at - before, after - at) / 2, crowded)
        for i, (at, before, after) in enumerate(zip(places, stops, stops[2:], strict=False))
    )


def _between(drawing: Drawing, joins: Sequence[Join]) -> tuple[Piece, ...]:
    ends: list[Join | None] = [None, *joins, None]
    return tuple(
        Piece(drawing, i, len(joins) + 1, left, right) for i, (left, right) in enumerate(pairwise(ends), 1)
    )


def _places(drawing: Drawing, stretches: list[Stretch], longest: Fraction) -> list[Fraction] | None:
    """The fewest match lines within ``stretches`` that leave no piece too long, near an equal division.

    Going as far as possible from the left gives the fewest and, join for join,
    the latest; as far as possible from the right, the earliest. Between these
    any free place will do, so each join takes the one nearest to its ideal.
    None where somewhere no free place is in reach.
    """
    start, end = floor(10 * drawing.start), ceil(10 * drawing.end)
    from_left, between, to_right = (floor(10 * reach) for reach in _reaches(longest))
    latest = _farthest(stretches, start, end, from_left, between, to_right)
    mirrored = [(-right, -left) for left, right in reversed(stretches)]
    earliest = _farthest(mirrored, -end, -start, to_right, between, from_left)
    if latest is None or earliest is None:
        return None
    places: list[int] = []
    reach = start + from_left
    ideals = _equal(drawing, len(latest) + 1)
    for ideal, first, last in zip(ideals, reversed(earliest), latest, strict=True):
        at = nearest(stretches, round(10 * ideal), -first, min(last, reach))
        assert at is not None, "the earliest place is free, and in reach of every place before it"
        places.append(at)
        reach = at + between
    return [exact(place) for place in places]


def _reaches(longest: Fraction) -> tuple[Fraction, Fraction, Fraction]:
    """The longest distances: from the start to a match line, from one to the next, from one to the end."""
    return longest - TONGUE, longest - TONGUE - TRIMMED, longest - TRIMMED


def _farthest(
    stretches: Sequence[Stretch], start: int, end: int, first: int, between: int, last: int
) -> list[int] | None:
    """From ``start`` on, always the farthest free place in reach, until ``end`` is; None where none is."""
    places: list[int] = []
    position, reach = start, first
    while end - position > (last if places else 0):
        place = at_or_before(stretches, position + reach)
        if place is None or place <= position:
            return None
        places.append(place)
        position, reach = place, between
    return places
