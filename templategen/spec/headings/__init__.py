"""The kinds of heading, a module each: what is said of one that is made, or that a panel came with."""

from __future__ import annotations

from typing import Annotated

from pydantic import Field

from .back_loops import BackLoops
from .casing import Casing
from .hooks import Hooks
from .rings import Rings
from .tabs import Tabs

Heading = Annotated[
    BackLoops
    | Casing
    | Tabs
    | Rings
    | Hooks,
    Field(discriminator="style"),
]  # fmt: skip
"""One heading; its ``style`` says which. A new kind is a module and a line here."""

__all__ = ["BackLoops", "Casing", "Heading", "Hooks", "Rings", "Tabs"]
