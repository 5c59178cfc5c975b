"""Pleats folded by hand: pinch pleats of two or three fingers, box pleats and inverted box pleats, hung on hooks."""

from __future__ import annotations

from typing import Annotated, ClassVar, Literal

from ...lengths import Length, inches
from ..about import MORE_THAN_NOTHING, About, Limit
from ..table import MOST_1_M
from .face import FINISHED_WIDTH, HeadingTable
from .hanging_on import DROP, SET_BELOW

_PLEATS = About(
    "the number of pleats on each panel", 7, 7,
    left_out="chosen, so that the spaces come to about 4 in", asked=False,
    least=Limit(2, "2"), most=Limit(500, "500"))  # fmt: skip
_LAST_BACK = About(
    "from the leading edge back to the last pleat", "2 in", "50 mm",
    left_out="2 in; for a panel that covers the rod alone, its other return", asked=False,
    least=MORE_THAN_NOTHING, most=MOST_1_M)  # fmt: skip
_HEADING_DEPTH = About(
    "how deep the stiffened top is, and the pleats are sewn", "4 in", "100 mm",
    left_out="4 in", asked=False, least=MORE_THAN_NOTHING, most=MOST_1_M)  # fmt: skip


class PleatTable(HeadingTable):
    """What all hand-folded pleats have."""

    HANGS_BY: ClassVar[tuple[str, ...]] = ("drop", "set_below")

    drop: Annotated[Length, DROP]
    set_below: Annotated[Length | None, SET_BELOW] = None
    finished_width: Annotated[Length | None, FINISHED_WIDTH] = None
    pleats: Annotated[int | None, _PLEATS] = None
    last_back: Annotated[Length | None, _LAST_BACK] = None
    heading_depth: Annotated[Length, _HEADING_DEPTH] = inches(4)


class PinchPleats(PleatTable):
    """Pleats pinched into two or three fingers at the top."""

    style: Literal["pinch pleats"]
    fingers: Annotated[int, About(
        "into how many fingers each pleat is pinched, 2 or 3", 3, 3,
        left_out="3", asked=False, least=Limit(2, "2"), most=Limit(3, "3"))] = 3


class BoxPleats(PleatTable):
    """Pleats pressed flat to both sides, on the front."""

    style: Literal["box pleats"]


class InvertedBoxPleats(PleatTable):
    """Pleats pressed flat to both sides, on the back."""

    style: Literal["inverted box pleats"]
