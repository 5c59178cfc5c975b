"""Eyelets: metal or plastic rings set in holes along a doubled band, threaded on the rod."""

from __future__ import annotations

from typing import Annotated, ClassVar, Literal

from ...lengths import Length, millimetres
from ..about import MORE_THAN_NOTHING, About, Limit
from ..table import MOST_1_M
from .face import COUNT, EDGE_INSET, MAX_PITCH, HeadingTable

_MOST_RING = Limit(millimetres(200), "200 mm (about 8 in)")


class Eyelets(HeadingTable):
    """Eyelets threaded on the rod, so that the panel falls in even folds to and fro."""

    HANGS_BY: ClassVar[tuple[str, ...]] = ("eyelet_inside", "centre_below")

    style: Literal["eyelets"]
    eyelet_inside: Annotated[Length, About(
        "the inner diameter of an eyelet", "1 in", "25 mm",
        "The rod has to slide in it: makers ask for 14 to 40 % more than the rod's thickness.",
        least=MORE_THAN_NOTHING, most=_MOST_RING)]
    centre_below: Annotated[Length | None, About(
        "from the panel's top edge down to the eyelet's centre", "1 3/8 in", "35 mm",
        left_out="chosen, so that the ring clears the top edge", asked=False,
        least=MORE_THAN_NOTHING, most=MOST_1_M)] = None
    eyelet_outside: Annotated[Length | None, About(
        "the outer diameter of an eyelet, its flange with it", "1 3/4 in", "44 mm",
        left_out="chosen, a half wider than its inside", asked=False,
        least=MORE_THAN_NOTHING, most=_MOST_RING)] = None
    hole: Annotated[Length | None, About(
        "the diameter of the hole that is cut for an eyelet", "1 1/8 in", "28 mm",
        "The maker says it on the packet; try it on a scrap first.",
        left_out="an eighth of an inch wider than its inside", asked=False,
        least=MORE_THAN_NOTHING, most=_MOST_RING)] = None
    count: Annotated[int | None, COUNT] = None
    edge_inset: Annotated[Length | None, EDGE_INSET] = None
    max_pitch: Annotated[Length | None, MAX_PITCH] = None
