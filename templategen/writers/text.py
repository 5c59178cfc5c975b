"""Blocks of words to plain text, for who has no printer and for a screen reader."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from functools import singledispatch
from textwrap import wrap

from ..drawing.blocks import (
    MOST_BLANKS,
    MOST_BOXES,
    Blanks,
    Block,
    Heading,
    NumberRow,
    Numbers,
    Paragraph,
    Remark,
    Step,
)

WIDTH = 78


def text(blocks: Sequence[Block]) -> str:
    """``blocks`` as text in lines of at most 78 characters."""
    lines = [line.rstrip() for block in blocks for line in _lines(block)]
    return "\n".join(lines).strip() + "\n"


@singledispatch
def _lines(block: Block) -> Iterator[str]:
    raise TypeError(f"no way to write a {type(block).__name__}")


@_lines.register
def _(block: Heading) -> Iterator[str]:
    if not block.first:
        yield ""
    yield from wrap(block.text, WIDTH)
    yield ("=" if block.first else "-") * min(len(block.text), WIDTH)
    yield ""


@_lines.register
def _(block: Paragraph) -> Iterator[str]:
    yield from wrap(block.text, WIDTH)
    yield ""


@_lines.register
def _(block: Remark) -> Iterator[str]:
    yield from wrap(f"{block.word}: {block.text}", WIDTH, subsequent_indent="  ")
    yield ""


@_lines.register
def _(block: Numbers) -> Iterator[str]:
    for row in block.rows:
        yield from _number_row(row)


@_lines.register
def _(block: Blanks) -> Iterator[str]:
    blanks = "  ".join(["________"] * min(block.times, MOST_BLANKS))
    for row in block.rows:
        yield from _number_row(NumberRow(row.label, f"{row.value}   measured: {blanks}"))


def _number_row(row: NumberRow) -> Iterator[str]:
    yield from wrap(f"{row.label}: {row.value}", WIDTH, subsequent_indent="    ")
    if row.working:
        yield from wrap(row.working, WIDTH, initial_indent="    = ", subsequent_indent="      ")


@_lines.register
def _(block: Step) -> Iterator[str]:
    lead = f"{block.number}. "
    yield from wrap(block.text, WIDTH, initial_indent=lead, subsequent_indent=" " * len(lead))
    if block.boxes:
        numbered = [f"[ ] {i}" for i in range(1, min(block.boxes, MOST_BOXES) + 1)]
        boxes = "  ".join(numbered) if block.boxes > 1 else "[ ]"
        more = f"  ... of {block.boxes}" if block.boxes > MOST_BOXES else ""
        indent = " " * len(lead)
        yield from wrap(f"{block.each} {boxes}{more}".strip(), WIDTH, initial_indent=indent, subsequent_indent=" " * 9)
    yield ""
