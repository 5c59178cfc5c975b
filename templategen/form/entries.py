"""What stands in a form: every value as it was typed, by path; and the tables of a spec or a job it comes from.

A form knows only fields that there are. What else stands in a file is left where it is (:mod:`.editing`).
"""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from dataclasses import dataclass, field
from decimal import Decimal
from types import MappingProxyType
from typing import Any, TypeAlias

from ..spec import FIELDS, SpecField
from ..spec.jobs.reading import KEPT, NAMES, TOGETHER, WINDOW

Typed: TypeAlias = str | bool | tuple[str, ...]
"""What stands in a field: a text; a switch is true or false; several lengths are several texts."""


@dataclass(frozen=True, slots=True)
class WindowEntry:
    """What is said of one window."""

    came_from: int | None = None
    """The number, from 0, of the window in the file that this was or was copied from; None for a new one."""
    name: str = ""
    room: str = ""
    fields: Mapping[str, Typed] = field(default_factory=dict)
    """Its own fields, by path: they stand over the shared ones."""


@dataclass(frozen=True, slots=True)
class Form:
    """Everything that stands in a form."""

    fields: Mapping[str, Typed] = field(default_factory=dict)
    """By path; of a job what its windows share."""
    windows: tuple[WindowEntry, ...] = ()
    """None for a spec of one window."""
    together: Mapping[str, Typed] = field(default_factory=dict)
    """By name."""


EMPTY = Form()


def form_of(tables: Mapping[str, Any]) -> Form:
    """What a form says that was filled in from these tables, of a spec or of a job."""
    given = tables.get(WINDOW, [])
    entries = [entry for entry in given if isinstance(entry, Mapping)] if isinstance(given, list) else []
    kept = tables.get(TOGETHER, {})
    return Form(
        dict(_typed_in(tables, FIELDS)),
        tuple(
            WindowEntry(number, _name(entry, "name"), _name(entry, "room"), dict(_typed_in(entry, FIELDS)))
            for number, entry in enumerate(entries)
        ),
        {name: typed for name, typed in _typed_of(kept, KEPT)} if isinstance(kept, Mapping) else {},
    )


def _typed_in(tables: Mapping[str, Any], fields: Mapping[str, SpecField]) -> Iterator[tuple[str, Typed]]:
    for path, each in fields.items():
        value = value_at(tables, path)
        if value is not None:
            yield path, typed(each, value)


def _typed_of(table: Mapping[str, Any], fields: Mapping[str, SpecField]) -> Iterator[tuple[str, Typed]]:
    for each in fields.values():
        if each.name in table:
            yield each.name, typed(each, table[each.name])


def _name(entry: Mapping[str, Any], key: str) -> str:
    value = entry.get(key)
    return "" if value is None else str(typed(NAMES[f"{WINDOW}.{key}"], value))


def value_at(tables: Mapping[str, Any], path: str) -> Any:
    """What stands at ``path``; None where nothing does."""
    value: Any = tables
    for step in path.split("."):
        if not isinstance(value, Mapping) or step not in value:
            return None
        value = value[step]
    return value


def typed(field: SpecField, value: Any) -> Typed:
    """A value of a file as it stands in a form."""
    if field.kind == "switch" and isinstance(value, bool):
        return value
    if field.kind == "lengths":
        return tuple(_text(each) for each in value) if isinstance(value, list | tuple) else (_text(value),)
    return _text(value)


def _text(value: Any) -> str:
    match value:
        case str():
            return str(value)
        case bool():
            return "true" if value else "false"
        case int() | float() | Decimal():
            return str(value)
        case Mapping() | list():
            return ""
    return str(value)


def value_of(field: SpecField, typed: Typed) -> Any:
    """What stands in a form as the value of a file; None where the field is left out."""
    match typed:
        case bool():
            return True if typed else None
        case tuple():
            return [each.strip() for each in typed if each.strip()] or None
    text = typed.strip() if field.kind != "text" else typed
    if not text.strip():
        return None
    if field.kind == "count" and text.isascii() and text.isdigit() and len(text) < 10:
        return int(text)
    return text


KINDS: Mapping[str, tuple[type, ...]] = MappingProxyType({
    "length": (str, int, float, Decimal), "lengths": (list, tuple), "count": (int,), "text": (str,), "choice": (str,),
    "switch": (bool,), "quantity": (str, int, float, Decimal),
})  # fmt: skip
"""What a value of each kind of field is in a file."""


def same(field: SpecField, value: Any, form: Typed | None) -> bool:
    """Whether the form says of a field what stands in the file, so that it can stay there as it was written.

    A value of another kind than the field's, "4" in quotation marks for four panels, is written anew; so is an empty
    text, which a form cannot tell from a field that is left out.
    """
    if value is None:
        return form is None or value_of(field, form) is None
    if (isinstance(value, bool) and field.kind != "switch") or not isinstance(value, KINDS[field.kind]):
        return False
    if value in ("", []):
        return False
    shown = typed(field, value)
    if form is None:
        return shown is False
    return shown == form


def filled(fields: Mapping[str, Typed]) -> dict[str, Typed]:
    """The fields that are there, of those that a file can have."""
    return {path: each for path, each in fields.items() if path in FIELDS and value_of(FIELDS[path], each) is not None}
