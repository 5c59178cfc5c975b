"""How wide the panels are made, and how many of them there are."""

from __future__ import annotations

from ..lengths import NOTHING, Length
from ..spec import Spec


def cuts_sides(spec: Spec) -> bool:
    """Whether panels are cut at their sides: made narrower, or split."""
    return spec.sides.split > 1 or spec.sides.finished_width is not None


def kept_edge(spec: Spec) -> str:
    """Which side edge of a panel made narrower stays as it is, as seen from the front."""
    return "left" if spec.sides.cut_edge == "right" else "right"


def side_allowance(spec: Spec) -> Length:
    """Cloth that a new side hem takes beyond the finished edge: its depth and its turn-under."""
    return spec.sides.hem + spec.sides.turn_under


def made_width(spec: Spec) -> Length:
    """Finished width of a panel as it will hang, side hem to side hem.

    A panel split in n has n - 1 cuts and a new side hem on either side of
    each; its outer side hems stay. What is left is shared out alike:
    (width - 2 (n - 1) allowance) / n.
    """
    if spec.sides.finished_width is not None:
        return spec.sides.finished_width
    cuts = spec.sides.split - 1
    return (spec.panel.width - 2 * cuts * side_allowance(spec)) / spec.sides.split


def made_count(spec: Spec) -> int:
    """How many panels are made of those that were bought."""
    return spec.panel.count * spec.sides.split


def side_offcut(spec: Spec) -> Length:
    """Width of the strip that comes off the side of a panel made narrower; nothing where none does."""
    if spec.sides.finished_width is None:
        return NOTHING
    return spec.panel.width - made_width(spec) - side_allowance(spec)
