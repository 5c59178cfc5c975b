"""Bought tape with cords in it, sewn along the back of the top: the cords are pulled, and the top gathers."""

from __future__ import annotations

from typing import Annotated, ClassVar, Literal

from ...lengths import Length, inches
from ..about import MORE_THAN_NOTHING, NOTHING_OR_MORE, About
from ..table import MOST_1_M, MOST_60_M, MOST_100_MM
from .face import COUNT, MAX_PITCH, HeadingTable
from .hanging_on import DROP, SET_BELOW


class GatheringTape(HeadingTable):
    """Bought tape with cords in it, sewn along the back of the top and hung by hooks in its pockets."""

    HANGS_BY: ClassVar[tuple[str, ...]] = ("drop", "set_below")

    style: Literal["gathering tape"]
    drop: Annotated[Length, DROP]
    set_below: Annotated[Length | None, SET_BELOW] = None
    tape_width: Annotated[Length, About(
        "how wide the bought tape is", "1 in", "25 mm",
        "Measure the tape itself: names and labels are rounded.",
        left_out="1 in, the ordinary gathering tape",
        least=MORE_THAN_NOTHING, most=MOST_1_M)] = inches(1)
    tape_top: Annotated[Length | None, About(
        "from the panel's top edge down to the tape's upper edge", "1 in", "25 mm",
        "Handbooks run from 1/4 in to 2 in (6 to 50 mm): the cloth above the tape stands up as a frill.",
        left_out="1 in for tape up to 1 1/2 in wide, 1/4 in for wider", asked=False,
        least=NOTHING_OR_MORE, most=MOST_1_M)] = None
    pocket: Annotated[Length | None, About(
        "from the tape's upper edge down to where the hooks hold in its pockets", "1/2 in", "12 mm",
        "Where the tape has several rows of pockets, measure down to the row that is used.",
        left_out="half the tape's width, or what set_below says", asked=False,
        least=NOTHING_OR_MORE, most=MOST_1_M)] = None
    top_fold: Annotated[Length | None, About(
        "how deep the top is folded to the back under the tape", "1 1/2 in", "38 mm",
        "Deeper than the tape's upper edge lies, so that the tape covers the raw edge.",
        left_out="down to the middle of the tape", asked=False,
        least=NOTHING_OR_MORE, most=MOST_1_M)] = None
    tape_turn: Annotated[Length, About(
        "how much of the tape is turned in at each end", "3/4 in", "20 mm",
        left_out="3/4 in", asked=False,
        least=NOTHING_OR_MORE, most=MOST_100_MM)] = inches("3/4")
    cord_side: Annotated[Literal["return", "leading"], About(
        "which edge of the panel the cords are pulled from, \"return\" or \"leading\"; at the other they are knotted",
        "return", "return",
        "The leading edge is the one that meets the other panel, or is drawn across the window.",
        left_out="the return edge, where the cords hang out of sight", asked=False)] = "return"
    gathered_width: Annotated[Length | None, About(
        "how wide a panel is when its tape is drawn up", "24 in", "600 mm",
        left_out="the panel's share of rod, overlap and returns", asked=False,
        least=MORE_THAN_NOTHING, most=MOST_60_M)] = None
    count: Annotated[int | None, COUNT] = None
    max_pitch: Annotated[Length | None, MAX_PITCH] = None
