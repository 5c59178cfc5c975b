"""A single fold, its raw edge covered by a tape: for cloth too thick, or too scarce, to be turned twice."""

from __future__ import annotations

from typing import Annotated, Literal

from ...lengths import Length
from ..table import Table
from .face import DEPTH


class SingleFold(Table):
    """A single fold whose raw edge is covered by a tape."""

    style: Literal["single fold with tape"]
    depth: Annotated[Length, DEPTH]
