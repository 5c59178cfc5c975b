"""What only a layout knows of a kit, and its words speak of."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, field


@dataclass(frozen=True, slots=True)
class OnPaper:
    """How the templates came to lie on sheets."""

    sheets: int
    """Those that hold templates."""
    joins: Mapping[str, int] = field(default_factory=dict)
    """How many joins each drawing has, by its name."""
