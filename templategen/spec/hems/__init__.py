"""The kinds of bottom hem, a module each."""

from __future__ import annotations

from typing import Annotated

from pydantic import Field

from .double_fold import DoubleFold

Hem = Annotated[
    DoubleFold,
    Field(),
]  # fmt: skip
"""One hem; its ``style`` says which. A new kind is a module and a line here."""

__all__ = ["DoubleFold", "Hem"]
