"""Tabs: strips of cloth that go over the rod and are sewn to the panel's top at both ends."""

from __future__ import annotations

from typing import Annotated, ClassVar, Literal

from ...lengths import Length, inches
from ..about import MORE_THAN_NOTHING, NOTHING_OR_MORE, About
from ..table import MOST_1_M
from .face import COUNT, EDGE_INSET, MAX_PITCH, SEAM_ALLOWANCE, HeadingTable


class Tabs(HeadingTable):
    """Tabs over the rod."""

    HANGS_BY: ClassVar[tuple[str, ...]] = ("gap",)

    style: Literal["tabs"]
    gap: Annotated[Length, About(
        "from the rod's underside down to the panel's top edge", "2 in", "50 mm",
        "What shows of the tabs below the rod, and of the window above the panel.",
        least=NOTHING_OR_MORE, most=MOST_1_M)]
    count: Annotated[int | None, COUNT] = None
    edge_inset: Annotated[Length | None, EDGE_INSET] = None
    tab_width: Annotated[Length | None, About(
        "the finished width of a tab", "2 in", "50 mm",
        left_out="chosen", asked=False,
        least=MORE_THAN_NOTHING, most=MOST_1_M)] = None
    end_allowance: Annotated[Length, About(
        "how much of the tab's length is sewn in at each of its ends", "1/2 in", "12 mm",
        left_out="1/2 in", asked=False,
        least=MORE_THAN_NOTHING, most=MOST_1_M)] = inches("1/2")
    max_pitch: Annotated[Length | None, MAX_PITCH] = None
    seam_allowance: Annotated[Length, SEAM_ALLOWANCE] = inches("1/4")
