"""The fields that several kinds of hem share. A field that stands in several kinds is one field."""

from __future__ import annotations

from ..about import MORE_THAN_NOTHING, About
from ..table import MOST_1_M

DEPTH = About(
    "the finished depth of the new hem", "4 in", "100 mm",
    "Two to four inches (50 to 100 mm) is usual for a panel that reaches the floor.",
    least=MORE_THAN_NOTHING, most=MOST_1_M)  # fmt: skip
TURN_UNDER = About(
    "the cloth turned under inside the new hem", "5/8 in", "15 mm",
    "On sheer cloth make it as deep as the hem, so that the raw edge does not show.",
    least=MORE_THAN_NOTHING, most=MOST_1_M)  # fmt: skip
