"""Findings on size: scaled, stretched, mirrored, turned, several to a page, cut off."""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterator, Sequence

from ..misprints import per_cent
from .causes import cause_of, remake_for, sheets_to_a_page
from .findings import PRINT_ITSELF, Finding, on_pages
from .geometry import Box
from .papers_of_pages import called, is_size, paper_said
from .sheets import Looked, Sheet

TRUE_WITHIN = 1e-3
"""0.1 %: what a program does that rounds a page to whole points (0.5 of 595) is no fault, and 0.1 mm of a bar of
100 mm is what a steel rule can just show."""
_SQUARE_WITHIN = 0.05
"""Degrees: over a bar of 100 mm this is 0.1 mm."""
_OUTSIDE = 0.5
"""A corner of what is printed on may lie this far outside the page, in mm, before something is lost."""

Placed = tuple[Looked, Sheet]


def true_sizes(sheet: Sheet) -> tuple[float | None, float | None]:
    """What comes out of the printer that the kit is corrected for, over what the bars say."""
    corrected = sheet.head.corrected if sheet.head else (1.0, 1.0)
    across, along = sheet.ratios
    return across and across * corrected[0], along and along * corrected[1]


def off_by(sheet: Sheet) -> float:
    """How far from true the sheet is, as a part of its size."""
    return max((abs(size - 1) for size in true_sizes(sheet) if size is not None), default=0.0)


def allowed(looked: Looked) -> float:
    """How far from true a sheet may be: a little more where it is a picture, by half a point of it."""
    return TRUE_WITHIN + looked.within


def size_findings(placed: Sequence[Placed]) -> Iterator[Finding]:
    """All findings on the size of sheets."""
    yield from _several_to_a_page(placed)
    yield from _scaled(placed)
    yield from _mirrored(placed)
    yield from _skewed(placed)
    yield from _user_units(placed)
    yield from _bars_missing(placed)
    yield from _cut_off(placed)


def _several_to_a_page(placed: Sequence[Placed]) -> Iterator[Finding]:
    count = Counter(looked.page.number for looked, _ in placed)
    crowded = [(looked, sheet) for looked, sheet in placed if count[looked.page.number] > 1]
    if not crowded:
        return
    sheet = crowded[0][1]
    most = max(count.values())
    ratio = next(size for size in true_sizes(sheet) if size is not None)
    said = sheets_to_a_page(ratio, most)
    pages = tuple(sorted({each.page.number for each, _ in crowded}))
    text = f"{on_pages(pages).capitalize()}: {said}. A setting such as “pages per sheet” put them together."
    yield Finding("several-up", "wrong", said, text, PRINT_ITSELF, pages)


def _scaled(placed: Sequence[Placed]) -> Iterator[Finding]:
    """One finding for each scale that is not true, pages that share it together."""
    crowded = {number for number, count in Counter(looked.page.number for looked, _ in placed).items() if count > 1}
    groups: dict[tuple[float | None, ...], list[Placed]] = {}
    for looked, sheet in placed:
        if off_by(sheet) > allowed(looked) and looked.page.number not in crowded:
            key = tuple(size and round(size, 3) for size in true_sizes(sheet))
            groups.setdefault(key, []).append((looked, sheet))
    whole = len(groups) == 1 and sum(map(len, groups.values())) == len(placed)
    for group in groups.values():
        looked, sheet = group[0]
        across, along = true_sizes(sheet)
        pages = tuple(sorted({each.page.number for each, _ in group}))
        where = "Every sheet" if whole else f"The sheet on {on_pages(pages)}" if len(pages) == 1 else (
            f"The sheets on {on_pages(pages)}"
        )  # fmt: skip
        if across and along and abs(across / along - 1) > 2 * allowed(looked):
            said = f"it comes out at {per_cent(across)} across and {per_cent(along)} along"
            text = f"{where}: {said}. It was stretched one way more than the other, as “fill the page” does."
            yield Finding("stretched", "wrong", said, text, PRINT_ITSELF, pages)
            continue
        ratio = across or along
        assert ratio
        size = (looked.page.width, looked.page.height)
        paper = paper_said(sheet.head.paper) if sheet.head else None
        if looked.page.user_unit != 1:  # which is its own finding, and cause enough
            cause, do = "", PRINT_ITSELF
        else:
            cause = cause_of(ratio, size, paper, turned=round(sheet.turn / 90) % 2 == 1)
            do = PRINT_ITSELF + remake_for(size, paper)
        said = f"it comes out at {per_cent(ratio)} of its size"
        text = f"{where}: {said}{f'; {cause}' if cause else ''}."
        yield Finding("scaled", "wrong", said, text, do, pages)


def _mirrored(placed: Sequence[Placed]) -> Iterator[Finding]:
    pages = tuple(sorted({sheet.page for _, sheet in placed if sheet.mirrored}))
    if pages:
        said = "it is mirrored"
        text = f"Mirrored: {on_pages(pages)}. Left and right are changed about, as a setting such as “mirror” does."
        yield Finding("mirrored", "wrong", said, text, PRINT_ITSELF, pages)


def _skewed(placed: Sequence[Placed]) -> Iterator[Finding]:
    pages = tuple(sorted({sheet.page for _, sheet in placed if sheet.off_square > _SQUARE_WITHIN}))
    if pages:
        worst = max(sheet.off_square for _, sheet in placed)
        said = f"across and along are {worst:.2f} degrees from square"
        yield Finding("skewed", "wrong", said, f"On {on_pages(pages)} {said}.", PRINT_ITSELF, pages)


def _user_units(placed: Sequence[Placed]) -> Iterator[Finding]:
    pages = tuple(sorted({looked.page.number for looked, _ in placed if looked.page.user_unit != 1}))
    if pages:
        unit = next(looked.page.user_unit for looked, _ in placed if looked.page.user_unit != 1)
        said = f"its pages count in units of {unit:g}/72 in"
        text = f"{on_pages(pages).capitalize()} count in units of {unit:g}/72 in, which some programs heed, others not."
        yield Finding("user-unit", "wrong", said, text, PRINT_ITSELF, pages)


def _bars_missing(placed: Sequence[Placed]) -> Iterator[Finding]:
    for which, missing in (
        ("across", [sheet.page for _, sheet in placed if sheet.across is None]),
        ("along", [sheet.page for _, sheet in placed if sheet.along is None]),
    ):
        if missing:
            said = f"a bar {which} is missing"
            text = f"No bar {which} could be found on {on_pages(missing)}: that way nothing proves the size."
            yield Finding("bar-missing", "wrong", said, text, PRINT_ITSELF, tuple(sorted(set(missing))))


def _cut_off(placed: Sequence[Placed]) -> Iterator[Finding]:
    cut = []
    for looked, sheet in placed:
        page = looked.page
        box = Box(0, 0, page.width, page.height)
        if (
            page.cut
            or not all(box.holds(corner, _OUTSIDE) for corner in sheet.corners)
            # A sheet on which a bar's name can be read, but no head, has lost its upper edge.
            or (looked.names_bar and not looked.says_how)
        ):
            cut.append(page.number)
    if cut:
        pages = tuple(sorted(set(cut)))
        said = "part of it is cut off"
        text = f"Part of {on_pages(pages)} lies outside the page, or is gone: it was cropped, or moved."
        yield Finding("cut-off", "wrong", said, text, PRINT_ITSELF, pages)


def paper_findings(all_looked: Sequence[Looked]) -> Iterator[Finding]:
    """Findings on the pages that sheets stand on: their sizes, and how they are turned."""
    sizes = [(each.page.width, each.page.height) for each in all_looked]
    usual = max(sizes, key=lambda size: sum(is_size(size, other) for other in sizes))
    other = tuple(each.page.number for each, size in zip(all_looked, sizes, strict=True) if not is_size(size, usual))
    if other:
        said = "its pages are not all of one size"
        text = (
            f"Most pages are {called(usual)}, but not {on_pages(other)}: whichever paper is in the tray, some will "
            "be fitted on it or cut off."
        )
        yield Finding("mixed-sizes", "wrong", said, text, PRINT_ITSELF, other)
    yield from _ways_up(all_looked)
    yield from _turned(all_looked)
    yield from _other_paper(all_looked)


def _ways_up(all_looked: Sequence[Looked]) -> Iterator[Finding]:
    flat = tuple(each.page.number for each in all_looked if not each.page.upright)
    if flat and len(flat) < len(all_looked):
        few = flat if 2 * len(flat) <= len(all_looked) else tuple(
            each.page.number for each in all_looked if each.page.upright
        )  # fmt: skip
        text = f"The other way up than the rest: {on_pages(few)}. Some programs, browsers among them, then fit pages."
        do = "Choose actual size, never “fit”, and measure the bars of those pages; or print kit.pdf itself."
        yield Finding("mixed-ways-up", "note", "its pages are not all one way up", text, do, few)


def _turned(all_looked: Sequence[Looked]) -> Iterator[Finding]:
    turned: dict[int, list[int]] = {}
    askew: list[Sheet] = []
    for looked in all_looked:
        for sheet in looked.sheets:
            quarter = round(sheet.turn / 90) * 90
            if abs(sheet.turn - quarter) > _SQUARE_WITHIN:
                askew.append(sheet)
            elif quarter % 360 and not sheet.mirrored:
                turned.setdefault(quarter % 360, []).append(sheet.page)
    for quarter, pages in turned.items():
        way = "upside down" if quarter == 180 else "turned on the side"
        text = f"{way.capitalize()}: {on_pages(pages)}. That does no harm to the size."
        yield Finding("turned", "note", way, text, "", tuple(sorted(set(pages))))
    if askew:
        pages = [sheet.page for sheet in askew]
        by = max(abs(sheet.turn - round(sheet.turn / 90) * 90) for sheet in askew)
        text = f"Turned by {by:.2f} degrees: {on_pages(pages)}. Lengths hold; corners may fall off the paper."
        yield Finding("askew", "note", "it lies askew", text, PRINT_ITSELF, tuple(sorted(set(pages))))


def _other_paper(all_looked: Sequence[Looked]) -> Iterator[Finding]:
    """A sheet at its true size on a page that is not its paper."""
    for looked in all_looked:
        size = (looked.page.width, looked.page.height)
        for sheet in looked.sheets:
            paper = paper_said(sheet.head.paper) if sheet.head else None
            if paper and not is_size(size, paper) and off_by(sheet) <= allowed(looked):
                text = f"The sheets are made for {called(paper)} paper and stand on {called(size)} pages, at true size."
                do = f"Print them on {called(paper)} paper, or on {called(size)}, at actual size, never “fit”."
                yield Finding("other-paper", "note", "its pages are of other paper", text, do)
                return
