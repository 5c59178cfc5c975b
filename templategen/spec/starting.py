"""A spec to start from: every field with its meaning and how to measure it, taken from the model."""

from __future__ import annotations

import json
import textwrap
from collections.abc import Iterator, Mapping

from ..lengths.showing import Units
from .catalogue import FIELDS, STYLE, TABLES, SpecField
from .typed import as_typed
from .values import example

_WIDTH = 88

_OPENING = """\
A spec for templategen: what was measured, and what is wanted.

A length stands in quotation marks with its unit: "5 3/8 in", "6' 2 1/2\\"", "137 mm",
"13.7 cm". Measure with a steel or wooden rule: a cloth tape stretches. Read it with your
eye straight above the mark, at the edge of the rule, and measure twice. What follows # on
a line is a note. A line that begins with # is left out: take the # away to fill it in.
"""


def starting_spec(units: Units = "inch", styles: Mapping[str, str] | None = None) -> str:
    """A valid spec with a note to each field; fields that are seldom needed stand in it as notes.

    ``styles`` are the kinds it is for, ``{"heading.style": "eyelets"}``; the other choices are the usual ones.
    """
    return spec_text(starting_literals(units, styles), units)


def starting_literals(units: Units, styles: Mapping[str, str] | None = None) -> dict[str, str]:
    """The values of a starting spec by path, as they stand in the file."""
    chosen = usual_styles() | dict(styles or {})
    literals = {
        path: as_typed(chosen[path]) if path in chosen else example(field, units)
        for path, field in FIELDS.items()
        if field.there(chosen) and (field.about.asked or path in (styles or {}) or _needed(field))
    }
    if chosen["panel.heading.style"] != "casing":
        literals["drop.hung_by"] = as_typed("old heading")
    return literals


def usual_styles() -> dict[str, str]:
    """What is chosen where nobody has: the default of each choice among kinds, or else its sample."""
    choosers = (field for field in FIELDS.values() if field.name == STYLE)
    return {field.path: str(field.default or field.about.inch) for field in choosers}


def _needed(field: SpecField) -> bool:
    """Whether it cannot be left out where the kind of its table has been chosen."""
    return field.required and bool(field.styles)


def spec_text(literals: Mapping[str, str], units: Units, opening: str = _OPENING) -> str:
    """The text of a spec: ``literals`` by path, as they stand in the file; the other fields as notes.

    Fields that do not belong to the kinds that are chosen are left out. ``opening`` is what stands above all of it.
    """
    chosen = usual_styles()
    chosen |= {path: json.loads(literal) for path, literal in literals.items() if path in chosen}
    lines = [*notes(opening), ""]
    lines += _table("", literals, units, chosen)
    for table, holds in TABLES.items():
        filled = any(path.startswith(f"{table}.") for path in literals)
        lines += ["", f"[{table}]" if filled else f"# [{table}]", *notes(holds), ""]
        lines += _table(table, literals, units, chosen)
    return "\n".join(lines).rstrip() + "\n"


def _table(table: str, literals: Mapping[str, str], units: Units, chosen: Mapping[str, str]) -> Iterator[str]:
    fields = [field for field in FIELDS.values() if field.table == table and field.there(chosen)]
    for field in fields:
        yield from notes(said_of(field))
        if field.path in literals:
            yield f"{field.name} = {literals[field.path]}"
        else:
            yield f"# {field.name} = {as_typed(chosen[field.path]) if field.path in chosen else example(field, units)}"
        if field is not fields[-1]:
            yield ""


def said_of(field: SpecField) -> str:
    """Everything that is said about a field, in sentences."""
    about = field.about
    sentences = [f"{about.meaning[0].upper()}{about.meaning[1:]}."]
    if field.name == STYLE and len(field.choices) > 1:
        *most, last = map(as_typed, field.choices)
        sentences.append(f"One of {', '.join(most)} and {last}.")
    if about.measure:
        sentences.append(about.measure)
    if about.left_out:
        sentences.append(f"Left out: {about.left_out}.")
    return " ".join(sentences)


def notes(text: str) -> Iterator[str]:
    """A text as notes of a file, a line each."""
    for number, paragraph in enumerate(text.rstrip().split("\n\n")):
        if number:
            yield "#"
        for line in textwrap.wrap(" ".join(paragraph.split()), _WIDTH - 2):
            yield f"# {line}"
