"""What was read off the bars, as it is typed outside a spec: on the command line, or in the file of printers."""

from __future__ import annotations

from contextlib import suppress
from dataclasses import dataclass, replace

from ..bars import BARS, NOTHING_READ, Bar, Reading, Readings, faults_in
from ..errors import Fault, LengthError
from ..lengths import read_length
from ..lengths.showing import Units
from .catalogue import FIELDS
from .typed import as_typed
from .values import Undecided, Wrong, read_value


@dataclass(frozen=True, slots=True)
class TypedReadings:
    """Readings as they were typed, before anybody knows in which unit a bare number is."""

    across: object = None
    along: object = None
    bar: object = None
    called: tuple[str, str, str] = ("--printer-across", "--printer-along", "--printer-bar")
    """What each is called where it was typed."""

    def read(self, units: Units | None = None) -> tuple[Readings, list[Fault]]:
        """The readings, and everything wrong with them; ``units`` are those of a bare number.

        A bare number is refused where ``units`` is None.
        """
        faults: list[Fault] = []
        bar: Bar | None = None
        if self.bar is not None and self.across is None and self.along is None:
            right = f"no reading of it; write {self.called[0]} or {self.called[1]} as well"
            faults.append(Fault(self.called[2], as_typed(self.bar), right))
        if self.bar is not None:
            bar = _bar(self.bar)
            if bar is None:
                known = " or ".join(map(as_typed, BARS))
                faults.append(Fault(self.called[2], as_typed(self.bar), f"there is no such bar; write {known}"))
        across, along = (self._one(i, bar, units, faults) for i in (0, 1))
        if faults:
            return NOTHING_READ, faults
        readings = Readings(across, along)
        names = [(self.called[i], as_typed(value)) for i, value in enumerate((self.across, self.along))]
        return readings, list(faults_in(readings, names[0], names[1]))

    def _one(self, at: int, bar: Bar | None, units: Units | None, faults: list[Fault]) -> Reading | None:
        value = (self.across, self.along)[at]
        if value is None:
            return None
        field = replace(FIELDS[("printer.across", "printer.along")[at]], path=self.called[at])
        try:
            return Reading(read_value(field, value, units), bar)
        except Wrong as wrong:
            faults += wrong.faults
        except Undecided:
            right = f"a number without a unit; write it with one, {value} mm or {value} in"
            faults.append(Fault(self.called[at], as_typed(value), right))
        return None


def _bar(value: object) -> Bar | None:
    """The bar of that length, however it is written."""
    with suppress(LengthError):
        return next((bar for bar, length in BARS.items() if length == read_length(str(value))), None)
    return None
