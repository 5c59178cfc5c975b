"""A picture set: the largest scale at which it and all that is said of it fit, and a place for every word.

Whatever the numbers, no words touch other words or any line but their own leader.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Sequence
from dataclasses import dataclass
from functools import lru_cache

from ..drawing import CAP, DESCENT, Anchor, Bounds, Item, Line, LineType, Ring, Text, tied, width_of, wrap
from .columns import LEADING, column, set_column
from .dimensions import heights, rises, spans
from .shapes import drawn, hatched, meets_line, meets_ring, moved, points_of
from .view import Hatch, Heights, Label, Note, Rise, Running, Span, View, Within

USUAL_SIZE = 9.0
"""Points of type at which arrow heads and symbols have their usual size."""
NEAR = 0.5
"""Mm that words keep from lines and from one another."""
NOTHING = 1e-6
"""Mm that are no more than what is rounded in floats: no scale would be found that is so little smaller."""
TICK = 2.4
"""Mm of a mark along an edge."""
SCALES = (1, 1.5, 2, 2.5, 3, 4, 5, 6, 7.5, 8, 10)
"""Scales that are told are 1 to one of these, times a power of ten. Our choice: ISO 5455 has 1, 2, 5 and 10 of them,
which would leave much of the paper empty."""
_FINER = 0.94
"""By how much a scale that is not told is made smaller until everything fits."""


@dataclass(frozen=True, slots=True)
class Setting:
    """A picture on paper, in mm, its items from its top left corner, so that y is negative."""

    width: float
    height: float
    items: tuple[Item, ...]
    scale: str = ""
    """"1 : 20", where the picture is to scale."""


@lru_cache(maxsize=256)
def set_view(view: View, width: float, size: float, tallest: float = 110.0) -> Setting:
    """``view`` in at most ``width`` mm, its words in ``size`` points; its shapes are at most ``tallest`` mm high."""
    points = [point for shape in view.shapes for point in points_of(shape)]
    wide = max(x for x, _ in points) - min(x for x, _ in points)
    tall = max(y for _, y in points) - min(y for _, y in points)
    scales = _scales(view.to_scale, min(width / max(wide, 1e-6), tallest / max(tall, 1e-6)))
    while True:
        scale, said = next(scales)
        attempt = _Attempt(view, scale, size, width)
        box = _extent(attempt.boxes)
        over = box.right - box.left - width
        if over <= NOTHING or scale * wide < 2:
            break
        fits = max((wide * scale - float(over)) / wide, scale * 0.5)
        while scale > fits:
            scale, said = next(scales)
        scales = _from(scale, said, scales)
    shifted = tuple(moved(item, -box.left, -box.top) for item in attempt.items)
    return Setting(float(box.right - box.left), float(box.top - box.bottom), shifted, said if view.to_scale else "")


def _from(scale: float, said: str, rest: Iterator[tuple[float, str]]) -> Iterator[tuple[float, str]]:
    yield scale, said
    yield from rest


def _scales(told: bool, most: float) -> Iterator[tuple[float, str]]:
    """Scales from the largest that is no larger than ``most`` down, with how each is told."""
    if not told:
        while True:
            yield most, ""
            most *= _FINER
    power = -2
    while True:
        for number in SCALES[:-1]:
            ratio = number * 10.0**power
            if 1 / ratio <= most * (1 + 1e-9):
                yield 1 / ratio, f"1 : {ratio:g}" if ratio >= 1 else f"{1 / ratio:g} : 1"
        power += 1


def _extent(boxes: Sequence[Bounds]) -> Bounds:
    lefts, bottoms, rights, tops = zip(*boxes, strict=True)
    return Bounds(min(lefts), min(bottoms), max(rights), max(tops))


class _Attempt:
    """A picture set at one scale: its items, and the box of each, worked out once."""

    def __init__(self, view: View, scale: float, size: float, width: float) -> None:
        self._scale, self._size, self._grown = scale, size, max(size / USUAL_SIZE, 0.8)
        self._most = width * 0.36
        self._view = view
        notes = view.notes
        while True:
            self.items: list[Item] = []
            self.boxes: list[Bounds] = []
            for shape in view.shapes:
                self._add(drawn(shape, scale, self._grown))
            crowded = self._set(notes)
            if not crowded:
                break
            notes = tuple(_beside(n) if isinstance(n, Within) and n in crowded else n for n in notes)
        words = [box for item, box in zip(self.items, self.boxes, strict=True) if isinstance(item, Text)]
        for shape in view.shapes:
            if isinstance(shape, Hatch):
                self._add(hatched(shape, scale, words))

    def _add(self, items: Iterable[Item]) -> None:
        for item in items:
            self.items.append(item)
            self.boxes.append(item.bounds)

    def _set(self, notes: Sequence[Note]) -> list[Within]:
        """Every note in its place; those that found no room where they are meant to be."""
        scale, size, grown = self._scale, self._size, self._grown
        labels = [note for note in notes if isinstance(note, Label)]
        running = [n for n in notes if isinstance(n, Running)]
        for each in running:  # first, since on a thin thing they reach below it
            self._add(self._ticks(each))
        self._add(spans([n for n in notes if isinstance(n, Span)], self.boxes, scale, size, grown))
        for note in notes:
            if isinstance(note, Heights):
                self._add(heights(note, self.boxes, scale, size, grown, self._most))
        for side in ("left", "right"):
            passing = [label.at[1] * scale for label in labels if label.side == side]
            rising = [n for n in notes if isinstance(n, Rise) and n.side == side]
            self._add(rises(rising, self.boxes, passing, scale, size, grown))
        box = _extent(self.boxes)
        for inward, edge, side in ((1, box.left, "left"), (-1, box.right, "right")):
            here = [label for label in labels if label.side == side]
            if here:
                set_here = column(here, scale, size, self._most)
                self._add(set_column(set_here, scale, size, float(edge), inward, grown))
        for each in running:
            self._add(self._names(each))
        return [note for note in notes if isinstance(note, Within) and not self._written(note)]

    def _ticks(self, note: Running) -> Iterator[Item]:
        y = note.y * self._scale
        for place, _ in self._ticked(note):
            x = place * self._scale
            yield Line(LineType.MARK, x, y, x, y - TICK * self._grown, note.about)

    def _ticked(self, note: Running) -> list[tuple[float, str]]:
        """The places that are marked, and so may be named: the first, the last, and those between that stay apart."""
        ticked: list[tuple[float, str]] = []
        for place in note.places:
            if not ticked or (place[0] - ticked[-1][0]) * self._scale >= 0.9 or place == note.places[-1]:
                ticked.append(place)
        return ticked

    def _names(self, note: Running) -> list[Text]:
        """Names under the marks, in the row where most have room; those at the ends may stand a little farther in."""
        top = note.y * self._scale - TICK * self._grown - NEAR - 0.2
        best: list[Text] = []
        left, right = (place * self._scale for place in (note.places[0][0], note.places[-1][0]))
        near = self._near(Bounds(left - 9, top - 5 * LEADING * self._size, right + 9, top))
        ticked = self._ticked(note)
        for row in range(4):
            base = top - CAP * self._size - row * LEADING * self._size
            kept: list[Text] = []
            taken: list[Bounds] = []
            for (place, name), inward in self._in_order(ticked):
                for shift in dict.fromkeys((0.0, 0.8 * inward, 1.6 * inward)):
                    text = Text(
                        place * self._scale + shift, base, name, self._size, Anchor.MIDDLE, about=note.about
                    )
                    box = text.bounds
                    if not any(box.meets(other, 1.2) for other in taken) and _free(box, near):
                        kept.append(text)
                        taken.append(box)
                        break
            if len(kept) > len(best):
                best = kept
            if len(best) == len(ticked):
                break
        return best

    @staticmethod
    def _in_order(places: Sequence[tuple[float, str]]) -> list[tuple[tuple[float, str], float]]:
        """The places, those that are named whatever the room first; and which way each may move, 1 to the right."""
        first, *others = places
        ends = [(first, 1.0)] + ([(others[-1], -1.0)] if others else [])
        return ends + [(place, 0.0) for place in others[:-1]]

    def _near(self, box: Bounds) -> list[tuple[Item, Bounds]]:
        """All that words inside ``box`` might touch, each with its own box."""
        left, bottom, right, top = box.left, box.bottom, box.right + NEAR, box.top + NEAR
        return [
            (item, each) for item, each in zip(self.items, self.boxes, strict=True)
            if left < each[2] + NEAR and each[0] < right and bottom < each[3] + NEAR and each[1] < top
        ]  # fmt: skip

    def _written(self, note: Within) -> bool:
        """Whether the words found room inside their rectangle; they are set there if so."""
        size, scale = self._size, self._scale
        (x1, y1), (x2, y2) = note.low, note.high
        left, right, low, high = x1 * scale, x2 * scale, y1 * scale, y2 * scale
        if max(width_of(word, size) for word in tied(note.text).split(" ")) > right - left - 2 * NEAR:
            return False
        near = self._near(Bounds(left, low, right, high))
        for lines in dict.fromkeys(((note.text,), wrap(note.text, size, right - left - 2 * NEAR))):
            wide = max(width_of(line, size) for line in lines)
            tall = (len(lines) - 1) * LEADING * size + (CAP + DESCENT) * size
            if wide > right - left - 2 * NEAR or tall > high - low - 2 * NEAR:
                continue
            for part in (0.5, 0.4, 0.6, 0.3, 0.7, 0.15, 0.85, 0.0, 1.0):
                for across in (0.5, 0.25, 0.75, 0.0, 1.0):
                    bottom = low + NEAR + (high - low - 2 * NEAR - tall) * part
                    start = left + NEAR + (right - left - 2 * NEAR - wide) * across
                    if _free(Bounds(start, bottom, start + wide, bottom + tall), near):
                        top = bottom + tall - CAP * size
                        middle = start + wide / 2
                        self._add(
                            Text(middle, top - i * LEADING * size, line, size, Anchor.MIDDLE, about=note.about)
                            for i, line in enumerate(lines)
                        )
                        return True
        return False


def _free(box: Bounds, items: Sequence[tuple[Item, Bounds]]) -> bool:
    """Whether words in ``box`` would touch none of ``items``."""
    for item, its_box in items:
        if isinstance(item, Line):
            met = meets_line(box, item, NEAR)
        elif isinstance(item, Ring):
            met = meets_ring(box, item, NEAR)
        else:
            met = box.meets(its_box, NEAR)
        if met:
            return False
    return True


def _beside(note: Within) -> Label:
    """A label in place of words that found no room inside their rectangle."""
    (x1, y1), (x2, y2) = note.low, note.high
    x = x2 - (x2 - x1) * 0.1 if note.side == "right" else x1 + (x2 - x1) * 0.1
    return Label(note.text, note.at or (x, (y1 + y2) / 2), note.side, note.about)
