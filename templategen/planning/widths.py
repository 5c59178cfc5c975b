"""How wide the panels are made, and how many of them there are."""

from __future__ import annotations

from ..lengths import NOTHING, Length
from ..spec import Spec
from ..spec.finishing import shared_out


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

    Of a panel that is split, its share.
    """
    if spec.sides.finished_width is not None:
        return spec.sides.finished_width
    return shared_out(spec.panel.width, spec.sides.split, side_allowance(spec))


def made_count(spec: Spec) -> int:
    """How many panels are made of those that were bought."""
    return spec.panel.count * spec.sides.split


def side_offcut(spec: Spec) -> Length:
    """Width of the strip that comes off the side of a panel made narrower; nothing where none does."""
    if spec.sides.finished_width is None:
        return NOTHING
    return spec.panel.width - made_width(spec) - side_allowance(spec)
