"""The form described as plain data: its groups, its fields and all that is said of them, for whoever draws it."""

from __future__ import annotations

from functools import cache
from typing import Any

from ..papers.catalogue import FAMILIES
from ..planning.lines import LINES
from ..spec import FIELDS, SpecField, starting_spec
from ..spec.document import MOST_BYTES
from ..spec.jobs.model import LONGEST_NAME, MOST_WINDOWS
from ..spec.jobs.reading import KEPT, NAMES, OF_THE_KIT
from ..spec.jobs.starting import OF_A_WINDOW
from ..spec.values import LONGEST_TITLE, MOST_MARKS
from ..version import __version__
from .editing import tables_of
from .entries import Form, form_of
from .groups import GROUPS, WITH
from .labels import LABELS
from .records import form_record


@cache
def described() -> dict[str, Any]:
    """Groups in the order of measuring, fields by path, a form to start from and one that is filled in."""
    return {
        "version": __version__,
        "groups": [
            {
                "key": group.key, "name": group.name, "about": group.about, "guides": list(group.guides),
                "fields": list(group.fields), "more": list(group.more),
            }
            for group in GROUPS
        ],
        "fields": {path: _field(field) for path, field in (*FIELDS.items(), *NAMES.items(), *KEPT.items())},
        "papers": [paper.name for family in FAMILIES for paper in family.papers],
        "lines": {line.name: line.the for line in LINES.values()},
        "of_the_kit": list(OF_THE_KIT),
        "of_a_window": list(OF_A_WINDOW),
        "limits": {
            "windows": MOST_WINDOWS, "marks": MOST_MARKS, "title": LONGEST_TITLE, "name": LONGEST_NAME,
            "bytes": MOST_BYTES,
        },
        "start": {units: form_record(_start(units)) for units in ("inch", "metric")},
        "example": {units: form_record(_example(units)) for units in ("inch", "metric")},
    }  # fmt: skip


def _field(field: SpecField) -> dict[str, Any]:
    about = field.about
    return {
        "path": field.path, "label": LABELS[field.path], "kind": field.kind, "meaning": about.meaning,
        "measure": about.measure, "left_out": about.left_out, "required": field.required,
        "choices": list(field.choices), "styles": list(field.styles), "chooser": field.chooser,
        "usual": field.default if isinstance(field.default, str) else "", "with": list(WITH.get(field.path, ())),
        "inch": _sample(about.inch), "metric": _sample(about.metric),
    }  # fmt: skip


def _sample(value: str | int | bool | tuple[str, ...]) -> str | list[str]:
    return list(value) if isinstance(value, tuple) else str(value)


def _example(units: Any) -> Form:
    return form_of(tables_of(starting_spec(units), None))


def _start(units: Any) -> Form:
    """Nothing measured yet: only what is chosen, as most people choose it."""
    chosen = _example(units).fields
    kept = ("units", "heading.style", "hem.style", "paper.name")
    return Form({path: chosen[path] for path in kept if path in chosen})
