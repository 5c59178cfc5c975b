"""A body that is not of the shape it should be: what is wrong with it, in the house's words."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from typing import Any

from ..errors import Fault
from . import limits
from .bodies import TAGS


def faults_in(errors: Sequence[Mapping[str, Any]]) -> list[Fault]:
    """What is wrong with a body, in the house's words, each with its place in the JSON; the first hundred of it."""
    return [Fault(_place(error), _read(error), _right(error)) for error in errors[: limits.MOST_FAULTS]]


def _place(error: Mapping[str, Any]) -> str:
    """``form.windows[1].fields["panel.width"]``."""
    said = ""
    for step in () if error["type"] == "json_invalid" else error["loc"][1:]:
        if isinstance(step, int):
            said += f"[{step}]"
        elif step not in (*TAGS.values(), "[key]"):
            plain = step.replace("_", "").isalnum()
            said += f".{step}" if plain else f'["{step[: limits.MOST_NAME]}"]'
    return said.removeprefix(".")


def _read(error: Mapping[str, Any]) -> str:
    """What stood there, where it is short enough to say."""
    value = error.get("input")
    match value:
        case _ if error["type"] in ("missing", "json_invalid"):
            return ""
        case None:
            return "null"
        case bool():
            return str(value).lower()
        case int() | float() | str():
            shown = repr(value)
            return shown if len(shown) <= 60 else f"{shown[:57]}..."
        case list():
            return "a list"
    return "an object"


_RIGHT = {
    "missing": "this is missing",
    "extra_forbidden": "there is no such part; leave it out",
    "string_type": "must be a text",
    "string_unicode": "holds half of a character; leave it out",
    "bool_type": "must be true or false",
    "int_type": "must be a whole number",
    "list_type": "must be a list",
    "dict_type": "must be an object",
    "model_type": "must be an object",
    "model_attributes_type": "must be an object",
    "json_invalid": "this is not JSON",
    "string_too_long": "is longer than {max_length} characters",
    "too_long": "has more than {max_length} entries",
    "greater_than_equal": "must be {ge} or more",
    "less_than_equal": "must be {le} or less",
    "less_than": "must be less than {lt}",
    "too_many": "",
    "no_value": "",
}
"""Pydantic's types of errors that these shapes can raise, and what would be right; "" where the error is our own."""


def _right(error: Mapping[str, Any]) -> str:
    words = _RIGHT.get(error["type"], "")
    return words.format(**error.get("ctx", {})) if words else str(error["msg"])
