"""Tabs: strips of cloth folded over the rod, both ends of each sewn to the panel's top."""

from __future__ import annotations

from typing import Annotated, ClassVar, Literal

from ...lengths import Length, inches
from ..about import MORE_THAN_NOTHING, NOTHING_OR_MORE, About
from ..table import MOST_1_M, MOST_100_MM
from .face import COUNT, EDGE_INSET, MAX_PITCH, SEAM_ALLOWANCE, HeadingTable


class Tabs(HeadingTable):
    """Tabs over the rod."""

    HANGS_BY: ClassVar[tuple[str, ...]] = ("gap",)

    style: Literal["tabs"]
    gap: Annotated[Length | None, About(
        "from the underside of the rod down to the panel's top edge", "2 in", "50 mm",
        "What shows between rod and panel. Handbooks say 1 1/2 to 4 in (40 to 100 mm).",
        left_out="2 in",
        least=NOTHING_OR_MORE, most=MOST_1_M)] = None
    tab_width: Annotated[Length | None, About(
        "the finished width of a tab", "2 in", "50 mm",
        left_out="2 in, or less on a narrow panel", asked=False,
        least=MORE_THAN_NOTHING, most=MOST_1_M)] = None
    end_allowance: Annotated[Length, About(
        "how much of a tab's length is sewn to the panel at each of its two ends", "1/2 in", "12 mm",
        left_out="1/2 in", asked=False,
        least=MORE_THAN_NOTHING, most=MOST_100_MM)] = inches("1/2")
    count: Annotated[int | None, COUNT] = None
    edge_inset: Annotated[Length | None, EDGE_INSET] = None
    max_pitch: Annotated[Length | None, MAX_PITCH] = None
    seam_allowance: Annotated[Length, SEAM_ALLOWANCE] = inches("1/4")
