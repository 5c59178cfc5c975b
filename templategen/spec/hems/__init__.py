"""The kinds of bottom hem, a module each."""

from __future__ import annotations

from typing import Annotated

from pydantic import Field

from .double_fold import DoubleFold
from .equal_fold import EqualFold
from .sewn_on import Border, Faced
from .single_fold import SingleFold

Hem = Annotated[
    DoubleFold
    | EqualFold
    | SingleFold
    | Faced
    | Border,
    Field(discriminator="style"),
]  # fmt: skip
"""One hem; its ``style`` says which. A new kind is a module and a line here."""

__all__ = ["Border", "DoubleFold", "EqualFold", "Faced", "Hem", "SingleFold"]
