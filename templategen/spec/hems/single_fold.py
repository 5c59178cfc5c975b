"""A single fold, its raw edge covered by a tape, or bonded: for cloth too thick, or too scarce, to be turned twice."""

from __future__ import annotations

from typing import Annotated, Literal

from ...lengths import Length
from ..about import About
from ..table import Table
from .face import DEPTH


class SingleFold(Table):
    """A single fold whose raw edge is covered by a tape, or bonded."""

    style: Literal["single fold with tape"]
    depth: Annotated[Length, DEPTH]
    held_by: Annotated[Literal["tape", "bonding"], About(
        "what holds the raw edge: \"tape\", sewn over it, or \"bonding\", a web that melts under the iron and joins it "
        "to the panel", "tape", "tape",
        left_out="tape", asked=False)] = "tape"
