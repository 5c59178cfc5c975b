"""The fields of headings that hang from rings, clips or gliders: each has one meaning, written once."""

from __future__ import annotations

from ..about import MORE_THAN_NOTHING, NOTHING_OR_MORE, About
from ..table import MOST_1_M

DROP = About(
    "from the top of the rod down to where a ring, clip or glider holds the cloth or its hook", "2 in", "50 mm",
    "Hang one on the rod and pull it down. Measure from the top of the rod, not from its underside; of a "
    "glider, from the top of its track.",
    least=MORE_THAN_NOTHING, most=MOST_1_M)  # fmt: skip
SET_BELOW = About(
    "how far below the panel's top edge the rings, clips or hooks hold it", "3/8 in", "10 mm",
    "0 where they hold the very edge.",
    left_out="0 for rings and clips; for hooks chosen by what they hang on", asked=False,
    least=NOTHING_OR_MORE, most=MOST_1_M)  # fmt: skip
RING_INSIDE = About(
    "the inner diameter of the rings", "1 1/4 in", "32 mm",
    left_out="whether the rings go over the rod is not looked at", asked=False,
    least=MORE_THAN_NOTHING, most=MOST_1_M)  # fmt: skip
