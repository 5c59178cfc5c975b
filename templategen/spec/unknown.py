"""Names that the spec does not have: which known one was most likely meant."""

from __future__ import annotations

import difflib
from typing import Any

from ..errors import Fault
from .catalogue import FIELDS, TABLES
from .typed import as_typed, quoted


def _in_table(table: str) -> list[str]:
    """The paths of the fields and tables that stand directly in ``table``; "" for the top of the file."""
    return [known for known in (*FIELDS, *TABLES) if known.rpartition(".")[0] == table]


def nearest(path: str) -> str | None:
    """The path of the known field or table that ``path`` most likely means.

    First a near name in the same table, then the same name in another table,
    then a near name anywhere.
    """
    table, _, name = path.rpartition(".")
    siblings = {known.rpartition(".")[2]: known for known in _in_table(table)}
    if near := difflib.get_close_matches(name, siblings, n=1, cutoff=0.6):
        return siblings[near[0]]
    elsewhere: dict[str, str] = {}
    for known in FIELDS:
        elsewhere.setdefault(known.rpartition(".")[2], known)
    near = difflib.get_close_matches(name, [*siblings, *elsewhere], n=1, cutoff=0.7)
    return {**elsewhere, **siblings}[near[0]] if near else None


def unknown(path: str, value: Any) -> tuple[Fault, str | None]:
    """The fault of a name that is not known, and the known path it most likely means."""
    shown = quoted(path, plain=True)
    meant = nearest(path[:80])
    what = "table" if isinstance(value, dict) else "field"
    if meant is None:
        known = ", ".join(_in_table(path.rpartition(".")[0]))
        right = f"no {what} of this name is known; known here: {known}"
    elif meant in TABLES:
        right = f"no {what} of this name is known; did you mean [{meant}]?"
    else:
        right = f"no {what} of this name is known; did you mean {meant}?"
    return Fault(shown, as_typed(value), right), meant
