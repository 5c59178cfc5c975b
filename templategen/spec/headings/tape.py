"""Gathering tape: a bought tape sewn to the back, with cords that gather it and pockets for hooks."""

from __future__ import annotations

from typing import Annotated, ClassVar, Literal

from ...lengths import NOTHING, Length, inches
from ..about import MORE_THAN_NOTHING, NOTHING_OR_MORE, About
from ..table import MOST_1_M
from .face import CARRIER_DROP, FINISHED_WIDTH, HOOK_SET, HeadingTable


class GatheringTape(HeadingTable):
    """Gathering tape, hung on hooks in its pockets."""

    HANGS_BY: ClassVar[tuple[str, ...]] = ("carrier_drop", "hook_set")

    style: Literal["gathering tape"]
    carrier_drop: Annotated[Length, CARRIER_DROP]
    hook_set: Annotated[Length, HOOK_SET]
    tape_width: Annotated[Length, About(
        "the width of the tape", "1 in", "25 mm",
        left_out="1 in", least=MORE_THAN_NOTHING, most=MOST_1_M)] = inches(1)
    tape_below: Annotated[Length, About(
        "from the panel's top edge down to the tape's upper edge", "1/4 in", "5 mm",
        "A frill above the tape needs more.",
        left_out="at the top edge", asked=False, least=NOTHING_OR_MORE, most=MOST_1_M)] = NOTHING
    fold_over: Annotated[Length | None, About(
        "how much of the top is turned over to the back, under the tape", "1 1/2 in", "40 mm",
        left_out="to the middle of the tape", asked=False,
        least=MORE_THAN_NOTHING, most=MOST_1_M)] = None
    tape_turn: Annotated[Length, About(
        "how much of the tape is turned under at each of its ends", "1/2 in", "12 mm",
        left_out="1/2 in", asked=False, least=NOTHING_OR_MORE, most=MOST_1_M)] = inches("1/2")
    finished_width: Annotated[Length | None, FINISHED_WIDTH] = None
