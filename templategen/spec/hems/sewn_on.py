"""Hems of other cloth, sewn on: a facing behind the edge, or a border below it."""

from __future__ import annotations

from typing import Annotated, Literal

from ...lengths import Length, inches
from ..about import MORE_THAN_NOTHING, About
from ..table import MOST_1_M, MOST_100_MM, Table
from .face import DEPTH, TURN_UNDER

_SEAM = About(
    "the seam allowance where the other cloth is sewn on", "1/2 in", "12 mm",
    left_out="1/2 in", asked=False, least=MORE_THAN_NOTHING, most=MOST_100_MM)  # fmt: skip


class Faced(Table):
    """A strip of other cloth sewn to the bottom edge and turned up behind it: where the panel is too short."""

    style: Literal["faced"]
    depth: Annotated[Length, DEPTH]
    turn_under: Annotated[Length, TURN_UNDER]
    seam: Annotated[Length, _SEAM] = inches("1/2")


class Border(Table):
    """A band of other cloth, doubled or single, sewn on below the panel."""

    style: Literal["border"]
    depth: Annotated[Length, DEPTH]
    seam: Annotated[Length, _SEAM] = inches("1/2")
    own_hem: Annotated[Length | None, About(
        "the finished depth of the hem of a border of single cloth, turned twice alike", "1 in", "25 mm",
        left_out="the border is doubled, and its lower edge is a fold", asked=False,
        least=MORE_THAN_NOTHING, most=MOST_1_M)] = None
