"""Eyelet card: laid on the panel's top edge at each mark, it shows the hole to cut and the ring around it."""

from __future__ import annotations

from fractions import Fraction
from math import ceil

from ..drawing import Anchor, Drawing, Item, Lane, Line, LineType, Mark, Ring, Text, path, width_of
from ..lengths import Length
from ..planning import Plan
from ..planning.headings.eyelets import EyeletPlan
from .registering import AT_EDGE, AT_OTHER_EDGE

LANE = 18
TICK = 9
"""Of a centre, from the datum edge, in mm; 8 are promised."""
CROSS = 4
"""Half of a centre's cross, in mm."""
BESIDE = 14
"""Card to the left and right of the rings, in mm."""
LONGEST = 230
"""In mm. Our choice: a second eyelet is shown, and its distance with it, where the card still fits letter and A4."""
SHORTEST = 100
WORDS = 10
"""From the ring down to the words below it, in mm."""
HOLE_SIZE, RING_SIZE = 11, 9.5


def draw(plan: Plan) -> list[Drawing]:
    """Two neighbouring eyelets, or one where they stand too far apart.

    None for a heading without eyelets, and none where they stand over the top edge: no card can show that.
    """
    eyelets = plan.heading
    if not isinstance(eyelets, EyeletPlan):
        return []
    radius, pitch, below = max(eyelets.outside, eyelets.hole).mm / 2, eyelets.pitch.mm, eyelets.centre_below.mm
    if below < radius:
        return []
    hole, ring = (f"{name} {plan.tape.read(size).label}" for name, size in _sizes(eyelets))
    words_wide = Fraction(ceil(max(width_of(hole, HOLE_SIZE, True), width_of(ring, RING_SIZE)))) + 2
    first = max(radius + BESIDE, words_wide / 2)
    two = pitch > max(2 * radius, words_wide) and 2 * first + pitch <= LONGEST
    end = 2 * first + pitch if two else max(2 * first, Fraction(SHORTEST))
    centres = [first, first + pitch] if two else [end / 2]
    words = -below - radius - WORDS
    low = words - 6 - LANE
    items: list[Item] = [*path(LineType.CUT, [(0, 0), (end, 0), (end, low), (0, low), (0, 0)])]
    for centre in centres:
        items += _eyelet(eyelets, centre)
        items.append(Text(centre, words + 4.5, hole, HOLE_SIZE, Anchor.MIDDLE, bold=True))
        items.append(Text(centre, words, ring, RING_SIZE, Anchor.MIDDLE))
    apart = (f"Centre to centre it is {plan.tape.show(eyelets.pitch)}, as on the spacing strip.",) if two else ()
    return [
        Drawing(
            name="eyelet card",
            caption=(
                "Back of the panel towards you, this edge on the panel's top edge.",
                "Heavy circle: the hole to cut. Thin circle: the ring's outer edge.",
                *apart,
            ),
            up="the panel's top edge",
            start=Fraction(0),
            end=end,
            low=low,
            high=0,
            inward=-1,
            lane=Lane(low, low + LANE),
            registration=(-AT_EDGE, low + AT_OTHER_EDGE),
            marks=tuple(Mark(f"centre {number}", at) for number, at in enumerate(centres, 1)),
            items=tuple(items),
            keep_whole=tuple((at - radius, at + radius) for at in centres),
        )
    ]


def _sizes(eyelets: EyeletPlan) -> tuple[tuple[str, Length], ...]:
    return ("hole", eyelets.hole), ("ring", eyelets.outside)


def _eyelet(eyelets: EyeletPlan, at: Fraction) -> list[Item]:
    below = eyelets.centre_below.mm
    cross = min(Fraction(CROSS), eyelets.hole.mm / 4)
    return [
        Line(LineType.MARK, at, 0, at, -TICK),
        Ring(LineType.CUT, at, -below, eyelets.hole.mm / 2),
        Ring(LineType.THIN, at, -below, eyelets.outside.mm / 2),
        Line(LineType.MARK, at - cross, -below, at + cross, -below),
        Line(LineType.MARK, at, -below - cross, at, -below + cross),
    ]
