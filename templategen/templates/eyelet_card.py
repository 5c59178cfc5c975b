"""Eyelet card: laid on the panel's top edge at each mark, it gives the centre and the circle to cut."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from fractions import Fraction
from math import ceil

from ..drawing import USUAL, Drawing, Item, Lane, Line, LineType, Look, Mark, Ring, Text, path, width_of
from ..lengths import Length
from ..planning import Plan
from ..planning.headings.eyelets import EyeletPlan
from .registering import AT_EDGE, AT_OTHER_EDGE

LANE = 18
SHORTEST = 120
"""Least length of the card, in mm: our choice, because all that is said of it has to stand in its lane."""
MARGIN = 9
"""Paper left of the ring and below it, in mm, so that the card holds together when its circle is cut out."""
TICK = 10
"""Centre line at the upper edge, in mm; 8 are promised."""
ARM = Fraction(4)
"""Each arm of the cross that is pricked through, in mm, where the circle is wide enough."""
PAST = 4
"""Centre lines beyond the ring, in mm."""
STRONG, PLAIN = 15, 10
ROW = 9
"""From one label's base line to the next one's, in mm."""
FIRST_ROW = 14
"""From the upper edge to the highest base line there may be, in mm."""
LEADERS = 12
"""Between ring and labels, in mm."""
MIDDLE = Fraction(19, 10)
"""From a label's base line up to the middle of its capitals, in mm."""
_BETWEEN = 2
_SLANT = (Fraction(4, 5), Fraction(3, 5))
"""Where leaders leave their circles: a point of the unit circle, exact."""


@dataclass(frozen=True, slots=True)
class _Label:
    """A length, large, and what it is."""

    strong: str
    plain: str
    look: Look

    @property
    def column(self) -> float:
        """From where it begins to where its words do, at the least."""
        return width_of(self.strong, self.look.size(STRONG), True) + _BETWEEN

    @property
    def words(self) -> float:
        """How wide its words are."""
        return width_of(self.plain, self.look.size(PLAIN))

    def items(self, x: Fraction, column: float, y: Fraction) -> Iterator[Item]:
        yield Text(x, y, self.strong, self.look.size(STRONG), bold=True)
        yield Text(float(x) + column, y, self.plain, self.look.size(PLAIN))


def draw(plan: Plan, look: Look = USUAL) -> list[Drawing]:
    """The card, its upper edge the panel's top edge; none for a heading without eyelets, or whose rings run over the
    edge, which the plan stops.

    It carries one eyelet, and is laid at the marks of the strip: a second one
    would invite stepping off from hole to hole, which gathers error.
    """
    eyelets = plan.heading
    if not isinstance(eyelets, EyeletPlan) or eyelets.centre < max(eyelets.outside, eyelets.cut_circle) / 2:
        return []
    ring, down = max(eyelets.outside, eyelets.cut_circle).mm / 2, eyelets.centre.mm
    across = ring + MARGIN
    labels = _labels(plan, eyelets, look)
    left, column = across + ring + LEADERS, max(label.column for label in labels)
    widest = column + max(label.words for label in labels)
    base = -max(down - ROW + MIDDLE, Fraction(FIRST_ROW))
    rows = [base - ROW * i for i in range(len(labels))]
    body = max(ceil(down + ring) + MARGIN, ceil(-rows[-1]) + 5)
    end = Fraction(max(ceil(float(left) + widest) + 5, SHORTEST))
    items: list[Item] = [
        *path(LineType.CUT, [(0, 0), (end, 0), (end, -body - LANE), (0, -body - LANE), (0, 0)]),
        *_eyelet(eyelets, across),
        *_leaders(eyelets, across, left, rows),
    ]
    for label, y in zip(labels, rows, strict=True):
        items += label.items(left, column, y)
    return [
        Drawing(
            name="eyelet card",
            caption=(
                "Upper edge on the panel's top edge, line on a mark of the strip. For a punch, prick the cross "
                "through; for scissors, cut out the circle first and draw round inside it.",
                "Go by the strip's marks, never from hole to hole.",
            ),
            up="the panel's top edge",
            start=Fraction(0),
            end=end,
            low=-body - LANE,
            high=0,
            inward=-1,
            lane=Lane(-body - LANE, -body),
            registration=(-AT_EDGE, -body - LANE + AT_OTHER_EDGE),
            marks=(Mark("eyelet centre", across),),
            items=tuple(items),
            keep_whole=((across - ring, across + ring),),
        )
    ]


def _labels(plan: Plan, eyelets: EyeletPlan, look: Look) -> tuple[_Label, ...]:
    """From the top down, in the order in which their leaders leave the eyelet; the last one has none."""

    def label(length: Length, name: str) -> _Label:
        reading = plan.tape.read(length)
        return _Label(reading.number, f"{name}{reading.remark}", look)

    return (
        label(eyelets.outside, "ring, outside"),
        label(eyelets.centre, "centre, below the edge"),
        label(eyelets.cut_circle, "circle to cut"),
        label(eyelets.pitch, "to the next centre"),
    )


def _eyelet(eyelets: EyeletPlan, x: Fraction) -> Iterator[Item]:
    """The ring, the circle to cut, the cross in it, and the centre lines through it."""
    ring, cut, y = eyelets.outside.mm / 2, eyelets.cut_circle.mm / 2, -eyelets.centre.mm
    yield Ring(LineType.THIN, x, y, ring)
    yield Ring(LineType.CUT, x, y, cut)
    arm = min(ARM, cut / 2)
    yield Line(LineType.MARK, x, 0, x, -TICK)
    yield Line(LineType.MARK, x - arm, y, x + arm, y)
    yield Line(LineType.MARK, x, y - arm, x, y + arm)
    if y + arm < -TICK:
        yield Line(LineType.CENTRE, x, -TICK, x, y + arm)
    yield Line(LineType.CENTRE, x, y - arm, x, y - ring - PAST)
    yield Line(LineType.CENTRE, x - arm, y, x - ring - PAST, y)
    yield Line(LineType.CENTRE, x + arm, y, x + ring + PAST, y)


def _leaders(eyelets: EyeletPlan, x: Fraction, left: Fraction, rows: list[Fraction]) -> Iterator[Item]:
    """From the ring, the centre line and the circle to their labels."""
    ring, cut, y = eyelets.outside.mm / 2, eyelets.cut_circle.mm / 2, -eyelets.centre.mm
    along, up = _SLANT
    starts = ((x + ring * along, y + ring * up), (x + ring + PAST, y), (x + cut * along, y - cut * up))
    for (at, height), row in zip(starts, rows, strict=False):
        yield Line(LineType.THIN, at, height, left - Fraction(3, 2), row + MIDDLE)
