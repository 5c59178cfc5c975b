"""How wide the panels are made, and how many of them there are."""

from __future__ import annotations

from ..lengths import Length
from ..spec import Spec


def made_width(spec: Spec) -> Length:
    """Finished width of a panel as it will hang, side hem to side hem."""
    return spec.panel.width


def made_count(spec: Spec) -> int:
    """How many panels are made of those that were bought."""
    return spec.panel.count
