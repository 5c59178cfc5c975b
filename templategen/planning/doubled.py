"""The cloth along the top as the panel came, and where it goes when the top is folded anew.

A place on this cloth is told by how far it lies below the old top edge, along
the cloth: what lies on the back is negative. The new top edge lies ``lowered``
below the old one, so a place y comes y - lowered below the new one, and on the
back again where that is negative.
"""

from __future__ import annotations

from ..lengths import NOTHING, Length
from ..spec import Spec
from ..spec.headings.face import HeadingTable


def doubled_now(spec: Spec) -> Length:
    """How deep it is doubled."""
    return spec.panel.header + spec.panel.casing


def turned_now(spec: Spec) -> Length:
    """The cloth turned under along its lower edge; none where nothing is doubled."""
    return spec.panel.top_turn if doubled_now(spec) else NOTHING


def kept(spec: Spec, heading: HeadingTable, needed: Length) -> bool:
    """Whether the top stays as it is for a heading that needs so much of it doubled."""
    return not heading.top_cut and needed <= doubled_now(spec)


def taken(heading: HeadingTable, needed: Length) -> Length:
    """The cloth that goes to the back where the top is folded anew for so much doubled: that, and its turn-under."""
    return needed + heading.top_turn if needed else NOTHING


def lowered(spec: Spec, heading: HeadingTable, needed: Length) -> Length:
    """How far the new top edge lies below the old one; negative where it lies above it.

    Of all the cloth above the new top edge, needed + turn goes to the back. Let
    down, there is doubled + its old turn-under above the old top edge's place;
    where something is cut off, both layers are cut through and nothing doubled counts.
    """
    if kept(spec, heading, needed):
        return NOTHING
    if heading.top_cut:
        return heading.top_cut + taken(heading, needed)
    return taken(heading, needed) - doubled_now(spec) - turned_now(spec)


def old_rows(spec: Spec) -> tuple[Length, ...]:
    """The rows of stitching that hold the old top, down from its top edge; what is seen of them on the front."""
    panel = spec.panel
    under_header = (panel.header,) if panel.header and panel.casing else ()
    return (*under_header, doubled_now(spec)) if doubled_now(spec) else ()


def rows_left(spec: Spec, heading: HeadingTable, needed: Length) -> tuple[Length, ...]:
    """Where old rows, or their holes, come on the front: so far below the new top edge, none that are cut off."""
    down = lowered(spec, heading, needed)
    return tuple(row - down for row in old_rows(spec) if row >= heading.top_cut and row >= down)
