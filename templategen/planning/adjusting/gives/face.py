"""What a heading can give once it has been made: how far each of its marks can raise or lower the hem."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass

from ....lengths import Length
from ...plan import HeadingMark, Plan
from ..adjustment import Move


@dataclass(frozen=True, slots=True)
class HeadingGive:
    """One kind of heading."""

    style: str
    title: str
    """What is done to it, "A second row of stitching at the loops"."""
    move: Callable[[Plan, HeadingMark, Length], Move]
    """What is done at a mark to raise the hem there by so much, or lower it; as far as the heading can give."""
    how: Callable[[Plan, tuple[Move, ...]], tuple[str, ...]]
    """The same in whole sentences."""
    limits: Callable[[Plan], tuple[Length, Length]]
    """The most that it can raise the hem, and the most that it can lower it."""
    across: bool = False
    """Whether it is one row right across the panel, and not something at each mark."""
