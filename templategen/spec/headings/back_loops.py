"""Loops sewn to the back of the casing, and hung on the rod."""

from __future__ import annotations

from typing import Annotated, ClassVar, Literal

from ...lengths import Length, inches
from ..about import MORE_THAN_NOTHING, About
from ..table import MOST_1_M
from .face import COUNT, EDGE_INSET, MAX_PITCH, SEAM_ALLOWANCE, HeadingTable


class BackLoops(HeadingTable):
    """Loops sewn to the back of the casing, and hung on the rod."""

    HANGS_BY: ClassVar[tuple[str, ...]] = ("loop_length", "lower_allowance", "upper_turn")

    style: Literal["back loops"]
    count: Annotated[int | None, COUNT] = None
    edge_inset: Annotated[Length | None, EDGE_INSET] = None
    loop_length: Annotated[Length | None, About(
        "the cut length of a loop", "3 1/4 in", "85 mm",
        left_out="as long as the casing is deep", asked=False,
        least=MORE_THAN_NOTHING, most=MOST_1_M)] = None
    loop_width: Annotated[Length | None, About(
        "the finished width of a loop", "1 1/8 in", "28 mm",
        left_out="chosen", asked=False,
        least=MORE_THAN_NOTHING, most=MOST_1_M)] = None
    lower_allowance: Annotated[Length, About(
        "how much of the loop's length is below its lower seam", "3/8 in", "10 mm",
        left_out="3/8 in", asked=False,
        least=MORE_THAN_NOTHING, most=MOST_1_M)] = inches("3/8")
    upper_turn: Annotated[Length, About(
        "how much of the loop's length is turned under at its upper seam", "5/8 in", "15 mm",
        left_out="5/8 in", asked=False,
        least=MORE_THAN_NOTHING, most=MOST_1_M)] = inches("5/8")
    max_pitch: Annotated[Length | None, MAX_PITCH] = None
    seam_allowance: Annotated[Length, SEAM_ALLOWANCE] = inches("1/4")
