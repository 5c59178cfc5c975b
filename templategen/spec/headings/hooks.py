"""Hooks sewn on or pinned on below the panel's top edge, on rings or gliders."""

from __future__ import annotations

from typing import Annotated, ClassVar, Literal

from ...lengths import Length
from ..about import About
from .face import COUNT, EDGE_INSET, MAX_PITCH, HeadingTable
from .hanging_on import DROP, RING_INSIDE, SET_BELOW


class Hooks(HeadingTable):
    """Hooks on the panel's back, hung on rings or gliders."""

    HANGS_BY: ClassVar[tuple[str, ...]] = ("drop", "set_below")

    style: Literal["hooks"]
    drop: Annotated[Length, DROP]
    set_below: Annotated[Length | None, SET_BELOW] = None
    hooks_on: Annotated[Literal["rings", "gliders"], About(
        "what the hooks hang on: \"rings\" on a rod, or \"gliders\" in a track", "rings", "rings",
        "Of a track, write its height as the rod's diameter.",
        left_out="rings", asked=False)] = "rings"
    fixed: Annotated[Literal["sewn on", "pinned on"], About(
        "how the hooks are fixed to the cloth: \"sewn on\" or \"pinned on\"", "sewn on", "sewn on",
        left_out="sewn on", asked=False)] = "sewn on"
    ring_inside: Annotated[Length | None, RING_INSIDE] = None
    count: Annotated[int | None, COUNT] = None
    edge_inset: Annotated[Length | None, EDGE_INSET] = None
    max_pitch: Annotated[Length | None, MAX_PITCH] = None
