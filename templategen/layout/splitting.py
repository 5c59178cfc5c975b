"""Splitting: a drawing into pieces, one for each room there is for one, joined where nothing is cut."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace
from fractions import Fraction
from itertools import count, pairwise
from math import ceil, floor

from ..drawing import USUAL, Drawing, Look
from .free_places import FINE, Care, FreePlaces, Places, free_places
from .pieces import TONGUE, TRIMMED, Join, Piece

OVERLAP = TONGUE + TRIMMED
"""What every join takes of the paper, in mm."""
SHORTEST = Fraction(110)
"""The least length of the room that is given to a piece, in mm: our choice, enough for both its joins and its name."""
LARGE_SHORTEST = Fraction(150)
"""The same in large print, in mm."""
_LEAST = Fraction(40)
"""The least length of a piece between its neighbours' middles, in mm: what its own two joins take."""


def shortest(look: Look) -> Fraction:
    """The least length of the room that is given to a piece, in mm."""
    return SHORTEST if look == USUAL else LARGE_SHORTEST


def split(
    drawing: Drawing, longest: Fraction, first_join: int = 0, places: FreePlaces | None = None
) -> tuple[Piece, ...]:
    """``drawing`` as the fewest pieces of near-equal length, none longer than ``longest``, in mm.

    ``first_join`` is the number of its first join in the kit, ``places`` where it
    can be joined, if that is known already.
    """
    if drawing.length <= longest:
        return (Piece(drawing, 1, 1, None, None),)
    places = places or free_places(drawing)
    fewest = ceil((drawing.length - OVERLAP) / (longest - OVERLAP))
    for kind in range(len(places)):
        joins = _chain(places[kind], drawing, longest)
        if joins is not None:
            pieces = _cut(drawing, [longest] * (joins + 1), first_join, places, kind)
            if pieces is not None:
                return pieces
    return _between(drawing, [(at, True) for at in _ideals(drawing, [longest] * fewest)], first_join)


def split_into(
    drawing: Drawing, places: FreePlaces, rooms: Sequence[Fraction], care: Care = Care.CLEAR
) -> tuple[Piece, ...] | None:
    """``drawing`` as one piece for each of ``rooms``, from its start on, none longer than its room, in mm.

    Pieces are as nearly equal as their rooms allow, and joined with this
    ``care``, at the best kind of place that it allows. None where that cannot be.
    """
    if len(rooms) == 1:
        return (Piece(drawing, 1, 1, None, None),) if drawing.length <= rooms[0] else None
    if sum(rooms) - OVERLAP * (len(rooms) - 1) < drawing.length:
        return None
    for kind in places.with_care(care):
        pieces = _cut(drawing, rooms, 0, places, kind)
        if pieces is not None:
            return pieces
    return _between(drawing, [(at, True) for at in _ideals(drawing, rooms)], 0) if care is Care.ANY else None


def fewest_pieces(
    drawing: Drawing, places: FreePlaces, longest: Fraction, care: Care = Care.CLEAR
) -> int | None:
    """How many pieces no longer than ``longest`` it takes with this ``care``; None where it cannot be cut so."""
    if care is Care.ANY:
        return ceil((drawing.length - OVERLAP) / (longest - OVERLAP))
    chains = (_chain(places[kind], drawing, longest) for kind in places.with_care(care))
    return min((joins + 1 for joins in chains if joins is not None), default=None)


def renumbered(pieces: Sequence[Piece], first: int) -> tuple[Piece, ...]:
    """The same pieces, their first join bearing the number ``first``."""
    joins = [None, *(replace(piece.right, number=first + i) for i, piece in enumerate(pieces) if piece.right), None]
    return tuple(
        replace(piece, left=left, right=right) for piece, (left, right) in zip(pieces, pairwise(joins), strict=True)
    )


def _cut(
    drawing: Drawing, rooms: Sequence[Fraction], first_join: int, places: FreePlaces, kind: int
) -> tuple[Piece, ...] | None:
    """Pieces joined at places of this kind, or of a better one where one is in reach.

    Going as far as possible from the left gives, join for join, the latest place;
    as far as possible from the right, the earliest. Between these any free place
    will do, so each join takes the one nearest to its ideal.
    """
    allowed = places[kind]
    latest = _latest(allowed, drawing.start, rooms)
    mirrored = Places(allowed.step, [(-right, -left) for left, right in reversed(allowed.stretches)])
    earliest = _latest(mirrored, -drawing.end, rooms[::-1], TRIMMED)
    if latest is None or earliest is None:
        return None
    if latest[-1] + rooms[-1] - TRIMMED < drawing.end:
        return None
    joins: list[tuple[Fraction, bool]] = []
    before, taken = drawing.start, TONGUE
    for ideal, first, last, room in zip(_ideals(drawing, rooms), reversed(earliest), latest, rooms, strict=False):
        low = max(-first, before + _LEAST)
        high = min(last, before + room - taken)
        for better in range(kind + 1):
            at = places[better].nearest(ideal, low, high)
            if at is not None:
                joins.append((at, better not in places.with_care(Care.CLEAR)))
                break
        else:
            return None
        before, taken = joins[-1][0], OVERLAP
    return _between(drawing, joins, first_join)


def _latest(
    places: Places, start: Fraction, rooms: Sequence[Fraction], first_taken: Fraction = TONGUE
) -> list[Fraction] | None:
    """For each join but the end the farthest place that rooms of these lengths reach; None where none is."""
    step = places.step
    further = {room: floor((room - OVERLAP) / step) for room in set(rooms)}
    latest: list[int] = []
    at, most = floor(start / step), floor((start + rooms[0] - first_taken) / step)
    for following in rooms[1:]:
        place = places.last_step_to(most)
        if place is None or place < at:
            return None
        latest.append(place)
        at, most = place, place + further[following]
    return [place * step for place in latest]


def _chain(places: Places, drawing: Drawing, longest: Fraction) -> int | None:
    """How many joins it takes, going from each to the farthest free place in reach; None where none is in reach."""
    if drawing.length <= longest:
        return 0
    step = places.step
    reach, further = drawing.start + longest - TONGUE, floor((longest - OVERLAP) / step)
    enough = ceil((drawing.end - longest + TRIMMED) / step)
    at, most = floor(drawing.start / step), floor(reach / step)
    for joins in count(1):
        place = places.last_step_to(most)
        if place is None or place <= at:
            return None
        if place >= enough:
            return joins
        at, most = place, place + further
    raise AssertionError("count() does not end")


def _ideals(drawing: Drawing, rooms: Sequence[Fraction]) -> list[Fraction]:
    """The match lines that make pieces of equal length on paper, but for those whose rooms are shorter."""
    rest, left = drawing.length + OVERLAP * (len(rooms) - 1), len(rooms)
    equal = rest / left
    for room in sorted(rooms):
        if room >= rest / left:
            equal = rest / left
            break
        rest, left = rest - room, left - 1
    ideals: list[Fraction] = []
    at = drawing.start + min(rooms[0], equal) - TONGUE
    for room in rooms[1:]:
        # On a fine grid: what follows from it need not carry long fractions.
        ideals.append(round(at / FINE) * FINE)
        at += min(room, equal) - OVERLAP
    return ideals


def _between(drawing: Drawing, joins: Sequence[tuple[Fraction, bool]], first: int) -> tuple[Piece, ...]:
    """The pieces between these places; of each is said whether it is crowded."""
    made = [Join(first + i, at, crowded) for i, (at, crowded) in enumerate(joins)]
    ends: list[Join | None] = [None, *made, None]
    return tuple(Piece(drawing, i, len(made) + 1, left, right) for i, (left, right) in enumerate(pairwise(ends), 1))
