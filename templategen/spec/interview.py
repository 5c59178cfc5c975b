"""The measurements asked for one by one, each answer checked on the spot."""

from __future__ import annotations

import json
from collections.abc import Callable, Iterable
from typing import Any

from ..errors import Fault, Refusal
from ..lengths.showing import Units
from .catalogue import FIELDS, TABLES, SpecField
from .reading import read_spec
from .starting import said_of, spec_text, usual_styles
from .values import Undecided, Wrong, example, read_value

Ask = Callable[[str, str], str]
"""Puts a question, with the answer that stands if nothing is typed, and returns what was typed."""
Say = Callable[[str], None]
"""Shows a line of text."""


def interview(ask: Ask, say: Say) -> str:
    """The text of a spec, from the answers to questions in the order of measuring.

    Returns only text that :func:`read_spec` takes. An exception of ``ask`` (the
    person gives up) goes through.
    """
    answers = _Answers(ask, say)
    answers.go_through(list(FIELDS.values()))
    while True:
        text = spec_text(answers.literals, answers.units)
        try:
            read_spec(text)
        except Refusal as refusal:
            say("These answers do not go together:")
            for fault in refusal.faults:
                say(str(fault))
            answers.go_through(_to_ask_again(refusal.faults), again=True)
        else:
            return text


class _Answers:
    """What has been answered so far, as it will stand in the file."""

    def __init__(self, ask: Ask, say: Say) -> None:
        self._ask, self._say = ask, say
        self.units: Units = "inch"
        self.literals: dict[str, str] = {}

    def go_through(self, fields: Iterable[SpecField], *, again: bool = False) -> None:
        """Asks for those of the fields that there are; ``again``, for those too that nobody is asked at first."""
        table = ""
        for field in fields:
            if not self._asked(field, again):
                continue
            if field.table != table:
                table = field.table
                self._say("")
                self._say(TABLES[table])
            self._question(field)

    def _asked(self, field: SpecField, again: bool) -> bool:
        """Whether it belongs to the kinds that are chosen so far, and is asked for or cannot be left out."""
        chosen = usual_styles() | {path: json.loads(literal) for path, literal in self.literals.items()}
        return field.there(chosen) and (field.about.asked or field.required or again)

    def _question(self, field: SpecField) -> None:
        """Asks until the answer can be read."""
        self._say(said_of(field))
        while True:
            answer = self._ask(self._prompt(field), self._default(field)).strip()
            if not answer and not field.required:
                self.literals.pop(field.path, None)
                return
            try:
                value = read_value(field, _typed(field, answer), self.units)
            except Wrong as wrong:
                for fault in wrong.faults:
                    self._say(str(fault))
            except Undecided:  # cannot be: the units are settled before the first length
                raise AssertionError(field.path) from None
            else:
                if field.path == "units":
                    self.units = value
                self.literals[field.path] = _literal(field, answer)
                return

    def _prompt(self, field: SpecField) -> str:
        if field.choices:
            return f"{field.path} ({', '.join(field.choices)})"
        if field.kind == "switch":
            return f"{field.path} (yes, no)"
        more = "; several with a semicolon between them" if field.kind == "lengths" else ""
        return f"{field.path} (for example {_plain(example(field, self.units))}{more})"

    def _default(self, field: SpecField) -> str:
        """The usual answer to what is chosen; none to what is measured."""
        if field.path in self.literals:
            return _plain(self.literals[field.path])
        if field.choices:
            return field.choices[0] if field.default is None else str(field.default)
        if field.kind == "switch":
            return "yes" if field.default else "no"
        return str(field.default) if field.kind == "count" and field.default is not None else ""


_SWITCH = {"yes": True, "no": False, "true": True, "false": False}
"""What people answer, and what stands in the file."""
_TOGETHER = (
    {"drop.floor_marks", "drop.rod_to_floor", "panel.length"},
    {"panel.hem", "panel.turn_under"},
    {"hem.depth", "hem.turn_under"},
    {"panel.casing", "heading.loop_length", "heading.lower_allowance", "heading.upper_turn"},
    {"panel.heading.drop", "rod.diameter"},
    {"heading.hooks_on", "heading.ring_inside"},
)
"""Fields that must agree: where one is blamed, the slip may as well be in another."""


def _to_ask_again(faults: Iterable[Fault]) -> list[SpecField]:
    """The fields that the faults name, and those that these must agree with."""
    blamed = {fault.field.partition("[")[0] for fault in faults}
    for group in _TOGETHER:
        if blamed & group:
            blamed |= group
    known = [field for path, field in FIELDS.items() if path in blamed]
    return known or [field for field in FIELDS.values() if field.about.asked]


def _typed(field: SpecField, answer: str) -> Any:
    """An answer as the value that it would be in the file."""
    if field.kind == "lengths":
        return [part.strip() for part in answer.split(";") if part.strip()]
    if field.kind == "count" and answer.isascii() and answer.isdigit() and len(answer) < 10:
        return int(answer)
    if field.kind == "switch":
        return _SWITCH.get(answer.lower(), answer)
    return answer


def _literal(field: SpecField, answer: str) -> str:
    """An answer as it stands in the file."""
    value = _typed(field, answer)
    # A JSON text is also a TOML text, and so is a list of them.
    return json.dumps(value, ensure_ascii=False)


def _plain(literal: str) -> str:
    """A literal without its quotation marks and brackets, as a person would answer."""
    value = json.loads(literal)
    if isinstance(value, bool):
        return "yes" if value else "no"
    return "; ".join(value) if isinstance(value, list) else str(value)
