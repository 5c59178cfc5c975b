"""A form laid over the text it was opened from: what is unchanged keeps its place, its spelling and its notes.

The same changes are made on plain tables, which a plan is worked out from, and on the text itself.
"""

from __future__ import annotations

import copy
from collections.abc import Iterator, Mapping, MutableMapping
from typing import Any

import tomlkit
from tomlkit.exceptions import TOMLKitError
from tomlkit.items import AoT, Table

from ..spec import FIELDS, SpecField
from ..spec.document import read_document
from ..spec.jobs.reading import KEPT, NAMES, TOGETHER, WINDOW
from .entries import Form, Typed, WindowEntry, same, value_at, value_of

OPENING = "A spec for templategen, as it was filled in on its page."


def tables_of(text: str, form: Form | None) -> dict[str, Any]:
    """The tables of ``text`` with what ``form`` says laid over them. Raises Refusal where the text is no TOML."""
    tables = read_document(text, "spec")
    if form is not None:
        _lay(tables, form, _plain_windows)
    return tables


def text_of(text: str, form: Form | None) -> str:
    """``text`` with what ``form`` says laid over it: the text to be saved. Raises Refusal where it is no TOML.

    Where nothing has changed it is the same to the last byte.
    """
    before, wanted = read_document(text, "spec"), tables_of(text, form)
    if form is None or before == wanted:
        return text
    try:
        document = tomlkit.parse(text)
        if not text.strip():
            document.add(tomlkit.comment(OPENING))
        _lay(document, form, _written_windows)
        written = _spaced(tomlkit.dumps(document))
        if read_document(written, "spec") == wanted:
            return written
    except (TOMLKitError, ValueError, KeyError, TypeError, AttributeError, IndexError):
        pass  # a text that the library cannot change as it is
    return anew(wanted)


def _spaced(text: str) -> str:
    """The text with one blank line before each window, as new ones come without."""
    lines: list[str] = []
    for line in text.splitlines(keepends=True):
        if line.startswith(f"[[{WINDOW}]]") and lines and not lines[-1].startswith("#"):
            while lines and not lines[-1].strip():
                lines.pop()
            lines += ["\n"]
        lines.append(line)
    return f"{''.join(lines).rstrip()}\n"


def anew(tables: Mapping[str, Any]) -> str:
    """A text that says just these tables, with nothing of how an earlier one was written."""
    return f"# {OPENING}\n{tomlkit.dumps(_plain(tables))}"


def _plain(value: Any) -> Any:
    """Numbers with decimals as floats: no other way to write them is known to the library."""
    if isinstance(value, Mapping):
        return {key: _plain(each) for key, each in value.items()}
    if isinstance(value, list):
        return [_plain(each) for each in value]
    return value if isinstance(value, str | bool | int) else float(value) if hasattr(value, "is_finite") else value


def _lay(tables: MutableMapping[str, Any], form: Form, windows: Any) -> None:
    for path, value in _changes(tables, FIELDS, form.fields):
        _put(tables, path.split("."), value)
    kept = {f"{TOGETHER}.{name}": typed for name, typed in form.together.items()}
    for path, value in _changes(tables, KEPT, kept):
        _put(tables, path.split("."), value)
    windows(tables, form.windows)


def _changes(
    tables: Mapping[str, Any], fields: Mapping[str, SpecField], typed: Mapping[str, Typed]
) -> Iterator[tuple[str, Any]]:
    """The fields of which the form says something else than the tables, and what it says; None for one left out."""
    for path, field in fields.items():
        value = value_at(tables, path)
        if not same(field, value, typed.get(path)):
            yield path, value_of(field, typed[path]) if path in typed else None


def _put(tables: MutableMapping[str, Any], steps: list[str], value: Any) -> None:
    """Writes a value where it belongs, or takes it away where it is None; tables that are missing are made."""
    step, *rest = steps
    if not rest:
        if value is None:
            tables.pop(step, None)
        else:
            tables[step] = value
        return
    inner = tables.get(step)
    if not isinstance(inner, MutableMapping):
        if value is None:
            return
        if inner is not None:  # a value where a table belongs
            del tables[step]
        tables[step] = tomlkit.table() if isinstance(tables, tomlkit.TOMLDocument | Table) else {}
        inner = tables[step]
    _put(inner, rest, value)
    if value is None and not inner:
        del tables[step]


def _window_changes(entry: Mapping[str, Any], window: WindowEntry) -> Iterator[tuple[str, Any]]:
    names: dict[str, Typed] = {f"{WINDOW}.name": window.name, f"{WINDOW}.room": window.room}
    for path, value in _changes({WINDOW: entry}, NAMES, names):
        yield path.partition(".")[2], value
    yield from _changes(entry, FIELDS, window.fields)


def _plain_windows(tables: dict[str, Any], windows: tuple[WindowEntry, ...]) -> None:
    given = _given(tables)
    if not windows and (not given and WINDOW in tables):
        return  # something else stands under that name, and reading says so
    made = []
    for window in windows:
        source = _at(given, window.came_from)
        entry = {} if source is None else copy.deepcopy(source)
        for path, value in _window_changes(entry, window):
            _put(entry, path.split("."), value)
        made.append(entry)
    if made:
        tables[WINDOW] = made
    else:
        tables.pop(WINDOW, None)


def _written_windows(document: tomlkit.TOMLDocument, windows: tuple[WindowEntry, ...]) -> None:
    given = _given(document)
    if [window.came_from for window in windows] == list(range(len(given))):
        tables = list(given)
    elif not windows:
        if given:
            document.pop(WINDOW)
        return
    else:  # windows that come, go or change their places
        source = [copy.deepcopy(each) for each in given]
        if WINDOW in document:
            document.pop(WINDOW)
        array: AoT = tomlkit.aot()
        for window in windows:
            table = _at(source, window.came_from)
            array.append(tomlkit.table() if table is None else copy.deepcopy(table))
        document.append(WINDOW, array)
        tables = list(_given(document))
    for table, window in zip(tables, windows, strict=True):
        for path, value in _window_changes(table, window):
            _put_dotted(table, path.split("."), value)


def _put_dotted(table: Table, steps: list[str], value: Any) -> None:
    """Writes a window's own field, ``panel.width = "54 in"``, on a line of its own below the window's name."""
    if len(steps) > 1 and value is not None and steps[0] not in table:
        table.append(tomlkit.key(steps), value)
    else:
        _put(table, steps, value)


def _given(tables: Mapping[str, Any]) -> list[Any]:
    given = tables.get(WINDOW, [])
    return [each for each in given if isinstance(each, Mapping)] if isinstance(given, list) else []


def _at(given: list[Any], number: int | None) -> Any:
    """The window of that number; None where there is none."""
    return given[number] if number is not None and 0 <= number < len(given) else None
