"""The text of a spec read into a Spec, or refused with all of its faults at once."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Any

from ..errors import Fault, Refusal
from .agreement import Answers, disagreements
from .catalogue import FIELDS, TABLES, SpecField
from .document import read_document
from .model import Spec
from .typed import as_typed
from .unknown import unknown
from .values import Undecided, Wrong, example, read_value

MOST_UNKNOWN = 100
"""Names that are not known, each looked up and reported; more are reported in one message."""


def read_spec(text: str, *, name: str = "spec") -> Spec:
    """The job that the TOML ``text`` says; ``name`` is what a message calls the text.

    Raises Refusal, with a fault for each thing that is wrong.
    """
    return spec_from_tables(read_document(text, name), source=text)


def spec_from_tables(tables: Mapping[str, Any], *, source: str = "") -> Spec:
    """The job that tables of plain values say, as TOML or a form gives them.

    ``source`` is the text that the spec is to carry. Raises Refusal.
    """
    found = Found()
    found.walk(tables, "")
    values = found.read()
    found.faults += disagreements(Answers(values, found.raw, found.misnamed))
    if found.faults:
        raise Refusal(*in_order(found.faults))
    spec = Spec(**nested(values))
    spec._source = source
    return spec


class Found:
    """What was found in the tables so far, and everything wrong with it."""

    def __init__(self) -> None:
        self.faults: list[Fault] = []
        self.unknowns = 0
        """Names that are not known, so far."""
        self.raw: dict[str, Any] = {}
        """What was typed, by the path of the known field it stands at."""
        self.misnamed: set[str] = set()
        """Fields and tables that are there under another name, or as another kind of thing: that is the
        fault, and they are not called missing as well."""

    def walk(self, table: Mapping[str, Any], before: str) -> None:
        """Sorts a table's entries into fields, tables, and names that are not known."""
        for name, value in table.items():
            path = f"{before}{name}"
            if path in FIELDS and "." not in name:
                self.raw[path] = value
            elif path in TABLES and "." not in name:
                self._table(path, value)
            else:
                self._unknown(path, value)

    def _table(self, path: str, value: Any) -> None:
        if isinstance(value, Mapping):
            self.walk(value, f"{path}.")
            return
        self.misnamed.add(path)
        first = next(field for field in FIELDS.values() if field.table == path)
        right = f"a table; write [{path}] on a line of its own, and {first.name} and the rest below it"
        if isinstance(value, list) and value and isinstance(value[0], Mapping):
            right = f"it comes once in a spec; write it in single brackets, [{path}]"
        self.faults.append(Fault(path, as_typed(value), right))

    def _unknown(self, path: str, value: Any) -> None:
        self.unknowns += 1
        if self.unknowns > MOST_UNKNOWN:  # looking for near names takes time
            if self.unknowns == MOST_UNKNOWN + 1:
                self.faults.append(Fault("", "", "more names that are not known follow; is this a spec?"))
            return
        fault, meant = unknown(path, value)
        self.faults.append(fault)
        if meant:
            self.misnamed.add(meant)

    def read(self) -> dict[str, Any]:
        """Every field's value; what cannot be read goes to the faults instead."""
        values: dict[str, Any] = {}
        for path, field in FIELDS.items():
            if path not in self.raw:
                if self.misnamed & {path, field.table} or not field.there(values):
                    continue
                if field.required:
                    self.faults.append(_missing(field, values.get("units")))
                else:
                    values[path] = field.default
                continue
            if not field.there(values) and field.chooser in values:
                self.faults.append(_not_there(field, self.raw[path], values[field.chooser]))
                continue
            try:
                value = read_value(field, self.raw[path], values.get("units"))
            except Wrong as wrong:
                self.faults += wrong.faults
            except Undecided:
                pass  # units are missing or wrong, and that is the fault
            else:
                if field.there(values):  # else the style is missing or wrong, and that is the fault
                    values[path] = value
        return values


def _not_there(field: SpecField, value: Any, chosen: str) -> Fault:
    """The fault of a field that belongs to another style than the one chosen."""
    styles = [as_typed(style) for style in field.styles]
    right = f"not used where {field.chooser} is {as_typed(chosen)}; it belongs to {' and '.join(styles)}; leave it out"
    return Fault(field.path, as_typed(value), right)


def _missing(field: SpecField, units: Any) -> Fault:
    return Fault(field.path, "", f"missing; write {field.about.meaning}, for example {example(field, units)}")


def in_order(faults: list[Fault]) -> list[Fault]:
    """The faults in the order of the file; those of unknown names first."""
    order = {path: at for at, path in enumerate(FIELDS)}
    return sorted(faults, key=lambda fault: order.get(fault.field.partition("[")[0], -1))


def nested(values: Mapping[str, Any]) -> dict[str, Any]:
    """Values by path as the tables that they stand in."""
    tables: dict[str, Any] = {}
    for path, value in values.items():
        *steps, name = path.split(".")
        table = tables
        for step in steps:
            table = table.setdefault(step, {})
        table[name] = value
    return tables
