"""The strip that loops and tabs are made from."""

from __future__ import annotations

from ...document.view import Shape, Stroke
from ...drawing import LineType
from ...work_order.pictures.cloth import broken_up
from ...work_order.pictures.signs import across


def seamed(wide: float, low: float, high: float, seam: float) -> tuple[Shape, ...]:
    """The strip folded along its length, wrong side out, sewn along its raw edges; it goes on to the right."""
    return (
        Stroke(LineType.CUT, ((0, low), (0, high))),
        across(LineType.FOLD, 0, wide, low),
        across(LineType.CUT, 0, wide, high, "heading.seam_allowance"),
        across(LineType.STITCH, 0, wide, high - seam, "heading.seam_allowance"),
        broken_up(wide, low, high, 1.0),
    )
