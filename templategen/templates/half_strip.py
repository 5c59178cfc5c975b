"""Half strip: a spacing strip to the panel's centre, turned end for end for the other half.

The marks stand alike from either edge, so one half of the strip serves both.
Both of its long edges are datum edges with the same lines. The upper row of
labels is read as it lies, the lower row, upside down, when it has been turned.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from fractions import Fraction
from itertools import pairwise
from math import ceil

from ..drawing import USUAL, Anchor, Drawing, Item, Lane, Line, LineType, Look, Mark, Text, path, width_of
from ..planning import Plan
from .places import MOST_PLACES
from .registering import AT_EDGE, NOT_MIRRORED
from .strips import BETWEEN_LABELS, DEPTH, EDGE_TICK, END_SIZE, TICK, keys_to_reading, thing_edges

LANE = 20
"""In mm: beside a join the lane still holds the whole order of marking."""
ROW = (DEPTH - LANE) // 2
"""From a long edge to the lane, in mm: lines, and a row of labels."""
BASE = 17
"""From a long edge to the base line of its labels, in mm."""
ASIDE = 2.0
"""From either end to the nearest word, in mm."""
SIZES = ((20, 14), (18, 12), (14, 10), (20, 0), (18, 0), (14, 0))
"""Of number and distance, in points; where there is no room for distances, numbers alone."""
LARGE_BETWEEN = 17
"""Between words and whatever stands beside them in large print, in mm: room for a join that is clear of both."""
_BESIDE = 6.0
"""Between a label and words beside it, in mm."""
_DOT = 1.4
"""From a number to the dot between it and its distance, in mm."""
_CLEAR = Fraction(14)
"""From a long edge to a registration mark, in mm, that is to be clear of the marks' lines."""
_ROOM_BETWEEN = 10
"""Between two things, in mm, with which a registration mark has room between their lines."""


@dataclass(frozen=True, slots=True)
class _Label:
    """A mark's number and its distance from the panel's left edge, in one line."""

    number: str
    distance: str
    """"· 20 9/16"; empty where there is no room for it."""
    sizes: tuple[float, float]
    left: float

    @property
    def width(self) -> float:
        number = width_of(self.number, self.sizes[0], True)
        return number + _DOT + width_of(self.distance, self.sizes[1]) if self.distance else number

    @property
    def right(self) -> float:
        return self.left + self.width

    def items(self, turned: bool) -> Iterator[Item]:
        """Upright on the upper row, or upside down on the lower one."""
        y, turn, start, way = (BASE - DEPTH, 180, self.right, -1) if turned else (-BASE, 0, self.left, 1)
        yield Text(start, y, self.number, self.sizes[0], bold=True, turn=turn)
        if self.distance:
            after = start + way * (width_of(self.number, self.sizes[0], True) + _DOT)
            yield Text(after, y, self.distance, self.sizes[1], turn=turn)


def draw(plan: Plan, look: Look = USUAL) -> list[Drawing]:
    """The strip, from the panel's left edge to its centre, as seen from the back.

    Turned by half a turn, its lower edge comes to lie along the panel's top
    edge, and a line at x stands at the panel's width − x. So the marks of the
    right half are listed at the places of those of the left.
    """
    loops = plan.heading
    if not loops.spaced:
        return []
    end = plan.width.mm / 2
    places = [mark.at.mm for mark in loops.marks[: (loops.count + 1) // 2]]
    rows = _rows(plan, places, end, look)
    odd = bool(loops.count % 2)
    items: list[Item] = [*path(LineType.CUT, [(0, 0), (end, 0), (end, -DEPTH), (0, -DEPTH), (0, 0)])]
    for at in places:
        items += _loop(at, loops.thing_width.mm / 2, end)
    for row, turned in zip(rows, (False, True), strict=True):
        items += (item for label in row for item in label.items(turned))
        ends = [*_end_words(row, end, odd, turned, look.size(END_SIZE))]
        items += (*ends, *_turn_words(row, turned, ends, look))
    right = zip(reversed(loops.marks[len(places) :]), places, strict=False)
    high = AT_EDGE if loops.pitch.mm - loops.thing_width.mm >= _ROOM_BETWEEN else _CLEAR
    return [
        Drawing(
            name="half strip",
            caption=_caption(plan, bool(rows[0][0].distance)),
            up="the panel's top edge",
            start=Fraction(0),
            end=end,
            low=-DEPTH,
            high=0,
            inward=-1,
            lane=Lane(ROW - DEPTH, -ROW),
            registration=(-high, high + NOT_MIRRORED - DEPTH),
            marks=(
                *(Mark(mark.label, at) for mark, at in zip(loops.marks, places, strict=False)),
                *(Mark(mark.label, at) for mark, at in right),
            ),
            items=tuple(items),
            keep_whole=tuple((at - loops.thing_width.mm / 2, at + loops.thing_width.mm / 2) for at in places),
            ends=("the panel's left edge", "the panel's centre"),
        )
    ]


def _caption(plan: Plan, distances_shown: bool) -> tuple[str, ...]:
    """What to do, in order, and how to read it."""
    loops = plan.heading
    middle = (f"Its right end is mark {loops.count // 2 + 1}.",) if loops.count % 2 else ()
    said = keys_to_reading(plan, [plan.tape.read(mark.at).label for mark in loops.marks], "the panel's left edge")
    if not distances_shown:
        found = ("The distances stand in the work order.",) if loops.count <= MOST_PLACES else ()
        said = (*found, *said[-2:])
    return (
        "Measure and mark the panel's centre.",
        "Back of the panel towards you, mark the left half.",
        "Turn the strip end for end, its other long edge to the top edge: mark the right half.",
        *middle,
        *said,
    )


def _loop(at: Fraction, half_width: Fraction, end: Fraction) -> Iterator[Item]:
    """A mark's centre and a thing's edges at both long edges of the strip."""
    # What is in the middle is marked by the strip's own end: one edge of it alone, beside its number, would deceive.
    for edge in thing_edges(at, half_width, end) if at < end else ():
        yield edge
        yield Line(edge.kind, edge.x1, -DEPTH, edge.x2, EDGE_TICK - DEPTH)
    yield Line(LineType.MARK, at, 0, at, -TICK)
    yield Line(LineType.MARK, at, -DEPTH, at, TICK - DEPTH)


def _rows(
    plan: Plan, places: Sequence[Fraction], end: Fraction, look: Look
) -> tuple[list[_Label], list[_Label]]:
    """The labels of the left half and those of the right, in the largest lettering with which neighbours leave room.

    That is room for a join between them. Where there is none even for numbers alone, every so many loops carry one.
    """
    loops = plan.heading
    said = [(mark.label, plan.tape.read(mark.at).label) for mark in loops.marks]
    halves = said[: len(places)], said[::-1][: len(places)]
    in_look = ((look.size(number), look.size(distance) if distance else 0) for number, distance in SIZES)
    for sizes in dict.fromkeys(in_look):
        upper, lower = (_row(half, places, end, sizes) for half in halves)
        if _has_room(upper, end) and _has_room(lower, end):
            return upper, lower
    kept = _spread(max(upper, lower, key=lambda row: row[0].width), float(loops.pitch.mm))
    return [upper[i] for i in kept], [lower[i] for i in kept]


def _row(
    said: Sequence[tuple[str, str]], places: Sequence[Fraction], end: Fraction, sizes: tuple[float, float]
) -> list[_Label]:
    """Each label under its loop, and beside an end that it would run over."""
    row = []
    for (number, distance), at in zip(said, places, strict=True):
        label = _Label(number, f"· {distance}" if sizes[1] else "", sizes, 0.0)
        most = float(end) - ASIDE - label.width
        left = max(ASIDE, min(float(at) - label.width / 2, most))
        row.append(_Label(label.number, label.distance, sizes, left))
    return row


def _has_room(row: Sequence[_Label], end: Fraction) -> bool:
    apart = all(after.left - before.right >= BETWEEN_LABELS for before, after in pairwise(row))
    return apart and row[0].left >= ASIDE and row[-1].right <= float(end) - ASIDE / 2


def _spread(row: Sequence[_Label], pitch: float) -> list[int]:
    """Which loops carry a label: every so many from the first, and the last.

    So many is odd: the middle between two labels is then between two loops, and free for a join.
    """
    every = ceil((max(label.width for label in row) + BETWEEN_LABELS) / pitch) | 1
    last = len(row) - 1
    kept = list(range(0, last, every))
    while kept and row[last].left - row[kept[-1]].right < BETWEEN_LABELS:
        kept.pop()
    return [*kept, last]


def _end_words(row: Sequence[_Label], end: Fraction, odd: bool, turned: bool, size: float) -> Iterator[Item]:
    """What the ends are, in the row of labels, so far as there is room beside them.

    Of an odd number the middle loop's mark is the end itself, and its label stands behind the words.
    """
    y, turn = (BASE - DEPTH, 180) if turned else (-BASE, 0)
    at_start, at_end = (Anchor.END, Anchor.START) if turned else (Anchor.START, Anchor.END)
    side = "right edge" if turned else "left edge"
    if ASIDE + width_of(side, size) + 3 <= row[0].left:
        yield Text(ASIDE, y, side, size, at_start, turn=turn)
    beyond, before = (row[-1].left - 3, row[:-1]) if odd else (float(end) - ASIDE, row)
    room = beyond - (before[-1].right if before else ASIDE + width_of(side, size)) - 3
    colon = ":" if odd else ""
    for words in (f"centre of the panel, this edge{colon}", f"centre, this edge{colon}", "centre"):
        if width_of(words, size) <= room:
            yield Text(beyond, y, words, size, at_end, turn=turn)
            return


def _turn_words(row: Sequence[_Label], turned: bool, ends: Sequence[Item], look: Look) -> Iterator[Item]:
    """When this long edge is laid to the panel's top edge: in the first space that leaves room for a join besides,
    clear of the words at the ``ends``."""
    words, half = ("then, turned: this edge", "right") if turned else ("first: this edge", "left")
    whole = f"{words} for the {half} half"
    size = look.size(END_SIZE)
    y, turn, anchor = (BASE - DEPTH, 180, Anchor.END) if turned else (-BASE, 0, Anchor.START)
    wordings, between = ((whole, words), LARGE_BETWEEN) if size > END_SIZE else ((whole,), BETWEEN_LABELS)
    for said in wordings:
        taken = width_of(said, size)
        for before, after in pairwise(row):
            if after.left - before.right >= taken + 2 * between + _BESIDE:
                text = Text(before.right + _BESIDE, y, said, size, anchor, turn=turn)
                if not any(text.bounds.meets(end.bounds, between) for end in ends):
                    yield text
                    return
