"""A value as it was typed, for a message: short, on one line, whatever it was."""

from __future__ import annotations

from collections.abc import Mapping
from decimal import Decimal
from typing import Any

from ..lengths.tokens import MOST_DIGITS

_MOST = 40


def quoted(text: str, *, plain: bool = False) -> str:
    """A text in quotation marks (or ``plain``), cut short, with nothing in it that would break the line."""
    seen = "".join(character if character.isprintable() else " " for character in text[: _MOST + 1])
    short = seen if len(text) <= _MOST else f"{seen[:_MOST]}…"
    if plain:
        return short
    return f"'{short}'" if '"' in short else f'"{short}"'


def as_typed(value: Any) -> str:
    """Any TOML value as a person would know it again."""
    match value:
        case bool():
            return "true" if value else "false"
        case str():
            return quoted(value)
        case int():
            return str(value) if abs(value) < 10**MOST_DIGITS else "a very large number"
        case Decimal() | float():
            return quoted(str(value), plain=True)
        case list() | tuple():
            return f"a list of {len(value)}"
        case Mapping():
            return "a table"
        case None:
            return "nothing"
    return quoted(str(value), plain=True)  # a date or a time
