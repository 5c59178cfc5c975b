"""What was read off the two bars of a sheet, and how far a printer is out by that.

Readings count from a sheet that was not corrected. Each axis stands by itself:
printers err differently along and across the way the paper goes.
"""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from contextlib import suppress
from dataclasses import dataclass
from fractions import Fraction
from types import MappingProxyType
from typing import Literal

from .errors import Fault, LengthError
from .lengths import Length, inches, millimetres, read_length
from .lengths.showing import mixed_number
from .lengths.tokens import MOST_DIGITS
from .misprints import TOLERANCE, likely_cause

Bar = Literal["100 mm", "4 in"]
"""Each axis of a sheet has two, side by side from one zero: one for either kind of rule."""

BARS: Mapping[Bar, Length] = MappingProxyType({"100 mm": millimetres(100), "4 in": inches(4)})
USUAL: Bar = "100 mm"
"""The bar that a reading is of where nobody says which."""

MOST_OFF = Fraction(3, 100)
"""A printer is out by no more than this; our choice, because old printers are known to err by a few per cent, and what
is out further is out by a setting."""
_FINENESS = 4
"""Decimals of a ratio that are looked at: a hundredth of a millimetre on the bar, finer than any rule."""


@dataclass(frozen=True, slots=True)
class Reading:
    """What one bar measured."""

    length: Length
    bar: Bar | None = None
    """Which bar; None where nobody said, and it is taken to be the usual one."""

    @property
    def nominal(self) -> Length:
        """What the bar says."""
        return BARS[self.bar or USUAL]

    @property
    def ratio(self) -> Fraction:
        """Printed over asked."""
        return self.length / self.nominal

    @property
    def text(self) -> str:
        """"99.2 mm", or "4 1/32 in of 4 in"."""
        of = f" of {self.bar}" if self.bar not in (None, USUAL) else ""
        return f"{self.typed}{of}"

    @property
    def typed(self) -> str:
        """"99.2 mm", "4 1/32 in": as it could be typed, in inches where the bar is one of inches."""
        return typed(self.length, in_inches=self.bar == "4 in")


TRUE = Reading(BARS[USUAL])
"""What a printer that is right makes of a bar."""


@dataclass(frozen=True, slots=True)
class Readings:
    """What the bars across and along a sheet measured; None where that is not said."""

    across: Reading | None = None
    along: Reading | None = None

    def over(self, other: Readings) -> Readings:
        """These readings, and for an axis that they say nothing of, the ``other`` ones."""
        return Readings(self.across or other.across, self.along or other.along)

    @property
    def ratios(self) -> tuple[Fraction, Fraction]:
        """Printed over asked, across and along; 1 where nothing is said."""
        return (self.across or TRUE).ratio, (self.along or TRUE).ratio

    @property
    def text(self) -> str:
        """"99.2 mm across, 99.6 mm along"."""
        return f"{(self.across or TRUE).text} across, {(self.along or TRUE).text} along"


NOTHING_READ = Readings()
NO_CORRECTION = Readings(TRUE, TRUE)


def too_far(reading: Reading) -> bool:
    """Whether it is out by more than a printer can be."""
    return abs(round(reading.ratio, _FINENESS) - 1) > MOST_OFF


def faults_in(readings: Readings, across: tuple[str, str], along: tuple[str, str]) -> Iterator[Fault]:
    """A fault for each reading that is too far out, with what most likely did it.

    ``across`` and ``along`` are each what the reading is called where it was
    typed, and how it was typed.
    """
    if not any(reading and too_far(reading) for reading in (readings.across, readings.along)):
        return
    ratios = [reading.ratio if reading else None for reading in (readings.across, readings.along)]
    cause = likely_cause(ratios[0], ratios[1])
    known = [ratio for ratio in ratios if ratio is not None]
    if cause is None and max(known) - min(known) > TOLERANCE:
        cause = "A setting would change both bars alike: measure both again, with a steel rule"
    cause = cause or "So much is a setting, not the printer: print at actual size, 100 %, and measure again"
    for reading, (field, typed_there), way in ((readings.across, across, "across"), (readings.along, along, "along")):
        if reading is None or not too_far(reading):
            continue
        least, most = (_limit(reading, 1 + off) for off in (-MOST_OFF, MOST_OFF))
        beyond = f"less than {least}" if reading.ratio < 1 else f"more than {most}"
        within = f"write what the bar {way} the sheet, nominally {reading.bar or USUAL}, measures"
        yield Fault(field, typed_there, f"{beyond}; {within}, from {least} to {most}. {cause}")


def doubts(readings: Readings, asked_as: str) -> tuple[str, ...]:
    """What should be asked of readings that are within the limit; a sentence or two for each.

    ``asked_as`` is how it is said which bar was measured.
    """
    return (*_setting(readings), *_other_bar(readings, asked_as))


def _setting(readings: Readings) -> Iterator[str]:
    # Not refused: who cannot change the setting, at a print shop or from a telephone, gets true sheets this way.
    if cause := likely_cause(*readings.ratios):
        yield (
            f"the bars measured {readings.text}, and {cause}. The kit is corrected for it, and is true only where "
            "it is printed with the same setting. Put the setting right if you can, print a kit that is not "
            "corrected, and measure its bars again."
        )


def _other_bar(readings: Readings, asked_as: str) -> Iterator[str]:
    for way, reading in (("across", readings.across), ("along", readings.along)):
        if reading is None or reading.bar is not None or not _off_an_inch_rule(reading.length):
            continue
        other = Reading(reading.length, "4 in")
        if too_far(other):
            continue
        yield (
            f"{reading.typed} {way} was taken as a reading of the 100 mm bar, {_per_cent(reading)}. If it is one of "
            f'the 4 in bar beside it, it means {_per_cent(other)}: say which bar it is of, with {asked_as} "4 in" or '
            '"100 mm".'
        )


def _off_an_inch_rule(length: Length) -> bool:
    """Whether inches show it evenly: in 64ths or in thousandths."""
    return (length.inches * 64).denominator == 1 or (length.inches * 1000).denominator == 1


def _per_cent(reading: Reading) -> str:
    return f"{float(reading.ratio) * 100:.4g} %"


def compounded(new: Readings, before: Readings) -> str:
    """What to say where ``new`` readings take the place of a correction, lest it be lost unseen; "" where none is.

    Whoever measures the sheets of a corrected kit reads what is left over, and not what the printer does.
    """
    axes = [
        (way, fresh, old)
        for way, fresh, old in (("across", new.across, before.across), ("along", new.along, before.along))
        if fresh is not None and old is not None and fresh.ratio != old.ratio and old.ratio != 1
    ]
    if not axes:
        return ""
    was = " and ".join(f"{old.text} {way}" for way, _, old in axes)
    right = " and ".join(f"{float(100 * fresh.ratio * old.ratio):.2f} mm {way}" for way, fresh, old in axes)
    return (
        f"these readings take the place of {was}, and count from a sheet without a correction. If they were read "
        f"off sheets that were corrected for that, give {right} instead, of the 100 mm bar."
    )


def readings_record(readings: Readings) -> dict[str, dict[str, str]]:
    """The readings as plain data, axis by axis; empty where nothing is said."""
    return {
        axis: {"reads": reading.typed} | ({"bar": reading.bar} if reading.bar else {})
        for axis, reading in (("across", readings.across), ("along", readings.along))
        if reading is not None
    }


def readings_of_record(record: object) -> Readings:
    """The readings that were made plain data. Raises ValueError where they are not, or are too far out."""
    if not isinstance(record, dict) or not record.keys() <= {"across", "along"}:
        raise ValueError("not readings")
    return Readings(**{axis: _reading_of(each) for axis, each in record.items()})


def _reading_of(record: object) -> Reading:
    match record:
        case {"reads": str(text), **rest} if rest.keys() <= {"bar"}:
            bar = next((known for known in BARS if known == rest.get("bar")), None)
            reading = Reading(read_length(text), bar)
            if bar == rest.get("bar") and not too_far(reading):
                return reading
    raise ValueError("not a reading")


def _limit(reading: Reading, factor: Fraction) -> str:
    """A limit in the unit that the bar is named in: "97 mm", "3.88 in"."""
    limit = reading.nominal * factor
    number, unit = (limit.inches, "in") if reading.bar == "4 in" else (limit.mm, "mm")
    return f"{float(number):g} {unit}"


def typed(length: Length, in_inches: bool = False) -> str:
    """The length exactly, as a person could type it: "99.2 mm", "4 1/32 in"; reading it gives it back.

    Raises ValueError where that takes more digits than a length may have.
    """
    in_64ths = (length.inches * 64).denominator == 1 and (in_inches or (length.mm * 100).denominator != 1)
    even = f"{mixed_number(length.inches)} in" if in_64ths else ""
    decimals = [_decimal(length.mm, "mm"), _decimal(length.inches, "in")][:: -1 if in_inches else 1]
    mixed = sorted((f"{mixed_number(length.inches)} in", f"{mixed_number(length.mm)} mm"), key=len)
    for text in filter(None, (even, *decimals, *mixed)):
        with suppress(LengthError):
            if read_length(text) == length:
                return text
    raise ValueError("a length that cannot be written out")


def _decimal(number: Fraction, unit: str) -> str:
    """"99.2 mm"; "" where the decimals do not end."""
    for places in range(MOST_DIGITS):
        scale: int = 10**places
        if (number * scale).denominator == 1:
            whole, rest = divmod((number * scale).numerator, scale)
            decimals = f".{str(rest).zfill(places)}" if places else ""
            return f"{whole}{decimals} {unit}"
    return ""
