"""What to do about a panel that hangs wrong: the ways there are, what each costs, and which is taken."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Literal

from ...lengths import NOTHING, Length
from .hung import Hung


@dataclass(frozen=True, slots=True)
class Move:
    """What is done at one place."""

    label: str
    """Of the mark, "3"; of a place along the hem, its number."""
    at: Length
    """From the left edge, the back towards you."""
    wanted: Length
    """How far the hem is to rise there; negative where it is to come down."""
    distance: Length
    """How far the new row, hook or fold lies from the old one: positive raises the hem."""
    raised: Length
    """How far the hem rises by that."""
    unpicked: Length
    """Length of stitching to be unpicked."""
    sewn: Length
    """Length of new stitching."""

    @property
    def left(self) -> Length:
        """How far the hem there is still off."""
        return self.wanted - self.raised


@dataclass(frozen=True, slots=True)
class Remedy:
    """One way to put it right."""

    key: Literal["heading", "hem", "both"]
    title: str
    """"A second row of stitching at the loops"."""
    at_heading: tuple[Move, ...]
    """From the left, the back towards you; only where something is done."""
    at_hem: tuple[Move, ...]
    """The same along the hem; between two of them the new fold is straight."""
    how: tuple[str, ...]
    """What is done, in whole sentences."""
    left: Length
    """The farthest that the hem is then still off, at the places that were read."""
    short: str = ""
    """Why it cannot do all, where it cannot: what it would take, what it can give."""

    @property
    def does_all(self) -> bool:
        return not self.short

    @property
    def unpicked(self) -> Length:
        """Length of stitching to be unpicked."""
        return sum((move.unpicked for move in (*self.at_heading, *self.at_hem)), NOTHING)

    @property
    def sewn(self) -> Length:
        """Length of new stitching."""
        return sum((move.sewn for move in (*self.at_heading, *self.at_hem)), NOTHING)


@dataclass(frozen=True, slots=True)
class Adjustment:
    """The ways to put it right, the one with the least unpicking first."""

    hung: Hung
    stitched: bool
    """Whether the hem has been stitched already; else it is only pinned."""
    within: bool
    """Whether it is within what panels are made to, so that it may be left as it is."""
    remedies: tuple[Remedy, ...]

    @property
    def taken(self) -> Remedy | None:
        """The one to take; None where none can do it, or nothing needs doing."""
        return next((remedy for remedy in self.remedies if remedy.does_all), None)
