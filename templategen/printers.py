"""Printers by name: what the bars made by each of them measured, kept in the user's configuration.

One TOML file, a table for each printer, as in a spec's [printer]::

    ["Reading room"]
    across = "99.2 mm"
    along = "99.6 mm"
"""

from __future__ import annotations

import json
import os
from collections.abc import Mapping
from dataclasses import replace
from difflib import get_close_matches
from pathlib import Path
from typing import Any

import click

from .bars import BARS, NO_CORRECTION, NOTHING_READ, TRUE, Reading, Readings
from .errors import Fault, Refusal
from .lengths.showing import Units
from .making import write_files
from .spec.bar_readings import TypedReadings
from .spec.document import read_document
from .spec.files import read_text
from .spec.typed import as_typed, quoted

NONE = "none"
"""The printer that needs no correction, whatever the spec says; no other can be called that."""
LONGEST_NAME = 60

_OPENING = """\
# Printers that templategen knows by name: what their bars measured on a sheet that was not corrected.
# The file is written anew whenever a printer is kept or forgotten; notes of your own do not stay in it.
"""
_MOST_BYTES = 16 * 1024
"""Our choice: over two hundred printers, more than one person looks after."""


def printers_file() -> Path:
    """Where printers are kept: in the folder that the system sets apart for a user's configuration."""
    folder = Path(click.get_app_dir("templategen"))
    if not folder.is_absolute():  # XDG Base Directory Specification: empty or relative is as if not set
        folder = Path(os.path.expanduser("~/.config/templategen"))
    if not folder.is_absolute():
        raise Refusal(Fault("XDG_CONFIG_HOME", "", "no folder for configuration is known; set it to one"))
    return folder / "printers.toml"


def known_printers(file: Path | None = None) -> dict[str, Readings]:
    """Every printer in the file, in its order; none where there is no such file.

    Raises Refusal with every fault in it, and OSError where the system does not
    let us read it.
    """
    file = file or printers_file()
    if not file.exists():
        return {}
    if file.is_dir() or file.stat().st_size > _MOST_BYTES:
        right = "a folder" if file.is_dir() else "more than 16 KiB"
        raise Refusal(Fault(str(file), "", f"{right}, where the file of printers belongs; move it away"))
    text = read_text(file)
    try:
        tables = read_document(text, "")
    except Refusal as refusal:
        raise Refusal(*(_in_file(file, fault) for fault in refusal.faults)) from None
    printers: dict[str, Readings] = {}
    faults: list[Fault] = []
    for name, table in tables.items():
        readings, wrong = _printer(name, table)
        if not wrong and (twin := _same(name, printers)):
            wrong = [Fault(name, "", f"the same name as {twin}, capitals and blanks aside; keep one of the two")]
        faults += (_in_file(file, fault) for fault in wrong)
        printers[name] = readings
    if faults:
        raise Refusal(*faults)
    return printers


def printer_named(name: str, asked_as: str = "NAME", file: Path | None = None) -> Readings:
    """The readings of the printer called so, capitals and blanks aside; those of "none" need no correction.

    Raises Refusal where none is called so, with the nearest name.
    """
    if _plain(name) == NONE:
        return NO_CORRECTION
    file = file or printers_file()
    printers = known_printers(file)
    if found := _same(name, printers):
        return printers[found]
    raise Refusal(_unknown(name, asked_as, printers, file))


def readings_asked(
    name: str | None, given: TypedReadings, units: Units | None
) -> tuple[Readings, Readings, list[Fault]]:
    """What was read off the bars, what is kept of the printer called ``name``, and everything wrong with both.

    ``units`` are those of a bare number; None where nobody knows them, because
    that is at fault elsewhere.
    """
    kept = NOTHING_READ
    faults: list[Fault] = []
    if name is not None:
        try:
            kept = printer_named(name, "--printer")
        except Refusal as refusal:
            faults += refusal.faults
    either: tuple[Units, ...] = (units,) if units else ("inch", "metric")
    read, wrong = min((given.read(each) for each in either), key=lambda found: len(found[1]))
    return read, kept, [*faults, *wrong]


def keep_printer(name: str, readings: Readings, file: Path | None = None) -> tuple[Readings, Readings]:
    """Keep a printer's readings under ``name``; an axis that they say nothing of stays as it was.

    Returns what is kept now, and what was before. Raises Refusal where the name
    or the file is wrong, and then nothing is written.
    """
    file = file or printers_file()
    if faults := faults_in_name(name):
        raise Refusal(*faults)
    printers = known_printers(file)
    known = _same(name, printers)
    before = printers[known] if known else NOTHING_READ
    kept = readings.over(before).over(NO_CORRECTION)
    assert kept.across is not None and kept.along is not None
    kept = _of_one_bar(kept.across, kept.along)
    printers[known or name.strip()] = kept
    _write(printers, file)
    return kept, before


def forget_printer(name: str, file: Path | None = None) -> Readings:
    """Forget the printer called so; returns what its readings were. Raises Refusal where none is."""
    file = file or printers_file()
    printers = known_printers(file)
    found = _same(name, printers)
    if found is None:
        raise Refusal(_unknown(name, "NAME", printers, file))
    forgotten = printers.pop(found)
    _write(printers, file)
    return forgotten


def faults_in_name(name: str, called: str = "NAME") -> list[Fault]:
    """What is wrong with a name that a printer is to be given."""
    right = ""
    if _plain(name) == NONE:
        right = "this stands for a printer that needs no correction; write another name"
    elif not name.strip() or not name.isprintable():
        right = "no name, or one with characters that cannot be shown; write a plain one"
    elif len(name) > LONGEST_NAME:
        right = f"{len(name)} characters; write at most {LONGEST_NAME}"
    return [Fault(called, quoted(name), right)] if right else []


def _of_one_bar(across: Reading, along: Reading) -> Readings:
    """Both readings as of one bar, since a table of the file names one for both.

    A bar that measures what it says is any bar; other readings of two bars are
    told as what the 100 mm bar would have measured, which is the same, exactly.
    """
    bars = {reading.bar for reading in (across, along) if reading != TRUE}
    if len(bars) < 2:
        bar = next(iter(bars), None)
        both = [Reading(BARS[bar], bar) if bar and reading == TRUE else reading for reading in (across, along)]
    else:
        both = [Reading(TRUE.length * reading.ratio, "100 mm") for reading in (across, along)]
    return Readings(*both)


def _printer(name: str, table: Any) -> tuple[Readings, list[Fault]]:
    """One table of the file: its readings, and everything wrong with it."""
    shown = quoted(name, plain=True)
    if not isinstance(table, Mapping):
        right = f'a printer is a table; write [{json.dumps(name, ensure_ascii=False)}] on a line of its own, '
        return NOTHING_READ, [Fault(shown, as_typed(table), right + 'and across = "99.2 mm" below it')]
    faults = faults_in_name(name, shown)
    for field, value in table.items():
        if field not in ("across", "along", "bar"):
            faults.append(_unknown_field(f"{shown}.{quoted(field, plain=True)}", field, value))
    readings, wrong = TypedReadings(
        table.get("across"), table.get("along"), table.get("bar"), (f"{shown}.across", f"{shown}.along", f"{shown}.bar")
    ).read()
    return readings.over(NO_CORRECTION), [*faults, *wrong]


def _unknown_field(where: str, field: str, value: object) -> Fault:
    near = get_close_matches(field, ["across", "along", "bar"], 1)
    hint = f"did you mean {near[0]}?" if near else "a printer has across, along and bar"
    return Fault(where, as_typed(value), f"no field of this name is known; {hint}")


def _unknown(name: str, asked_as: str, printers: Mapping[str, Readings], file: Path) -> Fault:
    names = {_plain(known): known for known in printers}
    near = get_close_matches(_plain(name), names, 1)
    hint = f"did you mean {names[near[0]]}? " if near else ""
    known = f"known: {', '.join(printers)}, {NONE}" if printers else "none is kept yet"
    right = f'no printer is kept under that name; {hint}{known}; keep one with: templategen printer NAME --across "..."'
    return Fault(asked_as, quoted(name), f"{right} --along \"...\"")


def _in_file(file: Path, fault: Fault) -> Fault:
    return replace(fault, field=f"{file}, {fault.field}" if fault.field else str(file))


def _plain(name: str) -> str:
    """A name, capitals and blanks aside."""
    return " ".join(name.casefold().split())


def _same(name: str, printers: Mapping[str, Readings]) -> str | None:
    """The name that this one is, as it stands in the file; None where it is not there."""
    return next((known for known in printers if _plain(known) == _plain(name)), None)


def _write(printers: Mapping[str, Readings], file: Path) -> None:
    """The whole file, or nothing. A link to a file elsewhere stays a link."""
    content = _text(printers).encode()
    if len(content) > _MOST_BYTES:
        raise Refusal(Fault(str(file), "", "it would come to more than 16 KiB; forget a printer first"))
    real = file.resolve()
    write_files({real.name: content}, real.parent, real.name)


def _text(printers: Mapping[str, Readings]) -> str:
    tables = [_OPENING]
    for name, readings in printers.items():
        lines = [f"[{json.dumps(name, ensure_ascii=False)}]"]
        for axis, reading in (("across", readings.across), ("along", readings.along)):
            lines.append(f'{axis} = "{(reading or TRUE).typed}"')
        bar = readings.across.bar if readings.across else None
        tables.append("\n".join([*lines, *([f'bar = "{bar}"'] if bar else [])]) + "\n")
    return "\n".join(tables)
