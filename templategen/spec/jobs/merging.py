"""Each window's own fields laid over the shared ones; every fault where it stands in the file, and once."""

from __future__ import annotations

from collections.abc import Collection, Iterator, Mapping, Sequence
from dataclasses import dataclass, replace
from typing import Any

from ...errors import Fault
from ..agreement import Answers, disagreements
from ..catalogue import FIELDS
from ..model import Spec
from ..reading import Found, in_order, nested
from ..typed import as_typed


@dataclass(frozen=True, slots=True)
class _Entry:
    """What one window says itself."""

    path: str
    """"window[2]"."""
    name: str
    found: Found

    def fault(self, fault: Fault) -> Fault:
        """The fault of a field of its own."""
        said = f"({self.name}) " if self.name else ""
        return Fault(f"{self.path}.{fault.field}", fault.read, f"{said}{fault.right}")

    def says(self, path: str) -> bool:
        """Whether it says a field itself, be it under a name that is not quite right."""
        within = (path, path.rpartition(".")[0], path.partition(".")[0])
        return path in self.found.raw or not self.found.misnamed.isdisjoint(within)


def merged(
    shared: Found, entries: Sequence[Mapping[str, Any]], named: Sequence[tuple[str, str]], of_the_kit: Collection[str]
) -> tuple[list[Spec], list[Fault]]:
    """The spec of each window, where nothing is wrong; and all that is wrong with them.

    ``of_the_kit`` are names that belong to the whole job and not to a window.
    """
    windows: list[_Entry] = []
    for number, (entry, (name, _)) in enumerate(zip(entries, named, strict=True), 1):
        found = Found()
        # Looking for near names takes time, and there is one measure of it for the whole file.
        found.unknowns = (windows[-1].found if windows else shared).unknowns
        found.walk({key: value for key, value in entry.items() if key not in of_the_kit}, "")
        windows.append(_Entry(f"window[{number}]", name, found))
    faults = [
        entry.fault(Fault(key, as_typed(given[key]), "one for the whole job; write it above the first [[window]]"))
        for entry, given in zip(windows, entries, strict=True)
        for key in of_the_kit
        if key in given
    ]
    faults += [entry.fault(fault) if fault.field else fault for entry in windows for fault in entry.found.faults]
    specs: list[Spec] = []
    wrong: list[list[Fault]] = []
    for window in windows:
        found = _over(shared, window.found)
        values = found.read()
        found.faults += disagreements(Answers(values, found.raw, found.misnamed))
        wrong.append(in_order(found.faults))
        if not (found.faults or faults or shared.faults):
            specs.append(Spec(**nested(values)))
    shared.faults += _of_nobody(shared, windows)
    return specs, [*faults, *_placed(wrong, windows, shared)]


def _over(shared: Found, own: Found) -> Found:
    """What holds for one window.

    Where it chooses another kind of a table, the shared fields of other kinds fall away.
    """
    found = Found()
    found.misnamed = shared.misnamed | own.misnamed
    for path, value in shared.raw.items():
        chosen = own.raw.get(FIELDS[path].chooser)
        if not isinstance(chosen, str) or chosen in FIELDS[path].styles:
            found.raw[path] = value
    found.raw |= own.raw
    return found


def _of_nobody(shared: Found, windows: Sequence[_Entry]) -> list[Fault]:
    """What is wrong with shared fields that every window says anew: they are read all the same."""
    alone = _over(shared, Found())
    alone.read()
    used = {path for entry in windows for path in _over(shared, entry.found).raw if path not in entry.found.raw}
    paths = {path for path in shared.raw if path not in used}
    return [fault for fault in alone.faults if fault.read and fault.field.partition("[")[0] in paths]


def _placed(wrong: Sequence[Sequence[Fault]], windows: Sequence[_Entry], shared: Found) -> Iterator[Fault]:
    """The faults of the windows, each by the field as it stands in the file.

    What every window has, or what stands at the top of the file, is told once
    and without a window; what only some have says which.
    """
    having: dict[Fault, list[_Entry]] = {}
    for entry, faults in zip(windows, wrong, strict=True):
        for fault in faults:
            path = fault.field.partition("[")[0]
            if entry.says(path):
                having[entry.fault(fault)] = []
            else:
                having.setdefault(fault, []).append(entry)
    for fault, entries in having.items():
        if not entries or len(entries) == len(windows):
            yield fault
        elif fault.field.partition("[")[0] in shared.raw:
            names = ", ".join(entry.name or entry.path for entry in entries)
            yield replace(fault, right=f"(for {names}) {fault.right}")
        else:
            yield from (entry.fault(fault) for entry in entries)
