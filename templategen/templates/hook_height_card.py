"""Hook height card: how far below the panel's top edge the hooks or rings are set, and where the rod then is.

On the table the hooks are set by it; held to the hung panel, it shows whether the rod is where it should be.
"""

from __future__ import annotations

from fractions import Fraction
from math import ceil

from ..drawing import USUAL, Drawing, Item, Lane, LineType, Look, Mark, path
from ..lengths import NOTHING, Length
from ..planning import Plan
from ..planning.headings.points import PointPlan
from .registering import AT_EDGE, AT_OTHER_EDGE
from .ruled import Rule, rule

RULED = 84
"""How far the lines run from the datum edge, in mm: room for them and, where they crowd, for labels beside them."""
MARGIN = 3
"""From the lines to the lane, in mm."""
LANE = 18
SHORTEST = 100
"""Least length of the card, in mm: our choice, because all that is said of it has to stand in its lane."""
TREAD = 14
"""Width of the ledge, in mm: our choice, the width of the finger tip that has to feel it."""
HEADROOM = 12
"""Paper above the topmost line, in mm, to hold the card by."""
LEAST_LEDGE = 25
"""Height of the ledge, in mm: our choice, because a lower one bends."""
SIZE = 12.5
WIDTH = RULED + MARGIN + LANE
"""Below the ledge."""


def draw(plan: Plan, look: Look = USUAL) -> list[Drawing]:
    """The card for hooks; none for a heading without."""
    return _card(plan, "hook height card", ("hook",), look)


def draw_for_rings(plan: Plan, look: Look = USUAL) -> list[Drawing]:
    """The same for rings or clips."""
    return _card(plan, "ring height card", ("ring", "clip"), look)


def _card(plan: Plan, name: str, things: tuple[str, ...], look: Look) -> list[Drawing]:
    """Read upright, the heading's top at the top; its zero is its lowest line, as a rule that of the hooks.

    Where a line lies below the panel's top edge the card is narrower up to there, and its ledge is that edge.
    """
    points = plan.heading
    if not isinstance(points, PointPlan) or points.thing not in things:
        return []
    lines = _lines(plan, points)
    zero = min(at for _, at, _ in lines)
    edge = -zero.mm
    rules = [
        Rule((at - zero).mm, kind if at > zero else None, label, _from_edge(plan, at)) for label, at, kind in lines
    ]
    items, reach = rule(rules, RULED, SIZE, look)
    topmost = max(float((at - zero).mm) for _, at, _ in lines)
    end = Fraction(max(ceil(max(reach, topmost) + HEADROOM), ceil(edge) + LEAST_LEDGE, SHORTEST))
    width = WIDTH + (TREAD if edge else 0)
    return [
        Drawing(
            name=name,
            caption=_caption(points, bool(edge)),
            up="the rod",
            start=Fraction(0),
            end=end,
            low=-width,
            high=0,
            inward=-1,
            lane=Lane(-WIDTH, LANE - WIDTH),
            registration=(-AT_EDGE, AT_OTHER_EDGE - WIDTH),
            marks=tuple(Mark(label, (at - zero).mm) for label, at, _ in lines),
            items=(*_outline(edge, end), *items),
            quarter_turns=1,
        )
    ]


def _lines(plan: Plan, points: PointPlan) -> list[tuple[str, Length, LineType]]:
    """What the card shows, each with its height above the panel's top edge; the rod's are outlines of another part."""
    rod, top = "rod" if points.round_rod else "track", points.edge_below
    lines = [
        ("panel's top edge", NOTHING, LineType.MARK),
        (f"{rod}'s underside", top - plan.spec.rod.diameter, LineType.THIN),
        (f"{rod}'s top", top, LineType.THIN),
    ]
    return [(f"{points.thing}s", -points.set_below, LineType.MARK), *lines] if points.set_below else lines


def _from_edge(plan: Plan, at: Length) -> str:
    """How far a line is from the panel's top edge; what rounding took away is said in words."""
    if not at:
        return ""
    reading = plan.tape.read(abs(at))
    return f"{reading.number} {'above' if at > NOTHING else 'below'} the edge{reading.remark}"


def _caption(points: PointPlan, ledge: bool) -> tuple[str, ...]:
    things, rod = f"{points.thing}s", "rod" if points.round_rod else "track"
    level = "ledge" if ledge else "lower edge"
    mark = f", and mark at “{things}”" if points.set_below else ""
    return (
        f"Lay its {level} level with the panel's top edge{mark}.",
        f"Held so to the hung panel, beside one of the {things}, its lines show where the {rod} must be.",
    )


def _outline(edge: Fraction, end: Fraction) -> tuple[Item, ...]:
    """Narrower up to the panel's top edge, and from there with the ledge."""
    narrow, wide = -WIDTH, -WIDTH - TREAD
    corners: list[tuple[Fraction, int]] = [(Fraction(0), 0), (Fraction(0), narrow)]
    outer = narrow
    if edge:
        corners += [(edge, narrow), (edge, wide)]
        outer = wide
    return path(LineType.CUT, [*corners, (end, outer), (end, 0), (Fraction(0), 0)])
