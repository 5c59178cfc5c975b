"""What is known of the cloth itself: its weight, how it shrinks, its repeat, and what is to be made of the rest."""

from __future__ import annotations

from typing import Annotated, Literal

from ..lengths import Length
from .about import MORE_THAN_NOTHING, NOTHING_OR_MORE, About, Limit
from .quantities import ClothWeight, Percent
from .table import MOST_1_M, MOST_60_M, Table


class Fabric(Table):
    """The cloth itself: its weight, how it shrinks, its repeat, and whether the rest is wanted."""

    weight: Annotated[ClothWeight | None, About(
        "what the cloth weighs, in g/m2 or oz/yd2", "6.5 oz/yd2", "220 g/m2",
        "From its label or its maker; or weigh a piece of known size.",
        left_out="the hung weight is not worked out", asked=False,
        least=Limit(ClothWeight(10), "10 g/m2 (about 0.3 oz/yd2)"),
        most=Limit(ClothWeight(2000), "2000 g/m2 (about 59 oz/yd2)"))] = None
    pile: Annotated[bool, About(
        "cloth with a pile, as velvet has", True, True,
        left_out="without one", asked=False)] = False
    shrinkage: Annotated[Percent | None, About(
        "how much of its length the cloth loses when it is washed, in per cent", "3 %", "3 %",
        "Mark a length on a piece, wash and press it as it will be kept, and measure again: lost ÷ length before. "
        "Curtain cloth loses at most 3 % in five launderings (ASTM D3691/D3691M-09, Table 1).",
        left_out="nothing is allowed for it", asked=False,
        least=Limit(Percent(0), "0 %"), most=Limit(Percent(25), "25 %"))] = None
    washed: Annotated[bool, About(
        "cloth that was washed as it will be kept before it was measured", True, True,
        "It has shrunk already, and nothing more is allowed for.",
        left_out="it still has to shrink", asked=False)] = False
    shrinkage_in: Annotated[Literal["hem", "tuck"], About(
        "where the cloth for shrinkage is carried until it is wanted: \"hem\", made deeper and let down, or \"tuck\", "
        "sewn across the back above the hem and let out", "hem", "hem",
        left_out="in the hem", asked=False)] = "hem"
    repeat: Annotated[Length | None, About(
        "the repeat of the pattern, from one place in it up to the next that is the same", "12 in", "320 mm",
        left_out="the cloth has no pattern to match", asked=False,
        least=MORE_THAN_NOTHING, most=MOST_60_M)] = None
    repeat_at: Annotated[tuple[Length, ...], About(
        "from the bottom edge, as the panel came, up to the same place in the pattern, for each panel",
        ("5 in",), ("130 mm",),
        "Choose one place in the pattern, a flower's foot, and measure to the lowest one above the bottom edge. "
        "One length where the panels are alike; otherwise one for each panel, in the order in which they hang.",
        left_out="where the pattern falls is not worked out", asked=False,
        least=NOTHING_OR_MORE, most=MOST_60_M)] = ()
    repeat_above_hem: Annotated[Length | None, About(
        "how far above the finished bottom edge that place in the pattern is to fall", "2 in", "50 mm",
        left_out="alike on all panels, wherever that takes the least cloth", asked=False,
        least=NOTHING_OR_MORE, most=MOST_60_M)] = None
    leftovers: Annotated[bool, About(
        "the cloth left over is worked out, and what it yields", True, True,
        left_out="it is not", asked=False)] = False
    tie_back_length: Annotated[Length | None, About(
        "the cut length of a tie-back that is to come from what is left", "24 in", "600 mm",
        left_out="24 in", asked=False, least=MORE_THAN_NOTHING, most=MOST_60_M)] = None
    tie_back_width: Annotated[Length | None, About(
        "the cut width of that tie-back", "7 in", "180 mm",
        left_out="7 in", asked=False, least=MORE_THAN_NOTHING, most=MOST_1_M)] = None
