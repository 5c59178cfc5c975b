"""A double fold of equal turns: on sheers no raw edge shows through."""

from __future__ import annotations

from typing import Annotated, Literal

from ...lengths import Length
from ..table import Table
from .face import DEPTH


class EqualFold(Table):
    """A double fold of equal turns."""

    style: Literal["equal double fold"]
    depth: Annotated[Length, DEPTH]
