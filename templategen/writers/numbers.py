"""The edge: where exact lengths become decimals, once each."""

from __future__ import annotations

from ..drawing import Number

POINTS_PER_MM = 72 / 25.4
"""A point is 1/72 in (ISO 32000-1, table 30); 1 in is 25.4 mm exactly."""


def decimal(mm: Number) -> float:
    """An exact number of millimetres as a decimal that keeps a nanometre."""
    return round(float(mm), 6)
