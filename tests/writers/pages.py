"""Work orders as pages: those of the examples, one for what has been hung, and one with every kind of block."""

from __future__ import annotations

from collections.abc import Iterator
from functools import cache
from xml.etree.ElementTree import Element

import html5lib

from templategen import kit_files, make_plan, read_spec
from templategen.adjusting import adjusting_files
from templategen.planning import plan_for
from templategen.planning.adjusting import adjust
from templategen.spec import read_spec_or_job
from templategen.spec.hangs import read_hangs
from templategen.writers.html import html

from ..examples.making import EXAMPLES, NAMES
from .document import EVERY_KIND

HIDDEN = {"head"}


@cache
def both(name: str) -> tuple[str, str]:
    """A work order of an example as a page and as text."""
    spec = (EXAMPLES / name / "spec.toml").read_text(encoding="utf-8")
    _, files = kit_files(plan_for(read_spec_or_job(spec)))
    return files["work-order.html"].decode(), files["work-order.txt"].decode()


@cache
def adjusting() -> tuple[str, str]:
    """What is to be done to a panel that has been hung, as a page and as text."""
    plan = make_plan(read_spec((EXAMPLES / "east-window" / "spec.toml").read_text(encoding="utf-8")))
    hangs = read_hangs("left 3/8 in low, middle good, right 1/8 in high", plan.spec.units)
    _, files = adjusting_files(plan, adjust(plan, hangs, stitched=False))
    return files["adjusting.html"].decode(), files["adjusting.txt"].decode()


@cache
def pages() -> dict[str, str]:
    """All of the pages by name."""
    return {name: both(name)[0] for name in NAMES} | {
        "adjusting": adjusting()[0],
        "every kind": html(EVERY_KIND, "Reading room, east window"),
    }


def parsed(page: str) -> Element:
    """The page as a browser reads it. Raises html5lib's ParseError where a browser would have to guess."""
    parser = html5lib.HTMLParser(strict=True, namespaceHTMLElements=False)
    tree: Element = parser.parse(page)
    return tree


def bare(element: Element) -> str:
    """An element's name without that of its language."""
    return str(element.tag).rpartition("}")[2]


def words_of(element: Element) -> Iterator[str]:
    """The words under an element in the order in which they are read, steps with their numbers."""
    if bare(element) in HIDDEN:
        return
    yield from (element.text or "").split()
    number = int(element.get("start", "1"))
    for child in element:
        if bare(element) == "ol":
            yield f"{number}."
            number += 1
        yield from words_of(child)
        yield from (child.tail or "").split()


def text_of(element: Element) -> str:
    return " ".join(words_of(element))
