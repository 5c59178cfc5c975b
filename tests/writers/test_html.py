"""The work order as a page: every word of it, in order, for who listens to it or zooms in; and no harm in it."""

from __future__ import annotations

import re
from collections.abc import Iterator
from dataclasses import fields, is_dataclass, replace
from itertools import pairwise
from xml.etree.ElementTree import Element

import pytest

from templategen.document.blocks import (
    MOST_BOXES,
    Blanks,
    Block,
    Findings,
    Heading,
    NumberRow,
    Numbers,
    Paragraph,
    Pictures,
    Points,
    Remark,
    Step,
)
from templategen.document.view import Label, View
from templategen.errors import MissingGlyph
from templategen.writers.html import html

from .document import EVERY_KIND, HEM, HOSTILE
from .pages import ALL, bare, both, pages, parsed, text_of, words_of

LAYOUT = re.compile(r"^[=_-]+$|^.*\[ \].*$|measured:|_{8}|^ += |^- |^ *Picture: ", re.MULTILINE)
"""What plain text has in place of a page's tables, boxes and fields."""


def _plain(words: Iterator[str]) -> list[str]:
    return [word.rstrip(":.,;") for word in words if word.rstrip(":.,;")]


@pytest.mark.parametrize("name", ALL)
def test_every_word_of_the_text_is_on_the_page_and_in_its_order(name: str) -> None:
    page, text = both(name)
    on_page = iter(_plain(words_of(parsed(page))))
    missing = [word for word in _plain(iter(LAYOUT.sub("", text).split())) if word not in on_page]
    assert not missing[:1]


def test_every_word_of_every_kind_of_block_is_on_the_page_and_in_its_order() -> None:
    on_page = iter(_plain(words_of(parsed(pages()["every kind"]))))
    for said in _said(EVERY_KIND):
        assert all(word in on_page for word in _plain(iter(said.split()))), said


def _said(part: object) -> Iterator[str]:
    """Every text that is a part of this, in the order in which it is read."""
    match part:
        case str():
            yield part
        case tuple():
            for each in part:
                yield from _said(each)
        case Step(number=number, title=title, text=text, templates=templates, view=view):
            yield from (f"{number}.", title, text, *templates)
            yield from _said(view)
        case View(title=title, spoken=spoken):
            yield from (title, spoken)
        case Numbers(name=name, rows=rows):
            yield from _said((name, rows))
        case _ if is_dataclass(part):
            yield from (said for each in fields(part) if each.name not in ("each", "items")
                        for said in _said(getattr(part, each.name)))  # fmt: skip


@pytest.mark.parametrize("name", ALL)
def test_names_are_unique_and_lead_to_something(name: str) -> None:
    root = parsed(pages()[name])
    names = [element.get("id") for element in root.iter() if element.get("id")]
    assert len(names) == len(set(names))
    for element in root.iter():
        led = [*element.get("aria-labelledby", "").split(), *element.get("for", "").split()]
        led += [value[1:] for key, value in element.items() if key.endswith("href")]
        assert set(led) <= set(names)


@pytest.mark.parametrize("name", ALL)
def test_headings_never_skip_a_level_and_the_title_is_one(name: str) -> None:
    headings = (bare(element) for element in parsed(pages()[name]).iter() if re.fullmatch("h[1-6]", bare(element)))
    levels = [int(heading[1]) for heading in headings]
    assert levels[0] == 1 and levels.count(1) == 1
    assert all(after <= before + 1 for before, after in pairwise(levels))


@pytest.mark.parametrize("name", ALL)
def test_whatever_is_ticked_or_written_into_has_a_name_of_its_own(name: str) -> None:
    """Within its group: a box for panel 1 of one step and of another are told apart by what stands around them."""
    root = parsed(pages()[name])
    by_name = {element.get("id"): element for element in root.iter()}
    labels = [element for element in root.iter() if bare(element) == "label"]
    inputs = [element for element in root.iter() if bare(element) in ("input", "textarea")]
    assert inputs
    for field in inputs:
        around = [text_of(label) for label in labels if field in label.iter() or label.get("for") == field.get("id")]
        named = [text_of(by_name[each]) for each in field.get("aria-labelledby", "").split()]
        assert all(named) and (named or any(around))
    for group in (element for element in root.iter() if bare(element) == "fieldset"):
        said = [text_of(label) for label in group.iter() if bare(label) == "label"]
        assert bare(group[0]) == "legend" and len(said) == len(set(said)) > 1


@pytest.mark.parametrize("name", ALL)
def test_every_picture_has_words_or_stands_beside_the_words_that_say_the_same(name: str) -> None:
    root = parsed(pages()[name])
    for drawn in (element for element in root.iter() if bare(element) == "svg"):
        if drawn.get("aria-hidden") != "true":
            title, words = (text_of(drawn[i]) for i in (0, 1))
            assert drawn.get("role") == "img" and title and len(words) > len(title)
            assert drawn.get("aria-labelledby") == f"{drawn[0].get('id')} {drawn[1].get('id')}"


def test_a_picture_says_what_its_view_says_under_the_same_title() -> None:
    (figure,) = (each for each in parsed(html([Pictures((HEM,))], "Hem")).iter() if bare(each) == "figure")
    assert [text_of(part) for part in figure[0]][:2] == [HEM.title, HEM.spoken]
    assert bare(figure[1]) == "figcaption" and text_of(figure[1]) == HEM.title


def test_a_picture_with_a_character_that_the_font_lacks_is_refused_by_name() -> None:
    view = replace(HEM, notes=(Label("\N{HIRAGANA LETTER A}", (0, 0)),))
    for block in (Pictures((view,)), Step(1, "Hem.", view=view)):
        with pytest.raises(MissingGlyph):
            html([block], "Hem")


@pytest.mark.parametrize("name", ALL)
def test_a_page_needs_nothing_from_outside_and_runs_nothing(name: str) -> None:
    page = pages()[name]
    for element in parsed(page).iter():
        assert bare(element) not in ("script", "link", "img", "iframe", "object", "embed", "base", "form", "image")
        for key, value in element.items():
            assert not key.startswith("on") and "src" not in key
            assert not re.search(r"https?:|//|javascript:|url\(", value), (key, value)
            assert not key.endswith("href") or value.startswith("#")
    (style,) = re.findall("<style>(.*?)</style>", page, re.DOTALL)
    assert not re.search(r"@import|url\(|expression|transition|animation|/\*", style)
    assert "default-src 'none'" in page


@pytest.mark.parametrize("wicked", HOSTILE)
def test_a_title_that_holds_markup_is_nothing_but_words(wicked: str) -> None:
    """In every place that a text can come to, the page says it as it was typed and has no element that it names."""
    row, said = NumberRow(wicked, wicked, wicked), replace(HEM, title=wicked, spoken=wicked)
    blocks: list[Block] = [
        Heading(wicked, first=True), Heading(wicked), Paragraph(wicked), Remark(wicked, wicked), Points((wicked,)),
        Numbers((row,), wicked), Blanks((row,), 2, wicked), Step(1, wicked, 2, wicked, wicked, said, (wicked,)),
        Findings((wicked, wicked, wicked), ()),
    ]  # fmt: skip
    root = parsed(html(blocks, wicked))
    tame = {bare(each) for each in parsed(html([replace(b, **_tamed(b)) for b in blocks], "tame")).iter()}
    assert {bare(element) for element in root.iter()} == tame
    assert all(not key.startswith("on") for element in root.iter() for key in element.keys())  # noqa: SIM118
    flat = " ".join(wicked.split())
    assert text_of(root).count(flat) >= 20
    (title,) = (each for each in root.iter() if bare(each) == "title" and each.get("id") is None)
    assert title.text == wicked


def _tamed(block: Block) -> dict[str, object]:
    """The block's texts and what holds texts, harmless."""

    def tame(part: object) -> object:
        if isinstance(part, str):
            return "tame"
        if isinstance(part, tuple):
            return tuple(map(tame, part))
        if isinstance(part, NumberRow):
            return NumberRow("tame", "tame", "tame")
        return HEM if isinstance(part, View) else part

    return {each.name: tame(getattr(block, each.name)) for each in fields(block)}


def _inputs(blocks: list[Block]) -> list[Element]:
    return [each for each in parsed(html(blocks, "Inputs")).iter() if bare(each) in ("input", "textarea")]


def test_a_box_for_each_panel_one_for_a_step_and_a_tally_for_very_many() -> None:
    assert [each.get("type") for each in _inputs([Step(1, "Cut.", 4, "panel")])] == ["checkbox"] * 4
    assert [each.get("type") for each in _inputs([Step(1, "Cut.")])] == ["checkbox"]
    assert len(_inputs([Step(1, "Cut.", MOST_BOXES, "loop")])) == MOST_BOXES
    assert [each.get("type") for each in _inputs([Step(1, "Cut.", MOST_BOXES + 1, "loop")])] == ["number"]
    assert not _inputs([Step(1, "Sweep.", 0)])


def test_steps_go_on_counting_after_whatever_parts_them() -> None:
    starts = [each.get("start") for each in parsed(pages()["every kind"]).iter() if bare(each) == "ol"]
    assert starts == ["1", "3", "4", "3"]


def test_an_outline_of_a_letter_is_in_the_page_once() -> None:
    page = pages()["every kind"]
    outlines = re.findall(r'<path id="([^"]+)"', page)
    assert outlines and len(outlines) == len(set(outlines))
    assert set(re.findall(r'<use href="#([^"]+)"', page)) == set(outlines)
