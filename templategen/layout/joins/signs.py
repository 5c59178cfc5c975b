"""The sign of a join: a row of little figures that only the right partner completes.

Short teeth stand across the match line, like the cuts of a key. They are taken two
by two into links: the left-hand piece closes each with a square end, the right-hand
piece with a point, so that the joined sign is a row of closed figures that point to
the right. A wrong neighbour, or the right one after a skipped piece, has its teeth
at other heights, and its figures stay open.

A piece turned upside down cannot deceive: the heights of the teeth lie half a pitch
beside their own mirror image, so none of its teeth meets any tooth of any key, and
it brings a square end where a point belongs.
"""

from __future__ import annotations

from collections.abc import Iterator
from fractions import Fraction
from functools import cache, lru_cache
from itertools import count
from math import floor, gcd
from typing import NamedTuple

from ...drawing import Drawing, Item, Line, LineType, path

PITCH = Fraction(12, 5)
"""Between two places for teeth, in mm: our choice. A wrong tooth is then off by more than a match line is wide."""
TOOTH = Fraction(5, 2)
"""How far a tooth reaches to either side of the match line, in mm; a square end stands there too."""
POINT = Fraction(3, 2)
"""How far a point reaches beyond its teeth, in mm: no farther than is kept free beside a registration mark."""
_FROM_A_MARK = Fraction(23, 5)
"""From a registration mark to the nearest place for a tooth, in mm: its own arms reach 3.5 mm."""
_HEIGHTS = (1, 2, 3)
"""Of a link, in pitches: higher ones would no longer look like one figure. Our choice."""
_MOST_PLACES = 12
_STRIDES = {10: 207, 11: 173, 12: 835}
"""From one join's key to the next one's, for so many places: with these the first twenty joins differ most, those of
12 places by four teeth at least, neighbours by six. Found by trying them all."""
_GOLDEN = Fraction(89, 144)


class Link(NamedTuple):
    """Two teeth of a sign that belong together, by their heights in mm."""

    low: Fraction
    high: Fraction


def links_of(drawing: Drawing, number: int) -> tuple[Link, ...]:
    """The sign of join ``number``.

    Any two signs of a drawing differ by two teeth at least, since a sign has two for each link.
    """
    return _links(tooth_places(drawing), number)


def tooth_places(drawing: Drawing) -> tuple[Fraction, ...]:
    """The heights at which teeth may stand, one pitch apart, in the middle between the registration marks."""
    low, high = drawing.registration
    return _places(Fraction(min(low, high)), Fraction(max(low, high)))


@lru_cache(maxsize=1024)
def _links(places: tuple[Fraction, ...], number: int) -> tuple[Link, ...]:
    links, total = min(2, len(places) // 2), len(places)
    keys = _ways(total, links)
    stride = _STRIDES.get(total) or next(step for step in count(floor(keys * _GOLDEN) or 1) if gcd(step, keys) == 1)
    chosen = _unranked(total, links, (number + 1) * stride % keys)
    return tuple(Link(places[low], places[high]) for low, high in chosen)


@lru_cache(maxsize=64)
def _places(low: Fraction, high: Fraction) -> tuple[Fraction, ...]:
    span = high - low
    # What is left at the two ends differs by half a pitch: turned about, every place falls between two others.
    first = (span - PITCH / 2) / 2 % (PITCH / 2)
    while first < _FROM_A_MARK:
        first += PITCH / 2
    room = floor((span - _FROM_A_MARK - first) / PITCH) + 1
    taken = max(0, min(room, _MOST_PLACES))
    skipped = (room - taken) // 2
    return tuple(low + first + (skipped + i) * PITCH for i in range(taken))


def sign(links: tuple[Link, ...], at: Fraction, pointed: bool) -> Iterator[Item]:
    """The half of a sign that one piece shows, and its teeth across the match line at ``at``.

    ``pointed`` for the right-hand piece, whose half ends in points; the other's end square.
    """
    near, far = (at + TOOTH, at - TOOTH) if pointed else (at - TOOTH, at + TOOTH)
    for low, high in links:
        yield from (Line(LineType.MARK, far, y, near, y) for y in (low, high))
        end = [(near + POINT, (low + high) / 2)] if pointed else []
        yield from path(LineType.MARK, [(near, low), *end, (near, high)])


@cache
def _ways(places: int, links: int) -> int:
    """How many rows of links there are on so many places, of ``links`` links or more."""
    if places <= 0:
        return int(places == 0 and links == 0)
    return _ways(places - 1, links) + sum(_ways(places - 1 - height, max(links - 1, 0)) for height in _HEIGHTS)


def _unranked(places: int, links: int, rank: int) -> Iterator[tuple[int, int]]:
    """The row of links that stands at ``rank``, as the numbers of the places of each link's two teeth."""
    at = 0
    while at < places:
        for height in (0, *_HEIGHTS):
            # Either this place stays empty, or a link of this height begins here.
            rest = _ways(places - at - 1 - height, max(links - (height > 0), 0))
            if rank < rest:
                break
            rank -= rest
        if height:
            yield at, at + height
            links = max(links - 1, 0)
        at += 1 + height
