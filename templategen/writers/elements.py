"""Elements of HTML as a tree: when it is written, every text is escaped and every element closed."""

from __future__ import annotations

from collections.abc import Iterable
from xml.etree.ElementTree import Element, tostring


def element(tag: str, *content: Element | str, **attributes: str) -> Element:
    """An element; in its attributes' names ``_`` stands for ``-``, and one at the end is left off: ``class_``."""
    made = Element(tag, {name.rstrip("_").replace("_", "-"): value for name, value in attributes.items()})
    put(made, content)
    return made


def put(into: Element, content: Iterable[Element | str]) -> None:
    """Add texts and elements at the end of what ``into`` holds."""
    for each in content:
        if isinstance(each, Element):
            into.append(each)
        elif len(into):
            into[-1].tail = (into[-1].tail or "") + each
        else:
            into.text = (into.text or "") + each


def block(tag: str, *content: Element | str, **attributes: str) -> Element:
    """An element on a line of its own in the file."""
    made = element(tag, *content, **attributes)
    made.tail = "\n"
    return made


def written(page: Element) -> str:
    """The whole page as a file's text."""
    return "<!doctype html>\n" + tostring(page, encoding="unicode", method="html") + "\n"
