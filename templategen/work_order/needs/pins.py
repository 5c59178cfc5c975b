"""How many pins hold an edge."""

from __future__ import annotations

from math import ceil

from ...lengths import Length, inches

PINS_APART = inches(4)
"""Pins along a hem or a tape, a hand's breadth apart: our choice, because the folds between them still lie true."""


def along(edge: Length) -> int:
    """Pins along an edge, one at either end and no two further apart than a hand's breadth."""
    return ceil(edge / PINS_APART) + 1
