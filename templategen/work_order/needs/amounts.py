"""Seams and things: what sewing takes, each with how it came about."""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from dataclasses import dataclass
from math import ceil
from typing import Literal

from ...lengths import NOTHING, Length, Tape
from ...planning.wording import say

Way = Literal["machine", "zigzag", "hand"]
"""How a seam is sewn: lockstitch and zigzag lockstitch are types 301 and 304 of ISO 4915."""
Of = Literal["panels", "lining"]
"""Which cloth its thread matches."""


@dataclass(frozen=True, slots=True)
class Seam:
    """Seams that are all alike."""

    name: str
    """"hem"."""
    each: Length | None
    """How long one is; None where that follows from the panel's length, which was not given."""
    times: int
    """How many there are, over all panels."""
    way: Way = "machine"
    of: Of = "panels"

    @property
    def total(self) -> Length:
        """Of all of them; nothing where it is not known."""
        return NOTHING if self.each is None else self.each * self.times

    @property
    def there(self) -> bool:
        """Whether there is anything to sew."""
        return self.times > 0 and (self.each is None or self.each > NOTHING)


@dataclass(frozen=True, slots=True)
class Thing:
    """Something that is bought, cut or got ready, by number or by length."""

    name: str
    """With the sizes that tell it from others of its kind: "hooks", "stiffening 4 in deep"."""
    amount: int | Length
    working: str


def seams_with(seams: Iterable[Seam]) -> dict[tuple[str, Way, Of], list[Seam]]:
    """Seams of one name, sewn in one way with one thread, together, in their order; those of one length added up."""
    found: dict[tuple[str, Way, Of], dict[Length | None, int]] = {}
    for seam in seams:
        alike = found.setdefault((seam.name, seam.way, seam.of), {})
        alike[seam.each] = alike.get(seam.each, 0) + seam.times
    return {
        (name, way, of): [Seam(name, each, times, way, of) for each, times in lengths.items()]
        for (name, way, of), lengths in found.items()
    }


def together(things: Mapping[str, Iterable[Thing]]) -> list[Thing]:
    """The things of several windows, by their labels; alike ones are added up, with each window's working."""
    found: dict[tuple[str, bool], list[tuple[str, Thing]]] = {}
    for label, each in things.items():
        for thing in each:
            found.setdefault((thing.name, isinstance(thing.amount, Length)), []).append((label, thing))
    return [_sum(having) for having in found.values()]


def _sum(having: list[tuple[str, Thing]]) -> Thing:
    (_, first), *others = having
    amount = first.amount
    for _, other in others:
        # Things are grouped by whether they are lengths, so the two are of one kind.
        amount = amount + other.amount  # type: ignore[operator]
    workings = [f"{label}: {thing.working}" if label and others else thing.working for label, thing in having]
    return Thing(first.name, amount, "; ".join(dict.fromkeys(workings)))


def enough(tape: Tape, length: Length) -> str:
    """A length that must be had, in both units, each rounded up to the tape's step: "216 in (5487 mm)"."""
    other = Tape.of("metric" if tape.units == "inch" else "inch")
    return f"{_up(tape, length)} ({_up(other, length)})"


def _up(tape: Tape, length: Length) -> str:
    return tape.read(tape.step * ceil(length / tape.step)).plain


def times(tape: Tape, number: int, each: Length) -> str:
    """"4 × 54 in"; of one alone its length."""
    return say(tape, each) if number == 1 else f"{number} × {say(tape, each)}"
