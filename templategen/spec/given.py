"""The fields that a text gives, as they were typed: of a spec; of a job what windows share, and what each says."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Any

from .document import read_document
from .jobs.reading import TOGETHER, WINDOW
from .reading import Found


def given(source: str) -> dict[str, Any]:
    """What stands in ``source`` by path, in the order of the file: the fields of a spec, those that a job's windows
    share, and what is kept alike over them, ``together.keep``.

    ``source`` was read before and is known to be right.
    """
    tables = read_document(source, "")
    shared = _fields({name: value for name, value in tables.items() if name not in (WINDOW, TOGETHER)})
    return shared | {f"{TOGETHER}.{name}": value for name, value in tables.get(TOGETHER, {}).items()}


def given_by_windows(source: str) -> list[dict[str, Any]]:
    """What each window of a job says itself, by path, its name and room left out; nothing of a spec."""
    return [_fields(entry) for entry in read_document(source, "").get(WINDOW, [])]


def _fields(tables: Mapping[str, Any]) -> dict[str, Any]:
    found = Found()
    found.walk(tables, "")
    return found.raw
