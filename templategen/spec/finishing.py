"""What else is done to a panel's edges: its sides, its corners, weights, a lining."""

from __future__ import annotations

from typing import Annotated, Literal

from ..lengths import Length, inches
from .about import MORE_THAN_NOTHING, NOTHING_OR_MORE, About, Limit
from .table import MOST_1_M, MOST_60_M, MOST_100_MM, Table


def shared_out(width: Length, split: int, allowance: Length) -> Length:
    """How wide each of the panels is that one is split in.

    A panel split in n has n - 1 cuts and a new side hem on either side of
    each; its outer side hems stay. What is left is shared out alike:
    (width - 2 (n - 1) allowance) / n.
    """
    return (width - 2 * (split - 1) * allowance) / split


class Sides(Table):
    """The side edges: a panel made narrower, or one split in two, and how corners are turned."""

    finished_width: Annotated[Length | None, About(
        "the width that a panel is to have, where it is made narrower", "40 in", "1000 mm",
        "It is cut along one side; the other side hem stays as it is.",
        left_out="as wide as it is", asked=False, least=MOST_100_MM, most=MOST_60_M)] = None
    cut_edge: Annotated[Literal["left", "right"], About(
        "which side edge is cut where a panel is made narrower, \"left\" or \"right\" as seen from the front",
        "right", "right",
        left_out="the right one", asked=False)] = "right"
    split: Annotated[int, About(
        "how many panels are made of each one, side by side", 1, 1,
        left_out="1, so it is not split", asked=False, least=Limit(1, "1"), most=Limit(20, "20"))] = 1
    hem: Annotated[Length, About(
        "the finished depth of a side hem", "1 in", "25 mm",
        left_out="1 in", asked=False, least=MORE_THAN_NOTHING, most=MOST_1_M)] = inches(1)
    turn_under: Annotated[Length, About(
        "the cloth turned under inside a side hem", "1 in", "25 mm",
        left_out="1 in", asked=False, least=NOTHING_OR_MORE, most=MOST_1_M)] = inches(1)
    mitre: Annotated[bool, About(
        "corners folded to a mitre, where bottom hem and side hem meet", True, True,
        "The side hem is unpicked for it as far up as the fold reaches.",
        left_out="the bottom hem is turned up over the side hems", asked=False)] = False
    old_hem: Annotated[Length | None, About(
        "the finished depth of the side hem that stays, beside a mitred corner", "1/2 in", "12 mm",
        "It matters where a panel is cut and the side hem of the other edge has another depth.",
        left_out="as deep as the new side hem", asked=False, least=MORE_THAN_NOTHING, most=MOST_1_M)] = None
    old_turn_under: Annotated[Length | None, About(
        "the cloth turned under inside the side hem that stays", "1/2 in", "12 mm",
        left_out="as in the new side hem", asked=False, least=NOTHING_OR_MORE, most=MOST_1_M)] = None


class Weights(Table):
    """Weights in the bottom hem."""

    every: Annotated[Length | None, About(
        "how far apart the weights are, at the most; one is at each corner", "24 in", "600 mm",
        left_out="no weights", asked=False, least=MORE_THAN_NOTHING, most=MOST_60_M)] = None
    size: Annotated[Length, About(
        "the diameter of a weight", "1 in", "25 mm",
        left_out="1 in", asked=False, least=MORE_THAN_NOTHING, most=MOST_100_MM)] = inches(1)


class Lining(Table):
    """A lining that hangs behind the panel."""

    cut_shorter: Annotated[Length | None, About(
        "how much shorter than the panel the lining is cut", "5 in", "125 mm",
        "A handbook has 5 in for curtains to the floor and 3 in to the sill; that suits hems turned twice alike. The "
        "plan says where the lining then ends. For any other hem write ends_above instead.",
        left_out="no lining, unless ends_above is there", asked=False, least=NOTHING_OR_MORE, most=MOST_1_M)] = None
    ends_above: Annotated[Length | None, About(
        "how far above the panel's finished edge the lining's is to end, instead of cut_shorter", "1 in", "25 mm",
        "Less than the panel's hem is deep: else light shows between the two.",
        left_out="as cut_shorter has it", asked=False, least=MORE_THAN_NOTHING, most=MOST_1_M)] = None
    hem: Annotated[Length, About(
        "the finished depth of the lining's hem", "2 in", "50 mm",
        left_out="2 in", asked=False, least=MORE_THAN_NOTHING, most=MOST_1_M)] = inches(2)
    turn_under: Annotated[Length, About(
        "the cloth turned under inside the lining's hem", "2 in", "50 mm",
        left_out="2 in", asked=False, least=NOTHING_OR_MORE, most=MOST_1_M)] = inches(2)
    narrower: Annotated[Length, About(
        "how far the lining's side edge lies inside the panel's, at each side", "1 in", "25 mm",
        left_out="1 in", asked=False, least=NOTHING_OR_MORE, most=MOST_1_M)] = inches(1)
