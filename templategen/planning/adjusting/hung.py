"""How a panel hangs: how far its hem is off, from edge to edge, by what was read at a few places."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from ...errors import Fault, Refusal
from ...lengths import NOTHING, Length
from ...spec.hangs import HangReading
from ..plan import Plan
from ..wording import near


@dataclass(frozen=True, slots=True)
class Place:
    """How far the hem is off at one place."""

    at: Length
    """From the left edge, the back towards you, as all distances along the heading."""
    low: Length
    """How far it hangs too low; negative where it hangs too high."""
    said: str
    """The place in words, as seen from the front: "at the left edge"."""


@dataclass(frozen=True, slots=True)
class Hung:
    """The hem's error all along: straight between two places, level beyond the outermost."""

    places: tuple[Place, ...]
    """From the left, the back towards you; each once."""

    def low_at(self, at: Length) -> Length:
        """How far it hangs too low there, by the straight line between the places beside it."""
        before = [place for place in self.places if place.at <= at]
        after = [place for place in self.places if place.at >= at]
        if not before:
            return after[0].low
        if not after:
            return before[-1].low
        left, right = before[-1], after[0]
        if left.at == right.at:
            return left.low
        return left.low + (right.low - left.low) * ((at - left.at) / (right.at - left.at))

    @property
    def worst(self) -> Length:
        """The farthest that it is off, either way."""
        return max(abs(place.low) for place in self.places)


def hung(plan: Plan, readings: Sequence[HangReading], called: str = "--hangs") -> Hung:
    """The readings put in their places on the panel.

    Sides and distances are as seen from the front, mark numbers from the left
    end with the back towards you. Raises Refusal for a place that the panel
    has not got, or one that is read twice and differently.
    """
    faults: list[Fault] = []
    places: dict[Length, Place] = {}
    for reading in readings:
        found = _place(plan, reading)
        if isinstance(found, str):
            faults.append(Fault(called, f'"{reading.typed}"', found))
            continue
        other = places.setdefault(found.at, found)
        if other.low != found.low:
            right = f"this place is there twice, {_said(plan, other.low)} and {_said(plan, found.low)}; keep one"
            faults.append(Fault(called, f'"{reading.typed}"', right))
    if faults:
        raise Refusal(*faults)
    return Hung(tuple(sorted(places.values(), key=lambda place: place.at)))


def _said(plan: Plan, low: Length) -> str:
    return f"{near(plan.tape, abs(low))} {'low' if low > NOTHING else 'high'}" if low else "good"


def _place(plan: Plan, reading: HangReading) -> Place | str:
    """Where it is, or what is wrong with it."""
    width, low = plan.width, reading.low
    if reading.side is not None:
        at = {"left": width, "middle": width / 2, "right": NOTHING}[reading.side]
        words = "in the middle" if reading.side == "middle" else f"at the {reading.side} edge"
        return Place(at, low, words)
    if reading.mark is not None:
        if not plan.heading.marks:
            return "this heading has no marks; say left, middle, right, or how far from the left"
        if not 1 <= reading.mark <= plan.heading.count:
            return f"there is none; they are numbered from 1 to {plan.heading.count}"
        mark = plan.heading.marks[reading.mark - 1]
        return Place(mark.at, low, f"at {plan.heading.thing} {mark.label}")
    if reading.from_left is not None:
        if not NOTHING <= reading.from_left <= width:
            return f"beyond the panel; it is {plan.tape.show(width)} wide"
        return Place(width - reading.from_left, low, f"{near(plan.tape, reading.from_left)} from the left edge")
    return Place(width / 2, low, "all along")
