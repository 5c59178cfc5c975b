"""A double fold: the raw edge turned under, then the hem turned up over it."""

from __future__ import annotations

from typing import Annotated, Literal

from ...lengths import Length
from ..table import Table
from .face import DEPTH, TURN_UNDER


class DoubleFold(Table):
    """A double fold: the raw edge turned under, then the hem turned up over it."""

    style: Literal["double fold"] = "double fold"
    depth: Annotated[Length, DEPTH]
    turn_under: Annotated[Length, TURN_UNDER]
