"""A record to keep: what the kit was made from, how it hung, and how the very same kit is made again."""

from __future__ import annotations

from collections.abc import Callable, Iterator, Mapping
from itertools import pairwise
from typing import Any

from ..document.blocks import Blanks, Block, Heading, Lines, NumberRow, Numbers, Paragraph
from ..fingerprint import fingerprint_of
from ..lengths import Length, Tape
from ..planning import JobPlan, Plan
from ..planning.lines import line_of
from ..planning.plan import DropMark
from ..planning.widths import kept_edge
from ..spec import FIELDS, Spec, SpecField, Together
from ..spec.catalogue import fields_of
from ..spec.given import given, given_by_windows
from ..spec.quantities import Quantity
from ..spec.typed import quoted
from ..spec.values import read_value
from ..version import __version__
from .again import command

TITLE = "A record to keep"
NOTES = 5
"""Lines for notes: our choice, because more would take a page of its own."""
_KNOWN: Mapping[str, SpecField] = {**FIELDS, **fields_of(Together, "together.")}


def record(job: JobPlan, carried: Mapping[str, str], spec: str = "") -> list[Block]:
    """The record of a kit whose PDF carries these texts by file name; ``spec`` is the file it was made from."""
    return [
        Heading(TITLE),
        *(Numbers(rows, name) for name, rows in in_short(job) if rows),
        *(block for window in job.windows for block in _as_hung(window.plan, window.label)),
        Lines(NOTES),
        *_again(job, carried, spec),
    ]


def in_short(job: JobPlan) -> Iterator[tuple[str, tuple[NumberRow, ...]]]:
    """Every field that was given, as a table of what holds for all windows, and one of what each window says itself."""
    spec = job.spec
    if not spec.source:
        yield "What was given", tuple(_row(spec, FIELDS[path], value) for path, value in _told(spec).items())
        return
    yield "What was given", tuple(_rows(spec, given(spec.source)))
    for window, own in zip(job.windows, given_by_windows(spec.source), strict=False):
        yield f"What was given for {window.label}", tuple(_rows(window.plan.spec, own))


def _rows(spec: Spec, fields: Mapping[str, Any]) -> Iterator[NumberRow]:
    """Fields as they were typed, by path, each with what it was read as."""
    for path, typed in fields.items():
        field = _KNOWN[path]
        yield _row(spec, field, read_value(field, typed, spec.units), _as_typed(typed))


def _told(spec: Spec) -> dict[str, Any]:
    """The fields of a spec that was read from no text: those that are not what stands where they are left out."""
    found = {path: _value_at(spec, path) for path in FIELDS}
    return {path: value for path, value in found.items() if value not in (FIELDS[path].default, None)}


def _value_at(spec: Spec, path: str) -> Any:
    """What a spec has at a path, "panel.width"; None for a field of another kind than the one chosen."""
    value: Any = spec
    for name in path.split("."):
        value = getattr(value, name, None)
    return value


def _row(spec: Spec, field: SpecField, value: Any, typed: str = "") -> NumberRow:
    """The field's path, what it is, and what the catalogue says it is; how it was typed where that reads otherwise."""
    shown, meaning = _shown(spec.tape, value), field.about.meaning
    if field.table == "drop":  # the catalogue says floor for whatever panels hang to
        meaning = meaning.replace("the floor", line_of(spec).the)
    as_typed = f"; typed {typed}" if typed and typed not in (shown, str(value)) else ""
    return NumberRow(field.path, shown, f"{meaning}{as_typed}")


def _shown(tape: Tape, value: Any) -> str:
    match value:
        case Length():
            return tape.show(value)
        case bool():
            return "yes" if value else "no"
        case Quantity():
            unit = next(iter(value.UNITS))
            return f"{float(value.value):g} {'times' if unit == 'time' else unit}"
        case tuple():
            return "; ".join(_shown(tape, each) for each in value)
    return str(value)


def _as_typed(typed: Any) -> str:
    """A value as it stands in the file, on one line."""
    if isinstance(typed, list | tuple):
        return "; ".join(map(_as_typed, typed))
    if isinstance(typed, bool):
        return "yes" if typed else "no"
    return quoted(str(typed), plain=True)


def _as_hung(plan: Plan, label: str) -> Iterator[Block]:
    """Blanks for what is measured: the floor before anything is cut, and the hem once it hangs."""
    line, tape = line_of(plan.spec).name, plan.tape
    places = list(_places(plan))
    gaps = [gap_at(plan, at) for _, at in places]
    # Of a panel that is split, what each one has depends on where it was cut from, unless all hang alike.
    shown = [tape.show(gap) if plan.spec.sides.split == 1 or len(set(gaps)) == 1 else "" for gap in gaps]
    marks = (NumberRow(f"{line} mark, {where}", tape.show(floor_at(plan, at))) for where, at in places)
    hems = (
        NumberRow(f"hem above the {line}, {where}", gap) for (where, _), gap in zip(places, shown, strict=True)
    )
    yield Heading(f"Measured, {label}" if label else "Measured")
    yield Blanks(tuple(marks), plan.spec.panel.count, "panel")
    yield Blanks(tuple(hems), plan.panels, "panel")


def _places(plan: Plan) -> Iterator[tuple[str, Length]]:
    """Three places of a panel, left to right as seen from the front, and where they were on the panel as bought.

    Of panels that are split, those of the panel that was bought: each of them lies somewhere between.
    """
    whole = plan.spec.panel.width
    made = whole if plan.spec.sides.split > 1 else plan.width
    start = whole - made if kept_edge(plan.spec) == "right" else whole * 0
    for name, share in (("left", 0), ("middle", 1), ("right", 2)):
        yield name, start + made * share / 2


def floor_at(plan: Plan, at: Length) -> Length:
    """Where the floor was marked, or what lies between two marks, on a straight line from one to the other."""
    return _between(plan, at, lambda mark: mark.floor)


def gap_at(plan: Plan, at: Length) -> Length:
    """How far above the floor the finished edge hangs there; negative below it."""
    return _between(plan, at, plan.drop.gap)


def _between(plan: Plan, at: Length, height: Callable[[DropMark], Length]) -> Length:
    marks = plan.drop.marks
    left, right = next(
        (pair for pair in pairwise(marks) if pair[0].at <= at <= pair[1].at), marks[-2:]
    )
    low = height(left)
    rise = height(right) - low
    return low + rise * ((at - left.at) / (right.at - left.at))


def _again(job: JobPlan, carried: Mapping[str, str], spec: str) -> Iterator[Block]:
    """The fingerprint, and the command; nothing where the kit carries nothing that it could be made from."""
    if not carried:
        return
    made = command(carried, spec, despite_stops=bool(job.stops))
    yield Numbers(
        (
            NumberRow(
                "fingerprint",
                fingerprint_of(carried),
                f"of all that was given, the options, and templategen {__version__}: any change gives another",
            ),
        )
    )
    yield Paragraph(f"This very kit is made again by: {made}")
