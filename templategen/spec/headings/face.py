"""What every kind of heading says of itself, and the fields that several kinds share.

A field that stands in several kinds is one field: it has one meaning, written once, here.
"""

from __future__ import annotations

from typing import Annotated, ClassVar

from ...lengths import NOTHING, Length, inches
from ..about import MORE_THAN_NOTHING, NOTHING_OR_MORE, About, Limit
from ..table import MOST_1_M, MOST_60_M, MOST_100_MM, Table

COUNT = About(
    "the number of loops, tabs, eyelets, rings or hooks on each panel", 9, 9,
    left_out="chosen, none too far from the next",
    asked=False, least=Limit(2, "2"), most=Limit(2000, "2000"))  # fmt: skip
EDGE_INSET = About(
    "from the panel's edge to the centre of the end loop, tab, eyelet, ring or hook", "1 1/4 in", "32 mm",
    left_out="chosen", asked=False,
    least=MORE_THAN_NOTHING, most=MOST_60_M)  # fmt: skip
MAX_PITCH = About(
    "the most there may be from the centre of one to that of the next", "10 in", "250 mm",
    left_out="chosen by the kind of heading and the weight of the cloth", asked=False,
    least=MORE_THAN_NOTHING, most=MOST_60_M)  # fmt: skip
FINISHED_WIDTH = About(
    "the width of one panel when it is pleated or gathered, its return and overlap with it", "33 in", "840 mm",
    left_out="the panel's share of rod, overlap and returns", asked=False,
    least=MORE_THAN_NOTHING, most=MOST_60_M)  # fmt: skip
SEAM_ALLOWANCE = About(
    "the allowance on the long seam of the strip that loops or tabs are made from", "1/4 in", "6 mm",
    left_out="1/4 in", asked=False,
    least=MORE_THAN_NOTHING, most=MOST_100_MM)  # fmt: skip


class HeadingTable(Table):
    """What every heading has, besides its style."""

    HANGS_BY: ClassVar[tuple[str, ...]] = ()
    """The fields that say how a panel hangs by it: what is asked of a heading that is there already."""

    top_cut: Annotated[Length, About(
        "how much is cut off the panel's top before the new heading is made", "3 in", "75 mm",
        "Cut off what cannot be used again: a band with holes in it, a worn casing.",
        left_out="nothing", asked=False, least=NOTHING_OR_MORE, most=MOST_60_M)] = NOTHING
    top_turn: Annotated[Length, About(
        "the cloth turned under where the top is folded over for the new heading", "1/2 in", "12 mm",
        "Used only where the heading needs more doubled cloth than there is.",
        left_out="1/2 in", asked=False, least=NOTHING_OR_MORE, most=MOST_1_M)] = inches("1/2")
