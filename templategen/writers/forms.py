"""What is ticked and written into on a page of HTML: boxes, blanks and lines, each with its label; no script."""

from __future__ import annotations

from collections.abc import Iterator
from xml.etree.ElementTree import Element

from ..document.blocks import MOST_BLANKS, MOST_BOXES, Blanks, Lines, Step
from ..drawing import tied
from .elements import block, element
from .page import Page


def boxes(step: Step, page: Page) -> Iterator[Element]:
    """A box for each thing that a step is done to; for very many a field for a tally."""
    if not step.boxes:
        return
    unseen = element("span", f"Step {step.number}, ", class_="unseen")
    if step.boxes == 1:
        yield block("p", _box(page, unseen, "done"), class_="boxes")
    elif step.boxes > MOST_BOXES:
        name = page.name("tally")
        field = element("input", type="number", min="0", id=name)
        said = f"done, of {step.boxes} {step.each}s" if step.each else f"done, of {step.boxes}"
        yield block("p", element("label", unseen, said, for_=name), " ", field, class_="tally")
    else:
        each = [_box(page, f"{step.each} {i}".strip()) for i in range(1, step.boxes + 1)]
        legend = block("legend", unseen, "done")
        yield block("fieldset", "\n", legend, element("div", "\n", *each, class_="boxes"))


def _box(page: Page, *label: Element | str) -> Element:
    box = element("input", type="checkbox", id=page.name("box"))
    return block("label", box, " ", element("span", *label))


def blanks(each: Blanks, page: Page) -> Element:
    """A table's rows: what is measured, what it should come to, and fields to write in what it is."""
    body = element("tbody", "\n")
    for row in each.rows:
        label = page.name("measure")
        fields = element("div", class_="fields")
        for i in range(1, min(each.times, MOST_BLANKS) + 1):
            field = element("input", type="text", id=page.name("measured"))
            if each.times > 1:
                which = page.name("which")
                shown = element("span", f"{each.each} {i}".strip(), id=which)
                field.set("aria-labelledby", f"{label} {which}")
                fields.append(element("label", shown, " ", field))
            else:
                field.set("aria-labelledby", label)
                fields.append(field)
        value = element("td", element("b", tied(row.value)))
        body.append(block("tr", element("th", tied(row.label), scope="row", id=label), value, element("td", fields)))
    return body


def lines(each: Lines, page: Page) -> Iterator[Element]:
    """A field of as many lines, to write in."""
    name = page.name("lines")
    label = element("label", tied(each.words), for_=name)
    yield block("p", label, " ", element("textarea", rows=str(each.count), id=name), class_="lines")
