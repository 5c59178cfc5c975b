"""Rolls: everything on one page as long as it takes, or on a few where a page cannot be that long.

A roll is cut where the page ends, so the page is no longer than what is on it. Words
stand at its foot, in columns, instead of on pages of their own.
"""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import replace
from fractions import Fraction
from math import ceil

from ..document.blocks import Block
from ..drawing import USUAL, Drawing, Look
from ..errors import Fault, Refusal
from ..papers import Paper
from .area import Area
from .flowing import pages_of
from .furniture import least_live
from .splitting import OVERLAP

FINELY = 10
"""How finely the shortest page is looked for, in mm: our choice, less than a roll is cut to by hand."""
APART = 8
"""Between the templates and the words below them, in mm."""


def height_at_the_foot(words: Sequence[Block], live: Area, look: Look = USUAL) -> int:
    """How high the columns of ``words`` stand at the foot of ``live``, in mm; 0 where there are none.

    Raises Refusal where they leave nothing for templates.
    """
    if not words:
        return 0
    low, high = 0, int(live.height) - APART - least_live(look)
    if pages_of(words, foot(live, high), look) > 1:
        right = "the work order does not fit at its foot; choose a wider roll, or name the templates with --only"
        raise Refusal(Fault("paper", f"a roll {float(live.width):.0f} mm wide inside its margins", right))
    while high - low > 2:
        middle = (low + high) // 2
        low, high = (low, middle) if pages_of(words, foot(live, middle), look) == 1 else (middle, high)
    return high


def foot(live: Area, height: int) -> Area:
    """The lowest ``height`` mm of ``live``."""
    return replace(live, top=live.bottom + height)


def above(live: Area, height: int) -> Area:
    """What is left of ``live`` above words of this height."""
    return replace(live, bottom=live.bottom + height + APART) if height else live


def page_of(
    cost: Callable[[Paper], tuple[int, int]], roll: Paper, free: Area, drawings: Sequence[Drawing], along: Fraction,
    look: Look = USUAL,
) -> Paper:
    """The shortest page with which no more pages and pieces are needed than with the longest.

    ``cost`` is how many of both it takes with a page of this roll; ``free`` is
    what the longest page leaves for templates, as it comes out of the printer,
    and ``along`` what the printer makes of a length along it. A template is cut
    only where no page can be as long as it is.
    """
    need = Fraction(least_live(look))
    for drawing in drawings:
        if drawing.length > free.width or drawing.depth > free.height:
            pieces = ceil((drawing.length - OVERLAP) / (free.height - OVERLAP))
            need = max(need, (drawing.length - OVERLAP) / pieces + OVERLAP)
    longest = int(roll.height)
    shortest = min(ceil(roll.height - (free.height - need) / along), longest)

    def page(height: int) -> Paper:
        return replace(roll, height=Fraction(height))

    most = cost(page(longest))
    if cost(page(shortest)) <= most:
        return page(shortest)
    while longest - shortest > FINELY:
        middle = (shortest + longest) // 2
        if cost(page(middle)) <= most:
            longest = middle
        else:
            shortest = middle
    return page(longest)
