"""Blocks of words to plain text, for who has no printer and for a screen reader."""

from __future__ import annotations

import textwrap
from collections.abc import Iterator, Sequence
from functools import singledispatch

from ..document.blocks import (
    MOST_BLANKS,
    MOST_BOXES,
    Blanks,
    Block,
    Figure,
    Findings,
    Gate,
    Heading,
    Lines,
    NumberRow,
    Numbers,
    Paragraph,
    Pictures,
    Points,
    Remark,
    Step,
)
from ..document.view import View
from ..drawing import tied

WIDTH = 78
_TIE = "\N{NO-BREAK SPACE}"


def text(blocks: Sequence[Block]) -> str:
    """``blocks`` as text in lines of at most 78 characters."""
    lines: list[str] = []
    for block in blocks:
        if isinstance(block, Heading) and block.first and lines and lines[-1]:
            lines.append("")
        lines += (line.rstrip().replace(_TIE, " ") for line in _lines(block))
    return "\n".join(lines).strip() + "\n"


def _wrap(text: str, first: str = "", rest: str = "") -> list[str]:
    """Lines of ``text``, the first indented by ``first`` and the others by ``rest``."""
    return textwrap.wrap(tied(text), WIDTH, initial_indent=first, subsequent_indent=rest, break_on_hyphens=False)


@singledispatch
def _lines(block: Block) -> Iterator[str]:
    raise TypeError(f"no way to write a {type(block).__name__}")


@_lines.register
def _(block: Heading) -> Iterator[str]:
    if not block.first:
        yield ""
    yield from _wrap(block.text)
    yield ("=" if block.first else "-") * min(len(block.text), WIDTH)
    yield ""


@_lines.register
def _(block: Paragraph) -> Iterator[str]:
    yield from _wrap(block.text)
    yield ""


@_lines.register
def _(block: Remark) -> Iterator[str]:
    yield from _wrap(f"{block.word}: {block.text}", rest="  ")
    yield ""


@_lines.register
def _(block: Points) -> Iterator[str]:
    if block.name:
        yield f"{block.name}:"
    for row in block.rows:
        yield from _wrap(row, "- ", "  ")
    yield ""


@_lines.register
def _(block: Gate) -> Iterator[str]:
    yield "=" * WIDTH
    yield from _wrap(block.text)
    if block.view:
        yield from _picture(block.view)
    yield "=" * WIDTH
    yield ""


@_lines.register
def _(block: Lines) -> Iterator[str]:
    yield f"{block.words}:"
    yield from ["_" * WIDTH] * block.count
    yield ""


@_lines.register
def _(block: Pictures) -> Iterator[str]:
    for view in block.views:
        yield from _picture(view)
    yield ""


def _picture(view: View, indent: str = "") -> list[str]:
    """What there is to be seen, in words."""
    return _wrap(f"Picture: {view.spoken}", indent, f"{indent}  ")


@_lines.register
def _(block: Numbers) -> Iterator[str]:
    if block.name:
        yield from _wrap(f"{block.name}:")
    for row in block.rows:
        yield from _number_row(row)
    if block.name:
        yield ""


@_lines.register
def _(block: Blanks) -> Iterator[str]:
    blanks = "  ".join(["________"] * min(block.times, MOST_BLANKS))
    for row in block.rows:
        yield from _number_row(NumberRow(row.label, f"{row.value}   measured: {blanks}"))
    yield ""


@_lines.register
def _(block: Findings) -> Iterator[str]:
    for row in block.rows:
        yield from _wrap(f"{', or '.join(row.readings)}: {row.meaning}. {row.remedy}", rest="    ")
    yield ""


@_lines.register
def _(block: Figure) -> Iterator[str]:
    if block.words:
        yield from _wrap(block.words)
        yield ""


def _number_row(row: NumberRow) -> Iterator[str]:
    yield from _wrap(f"{row.label}: {row.value}", rest="    ")
    if row.working:
        yield from _wrap(row.working, "    = ", "      ")


@_lines.register
def _(block: Step) -> Iterator[str]:
    lead = f"{block.number}. "
    indent = " " * len(lead)
    yield from _wrap(f"{block.title}. {block.text}" if block.title else block.text, lead, indent)
    if block.templates:
        yield from _wrap(block.templates_said, indent, f"{indent}  ")
    if block.view:
        yield from _picture(block.view, indent)
    if block.boxes:
        numbered = [f"[{_TIE}]{_TIE}{i}" for i in range(1, min(block.boxes, MOST_BOXES) + 1)]
        boxes = "  ".join(numbered) if block.boxes > 1 else f"[{_TIE}]"
        more = f"  ... of {block.boxes}" if block.boxes > MOST_BOXES else ""
        yield from _wrap(f"{block.each} {boxes}{more}".strip(), indent, " " * 9)
    yield ""
