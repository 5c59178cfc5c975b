"""The plan told as text: every number with how it came about."""

from __future__ import annotations

import re
from collections.abc import Iterable, Iterator
from itertools import chain
from textwrap import wrap

from ..lengths.counting import plural
from .figures import Figure, Notice
from .fullness import fullness_working
from .headings import HEADINGS
from .plan import PiecesPlan, Plan
from .wording import decimal, say

WIDTH = 96
_LABEL, _SHOWN = 23, 27
_INDENT = "  "
_TIE = "\N{NO-BREAK SPACE}"

def tell_plan(plan: Plan) -> str:
    """The text of ``templategen plan``, at most 96 columns wide, ending in a line feed."""
    numbers = [*_sections(plan), _marks(plan), _cut_lines(plan), _counts(plan)]
    blocks = [_title(plan), *numbers, *tell_notices(plan.notices)]
    return "\n\n".join("\n".join(block) for block in blocks if block) + "\n"


def _title(plan: Plan) -> list[str]:
    lines = wrap(plan.spec.title, WIDTH) or ["Plan"]
    return [*lines, "=" * max(len(line) for line in lines)]


def _sections(plan: Plan) -> Iterator[list[str]]:
    """Every number. Heights are up from the old bottom edge."""
    for section in plan.sections:
        rows = _section(plan, section.title, section.figures)
        yield [*rows, *chain.from_iterable(_row(each.label, each.shown, each.working) for each in section.amounts)]


def _section(plan: Plan, heading: str, figures: tuple[Figure, ...]) -> list[str]:
    rows = [_row(figure.label, plan.tape.show(figure.value), figure.working) for figure in figures]
    return [heading, *chain.from_iterable(rows)]


def _row(label: str, shown: str, working: str) -> list[str]:
    """One number: what it is called, what it comes to, and beside that how it came about."""
    start = f"{_INDENT}{label:<{_LABEL}}{shown:<{_SHOWN}} "
    first, *rest = wrapped(working, WIDTH - len(start)) or [""]
    return [f"{start}{first}".rstrip(), *(" " * len(start) + line for line in rest)]


def _marks(plan: Plan) -> list[str]:
    if not plan.heading.marks:
        return []
    places = [f"{mark.label}: {plan.tape.show(mark.at)}" for mark in plan.heading.marks]
    return [f"{marks_said(plan)}, from the left end of the top edge, the back towards you", *columns(places)]


def marks_said(plan: Plan) -> str:
    """What the marks along the heading are: "Loop centres"."""
    return HEADINGS[plan.heading.style].marks_said


def _cut_lines(plan: Plan) -> list[str]:
    if plan.drop.level:
        return []
    rows = [
        f"at {say(plan.tape, mark.at)}: finish {say(plan.tape, mark.finish)}, cut {say(plan.tape, mark.cut)}"
        for mark in plan.drop.marks
    ]
    return ["Across the width, from the left as seen from the front, up from the old bottom edge", *columns(rows)]


def columns(entries: list[str]) -> list[str]:
    """Entries set in as many columns as fit, read down and then across; one that is too long goes on below."""
    wide = max(len(entry) for entry in entries) + 3
    across = (WIDTH - len(_INDENT)) // wide
    if not across:
        return [line for entry in entries for line in wrapped(_INDENT + entry, WIDTH, 2 * _INDENT)]
    down = -(-len(entries) // across)
    return [
        (_INDENT + "".join(f"{entry:<{wide}}" for entry in entries[line::down])).rstrip()
        for line in range(down)
    ]


def _counts(plan: Plan) -> list[str]:
    heading, panels = plan.heading, plural(plan.panels, "panel")
    rows = []
    if heading.marks:
        needed = f"× {panels} = {heading.on_each * plan.panels} needed" if heading.thing != "mark" else ""
        rows.append(_row(f"{heading.thing}s", f"{heading.on_each} on each panel", needed))
    rows += _pieces(plan.offcut.pieces) if plan.offcut.pieces else []
    rows.append(_row("fullness", f"{decimal(float(plan.ratios['fullness']))} times", fullness_working(plan.spec)))
    return ["Counts", *chain.from_iterable(rows)]


def _pieces(plan: PiecesPlan) -> Iterator[list[str]]:
    thing, things = plan.pieces.thing, f"{plan.pieces.thing}s"
    yield _row(
        "strips for them", f"{plan.strips_needed} needed", f"{plural(plan.per_strip, thing)} from a strip"
    )
    yield _row(
        f"{things} in the offcuts",
        f"{plan.available} as cut",
        f"{plural(plan.strips_as_cut, 'strip')}; {plan.available_unpicked} with the old hem let down, "
        f"{plural(plan.strips_unpicked, 'strip')}",
    )


def tell_notices(notices: Iterable[Notice]) -> Iterator[list[str]]:
    """The lines of each notice."""
    for notice in notices:
        start = f"{notice.level.upper():<9}"
        yield wrapped(start + notice.text, WIDTH, " " * len(start))


def wrapped(text: str, width: int, indent: str = "") -> list[str]:
    """Lines of a text, with no number parted from its fraction, its unit or what it counts."""
    tied = re.sub(r"(?<=\d) (?=[\w×%])", _TIE, text)
    lines = wrap(tied, width, subsequent_indent=indent, break_on_hyphens=False)
    return [line.replace(_TIE, " ") for line in lines]
