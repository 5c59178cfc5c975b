"""The plan told as text: every number with how it came about."""

from __future__ import annotations

import re
from collections.abc import Iterator
from itertools import chain
from textwrap import wrap

from ..lengths.counting import plural
from .fullness import fullness_working
from .plan import Figure, Plan
from .wording import decimal, say

WIDTH = 96
_LABEL, _SHOWN = 23, 27
_INDENT = "  "
_TIE = "\N{NO-BREAK SPACE}"

SECTIONS: tuple[tuple[str, tuple[str, ...]], ...] = (
    ("How it hangs", ("loop_length", "tube_depth", "upper_seam", "take_up_old", "take_up_new", "hang_shift")),
    (
        "From the floor to the cut",
        ("floor_line", "computed_floor_line", "clearance", "finish_line", "cut_line", "finished_length"),
    ),
    (
        "The new hem",
        (
            "hem_depth",
            "hem_turn_under",
            "hem_allowance",
            "hem_fold_to_turn",
            "hem_fold_to_depth",
            "stitch_line",
        ),
    ),
    ("The loops", ("edge_inset", "loop_pitch", "loop_width", "loop_strip")),
    ("The offcut", ("offcut_depth", "offcut_unpicked", "offcut_clear")),
)
"""The figures by section, in the order of the work. Heights are up from the old bottom edge."""


def tell_plan(plan: Plan) -> str:
    """The text of ``templategen plan``, at most 96 columns wide, ending in a line feed."""
    blocks = [_title(plan), *_sections(plan), _marks(plan), _cut_lines(plan), _counts(plan), *_notices(plan)]
    return "\n\n".join("\n".join(block) for block in blocks if block) + "\n"


def _title(plan: Plan) -> list[str]:
    lines = wrap(plan.spec.title, WIDTH) or ["Plan"]
    return [*lines, "=" * max(len(line) for line in lines)]


def _sections(plan: Plan) -> Iterator[list[str]]:
    told: set[str] = set()
    for heading, keys in SECTIONS:
        told.update(keys)
        yield _section(plan, heading, [plan.figures[key] for key in keys if key in plan.figures])
    yield _section(plan, "Also", [figure for key, figure in plan.figures.items() if key not in told])


def _section(plan: Plan, heading: str, figures: list[Figure]) -> list[str]:
    rows = [_row(figure.label, plan.tape.show(figure.value), figure.working) for figure in figures]
    return [heading, *chain.from_iterable(rows)] if rows else []


def _row(label: str, shown: str, working: str) -> list[str]:
    """One number: what it is called, what it comes to, and beside that how it came about."""
    start = f"{_INDENT}{label:<{_LABEL}}{shown:<{_SHOWN}} "
    first, *rest = _wrapped(working, WIDTH - len(start)) or [""]
    return [f"{start}{first}".rstrip(), *(" " * len(start) + line for line in rest)]


def _marks(plan: Plan) -> list[str]:
    places = [f"{mark.label}: {plan.tape.show(mark.at)}" for mark in plan.heading.marks]
    return ["Loop centres, from the left end of the top edge, the back towards you", *_columns(places)]


def _cut_lines(plan: Plan) -> list[str]:
    if plan.drop.level:
        return []
    rows = [
        f"at {say(plan.tape, mark.at)}: finish {say(plan.tape, mark.finish)}, cut {say(plan.tape, mark.cut)}"
        for mark in plan.drop.marks
    ]
    return ["Across the width, from the left as seen from the front, up from the old bottom edge", *_columns(rows)]


def _columns(entries: list[str]) -> list[str]:
    """Entries set in as many columns as fit, read down and then across; one that is too long goes on below."""
    wide = max(len(entry) for entry in entries) + 3
    across = (WIDTH - len(_INDENT)) // wide
    if not across:
        return [line for entry in entries for line in _wrapped(_INDENT + entry, WIDTH, 2 * _INDENT)]
    down = -(-len(entries) // across)
    return [
        (_INDENT + "".join(f"{entry:<{wide}}" for entry in entries[line::down])).rstrip()
        for line in range(down)
    ]


def _counts(plan: Plan) -> list[str]:
    counts = plan.counts
    from_each = f"{plural(counts['loops_per_strip'], 'loop')} from a strip"
    panels = plural(counts["panels"], "panel")
    rows = (
        _row("loops", f"{counts['loops']} on each panel", f"× {panels} = {counts['loops_needed']} needed"),
        _row("strips for them", f"{counts['strips_needed']} needed", from_each),
        _row(
            "loops in the offcuts",
            f"{counts['loops_available']} as cut",
            f"{plural(counts['strips_as_cut'], 'strip')}; {counts['loops_available_unpicked']} with the "
            f"old hem let down, {plural(counts['strips_unpicked'], 'strip')}",
        ),
        _row("fullness", f"{decimal(float(plan.ratios['fullness']))} times", fullness_working(plan.spec)),
    )
    return ["Counts", *chain.from_iterable(rows)]


def _notices(plan: Plan) -> Iterator[list[str]]:
    for notice in plan.notices:
        start = f"{notice.level.upper():<9}"
        yield _wrapped(start + notice.text, WIDTH, " " * len(start))


def _wrapped(text: str, width: int, indent: str = "") -> list[str]:
    """Lines of a text, with no number parted from its fraction, its unit or what it counts."""
    tied = re.sub(r"(?<=\d) (?=[\w×])", _TIE, text)
    lines = wrap(tied, width, subsequent_indent=indent, break_on_hyphens=False)
    return [line.replace(_TIE, " ") for line in lines]
