"""Mitre card: laid into the corner of the pressed hems, it shows the one fold that mitres the corner."""

from __future__ import annotations

from collections.abc import Iterator
from fractions import Fraction
from math import ceil

from ..drawing import Anchor, Drawing, Item, Lane, Line, LineType, Mark, Text, path, width_of
from ..planning import Plan
from ..planning.plan import MitrePlan
from .registering import AT_EDGE, AT_OTHER_EDGE

LANE = 18
TICK = 9
"""Of a mark, from the datum edge, in mm; 8 are promised."""
BESIDE = 24
"""Card beyond the side's raw edge, in mm: it must hold what that edge is called."""
WIDEST = 80
"""Least length of the card along the hem's edge, in mm: it must hold its words."""
HIGHEST = Fraction(170)
"""The fold is drawn as far up as this, in mm: our choice, since a straight fold needs no more to be laid to, and the
card then fits letter and A4."""
LABEL = 9.5
CAPS = 2.6
"""Height of a capital in LABEL, in mm."""
HEM, SIDE = "hem's lower crease", "side hem's outer crease"
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
    """The opened side hem lies outside its crease: for the left corner the card reaches from the crease to the left."""
    beside, up = mitre.side_allowance.mm, mitre.above_the_hem.mm
    drawn = min(up, HIGHEST)
    end = Fraction(max(ceil(beside) + BESIDE, WIDEST))
    high = Fraction(ceil(drawn)) + 10 + LANE
    corner, way = (end, -1) if side == "left" else (Fraction(0), 1)
    raw = corner + way * beside
    inner = "right" if side == "left" else "left"
    items: list[Item] = [
        *path(LineType.CUT, [(0, 0), (end, 0), (end, high), (0, high), (0, 0)]),
        Line(LineType.MARK, raw, 0, raw, TICK),
        Line(LineType.THIN, raw, TICK, raw, drawn),
        Line(LineType.FOLD, corner, 0, corner + way * beside * drawn / up, drawn),
        *_labels(mitre, side, end, drawn),
    ]
    outer, anchor = (2, Anchor.START) if side == "left" else (end - 2, Anchor.END)
    said = f"fold, to the raw side edge {plan.tape.read(mitre.above_the_hem).label} up"
    items.append(Text(outer, drawn + 2.5, said, LABEL, anchor))
    return Drawing(
        name=f"mitre card for the {corner_named} corner",
        caption=(
            f"Back towards you, both hems opened: bottom and {inner} edge on the creases.",
            "Mark the dashed line, carry it on past the corner, and fold the corner in along it.",
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


def _labels(mitre: MitrePlan, side: str, end: Fraction, drawn: Fraction) -> Iterator[Text]:
    """What the card's edges and the line of the raw edge are, where fold and lines leave room."""
    beside, up = float(mitre.side_allowance.mm), float(mitre.above_the_hem.mm)
    corner, way = (end, -1) if side == "left" else (Fraction(0), 1)
    inward, outward = (Anchor.START, Anchor.END) if side == "left" else (Anchor.END, Anchor.START)
    yield Text(corner + way * (mitre.side_allowance.mm + Fraction(3, 2)), 2, "raw side edge", LABEL, outward)
    # Between the raw edge and the fold, which has left the corner by so much at the label's top.
    left_by = (2 + CAPS) * beside / up + 1
    if width_of(HEM, LABEL) + 3 + left_by < beside:
        yield Text(corner + way * (mitre.side_allowance.mm - Fraction(3, 2)), 2, HEM, LABEL, inward)
    # Upright along the crease, where the fold has left it by the label's height.
    from_here, length = (CAPS + 3.5) * up / beside, width_of(SIDE, LABEL)
    if from_here + length < drawn:
        middle = Fraction(round((from_here + float(drawn)) / 2))
        at = corner + (Fraction(-3, 2) if side == "left" else Fraction(3, 2) + Fraction(CAPS))
        yield Text(at, middle, SIDE, LABEL, Anchor.MIDDLE, turn=90)
