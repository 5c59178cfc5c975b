"""Mitre card: laid into the corner of the pressed hems, it shows the one fold that mitres the corner."""

from __future__ import annotations

from fractions import Fraction
from math import ceil

from ..drawing import Anchor, Drawing, Item, Lane, Line, LineType, Mark, Text, path
from ..planning import Plan
from ..planning.plan import MitrePlan
from .registering import AT_EDGE, AT_OTHER_EDGE

LANE = 18
TICK = 9
"""Of a mark, from the datum edge, in mm; 8 are promised."""
BESIDE = 14
"""Card beyond the side's raw edge, in mm."""
WIDEST = 80
"""Least length of the card along the hem's edge, in mm: it must hold its words."""
HIGHEST = Fraction(170)
"""The fold is drawn as far up as this, in mm: our choice, since a straight fold needs no more to be laid to, and the
card then fits letter and A4."""
LABEL = 9.5
SIDES = ("left", "right")


def draw(plan: Plan) -> list[Drawing]:
    """A card for either corner, as seen from the back; none where no corner is mitred.

    Where the side hem that stays is not folded as the new one, the corners beside it have cards of their own.
    """
    if not plan.mitres:
        return []
    new, old = plan.mitres[0], plan.mitres[-1]
    if new is old:
        return [_card(plan, new, side, side) for side in SIDES]
    if plan.spec.sides.split > 1:
        return [
            *(_card(plan, new, side, f"new {side}") for side in SIDES),
            *(_card(plan, old, side, f"old {side}") for side in SIDES),
        ]
    # What is right as seen from the front is left with the back towards you.
    cut = "left" if plan.spec.sides.cut_edge == "right" else "right"
    return [_card(plan, new if side == cut else old, side, side) for side in SIDES]


def _card(plan: Plan, mitre: MitrePlan, side: str, corner_named: str) -> Drawing:
    beside, up = mitre.side_allowance.mm, mitre.above_the_hem.mm
    drawn = min(up, HIGHEST)
    reach = beside * drawn / up
    end = Fraction(max(ceil(beside) + BESIDE, WIDEST))
    high = Fraction(ceil(drawn)) + 10 + LANE
    up_said = plan.tape.read(mitre.above_the_hem).label
    # The opened side hem lies outside its crease: for the left corner the card reaches from the crease to the left.
    corner, way = (end, -1) if side == "left" else (Fraction(0), 1)
    raw = corner + way * beside
    inner = "right" if side == "left" else "left"
    items: list[Item] = [
        *path(LineType.CUT, [(0, 0), (end, 0), (end, high), (0, high), (0, 0)]),
        Line(LineType.MARK, raw, 0, raw, TICK),
        Line(LineType.THIN, raw, TICK, raw, drawn),
        Line(LineType.FOLD, corner, 0, corner + way * reach, drawn),
    ]
    # Upright beside its line, on the side away from the crease.
    base = raw - 1.2 if side == "left" else raw + 4
    items.append(Text(base, TICK + 2, "raw side edge", LABEL, turn=90))
    items.append(Text(end / 2, drawn + 2.5, f"fold: {up_said} up the side edge", LABEL, Anchor.MIDDLE))
    return Drawing(
        name=f"mitre card for the {corner_named} corner",
        caption=(
            "Back towards you, both hems pressed and opened: this edge on the hem's lower crease, the "
            f"{inner} end on the side hem's outer crease, the corner of the card on the crossing of both.",
            "Fold the corner in along the dashed line; then turn both hems again.",
        ),
        up="towards the heading",
        start=Fraction(0),
        end=end,
        low=0,
        high=high,
        inward=1,
        lane=Lane(high - LANE, high),
        registration=(AT_EDGE, high - AT_OTHER_EDGE),
        marks=(Mark("raw side edge", raw),),
        items=tuple(items),
    )
