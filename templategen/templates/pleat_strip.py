"""Pleat strip: pinned to the top, it shows the two lines of every pleat, for a left and for a right panel."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from fractions import Fraction
from itertools import pairwise

from ..drawing import CAP, USUAL, Anchor, Drawing, Item, Line, LineType, Look, Text, width_of
from ..planning import Plan
from ..planning.headings.pleats import PleatPlan
from ..planning.plan import HeadingMark
from ..spec.headings import PinchPleats
from .spacing_strip import BACK, Labelled, Ruled, ruled_strip
from .strips import keys_to_reading, keys_without_distances

BAND = 12.2
"""From the datum edge to the band that spans a pleat, in mm: between the ticks and the labels."""
FINGER = 6
"""Length of a finger's tick, in mm."""
WORD, OVER = 9, 1
"""Size of a word over the band, in points, and how far over it, in mm."""
BESIDE_THE_END = 8
"""From a strip's end to the word for its return, in mm: the end's own word stands there."""
SIDES = {"left": "right", "right": "left"}
"""The other one; and the side that an edge has from the front."""


def draw(plan: Plan, look: Look = USUAL) -> list[Drawing]:
    """One strip for panels that are all alike, two for pairs, each the other's mirror image.

    None without pleats, and none where there is no cloth for them or no room between them.
    """
    pleats = plan.heading
    if not isinstance(pleats, PleatPlan) or not (pleats.pleat and pleats.space):
        return []
    if not pleats.mirrored:
        return [_strip(plan, pleats, pleats.marks, pleats.leading, "", look)]
    # From the back the leading edge of a left panel lies to the left, where its front has it on the right.
    return [
        _strip(plan, pleats, marks, leading, f" for {leading} panels", look)
        for marks, leading in ((pleats.marks, pleats.leading), (plan.mirrored_marks, SIDES[pleats.leading]))
    ]


def _strip(
    plan: Plan, pleats: PleatPlan, marks: Sequence[HeadingMark], leading: str, which: str, look: Look
) -> Drawing:
    labels = [plan.tape.read(mark.at).label for mark in marks]
    whose = (f"For panels that hang on the {leading}, seen from the front.",) if which else ()
    edges = {leading: "leading edge", SIDES[leading]: "return edge"}
    return ruled_strip(
        Ruled(
            name=f"pleat strip{which}",
            caption=(*whose, BACK, *keys_to_reading(plan, labels, "the left end")),
            unsaid=(*whose, BACK, *keys_without_distances(plan)),
            up="the panel's top edge",
            width=plan.width.mm,
            marks=tuple(Labelled(mark.label, mark.at.mm, said) for mark, said in zip(marks, labels, strict=True)),
            thing_width=Fraction(0),
            ends=(edges["left"], edges["right"]),
            more=(*_spans(pleats, marks, look), *_returns(plan, pleats, marks, leading, look)),
        ),
        look,
    )


def _spans(pleats: PleatPlan, marks: Sequence[HeadingMark], look: Look) -> Iterator[Item]:
    """A band over each pleat, with its fingers, and the word for what lies between two, clear of the centre line."""
    width, word = pleats.flat.mm, width_of("space", look.size(WORD))
    fingers = 2 * pleats.given.fingers if isinstance(pleats.given, PinchPleats) else 2
    for before, after in pairwise(marks):
        left, right = before.at.mm, after.at.mm
        room = float(right - left) - 2
        if before.label[:-1] == after.label[:-1]:
            yield Line(LineType.MARK, left, -BAND, right, -BAND)
            for part in range(1, fingers):
                at = left + (right - left) * part / fingers
                yield Line(LineType.THIN, at, 0, at, -FINGER)
        elif word < room and abs(float(left + right - width)) > word + 2:
            yield Text((left + right) / 2, -BAND + OVER, "space", look.size(WORD), Anchor.MIDDLE)


def _returns(
    plan: Plan, pleats: PleatPlan, marks: Sequence[HeadingMark], leading: str, look: Look
) -> Iterator[Item]:
    """The word for what goes round the corner to the wall, where there is room for it beside the end's own word."""
    depth, width, size = plan.spec.rod.returns, pleats.flat.mm, look.size(WORD)
    beside = max(BESIDE_THE_END, size * CAP + 4)
    from_left, from_right = marks[0].at, pleats.flat - marks[-1].at
    for side, reach in (("left", from_left), ("right", from_right)):
        back = pleats.last if side == leading else pleats.first
        if not depth or back != depth or width_of("return", size) + 2 * beside > float(reach.mm):
            continue
        middle = reach.mm / 2 if side == "left" else width - reach.mm / 2
        yield Text(middle, -BAND + OVER, "return", size, Anchor.MIDDLE)
