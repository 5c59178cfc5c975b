"""TOML text into plain tables; what is not TOML is refused by its line, in a maker's words."""

from __future__ import annotations

import re
import tomllib
from decimal import Decimal, InvalidOperation
from typing import Any

from ..errors import Fault, Refusal
from .typed import quoted

MOST_BYTES = 1024 * 1024
"""A megabyte. Our choice: the longest real spec is a hundredth of it."""

# A dotted name of twenty steps or more: no field lies so deep, and the time that
# tomllib takes grows with the square of the steps.
_DEEP_NAME = re.compile(r"""(?<!["'\w-])(?:["'\w-]++[ \t]*+\.[ \t]*+){20}""")
_LINE = re.compile(r"\(at line (\d+), column \d+\)|\(at end of document\)")
_PAIR = re.compile(r"\s*(?P<name>[\w.-]+)\s*=\s*(?P<value>.*?)\s*$")


def read_document(text: str, name: str) -> dict[str, Any]:
    """The tables of a TOML text. A number with decimals comes as a Decimal, exactly as it was typed.

    Decimal, since a Fraction of "1e999999999" would be worked out to its last
    digit. ``name`` is what the text is called in a message. Raises Refusal.
    """
    if len(text.encode("utf-8", "replace")) > MOST_BYTES:
        raise Refusal(Fault("", name, "more than 1 MiB of text; a spec is a page or two: is this the file?"))
    text = text.removeprefix("\ufeff")
    if _DEEP_NAME.search(text):
        raise _too_deep(name)
    try:
        return tomllib.loads(text, parse_float=_exact)
    except tomllib.TOMLDecodeError as error:
        raise Refusal(_not_toml(text, str(error))) from None
    except RecursionError:
        raise _too_deep(name) from None
    except ValueError:  # Python's own limit on the digits of one whole number
        raise Refusal(Fault("", name, "a number in it has thousands of digits; write fewer")) from None


def _exact(text: str) -> Decimal:
    try:
        return Decimal(text)
    except InvalidOperation:  # an exponent beyond what a Decimal holds
        return Decimal("nan")


def _too_deep(name: str) -> Refusal:
    return Refusal(Fault("", name, "tables or lists too deep inside one another; no field lies so deep"))


def _not_toml(text: str, complaint: str) -> Fault:
    lines = text.split("\n")
    found = _LINE.search(complaint)
    at = int(found[1]) if found and found[1] else len(lines)
    line = lines[at - 1] if at <= len(lines) else ""
    said = _LINE.sub("", complaint).strip()
    if said.startswith("Cannot"):  # declare a table, overwrite a value
        right = "this name stands here a second time; keep one of the two"
        table = re.match(r"\s*\[\s*([\w-]+)\s*\]", line)
        if table and re.search(r"^\s*\[\[\s*window\s*\]\]", "\n".join(lines[: at - 1]), re.MULTILINE):
            right += f"; if it is meant for the window above it, write [window.{table[1]}]"
        elif table and table[1] == "window":
            right = "each of several windows is written in double brackets, [[window]]"
    else:
        right = _advice(line) or f"this is not TOML: {said}"
    return Fault(f"line {at}", quoted(line.strip(), plain=True), right)


def _advice(line: str) -> str:
    """What would be right, for the slips that people make; "" for the rest."""
    if any(mark in line.split("#")[0] for mark in "“”„‘’"):
        return 'curled quotation marks do not hold a text here; write straight ones, width = "54 in"'
    pair = _PAIR.match(line)
    if pair is None:
        return ""
    name, value = pair["name"], pair["value"]
    if re.match(r'"[^"\\]*"+\s*(#.*)?$', value) and value.split("#")[0].count('"') > 2:
        inside = value.split("#")[0].strip()[1:-1].replace('"', " in")
        right = " ".join(inside.split())
        return f'an inch mark inside quotation marks ends the text; write {name} = "{right}"'
    if re.search(r"\d\s*\\\s*\d", value):
        right = value.split("#")[0].strip().replace("\\", "/")
        return f"a fraction is written with the other stroke; write {name} = {right}"
    if value[:1] not in "\"'[{":
        right = quoted(value.split("#")[0].strip())
        return f"a length with a unit or a fraction stands in quotation marks; write {name} = {right}"
    return ""
