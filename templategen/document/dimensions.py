"""Dimensions of a picture as items: extension lines, dimension lines with arrow heads, figures."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from math import hypot

from ..drawing import CAP, DESCENT, Anchor, Bounds, Item, Line, LineType, Ring, Text, width_of
from .columns import column, set_column
from .rails import TAIL, Measured, Railed, on_rails
from .shapes import HEAD, head
from .view import Heights, Label, Point, Rise, Span

OFF_THE_THING = 0.8
"""Mm between the thing and the beginning of an extension line."""
BEYOND = 1.2
"""Mm that an extension line goes on beyond the dimension line."""
FROM_LINE = 0.9
"""Mm between a dimension line and its figure."""
ORIGIN = 0.8
"""Radius of the ring at the origin of running dimensions, in mm."""
FIRST = 2.2
"""Mm between the thing and the figures of the first rail."""


def spans(notes: Sequence[Span], drawn: Sequence[Bounds], scale: float, size: float, grown: float) -> list[Item]:
    """Dimensions across, those of one side on rails below or above all that is ``drawn``, whose boxes these are."""
    items: list[Item] = []
    high = (CAP + DESCENT) * size
    for side, outward in (("below", -1), ("above", 1)):
        here = [note for note in notes if note.side == side]
        if not here:
            continue
        edge = float(min(box.bottom for box in drawn) if outward < 0 else max(box.top for box in drawn))
        measured = [Measured(n.start * scale, n.end * scale, width_of(n.text, size)) for n in here]
        off = FROM_LINE * grown  # heads that stand outside lie under the figure, and grow with it
        pitch = off + high + BEYOND + 0.8
        for note, railed in zip(here, on_rails(measured, (), grown), strict=True):
            # Below, the figure stands between the thing and its line; above, beyond the line: always over the line.
            first = FIRST + (high + off if outward < 0 else 0.0)
            y = edge + outward * (first + railed.rail * pitch)
            start = note.y * scale + outward * OFF_THE_THING
            for x in (note.start * scale, note.end * scale):
                items.append(Line(LineType.THIN, x, start, x, y + outward * BEYOND, note.about))
            ends = ((note.start * scale, y), (note.end * scale, y))
            items += _line(ends, railed, ((railed.line[0], y), (railed.line[1], y)), grown, note.about)
            base = y + off + DESCENT * size
            items.append(Text(railed.centre, base, note.text, size, Anchor.MIDDLE, about=note.about))
    return items


def rises(
    notes: Sequence[Rise], drawn: Sequence[Bounds], passing: Sequence[float], scale: float, size: float, grown: float
) -> list[Item]:
    """Dimensions upward, all of one side, on rails beside all that is ``drawn``, figures outside their lines.

    ``passing`` are heights, in mm of paper, at which leaders cross the rails.
    """
    if not notes:
        return []
    outward = -1 if notes[0].side == "left" else 1
    high = (CAP + DESCENT) * size
    measured = [Measured(n.low * scale, n.high * scale, high) for n in notes]
    railed = on_rails(measured, passing, grown)
    edge = _edge_beside(drawn, railed, outward)
    places = _columns(notes, railed, size)
    items: list[Item] = []
    anchor = Anchor.END if outward < 0 else Anchor.START
    for note, each in zip(notes, railed, strict=True):
        x = edge + outward * (FIRST + 1.5 + places[each.rail])
        start = note.x * scale + outward * OFF_THE_THING
        for y in (note.low * scale, note.high * scale):
            items.append(Line(LineType.THIN, start, y, x + outward * BEYOND, y, note.about))
        ends = ((x, note.low * scale), (x, note.high * scale))
        items += _line(ends, each, ((x, each.line[0]), (x, each.line[1])), grown, note.about)
        base = each.centre - high / 2 + DESCENT * size
        items.append(Text(x + outward * (BEYOND + FROM_LINE), base, note.text, size, anchor, about=note.about))
    return items


def heights(note: Heights, drawn: Sequence[Bounds], scale: float, size: float, grown: float, most: float) -> list[Item]:
    """Heights over one origin; their figures, in a column beside the line, keep clear of one another."""
    if not note.places:
        return []
    outward = -1 if note.side == "left" else 1
    labels = [Label(text, (note.x + outward * OFF_THE_THING / scale, y), note.side) for y, text in note.places]
    figures = column(labels, scale, size, most)
    origin, ends = note.origin * scale, [y * scale for y, _ in note.places]
    half = (CAP + DESCENT) * size
    low = min(origin, *ends, *(middle - half for middle in figures.middles))
    high = max(origin, *ends, *(middle + half for middle in figures.middles))
    x = _reach(drawn, low, high, outward) + outward * (FIRST + 1.5)
    start = note.x * scale + outward * OFF_THE_THING
    items: list[Item] = [
        Line(LineType.THIN, start, origin, x + outward * BEYOND, origin),
        Ring(LineType.THIN, x, origin, ORIGIN * grown),
        Line(LineType.THIN, x, min(origin, *ends), x, max(origin, *ends)),
    ]
    for y in ends:
        if y != origin:  # a head that has no room before the origin's ring points back at its height from beyond
            way = 1 if (y > origin) == (abs(y - origin) > (ORIGIN + HEAD) * grown) else -1
            items.append(head((x, y - way), (x, y), grown))
            if way * (y - origin) < 0:
                items.append(Line(LineType.THIN, x, y, x, y - way * TAIL * grown))
    edge = x + outward * (BEYOND + 1.0)
    return [*items, *set_column(figures, scale, size, edge, -outward, grown, gutter=3.0, dots=False)]


def _edge_beside(drawn: Sequence[Bounds], railed: Sequence[Railed], outward: int) -> float:
    """How far out whatever is drawn reaches at the heights where dimension lines will stand."""
    low, high = min(each.line[0] for each in railed) - BEYOND, max(each.line[1] for each in railed) + BEYOND
    return _reach(drawn, low, high, outward)


def _reach(drawn: Sequence[Bounds], low: float, high: float, outward: int) -> float:
    """How far out whatever is drawn reaches between two heights."""
    beside = [box for box in drawn if box.bottom <= high and box.top >= low]
    return float(min(box.left for box in beside) if outward < 0 else max(box.right for box in beside))


def _columns(notes: Sequence[Rise], railed: Sequence[Railed], size: float) -> list[float]:
    """How far out each rail is from the first: figures of a rail stand between it and the next."""
    places = [0.0]
    for rail in range(max(each.rail for each in railed)):
        widths = [width_of(n.text, size) for n, each in zip(notes, railed, strict=True) if each.rail == rail]
        places.append(places[-1] + BEYOND + FROM_LINE + max(widths) + 2.0)
    return places


def _line(
    ends: tuple[Point, Point], railed: Railed, line: tuple[Point, Point], grown: float, about: str
) -> Iterator[Item]:
    """A dimension line with its two heads, from inside or, where there is no room, from outside."""
    (x1, y1), (x2, y2) = ends
    yield Line(LineType.THIN, *line[0], *line[1], about)
    if not railed.outside:
        yield head(ends[1], ends[0], grown, about)
        yield head(ends[0], ends[1], grown, about)
        return
    (a, b), (c, d) = line  # which way it runs is told by the line: the two ends may be one place
    long = hypot(c - a, d - b)
    way = ((c - a) / long, (d - b) / long)
    tail = TAIL * grown
    yield head((x1 - way[0] * tail, y1 - way[1] * tail), ends[0], grown, about)
    yield head((x2 + way[0] * tail, y2 + way[1] * tail), ends[1], grown, about)
