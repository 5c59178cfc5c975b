"""Mitre card: laid into the corner of the pressed hems, it shows the one fold that mitres the corner."""

from __future__ import annotations

from collections.abc import Iterator
from fractions import Fraction
from math import ceil

from ..drawing import DESCENT, USUAL, Anchor, Drawing, Item, Lane, Line, LineType, Look, Mark, Text, path, width_of
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
RAW, HEM, SIDE = "raw side edge", "hem's lower crease", "side hem's outer crease"
SIDES = ("left", "right")


def draw(plan: Plan, look: Look = USUAL) -> list[Drawing]:
    """A card for either corner, as seen from the back; none where no corner is mitred.

    Where the side hem that stays is not folded as the new one, the corners beside it have cards of their own.
    """
    if not plan.mitres:
        return []
    new, old = plan.mitres[0], plan.mitres[-1]
    if new is old:
        return [_card(plan, new, side, side, look) for side in SIDES]
    if plan.spec.sides.split > 1:
        return [
            *(_card(plan, new, side, f"new {side}", look) for side in SIDES),
            *(_card(plan, old, side, f"old {side}", look) for side in SIDES),
        ]
    # What is right as seen from the front is left with the back towards you.
    cut = "left" if plan.spec.sides.cut_edge == "right" else "right"
    return [_card(plan, new if side == cut else old, side, side, look) for side in SIDES]


def _card(plan: Plan, mitre: MitrePlan, side: str, corner_named: str, look: Look) -> Drawing:
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
        *_labels(mitre, side, end, drawn, look),
    ]
    outer, anchor = (2, Anchor.START) if side == "left" else (end - 2, Anchor.END)
    size, reach = look.size(LABEL), plan.tape.read(mitre.above_the_hem).label
    # In usual print the first of them always has room.
    for said in (f"fold, to the raw side edge {reach} up", f"fold ends {reach} up", f"{reach} up"):
        if size <= LABEL or width_of(said, size) <= end - 4:
            items.append(Text(outer, drawn + 2.5, said, size, anchor))
            break
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


def _labels(mitre: MitrePlan, side: str, end: Fraction, drawn: Fraction, look: Look) -> Iterator[Text]:
    """What the card's edges and the line of the raw edge are, where fold and lines leave room."""
    size = look.size(LABEL)
    caps, base = CAPS * size / LABEL, 2 if size <= LABEL else 2.5
    beside, up = float(mitre.side_allowance.mm), float(mitre.above_the_hem.mm)
    corner, way = (end, -1) if side == "left" else (Fraction(0), 1)
    inward, outward = (Anchor.START, Anchor.END) if side == "left" else (Anchor.END, Anchor.START)
    if size <= LABEL or width_of(RAW, size) <= float(end) - beside - 3:
        yield Text(corner + way * (mitre.side_allowance.mm + Fraction(3, 2)), base, RAW, size, outward)
    elif width_of(RAW, size) + base + 1 <= drawn:
        # Upright along its line, all of it outside of that.
        off = 1.5 + (size * DESCENT if side == "left" else caps)
        yield Text(float(corner) + way * (beside + off), base, RAW, size, turn=90)
    # Between the raw edge and the fold, which has left the corner by so much at the label's top.
    left_by = (base + caps) * beside / up + 1
    if width_of(HEM, size) + 3 + left_by < beside:
        yield Text(corner + way * (mitre.side_allowance.mm - Fraction(3, 2)), base, HEM, size, inward)
    # Upright along the crease, where the fold has left it by the label's height.
    from_here, length = (caps + 3.5) * up / beside, width_of(SIDE, size)
    if from_here + length < drawn:
        middle = Fraction(round((from_here + float(drawn)) / 2))
        at = corner + (Fraction(-3, 2) if side == "left" else Fraction(3, 2) + Fraction(caps))
        yield Text(at, middle, SIDE, size, Anchor.MIDDLE, turn=90)
