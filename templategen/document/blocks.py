"""A document as data: headings, paragraphs, numbers, pictures, steps with boxes to tick.

The same blocks are set on paper, written as plain text and as a page for the screen.
"""

from __future__ import annotations

from dataclasses import dataclass
from typing import TypeAlias

from ..drawing import Item
from .view import View


@dataclass(frozen=True, slots=True)
class Heading:
    text: str
    first: bool = False
    """Whether it is the title of the whole."""


@dataclass(frozen=True, slots=True)
class Paragraph:
    text: str


@dataclass(frozen=True, slots=True)
class Remark:
    """A notice or a caution: a word that says what it is, and the sentence."""

    word: str
    text: str


@dataclass(frozen=True, slots=True)
class NumberRow:
    label: str
    value: str
    working: str = ""


@dataclass(frozen=True, slots=True)
class Numbers:
    """Numbers with what they are and how they came about."""

    rows: tuple[NumberRow, ...]
    name: str = ""
    """What the rows are, where the heading above them does not say it: a table's caption."""


@dataclass(frozen=True, slots=True)
class Points:
    """Short things that belong together, in no order: what is got ready."""

    rows: tuple[str, ...]
    name: str = ""
    """What they are, where the heading above them does not say it."""


@dataclass(frozen=True, slots=True)
class Pictures:
    """Pictures to be seen side by side where there is room; no page divides one."""

    views: tuple[View, ...]


@dataclass(frozen=True, slots=True)
class Step:
    """One step of the work, with a box to tick for each of the ``boxes`` things it is done to."""

    number: int
    text: str
    boxes: int = 1
    each: str = ""
    """What one of them is called, where there are several: "panel"."""
    title: str = ""
    """The step in a word or two, said before the text."""
    view: View | None = None
    """How it looks."""
    templates: tuple[str, ...] = ()
    """The templates that are used, as they are called on paper."""

    @property
    def templates_said(self) -> str:
        """Which templates are used: "Template: cut gauge"; nothing where none is."""
        if not self.templates:
            return ""
        return f"Template{'s' if len(self.templates) > 1 else ''}: {'; '.join(self.templates)}"


@dataclass(frozen=True, slots=True)
class Gate:
    """A line between steps that nothing passes before it is so: "All panels to this point"."""

    text: str
    view: View | None = None
    """How it looks when it is so."""


@dataclass(frozen=True, slots=True)
class Blanks:
    """Lines to write measurements on: what is to be measured, and what it should come to."""

    rows: tuple[NumberRow, ...]
    times: int = 1
    """On how many things it is to be measured."""
    each: str = ""
    """What one of them is called, where there are several: "panel"."""


@dataclass(frozen=True, slots=True)
class Lines:
    """Empty lines to write on."""

    count: int
    words: str = "Notes"
    """What is written there."""


@dataclass(frozen=True, slots=True)
class Finding:
    """What a measurement may come to, what it then means, and what to do."""

    readings: tuple[str, ...]
    """The same reading in one unit and in another."""
    meaning: str
    remedy: str


@dataclass(frozen=True, slots=True)
class Findings:
    """Findings one below the other, under the three things that they say."""

    heads: tuple[str, str, str]
    rows: tuple[Finding, ...]


@dataclass(frozen=True, slots=True)
class Figure:
    """A picture of this height, in mm, as wide as it likes, that no page divides."""

    height: float
    items: tuple[Item, ...]
    """From its top left corner, so that y is negative."""
    words: str
    """The same in words, for who cannot see it; "" where words beside it say so already."""


MOST_BOXES = 36
"""Boxes drawn for one step; for more things than that there is a blank for a tally."""
MOST_BLANKS = 4
"""Lines to write on for one measurement."""

Block: TypeAlias = (
    Heading | Paragraph | Remark | Numbers | Points | Pictures | Step | Gate | Blanks | Lines | Findings | Figure
)
