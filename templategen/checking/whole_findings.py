"""Findings on the kit as a whole: pages that are missing, doubled, out of order, or another's; what was lost."""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterator, Sequence

from ..misprints import per_cent
from .findings import PRINT_ITSELF, Finding, on_pages
from .page import File
from .sheets import Head, Looked

_Kit = tuple[str, int, str]
"""Title, number of pages, paper."""


def whole_findings(all_looked: Sequence[Looked], unreadable: Sequence[int]) -> Iterator[Finding]:
    """Which sheets of which kits are there, and what else is."""
    kits: dict[_Kit, list[tuple[int, Head]]] = {}
    for looked in all_looked:
        for sheet in looked.sheets:
            if sheet.head:
                key = ("".join(sheet.head.title.split()), sheet.head.of, sheet.head.paper)
                kits.setdefault(key, []).append((sheet.page, sheet.head))
    for heads in kits.values():
        heads.sort(key=lambda found: (found[0], found[1].number))
    for heads in kits.values():
        yield from _of_one_kit([head for _, head in heads], _named(heads, len(kits)))
    if len(kits) > 1:
        titles = ", ".join(f"“{heads[0][1].title}” of {heads[0][1].of} pages" for heads in kits.values())
        text = f"Pages of {len(kits)} kits are in this file: {titles}."
        yield Finding("several-kits", "note", "it holds several kits", text, "Keep their sheets apart.")
    yield from _strangers(all_looked, unreadable)


def _named(heads: Sequence[tuple[int, Head]], kits: int) -> str:
    return f" of “{heads[0][1].title}”" if kits > 1 else ""


def _of_one_kit(heads: Sequence[Head], name: str) -> Iterator[Finding]:
    of = heads[0].of
    count = Counter(head.number for head in heads)
    missing = [number for number in range(1, min(of, 10_000) + 1) if number not in count]
    if missing:
        there = f"{len(count)} of {of} sheets{name}"
        said = f"only {there} {'are' if len(count) > 1 else 'is'} there"
        are = "are" if len(missing) > 1 else "is"
        text = f"{on_pages(missing, 'sheet').capitalize()}{name} {are} missing: {said}."
        yield Finding("missing-pages", "wrong", said, text, PRINT_ITSELF)
    doubled = [number for number, times in count.items() if times > 1]
    if doubled:
        text = f"There more than once: {on_pages(doubled, 'sheet')}{name}."
        do = "Print one of each, or throw the second away."
        yield Finding("doubled-pages", "note", "sheets are there more than once", text, do)
    order = [head.number for head in heads]
    if order != sorted(order) and not doubled:
        text = f"The sheets{name} are not in the order of their numbers."
        yield Finding("order", "note", "its sheets are out of order", text, "Sort them when they are printed.")


def _strangers(all_looked: Sequence[Looked], unreadable: Sequence[int]) -> Iterator[Finding]:
    robbed = tuple(each.page.number for each in all_looked if not each.sheets and each.says_how)
    if robbed:
        said = "sheets have lost their bars"
        text = f"Sheets without bars: {on_pages(robbed)}. Nothing proves their size."
        yield Finding("bars-missing", "wrong", said, text, PRINT_ITSELF, robbed)
    strange = tuple(each.page.number for each in all_looked if not each.sheets and not each.says_how)
    if strange:
        text = f"Without a sheet of a kit: {on_pages(strange)}. Nothing there was measured."
        yield Finding("other-pages", "note", "it holds other pages", text, "", strange)
    if unreadable:
        said = "pages are damaged"
        text = f"Damaged, and cannot be read: {on_pages(unreadable)}."
        yield Finding("damaged-pages", "wrong", said, text, PRINT_ITSELF, tuple(unreadable))


def file_findings(file: File, all_looked: Sequence[Looked]) -> Iterator[Finding]:
    """What the file says of itself, and what it has lost."""
    if not file.may_be_printed:
        said = "it is locked against printing"
        yield Finding("locked", "wrong", said, "This copy is locked against printing.", PRINT_ITSELF)
    yield from _corrected(all_looked)
    yield from _pictures(all_looked)
    yield from _unread(all_looked)
    if not file.asks_actual_size:
        text, do = "The file no longer asks for actual size.", "Choose “actual size” or 100 % yourself, never “fit”."
        yield Finding("preferences-lost", "note", "it no longer asks for actual size", text, do)
    if file.asks_two_sides:
        text = "The file asks to be printed on both sides: what is cut out would have another on its back."
        yield Finding("two-sided", "note", "it asks for both sides", text, "Choose one-sided.")
    if not file.attachments:
        text = "The file has lost the spec that it carried: the kit cannot be made again from this copy."
        yield Finding("attachment-lost", "note", "it has lost its spec", text, "Keep the spec, or kit.pdf.")
    missing = sorted({name for looked in all_looked for name in looked.page.missing_fonts})
    if missing:
        text = (
            f"Not in the file: the font{'s' if len(missing) > 1 else ''} {', '.join(missing)}. Lines hold; figures may "
            "look otherwise or be missing."
        )
        yield Finding("fonts", "note", "fonts are missing", text, "Hold a page against kit.pdf.")


def _corrected(all_looked: Sequence[Looked]) -> Iterator[Finding]:
    corrections = {
        sheet.head.corrected for looked in all_looked for sheet in looked.sheets if sheet.head
    } - {(1.0, 1.0)}
    for across, along in sorted(corrections):
        text = (
            f"The kit is corrected for a printer that prints {per_cent(across)} across and {per_cent(along)} along: "
            "true from that printer, and from no other."
        )
        yield Finding("corrected", "note", "it is corrected for a printer", text)


def _pictures(all_looked: Sequence[Looked]) -> Iterator[Finding]:
    drawn = [looked for looked in all_looked if any(sheet.picture for sheet in looked.sheets)]
    if not drawn:
        return
    within = max(looked.within for looked in drawn)
    grains = sorted({round(min(looked.page.pictures)) for looked in drawn if looked.page.pictures})
    fine = f" of {grains[0]} points to the inch" if grains else ""
    text = (
        f"{on_pages(looked.page.number for looked in drawn).capitalize()}: no longer lines but a picture{fine}, in "
        f"which the bars could be measured to {per_cent(within)}."
    )
    pages = tuple(looked.page.number for looked in drawn)
    yield Finding("picture", "note", "it is a picture", text, "kit.pdf itself prints finer.", pages)


def _unread(all_looked: Sequence[Looked]) -> Iterator[Finding]:
    """Sheets whose text is gone: drawn as outlines or in a picture, or in letters that mean nothing."""
    pages = tuple(each.page.number for each in all_looked if each.sheets and not each.names_bar)
    if pages:
        text = f"What the sheets say cannot be read on {on_pages(pages)}: whether all are there, and for which paper."
        do = "See that every sheet from 1 to the last is there."
        yield Finding("text-lost", "note", "its page numbers cannot be read", text, do, pages)
