"""Headings that are carried at points: rings or clips along the top edge, and hooks set below it."""

from __future__ import annotations

from typing import Annotated, ClassVar, Literal

from ...lengths import NOTHING, Length
from ..about import MORE_THAN_NOTHING, NOTHING_OR_MORE, About
from ..table import MOST_1_M
from .face import CARRIER_DROP, COUNT, EDGE_INSET, HOOK_SET, MAX_PITCH, HeadingTable


class Rings(HeadingTable):
    """Rings sewn to the top edge, or clips that grip it."""

    HANGS_BY: ClassVar[tuple[str, ...]] = ("carrier_drop", "held_below")

    style: Literal["rings"]
    carrier_drop: Annotated[Length, CARRIER_DROP]
    held_below: Annotated[Length, About(
        "from the panel's top edge down to where rings are sewn on or clips grip", "0 in", "0 mm",
        "Rings are sewn up to an inch below the top edge; clips grip the edge itself.",
        left_out="at the top edge", asked=False, least=NOTHING_OR_MORE, most=MOST_1_M)] = NOTHING
    ring_inside: Annotated[Length | None, About(
        "the inner diameter of a ring", "1 1/2 in", "38 mm",
        left_out="whether the ring goes over the rod is not judged", asked=False,
        least=MORE_THAN_NOTHING, most=MOST_1_M)] = None
    count: Annotated[int | None, COUNT] = None
    edge_inset: Annotated[Length | None, EDGE_INSET] = None
    max_pitch: Annotated[Length | None, MAX_PITCH] = None


class Hooks(HeadingTable):
    """Hooks sewn or pinned to the back of the top, hung on rings or gliders."""

    HANGS_BY: ClassVar[tuple[str, ...]] = ("carrier_drop", "hook_set")

    style: Literal["hooks"]
    carrier_drop: Annotated[Length, CARRIER_DROP]
    hook_set: Annotated[Length, HOOK_SET]
    count: Annotated[int | None, COUNT] = None
    edge_inset: Annotated[Length | None, EDGE_INSET] = None
    max_pitch: Annotated[Length | None, MAX_PITCH] = None
