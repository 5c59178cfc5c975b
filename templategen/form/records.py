"""A form as plain data and back: what goes between a page and whoever answers it."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Any

from .entries import Form, Typed, WindowEntry


def form_record(form: Form) -> dict[str, Any]:
    """A form as plain data."""
    return {
        "fields": _values(form.fields),
        "windows": [
            {"from": each.came_from, "name": each.name, "room": each.room, "fields": _values(each.fields)}
            for each in form.windows
        ],
        "together": _values(form.together),
    }


def _values(fields: Mapping[str, Any]) -> dict[str, Any]:
    return {path: list(value) if isinstance(value, tuple) else value for path, value in fields.items()}


def from_record(record: Mapping[str, Any] | None) -> Form | None:
    """The form that plain data says, which is known to be of the right shape; None for none."""
    if record is None:
        return None
    return Form(
        _typed(record.get("fields", {})),
        tuple(
            WindowEntry(
                each.get("from"), each.get("name", ""), each.get("room", ""), _typed(each.get("fields", {})),
            )
            for each in record.get("windows", ())
        ),
        _typed(record.get("together", {})),
    )  # fmt: skip


def _typed(values: Mapping[str, Any]) -> dict[str, Typed]:
    return {path: tuple(value) if isinstance(value, list) else value for path, value in values.items()}
