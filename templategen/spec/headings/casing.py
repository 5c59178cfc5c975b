"""A casing: a tube along the top that the rod is pushed through."""

from __future__ import annotations

from typing import Annotated, Literal

from ...lengths import Length
from ..about import MORE_THAN_NOTHING, NOTHING_OR_MORE, About
from ..table import MOST_1_M
from .face import HeadingTable


class Casing(HeadingTable):
    """A casing stitched to a new depth. One that a panel came with is measured under [panel]."""

    style: Literal["casing"]
    depth: Annotated[Length | None, About(
        "from the top of the new casing down to its stitch line", "2 in", "50 mm",
        "At least half again the rod's girth laid flat; twice the rod's thickness goes on easily.",
        left_out="as deep as the panel's casing is now",
        least=MORE_THAN_NOTHING, most=MOST_1_M)] = None
    header: Annotated[Length | None, About(
        "the cloth standing above the new casing", "1 in", "25 mm",
        left_out="as high as the panel's header is now", asked=False,
        least=NOTHING_OR_MORE, most=MOST_1_M)] = None
