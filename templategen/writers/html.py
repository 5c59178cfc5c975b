"""Blocks of words to one page of HTML: for a telephone beside the work, and for a screen reader.

The words are those of the text version, in its order. Boxes can be ticked and measurements written in with no script;
nothing is fetched from anywhere, and a policy in the page says so. Structure follows HTML (WHATWG) and WCAG 2.2 AA.
"""

from __future__ import annotations

import re
from collections.abc import Iterator, Sequence
from functools import cache, singledispatch
from pathlib import Path
from xml.etree.ElementTree import Element

from ..document.blocks import (
    Blanks,
    Block,
    Figure,
    Findings,
    Gate,
    Heading,
    Lines,
    Numbers,
    Paragraph,
    Pictures,
    Points,
    Remark,
    Step,
)
from ..document.setting import set_view
from ..document.view import View
from ..drawing import tied
from .drawn import picture
from .elements import block, element, put, written
from .forms import blanks, boxes, lines
from .page import Page

_POLICY = "default-src 'none'; style-src 'unsafe-inline'; base-uri 'none'; form-action 'none'"
COLOURS = Path(__file__).with_name("colours.css")
_FEWEST = 4
"""Headings from which on the page begins with links to them: our choice, more than a telephone's screen or two."""
_WIDE, _SIZE, _TALLEST = 84.0, 10.0, 90.0
"""A picture's width and height in mm and its type in points: our choice, type about as large as the words around it
on a telephone 360 CSS pixels wide."""
_REM = 0.28
"""Rem to a mm of such a picture where there is room: its type is then as large as the words."""
_MAP_REM = 0.26
"""The same for a picture that comes in mm of paper, with small type."""


def html(blocks: Sequence[Block], title: str) -> str:
    """``blocks`` as a page that is called ``title``, its first heading before that."""
    page = Page()
    main = element("main")
    if not (blocks and isinstance(blocks[0], Heading) and blocks[0].first):
        blocks = [Heading(title, first=True), *blocks]
    steps: Element | None = None
    last = 0
    for each in blocks:
        if isinstance(each, Step):
            if steps is None or each.number != last + 1:
                steps = block("ol", start=str(each.number), class_="steps")
                steps.text = "\n"
                main.append(steps)
            last = each.number
            put(steps, _elements(each, page))
        else:
            steps = None
            put(main, _elements(each, page))
    if len(page.headings) >= _FEWEST:
        main.insert(1, _contents(page))
    body = element("body", "\n", *page.letters.defined(), main)
    first = blocks[0].text if isinstance(blocks[0], Heading) else ""
    head = _head(title if first == title else f"{first}: {title}")
    return written(element("html", "\n", head, body, lang="en"))


def _head(title: str) -> Element:
    return block(
        "head",
        "\n",
        block("meta", charset="utf-8"),
        block("meta", http_equiv="Content-Security-Policy", content=_POLICY),
        block("meta", name="viewport", content="width=device-width, initial-scale=1"),
        block("meta", name="color-scheme", content="light dark"),
        block("title", title),
        block("style", _style()),
    )


@cache
def _style() -> str:
    """The page's style sheets, which stand beside this module, without their comments."""
    rules = "".join(path.read_text(encoding="utf-8") for path in (COLOURS, COLOURS.with_name("html.css")))
    return re.sub(r"/\*.*?\*/\s*", "", rules, flags=re.DOTALL)


def _contents(page: Page) -> Element:
    links = [block("li", element("a", text, href=f"#{name}")) for name, text in page.headings]
    folded = element("details", element("summary", "Contents"), "\n", block("ul", "\n", *links))
    return block("nav", folded, aria_label="Contents")


@singledispatch
def _elements(each: Block, page: Page) -> Iterator[Element]:
    raise TypeError(f"no way to write a {type(each).__name__}")


@_elements.register
def _(each: Heading, page: Page) -> Iterator[Element]:
    level, name = page.enter(each)
    yield block(f"h{level}", tied(each.text), id=name)


@_elements.register
def _(each: Paragraph, page: Page) -> Iterator[Element]:
    yield block("p", tied(each.text))


@_elements.register
def _(each: Remark, page: Page) -> Iterator[Element]:
    yield block("p", element("strong", f"{each.word}:"), f" {tied(each.text)}", class_="remark", role="note")


@_elements.register
def _(each: Numbers, page: Page) -> Iterator[Element]:
    """How a number came about stands in its cell, beside it or below it as there is room."""
    worked = any(row.working for row in each.rows)
    body = element("tbody", "\n")
    for row in each.rows:
        value = element("div", element("b", tied(row.value)), class_="value")
        if row.working:
            value.append(element("span", f" {tied(row.working)}", class_="working"))
        body.append(block("tr", element("th", tied(row.label), scope="row"), element("td", value)))
    heads = ("What", "How much, and how it comes about" if worked else "How much")
    yield _table(each.name, heads, body, page, "numbers")


@_elements.register
def _(each: Findings, page: Page) -> Iterator[Element]:
    body = element("tbody", "\n")
    for row in each.rows:
        reading = element("th", tied(", or ".join(row.readings)), scope="row")
        cells = element("td", tied(f"{row.meaning}.")), element("td", tied(row.remedy))
        body.append(block("tr", reading, *cells))
    yield _table("", each.heads, body, page, "findings")


@_elements.register
def _(each: Blanks, page: Page) -> Iterator[Element]:
    yield _table("", ("To measure", "It should be", "Measured"), blanks(each, page), page, "blanks")


def _table(name: str, heads: Sequence[str], body: Element, page: Page, kind: str) -> Element:
    """A table; without a name of its own it is called, unseen, as the heading above it is."""
    caption = block("caption", name) if name else block("caption", element("span", page.heading, class_="unseen"))
    columns = (element("th", head, scope="col") for head in heads)
    return block("table", "\n", caption, block("thead", element("tr", *columns)), body, class_=kind)


@_elements.register
def _(each: Points, page: Page) -> Iterator[Element]:
    if each.name:
        yield block("p", element("b", tied(each.name)))
    yield block("ul", "\n", *(block("li", tied(row)) for row in each.rows))


@_elements.register
def _(each: Gate, page: Page) -> Iterator[Element]:
    yield block("p", element("strong", tied(each.text)), class_="gate")
    if each.view:
        yield _figure(each.view, page)


@_elements.register
def _(each: Lines, page: Page) -> Iterator[Element]:
    yield from lines(each, page)


@_elements.register
def _(each: Pictures, page: Page) -> Iterator[Element]:
    yield block("div", "\n", *(_figure(view, page) for view in each.views), class_="pictures")


@_elements.register
def _(each: Figure, page: Page) -> Iterator[Element]:
    """Its words for everybody; the picture, which says the same, where there is room for its type."""
    if each.words:
        yield block("p", tied(each.words))
    width = max(float(item.bounds.right) for item in each.items) if each.items else 0.0
    if width:
        drawn = picture(each.items, width, each.height, page.letters, _MAP_REM)
        drawn.set("aria-hidden", "true")
        yield block("div", drawn, class_="map")


@_elements.register
def _(each: Step, page: Page) -> Iterator[Element]:
    step = element("div", "\n", class_="pictured step" if each.view else "step")
    if each.title:
        step.append(block(f"h{page.below}", tied(each.title)))
    step.append(block("p", tied(each.text)))
    if each.templates:
        word = "Template" if len(each.templates) == 1 else "Templates"
        step.append(block("p", f"{word}: {tied('; '.join(each.templates))}", class_="templates"))
    if each.view:
        step.append(_figure(each.view, page))
    put(step, boxes(each, page))
    yield block("li", step)


def _figure(view: View, page: Page) -> Element:
    """A picture, its words for who cannot see it, and its title below it."""
    setting = set_view(view, _WIDE, _SIZE, _TALLEST)
    drawn = picture(setting.items, setting.width, setting.height, page.letters, _REM)
    title, words = page.name("picture"), page.name("words")
    drawn.set("role", "img")
    drawn.set("aria-labelledby", f"{title} {words}")
    drawn[:0] = [element("title", view.title, id=title), element("desc", tied(view.spoken), id=words)]
    return block("figure", drawn, "\n", element("figcaption", tied(view.title)))
