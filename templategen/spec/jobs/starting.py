"""A job to start from: what the windows share, then two windows, with a note to each field."""

from __future__ import annotations

from collections.abc import Iterator, Mapping

from ...lengths.showing import Units
from ..about import About
from ..catalogue import FIELDS, SpecField, fields_of
from ..starting import notes, said_of, spec_text, starting_literals
from ..typed import as_typed
from ..values import example
from .model import Names, Together

OF_A_WINDOW = (
    "rod.length", "panel.count", "panel.width", "panel.length", "drop.floor_marks", "drop.rod_to_floor",
)  # fmt: skip
"""Fields that stand with each window of the starting job: our choice, because they are measured window by window."""
_SECOND = {"name": ("north window", "north window"), "floor_marks": ('["13 3/4 in"]', '["348 mm"]')}

_OPENING = """\
A job for templategen: several windows, made as one kit, alike panels together.

What stands above the first [[window]] holds for every window. What a window says itself, in
the same words with the table in front, panel.width = "54 in", holds for that window alone.

A length stands in quotation marks with its unit: "5 3/8 in", "6' 2 1/2\\"", "137 mm",
"13.7 cm". Measure with a steel or wooden rule: a cloth tape stretches. Read it with your
eye straight above the mark, at the edge of the rule, and measure twice. What follows # on
a line is a note. A line that begins with # is left out: take the # away to fill it in.
"""


def starting_job(units: Units = "inch", styles: Mapping[str, str] | None = None) -> str:
    """A valid job of two windows with a note to each field; ``styles`` are the kinds it is for."""
    literals = starting_literals(units, styles) | {"title": as_typed("Village library, the reading rooms")}
    shared = {path: literal for path, literal in literals.items() if path not in OF_A_WINDOW}
    lines = [spec_text(shared, units, _OPENING).rstrip(), "", "# [together]", *notes(Together.__doc__ or ""), ""]
    for field in fields_of(Together, "together.").values():
        lines += [*notes(said_of(field)), f"# {field.name} = {example(field, units)}", ""]
    lines += _window(literals, units, {}, noted=True)
    lines += ["", *_window(literals, units, _SECOND, noted=False)]
    return "\n".join(lines).rstrip() + "\n"


def _window(
    literals: Mapping[str, str], units: Units, other: Mapping[str, tuple[str, str]], *, noted: bool
) -> Iterator[str]:
    """One window; ``other`` are values that are not the usual ones, by name, in inches and metric."""
    yield "[[window]]"
    if noted:
        yield from notes(f"{Names.__doc__} Every field above can stand here too.")
        yield ""
    own = [field for path, field in FIELDS.items() if path in OF_A_WINDOW and path in literals]
    fields: list[SpecField] = [*fields_of(Names).values(), *own]
    for field in fields:
        if noted:
            yield from notes(said_of(field))
        literal = literals.get(field.path) or _sample(field.about, units)
        if field.name in other:
            literal = other[field.name][units == "metric"]
            literal = literal if literal.startswith("[") else as_typed(literal)
        yield f"{field.path} = {literal}"
        if noted and field is not fields[-1]:
            yield ""


def _sample(about: About, units: Units) -> str:
    return as_typed(about.sample(units))
