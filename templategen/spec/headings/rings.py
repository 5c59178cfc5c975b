"""Rings or clips that hold the panel's top."""

from __future__ import annotations

from typing import Annotated, ClassVar, Literal

from ...lengths import Length
from ..about import About
from .face import COUNT, EDGE_INSET, MAX_PITCH, HeadingTable
from .hanging_on import DROP, RING_INSIDE, SET_BELOW


class Rings(HeadingTable):
    """Rings sewn to the top, or clips that bite it."""

    HANGS_BY: ClassVar[tuple[str, ...]] = ("drop", "set_below")

    style: Literal["rings"]
    drop: Annotated[Length, DROP]
    set_below: Annotated[Length | None, SET_BELOW] = None
    held_by: Annotated[Literal["sewn rings", "clips"], About(
        "what holds the cloth: \"sewn rings\" or \"clips\"", "sewn rings", "sewn rings",
        left_out="sewn rings", asked=False)] = "sewn rings"
    ring_inside: Annotated[Length | None, RING_INSIDE] = None
    count: Annotated[int | None, COUNT] = None
    edge_inset: Annotated[Length | None, EDGE_INSET] = None
    max_pitch: Annotated[Length | None, MAX_PITCH] = None
