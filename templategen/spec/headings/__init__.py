"""The kinds of heading, a module each: what is said of one that is made, or that a panel came with."""

from __future__ import annotations

from typing import Annotated

from pydantic import Field

from .back_loops import BackLoops
from .casing import Casing
from .eyelets import Eyelets
from .hooks import Hooks
from .pleats import BoxPleats, InvertedBoxPleats, PinchPleats
from .rings import Rings
from .tabs import Tabs
from .tape import GatheringTape

Heading = Annotated[
    BackLoops
    | Casing
    | Tabs
    | Rings
    | Hooks
    | Eyelets
    | PinchPleats
    | BoxPleats
    | InvertedBoxPleats
    | GatheringTape,
    Field(discriminator="style"),
]  # fmt: skip
"""One heading; its ``style`` says which. A new kind is a module and a line here."""

__all__ = [
    "BackLoops",
    "BoxPleats",
    "Casing",
    "Eyelets",
    "GatheringTape",
    "Heading",
    "Hooks",
    "InvertedBoxPleats",
    "PinchPleats",
    "Rings",
    "Tabs",
]
