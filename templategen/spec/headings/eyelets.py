"""Eyelets: rings set in holes along the top, with the rod going in and out through them."""

from __future__ import annotations

from typing import Annotated, ClassVar, Literal

from ...lengths import Length, millimetres
from ..about import MORE_THAN_NOTHING, NOTHING_OR_MORE, About, Limit
from ..table import MOST_1_M
from .face import COUNT, EDGE_INSET, MAX_PITCH, HeadingTable

_MOST_ACROSS = Limit(millimetres(200), "200 mm (about 8 in)")
_MOST_DOWN = Limit(millimetres(150), "150 mm (about 6 in)")


class Eyelets(HeadingTable):
    """Rings set in holes along the top, with the rod going in and out through them."""

    HANGS_BY: ClassVar[tuple[str, ...]] = ("eyelet_inside", "eyelet_centre")

    style: Literal["eyelets"]
    eyelet_inside: Annotated[Length, About(
        "the inner diameter of an eyelet's ring, that the rod goes through", "1 in", "25 mm",
        "Measure straight across the opening, or read it off the packet. Guides say 14 to 40 % more than the rod's "
        "thickness.",
        least=MORE_THAN_NOTHING, most=_MOST_ACROSS)]
    eyelet_outside: Annotated[Length | None, About(
        "the outer diameter of an eyelet's ring", "2 in", "50 mm",
        "Straight across the whole ring, rim to rim.",
        left_out="1 in (25.4 mm) more than its inner diameter", asked=False,
        least=MORE_THAN_NOTHING, most=_MOST_ACROSS)] = None
    cut_circle: Annotated[Length | None, About(
        "the diameter of the hole that is cut in the cloth for an eyelet", "1 1/8 in", "28 mm",
        "The maker of the rings says it, or gives a circle to draw round.",
        left_out="1/8 in (3.2 mm) more than the ring's inner diameter", asked=False,
        least=MORE_THAN_NOTHING, most=_MOST_ACROSS)] = None
    eyelet_centre: Annotated[Length | None, About(
        "from the panel's top edge down to the centre of an eyelet", "1 1/2 in", "40 mm",
        "Measure down to the upper and to the lower edge of the opening, and take the middle.",
        left_out="chosen, so that the ring stands clear of the edge", asked=False,
        least=MORE_THAN_NOTHING, most=_MOST_DOWN)] = None
    band: Annotated[Length | None, About(
        "how deep the cloth is doubled and stiffened along the top for the eyelets", "4 in", "100 mm",
        left_out="as deep as the rings need", asked=False,
        least=MORE_THAN_NOTHING, most=MOST_1_M)] = None
    side_hem: Annotated[Length | None, About(
        "the width of the panel's side hem, so that no ring stands half on it", "1 in", "25 mm",
        left_out="where the side hem ends is not looked at", asked=False,
        least=NOTHING_OR_MORE, most=MOST_1_M)] = None
    count: Annotated[int | None, COUNT] = None
    edge_inset: Annotated[Length | None, EDGE_INSET] = None
    max_pitch: Annotated[Length | None, MAX_PITCH] = None
