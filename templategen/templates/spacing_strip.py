"""Spacing strip: pinned along the top, it shows where each loop, tab, ring or eyelet comes."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, replace
from fractions import Fraction
from itertools import pairwise

from ..drawing import CAP, USUAL, Anchor, Drawing, Item, Lane, Line, LineType, Look, Mark, Text, path, width_of
from ..planning import Plan
from .registering import AT_EDGE, AT_OTHER_EDGE
from .strips import (
    BETWEEN_LABELS,
    DEPTH,
    END_SIZE,
    TICK,
    keys_to_reading,
    keys_without_distances,
    thing_edges,
)

BACK = "Back of the panel towards you."
LABELS_FROM = 12
BASES = (20, 27, 31.6)
"""Base lines of numbers, of distances and of the word for the centre, in mm from the datum edge."""
LARGE_BASES = (19.4, 25.95, 31.9)
"""The same in large print, where capitals are up to 6.4 mm, 4.6 mm and 4.6 mm high."""
WORD_FROM, WORD_TO = 10.5, 32.5
"""Where the word for an end may stand in large print, upright, in mm from the datum edge: from tick to lane."""
LANE_FROM, LANE_TO = 33, 51
FAR_APART = (-AT_OTHER_EDGE, AT_EDGE - DEPTH)
"""Where registration marks stand: near the two edges, and not in the mirror image of themselves."""
BELOW_THE_EDGES = (Fraction(-61, 5), AT_EDGE - DEPTH)
"""The same where a join must stand close to one: below the lines of its edges, which leaves it every place there."""
BETWEEN_TICKS = (Fraction(-14), Fraction(-232, 5))
"""The same where things stand closer still: between the ticks at the two edges, which they then cannot touch."""
ROOM_FOR_A_JOIN = 17
"""Between the edges of two things, in mm: 8 on either side of a join, and one to choose from."""
SIZES = ((22, 15), (18, 12), (14, 10))
"""Of number and distance, in points, the largest first."""
DISTANCES = SIZES[0][1]
CENTRE = 9
"""Size of the word for the centre, in points."""
BESIDE_AN_END = 1.5
"""Between a strip's end and a label, in mm."""
TURNED_PITCH = 19
"""Between labels set upright along their marks, in mm: room for a registration mark between two of them."""


@dataclass(frozen=True, slots=True)
class _Lettering:
    """How numbers and running distances are set, so that neighbours do not touch."""

    number: float
    distance: float
    """In points; 0 where there is room for numbers alone."""
    turned: bool
    every: int
    """Every so many marks carry a label."""
    bases: tuple[float, float, float] = BASES


def draw(plan: Plan, look: Look = USUAL) -> list[Drawing]:
    """The strip, from the panel's left edge to its right, as seen from the back.

    Its datum edge is laid along the panel's top edge; its two ends are the
    panel's side edges, so a strip that does not end with the panel shows a
    panel that was measured wrong. None for a heading whose marks are not alike from both edges.
    """
    loops, tape = plan.heading, plan.tape
    if not loops.spaced:
        return []
    labels = [tape.read(mark.at).label for mark in loops.marks]
    strip = Ruled(
        name="spacing strip",
        caption=(BACK, *keys_to_reading(plan, labels, "the left end")),
        unsaid=(BACK, *keys_without_distances(plan)),
        up="the panel's top edge",
        width=plan.width.mm,
        marks=tuple(Labelled(mark.label, mark.at.mm, said) for mark, said in zip(loops.marks, labels, strict=True)),
        thing_width=loops.thing_width.mm,
    )
    return [ruled_strip(strip, look)]


@dataclass(frozen=True, slots=True)
class Labelled:
    """One mark of a strip: its name, large, and beneath it what is said of it."""

    label: str
    at: Fraction
    said: str


@dataclass(frozen=True, slots=True)
class Ruled:
    """A strip from edge to edge of the panel, with a line at each mark at both its long edges."""

    name: str
    caption: tuple[str, ...]
    unsaid: tuple[str, ...]
    """The caption where there is no room for what is said of the marks."""
    up: str
    """What its datum edge is laid along."""
    width: Fraction
    """From end to end, in mm."""
    marks: tuple[Labelled, ...]
    """From left to right, one at least."""
    thing_width: Fraction
    """How wide what stands at each mark is, in mm; its edges are drawn too. Nothing where it is a point."""
    ends: tuple[str, str] = ("left edge", "right edge")
    """What its ends are."""
    more: tuple[Item, ...] = ()
    """What else is drawn on it."""


def ruled_strip(strip: Ruled, look: Look = USUAL) -> Drawing:
    """The strip with its lines, its labels as large as they fit, its centre and its ends."""
    width, half, marks = strip.width, strip.thing_width / 2, strip.marks
    pitch = min((after.at - before.at for before, after in pairwise(marks)), default=width)
    usual = _lettering(marks, float(pitch))
    lettering = _large_lettering(marks, float(pitch), width, look) if look.size(DISTANCES) > DISTANCES else usual
    sewn: list[list[Item]] = []
    for i, mark in enumerate(marks):
        sewn.append(_mark(mark.at, half, width))
        to_the_last = len(marks) - 1 - i
        # The last is always labelled, and none so near before it that the two would touch.
        if not to_the_last or (i % lettering.every == 0 and to_the_last >= lettering.every):
            sewn[-1] += _on_strip(_label(mark, lettering), width)
    on_the_centre = any(mark.at == width / 2 for mark in marks)
    items: list[Item] = [
        *path(LineType.CUT, [(0, 0), (width, 0), (width, -DEPTH), (0, -DEPTH), (0, 0)]),
        *(item for each in sewn for item in each),
        *_centre(width, on_the_centre, lettering, look, [item for each in sewn for item in each]),
        *strip.more,
        *_ends(width, strip.ends, [item for each in (*sewn[:2], *sewn[-2:]) for item in each], look),
    ]
    return Drawing(
        name=strip.name,
        caption=strip.caption if lettering.distance else strip.unsaid,
        up=strip.up,
        start=Fraction(0),
        end=width,
        low=-DEPTH,
        high=0,
        inward=-1,
        lane=Lane(-LANE_TO, -LANE_FROM),
        marks=tuple(Mark(mark.label, mark.at) for mark in marks),
        items=tuple(items),
        keep_whole=tuple((mark.at - half, mark.at + half) for mark in marks),
        # In large print too they stand where they do in usual print.
        registration=_registration(pitch - strip.thing_width, usual),
        ends=(f"{strip.ends[0]} of the panel", f"{strip.ends[1]} of the panel"),
    )


def _lettering(marks: Sequence[Labelled], pitch: float) -> _Lettering:
    """The largest lettering with which labels that stand one pitch apart leave room for a join between them."""
    numbers, distances = [mark.label for mark in marks], [mark.said for mark in marks]
    for number, distance in SIZES:
        if _widest(numbers, distances, number, distance) + BETWEEN_LABELS <= pitch:
            return _Lettering(number, distance, False, 1)
    return _Lettering(11, 9, True, _every([mark.at for mark in marks]))


def _large_lettering(marks: Sequence[Labelled], pitch: float, width: Fraction, look: Look) -> _Lettering:
    """The same in large print, which stands level always: numbers alone where there is no room for distances, and
    where there is none for these either, both at every so many marks."""
    numbers, distances = [mark.label for mark in marks], [mark.said for mark in marks]
    sizes = list(dict.fromkeys((look.size(number), look.size(distance)) for number, distance in SIZES))
    for number, distance in [*sizes, *((number, 0.0) for number, _ in sizes)]:
        if _room_for(marks, _widest(numbers, distances, number, distance), width) <= pitch:
            return _Lettering(number, distance, False, 1, LARGE_BASES)
    number, distance = sizes[-1]
    room, every = _room_for(marks, _widest(numbers, distances, number, distance), width), 1
    while any(after.at - before.at < room for before, after in zip(marks, marks[every:], strict=False)):
        every += 1
    return _Lettering(number, distance, False, every, LARGE_BASES)


def _widest(numbers: Sequence[str], distances: Sequence[str], number: float, distance: float) -> float:
    """The widest of the labels in these sizes, in mm."""
    return max(
        max(width_of(text, number, True) for text in (numbers[0], numbers[-1])),
        max(width_of(text, distance) for text in distances) if distance else 0,
    )


def _room_for(marks: Sequence[Labelled], widest: float, width: Fraction) -> float:
    """How far apart marks must stand for labels so wide, the first and the last moved so far that they stand on the
    strip."""
    least = min(float(marks[0].at), float(width - marks[-1].at))
    return widest + BETWEEN_LABELS + max(widest / 2 + BESIDE_AN_END - least, 0)


def _every(places: Sequence[Fraction]) -> int:
    """So many marks on, whichever label is begun at, there is room for the next one, set upright."""
    every = 1
    while any(after - before < TURNED_PITCH for before, after in pairwise(places[::every])):
        every += 1
    return every


def _registration(between: Fraction, lettering: _Lettering) -> tuple[Fraction, Fraction]:
    """Where registration marks stand, with so much ``between`` the edges of two things, in mm."""
    if lettering.turned:
        return BETWEEN_TICKS
    return FAR_APART if between >= ROOM_FOR_A_JOIN else BELOW_THE_EDGES


def _mark(at: Fraction, half_width: Fraction, panel: Fraction) -> list[Item]:
    """A centre at both edges of the strip, and the edges of what stands there, so far as they lie on the panel."""
    return [
        *thing_edges(at, half_width, panel),
        Line(LineType.MARK, at, 0, at, -TICK),
        Line(LineType.MARK, at, -LANE_TO - 1, at, -DEPTH),
    ]


def _on_strip(label: list[Text], width: Fraction) -> list[Text]:
    """A label, moved so far along that it stands on the strip: what is close to an end has it a little aside."""
    left, right = min(text.bounds.left for text in label), max(text.bounds.right for text in label)
    aside = max(BESIDE_AN_END - left, 0) - max(right + BESIDE_AN_END - width, 0)
    return [replace(text, x=text.x + aside) for text in label] if aside else label


def _label(mark: Labelled, lettering: _Lettering) -> list[Text]:
    """A mark's number, large, and beneath it what is said of it."""
    number, said, at = mark.label, mark.said, mark.at
    if lettering.turned:
        room = LANE_FROM - LABELS_FROM - 1.5
        size = min(lettering.distance, lettering.distance * room / width_of(said, lettering.distance))
        return [
            Text(at - 0.6, -LABELS_FROM - 1, number, lettering.number, Anchor.END, bold=True, turn=90),
            Text(at + 3.2, -LABELS_FROM - 1, said, size, Anchor.END, turn=90),
        ]
    number_base, distance_base, _ = lettering.bases
    label = [Text(at, -number_base, number, lettering.number, Anchor.MIDDLE, bold=True)]
    if lettering.distance:
        label.append(Text(at, -distance_base, said, lettering.distance, Anchor.MIDDLE))
    return label


def _centre(
    width: Fraction, on_a_mark: bool, lettering: _Lettering, look: Look, sewn: Sequence[Item]
) -> list[Item]:
    """The panel's centre line, short where a label stands on it; where a mark is there, the word alone: the mark's
    own line is the centre."""
    middle = width / 2
    labels = (item.bounds for item in sewn if isinstance(item, Text))
    base, turned = lettering.bases[-1], lettering.turned
    short = turned or any(box.left - 1 < middle < box.right + 1 for box in labels)
    word = () if turned else (Text(middle, -base, "centre", look.size(CENTRE), Anchor.MIDDLE),)
    if on_a_mark:
        return [*word]
    return [
        *word,
        Line(LineType.CENTRE, middle, 0, middle, -TICK if short else -base + (3 if look.size(CENTRE) <= CENTRE else 6)),
        Line(LineType.CENTRE, middle, -LANE_TO - 0.5, middle, -DEPTH),
    ]


def _ends(width: Fraction, names: tuple[str, str], beside: Sequence[Item], look: Look) -> list[Item]:
    """What the ends are, upright along them, where what stands at the end marks leaves room; in large print the word
    that tells the one from the other, if there is none for both."""
    size, aside, middle = look.size(END_SIZE), 4.2, -LABELS_FROM - 9.0
    if size > END_SIZE:
        aside, middle = size * CAP + BESIDE_AN_END, -(WORD_FROM + WORD_TO) / 2
        names = _told_apart(names[0], size), _told_apart(names[1], size)
    texts = [
        Text(aside, middle, names[0], size, Anchor.MIDDLE, turn=90),
        Text(width - aside, middle, names[1], size, Anchor.MIDDLE, turn=270),
    ]
    return [text for text in texts if not any(text.bounds.meets(item.bounds, 1.2) for item in beside)]


def _told_apart(name: str, size: float) -> str:
    """An end's name, or its first word where there is no room for both."""
    return name if width_of(name, size) <= WORD_TO - WORD_FROM else name.partition(" ")[0]
