"""Mitre card: laid into the corner of the pressed hems, it shows the one fold that mitres the corner."""

from __future__ import annotations

from fractions import Fraction
from math import ceil

from ..drawing import Anchor, Drawing, Item, Lane, Line, LineType, Mark, Text, path, width_of
from ..planning import Plan
from .registering import AT_EDGE, AT_OTHER_EDGE

LANE = 18
TICK = 9
"""Of a mark, from the datum edge, in mm; 8 are promised."""
BESIDE = 24
"""Card beyond the side's raw edge, in mm: room for its name."""
WIDEST = 80
"""Least length of the card along the hem's edge, in mm: it must hold its words."""
HIGHEST = Fraction(170)
"""The fold is drawn as far up as this, in mm: our choice, since a straight fold needs no more to be laid to, and the
card then fits letter and A4."""
LABEL = 9.5
SIDES = ("left", "right")


def draw(plan: Plan) -> list[Drawing]:
    """One card for either corner, as seen from the back; none where no corner is mitred."""
    mitre = plan.mitre
    if mitre is None:
        return []
    beside, up = mitre.side_allowance.mm, mitre.above_the_hem.mm
    drawn = min(up, HIGHEST)
    reach = beside * drawn / up
    end = Fraction(max(ceil(beside) + BESIDE, WIDEST))
    high = Fraction(ceil(drawn)) + 10 + LANE
    up_said = plan.tape.read(mitre.above_the_hem).label
    drawings = []
    for side in SIDES:
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
        anchor = Anchor.END if side == "left" else Anchor.START
        items.append(Text(raw + way * 1.5, 2, "raw side edge", LABEL, anchor))
        # Above the fold's end, and drawn in from the card's own end where it would run over it.
        said = f"fold; side edge {up_said} up"
        out = min(float(reach) + 2, float(end) - width_of(said, LABEL) - 2)
        items.append(Text(float(corner) + way * out, drawn + 2.5, said, LABEL, anchor))
        drawings.append(
            Drawing(
                name=f"mitre card for the {side} corner",
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
        )
    return drawings
