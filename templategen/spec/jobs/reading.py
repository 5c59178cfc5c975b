"""The text of a job read into a Job, or refused with all of its faults at once.

What stands at the top of the file holds for every window; what a window says
itself stands over it, field by field.
"""

from __future__ import annotations

import difflib
import re
from collections.abc import Iterator, Mapping, Sequence
from pathlib import Path
from typing import Any

from ...errors import Fault, Refusal
from ...lengths.showing import Units
from ..catalogue import FIELDS, TABLES, SpecField, fields_of
from ..document import read_document
from ..files import read_text
from ..model import Spec
from ..reading import Found, spec_from_tables
from ..typed import as_typed, quoted
from ..values import Undecided, Wrong, read_value
from .labels import labels, slug
from .merging import merged
from .model import LONGEST_NAME, MOST_WINDOWS, Job, Names, Together, Window

WINDOW, TOGETHER = "window", "together"
OF_THE_KIT = ("title", "units", "tape_step", "paper", "printer")
"""Fields and tables of which a kit has one, whatever the window."""
NAMES = fields_of(Names, f"{WINDOW}.")
"""What a window is called, by path."""
KEPT = fields_of(Together, f"{TOGETHER}.")
"""What is kept alike over all windows, by path."""
_HOW = f"write [[{WINDOW}]] on a line of its own, and name and the window's own fields below it"


def is_job(tables: Mapping[str, Any]) -> bool:
    """Whether tables are of a job and not of a spec: by their windows, be these not quite rightly named."""
    if WINDOW in tables or TOGETHER in tables:
        return True
    return any(
        isinstance(value, list) and value and _is_table(value[0]) and _meant(name) == WINDOW
        for name, value in tables.items()
    )


def read_job(text: str, *, name: str = "job") -> Job:
    """The windows that the TOML ``text`` says; ``name`` is what a message calls the text.

    Raises Refusal, with a fault for each thing that is wrong.
    """
    return job_from_tables(read_document(text, name), source=text)


def read_spec_or_job(text: str, *, name: str = "spec") -> Spec | Job:
    """A job where the text has windows, else a spec. Raises Refusal."""
    tables = read_document(text, name)
    return job_from_tables(tables, source=text) if is_job(tables) else spec_from_tables(tables, source=text)


def load_spec_or_job(path: str | Path) -> Spec | Job:
    """The spec or the job in the file at ``path``. Raises Refusal, and OSError as load_spec does."""
    return read_spec_or_job(read_text(path), name=Path(path).name)


def job_from_tables(tables: Mapping[str, Any], *, source: str = "") -> Job:
    """The windows that tables of plain values say, as TOML or a form gives them.

    ``source`` is the text that the job is to carry. Raises Refusal.
    """
    faults: list[Fault] = []
    entries, misnamed = _entries(tables, faults)
    top = {name: value for name, value in tables.items() if name not in (WINDOW, TOGETHER, *misnamed)}
    faults += _below_the_windows(tables)
    shared = Found()
    shared.walk(top, "")
    together = _read_table(tables.get(TOGETHER, {}), TOGETHER, KEPT, shared.raw.get("units"), faults)
    if together.get("finished_length") is not None and together.get("keep") not in ("finished length", ...):
        typed = as_typed(tables[TOGETHER]["finished_length"])
        right = f'used only where {TOGETHER}.keep is "finished length"; write that, or leave it out'
        faults.append(Fault(f"{TOGETHER}.finished_length", typed, right))
    named = [_named(number, entry, faults) for number, entry in enumerate(entries, 1)]
    faults += _too_alike(named)
    specs, wrong = merged(shared, [_own(entry) for entry in entries], named, OF_THE_KIT)
    if faults := [*shared.faults, *faults, *wrong]:
        raise Refusal(*sorted(dict.fromkeys(faults), key=_window_of))
    if not entries:
        raise Refusal(Fault(WINDOW, "", f"no window at all; {_HOW}"))
    title = specs[0].title
    windows = tuple(
        Window(name, room, label, spec.model_copy(update={"title": f"{room}, {name}" if room else name}))
        for (name, room), label, spec in zip(named, labels(named), specs, strict=True)
    )
    return Job(title, windows, Together(**{key: value for key, value in together.items() if value is not ...}), source)


def _window_of(fault: Fault) -> int:
    """The number of the window that a fault is in; 0 for what stands above the windows."""
    found = re.match(rf"{WINDOW}\[(\d+)\]", fault.field)
    return int(found[1]) if found else 0


def _is_table(value: Any) -> bool:
    return isinstance(value, Mapping)


def _meant(name: str) -> str | None:
    """What a name at the top of the file most likely means that is a job's alone."""
    near = difflib.get_close_matches(name[:40].lower(), (WINDOW, TOGETHER), 1, 0.7)
    return near[0] if near else None


def _entries(tables: Mapping[str, Any], faults: list[Fault]) -> tuple[list[Mapping[str, Any]], set[str]]:
    """The windows' tables, and the names that were meant for one of a job's own."""
    misnamed = {name for name in tables if name not in FIELDS and name not in TABLES and _meant(name)}
    misnamed -= {WINDOW, TOGETHER}
    for name in sorted(misnamed):
        meant = _meant(name)
        written = f"[[{WINDOW}]]" if meant == WINDOW else f"[{TOGETHER}]"
        shown = quoted(name, plain=True)
        faults.append(Fault(shown, as_typed(tables[name]), f"no table of this name is known; did you mean {written}?"))
    if WINDOW not in tables:
        if not misnamed:
            faults.append(Fault(WINDOW, "", f"no window at all; {_HOW}"))
        return [], misnamed
    given = tables[WINDOW]
    if _is_table(given):
        right = f"there can be several; write it in double brackets, [[{WINDOW}]]"
        faults.append(Fault(WINDOW, as_typed(given), right))
        return [], misnamed
    if not isinstance(given, list) or not all(map(_is_table, given)):
        faults.append(Fault(WINDOW, as_typed(given), f"not windows; {_HOW}"))
        return [], misnamed
    if len(given) > MOST_WINDOWS:
        right = f"too many for one kit; write at most {MOST_WINDOWS} here and the others in a job of their own"
        faults.append(Fault(WINDOW, f"{len(given)} windows", right))
        return [], misnamed
    if not given:
        faults.append(Fault(WINDOW, "an empty list", f"no window at all; {_HOW}"))
    return given, misnamed


def _below_the_windows(tables: Mapping[str, Any]) -> Iterator[Fault]:
    """Shared tables below a window: whoever wrote them there may have meant them for that window."""
    order = list(tables)
    for name in order[order.index(WINDOW) + 1 :] if WINDOW in order else ():
        if name in TABLES:
            right = (
                f"it stands below a window, and could be meant for that one alone; write [{WINDOW}.{name}] if it is, "
                f"or move it above the first [[{WINDOW}]]"
            )
            yield Fault(name, as_typed(tables[name]), right)


def _own(entry: Mapping[str, Any]) -> dict[str, Any]:
    """The fields of a spec, or what may be meant for them, that a window says."""
    return {key: value for key, value in entry.items() if not _meant_for_a_name(key)}


def _meant_for_a_name(key: str) -> str | None:
    """Which of a window's two names a key is, or most likely means; None where it is no such thing."""
    if key in FIELDS or key in TABLES:
        return None
    near = difflib.get_close_matches(key[:40].lower(), ("name", "room"), 1, 0.7)
    return near[0] if near else None


def _named(number: int, entry: Mapping[str, Any], faults: list[Fault]) -> tuple[str, str]:
    """A window's name and room; "" for one that cannot be read, which is the fault."""
    before = f"{WINDOW}[{number}]"
    found = {}
    slips = {each: meant for each in entry if (meant := _meant_for_a_name(each)) and each != meant}
    for slip, meant in slips.items():
        right = f"no field of this name is known; did you mean {before}.{meant}?"
        faults.append(Fault(quoted(f"{before}.{slip}", plain=True), as_typed(entry[slip]), right))
    for key in ("name", "room"):
        field = NAMES[f"{WINDOW}.{key}"]
        if key not in entry:
            if field.required and key not in slips.values():
                right = f"missing; write {field.about.meaning}, for example {as_typed(field.about.inch)}"
                faults.append(Fault(f"{before}.{key}", "", right))
            continue
        try:
            text = str(read_value(field, entry[key], None))
        except Wrong as wrong:
            faults += [Fault(f"{before}.{key}", fault.read, fault.right) for fault in wrong.faults]
            continue
        if len(text) > LONGEST_NAME:
            right = f"{len(text)} characters; write at most {LONGEST_NAME}, since it stands on every piece"
            faults.append(Fault(f"{before}.{key}", as_typed(text), right))
        elif not slug(text):
            faults.append(Fault(f"{before}.{key}", as_typed(text), "marks alone; write a letter or a figure in it"))
        else:
            found[key] = text
    return found.get("name", ""), found.get("room", "")


def _too_alike(named: Sequence[tuple[str, str]]) -> Iterator[Fault]:
    """Windows that would be taken for each other: of one name in one room, capitals and marks aside."""
    seen: dict[tuple[str, str], int] = {}
    for number, (name, room) in enumerate(named, 1):
        first = seen.setdefault((slug(name), slug(room)), number)
        if name and first != number:
            where = " in the same room" if room else ""
            right = f"window {first} is called so already{where}, capitals and marks aside; write another name"
            yield Fault(f"{WINDOW}[{number}].name", as_typed(name), right)


def _read_table(
    given: Any, path: str, fields: Mapping[str, SpecField], units: Any, faults: list[Fault]
) -> dict[str, Any]:
    """The values of one small table by name; ``...`` for one that could not be read, which is the fault."""
    if not _is_table(given):
        right = f"a table; write [{path}] on a line of its own, once, and its fields below it"
        faults.append(Fault(path, as_typed(given), right))
        return {}
    for name, value in given.items():
        if f"{path}.{name}" not in fields or "." in name:
            known = [field.name for field in fields.values()]
            near = difflib.get_close_matches(name[:80], known, 1)
            hint = f"did you mean {path}.{near[0]}?" if near else f"known here: {', '.join(known)}"
            shown = quoted(f"{path}.{name}", plain=True)
            faults.append(Fault(shown, as_typed(value), f"no field of this name is known; {hint}"))
    values: dict[str, Any] = {}
    known_units: Units | None = units if units in ("inch", "metric") else None
    for field in fields.values():
        values[field.name] = field.default
        if field.name in given:
            values[field.name] = ...
            try:
                values[field.name] = read_value(field, given[field.name], known_units)
            except Wrong as wrong:
                faults += wrong.faults
            except Undecided:
                pass
    return values
