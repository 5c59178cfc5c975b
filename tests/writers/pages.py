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
from templategen.writers.text import text

from ..examples.making import EXAMPLES, NAMES
from .document import EVERY_KIND

ALL = (*NAMES, "adjusting", "every kind")
HANGS = "left 3/8 in low, middle good, right 1/8 in high"


@cache
def both(name: str) -> tuple[str, str]:
    """The document of this name as a page and as text."""
    if name == "every kind":
        return html(EVERY_KIND, "Reading room, east window"), text(EVERY_KIND)
    if name == "adjusting":
        plan = make_plan(read_spec(_spec("east-window")))
        adjustment = adjust(plan, read_hangs(HANGS, plan.spec.units), stitched=False)
        _, files = adjusting_files(plan, adjustment)
        return files["adjusting.html"].decode(), files["adjusting.txt"].decode()
    _, files = kit_files(plan_for(read_spec_or_job(_spec(name))))
    return files["work-order.html"].decode(), files["work-order.txt"].decode()


def _spec(name: str) -> str:
    return (EXAMPLES / name / "spec.toml").read_text(encoding="utf-8")


def pages() -> dict[str, str]:
    """All of the pages by name."""
    return {name: both(name)[0] for name in ALL}


@cache
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
    if bare(element) == "head":
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
