"""A spec to start from: every field with its meaning and how to measure it, taken from the model."""

from __future__ import annotations

import textwrap
from collections.abc import Iterator, Mapping

from ..lengths.showing import Units
from .catalogue import FIELDS, TABLES, SpecField
from .values import example

_WIDTH = 88

_OPENING = """\
A spec for templategen: what was measured, and what is wanted.

A length stands in quotation marks with its unit: "5 3/8 in", "6' 2 1/2\\"", "137 mm",
"13.7 cm". Measure with a steel or wooden rule: a cloth tape stretches. Read it with your
eye straight above the mark, at the edge of the rule, and measure twice. What follows # on
a line is a note. A line that begins with # is left out: take the # away to fill it in.
"""


def starting_spec(units: Units = "inch") -> str:
    """A valid spec with a note to each field; fields that are seldom needed stand in it as notes."""
    literals = {path: example(field, units) for path, field in FIELDS.items() if field.about.asked}
    return spec_text(literals | {"units": f'"{units}"'}, units)


def spec_text(literals: Mapping[str, str], units: Units) -> str:
    """The text of a spec: ``literals`` by path, as they stand in the file; the other fields as notes."""
    lines = [*_notes(_OPENING), ""]
    lines += _table("", literals, units)
    for table, holds in TABLES.items():
        filled = any(path.startswith(f"{table}.") for path in literals)
        lines += ["", f"[{table}]" if filled else f"# [{table}]", *_notes(holds), ""]
        lines += _table(table, literals, units)
    return "\n".join(lines).rstrip() + "\n"


def _table(table: str, literals: Mapping[str, str], units: Units) -> Iterator[str]:
    fields = [field for field in FIELDS.values() if field.table == table]
    for field in fields:
        yield from _notes(said_of(field))
        if field.path in literals:
            yield f"{field.name} = {literals[field.path]}"
        else:
            yield f"# {field.name} = {example(field, units)}"
        if field is not fields[-1]:
            yield ""


def said_of(field: SpecField) -> str:
    """Everything that is said about a field, in sentences."""
    about = field.about
    sentences = [f"{about.meaning[0].upper()}{about.meaning[1:]}."]
    if about.measure:
        sentences.append(about.measure)
    if about.left_out:
        sentences.append(f"Left out: {about.left_out}.")
    return " ".join(sentences)


def _notes(text: str) -> Iterator[str]:
    for number, paragraph in enumerate(text.rstrip().split("\n\n")):
        if number:
            yield "#"
        for line in textwrap.wrap(" ".join(paragraph.split()), _WIDTH - 2):
            yield f"# {line}"
