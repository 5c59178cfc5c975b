"""Why a page measures what it does: the likely cause of a scale, from the sizes of papers alone."""

from __future__ import annotations

from collections.abc import Iterator

from ..misprints import per_cent, with_article
from ..papers import CATALOGUE
from .papers_of_pages import called, is_size, paper_at

Size = tuple[float, float]

_HIT = 1.2e-3
"""A scale this near a computed one is taken for it. Programs round pages to whole points: 0.5 of 595, or 0.84e-3."""
_HIT_ANYWHERE = 4e-4
"""And this near, where the paper it was fitted on is none of those at hand."""
_WHOLE = 2e-4
_AT_HAND = ("letter", "a4", "legal", "tabloid", "a3", "a5", "executive", "ansi-c", "a2")
"""What printers are usually loaded with: our choice. Among all papers that there are, some fit any scale by chance."""
_LEAST_MARGIN, _MOST_MARGIN = 1.0, 20.0
"""Printers' margins in mm; unprintable margins reach 17 mm."""
_BORDERLESS = 1.08
"""Printing without borders makes a page larger by a few per cent, so that nothing white is left at the edges."""


def cause_of(ratio: float, page: Size, paper: Size | None, turned: bool = False) -> str:
    """The likely cause of everything on ``page`` being ``ratio`` of its size; "" where none is known.

    ``paper`` is what the sheet says it is for; None where it does not say. ``turned`` is
    whether the sheet lies on its side on the page.
    """
    return next(_causes(ratio, page[::-1] if turned else page, paper), "")


def _causes(ratio: float, page: Size, paper: Size | None) -> Iterator[str]:
    """The page is turned as the sheet is."""
    if paper and not paper_at(page) and is_size(page, (ratio * paper[0], ratio * paper[1])):
        yield "the page itself was made " + ("smaller" if ratio < 1 else "larger") + ", with all that is on it"
    at_hand = [CATALOGUE[name] for name in _AT_HAND]
    known = [paper] if paper else [(float(each.width), float(each.height)) for each in at_hand]
    for made_for in known:
        for scale, how in ((_fitted(made_for, page), "fitted on"), (_filling(made_for, page), "made to fill")):
            # Upright on a page that lies flat, or the other way about, is another paper as well.
            differs = not is_size(made_for, page) or (made_for[0] < made_for[1]) != (page[0] < page[1])
            if differs and abs(ratio / scale - 1) < _HIT:
                yield f"that is {with_article(called(made_for))} page {how} {called(page)} paper"
    if abs(ratio * 100 - round(ratio * 100)) < _WHOLE * 100:
        yield f"somewhere a scale of {round(ratio * 100)} % was set"
    for made_for in known:
        for other in at_hand:
            size = (float(other.width), float(other.height))
            fitted = max(_fitted(made_for, size), _fitted(made_for, size[::-1]))
            if not is_size(made_for, size) and abs(ratio / fitted - 1) < _HIT_ANYWHERE:
                yield f"that is {with_article(called(made_for))} page fitted on {other.shown} paper"
    if 1 < ratio < _BORDERLESS:
        yield "a little over 100 % is what printing without borders does"
    made_for = paper or page
    margin = min((there - ratio * here) / 2 for there, here in zip(page, made_for, strict=True))
    if ratio < 1 and _LEAST_MARGIN <= margin <= _MOST_MARGIN:
        on = f"on {called(page)} paper " if not is_size(made_for, page) else ""
        yield f"that is a page fitted {on}inside margins of about {margin:.0f} mm, as “fit to page” does"


def remake_for(page: Size, paper: Size | None) -> str:
    """How to get the kit on the paper of this page, where it was made for another."""
    there = paper_at(page)
    if there is None or paper is None or is_size(page, paper):
        return ""
    return f" For {there.shown} paper make the kit anew: templategen make kit.pdf --out again --paper {there.name}."


def sheets_to_a_page(ratio: float, count: int) -> str:
    """What several sheets on one page come to."""
    return f"{count} sheets stand on one page, at {per_cent(ratio)} of their size"


def _fitted(made_for: Size, page: Size) -> float:
    """The scale at which a page comes to lie on another as large as it can."""
    return min(page[0] / made_for[0], page[1] / made_for[1])


def _filling(made_for: Size, page: Size) -> float:
    """The scale at which it covers the other, and as little as it can of itself is lost."""
    return max(page[0] / made_for[0], page[1] / made_for[1])
