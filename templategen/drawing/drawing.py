"""A drawing: one template at full scale, with what a layout needs to know of it."""

from __future__ import annotations

import re
from dataclasses import dataclass
from fractions import Fraction
from typing import NamedTuple

from .items import Item, Number
from .outline import Outline

LONGEST_SERVED = 60
"""Characters of a file name that say what a template serves: our choice, because in any script that is less than the
255 bytes that file systems allow."""


class Mark(NamedTuple):
    """A place that counts: a line from the datum edge inward stands there."""

    label: str
    at: Fraction


class Lane(NamedTuple):
    """A band along the whole drawing that its content leaves free.

    A layout writes there what a piece is called and what lies beside it, the
    letters of its joins, and the check lengths over them.
    """

    low: Number
    high: Number


@dataclass(frozen=True, slots=True)
class Drawing:
    """One template at full scale, in millimetres.

    x runs along the datum edge from the template's zero; the datum edge is y = 0.
    """

    name: str
    """"spacing strip"; a second one of its kind is numbered, "cut gauge 2", and one that does not serve everything that
    the kit is for says what it serves, "cut gauge 2, north"."""
    caption: tuple[str, ...]
    """What to do with it, in sentences of which the first matter most."""
    up: str
    """What its upper side is laid against, or points to: "the panel's top edge"."""
    start: Fraction
    end: Fraction
    low: Number
    high: Number
    inward: int
    """1 where the template lies on the side of rising y, -1 on the other."""
    lane: Lane
    registration: tuple[Number, Number]
    """The heights of the two registration marks of a join: as far apart as the content allows, and one of them nearer
    to its edge than the other by a few mm, so that a piece laid upside down shows."""
    marks: tuple[Mark, ...]
    items: tuple[Item, ...]
    keep_whole: tuple[tuple[Fraction, Fraction], ...] = ()
    """Stretches along x, besides its texts and crosswise lines, that no join may cross."""
    ends: tuple[str, str] = ("", "")
    """What its two ends are, where they are something."""
    quarter_turns: int = 0
    """How often it is turned a quarter anticlockwise from the drawing to be read upright."""
    serves: str = ""
    """What its name says that it serves, after the comma; "" where it serves everything."""

    @property
    def own_name(self) -> str:
        """Its name without what it serves."""
        return self.name.removesuffix(f", {self.serves}") if self.serves else self.name

    @property
    def file_name(self) -> str:
        """Its name as part of a file name: "spacing-strip", "cut-gauge-2--north"; no more than letters and figures."""
        served = "-".join(re.findall(r"[^\W_]+", self.serves.casefold()))[:LONGEST_SERVED]
        return self.own_name.replace(" ", "-") + (f"--{served}" if self.serves else "")

    @property
    def length(self) -> Fraction:
        """Along the datum edge."""
        return self.end - self.start

    @property
    def depth(self) -> Number:
        """Across it."""
        return self.high - self.low

    @property
    def outline(self) -> Outline:
        """How far its paper reaches, at any place along it. Looked up among its items anew each time."""
        return Outline.among(self.items)

    @property
    def family(self) -> str:
        """Its name without a number, and without what it serves."""
        return self.own_name.rstrip(" 0123456789")
