"""Pleats folded by hand: flat cloth brought to its finished width, pleat by pleat.

From the return edge to the leading edge a panel has its return, the pleats with
a space between each two, and what stands beyond the last pleat. The pleats take
up flat width - finished width between them; the spaces are what is left of the
finished width (How to Make Draperies, booklet, undated: half-opening 49 + return
3 + overlap 1 = 53 finished, flat 144, 13 pleats of 7 in, spaces of 4 in).
"""

from __future__ import annotations

from dataclasses import dataclass
from fractions import Fraction
from typing import Literal

from ...lengths import NOTHING, Length, Tape
from ...lengths.counting import plural
from ...spec import Spec
from ...spec.headings import BoxPleats, InvertedBoxPleats, PinchPleats
from ..choices import BOX_AS_WIDE_AS_ITS_SPACE, PLEAT_FULLNESS, PLEAT_SIZES, PLEAT_SPACE
from ..figures import Figure, Notice
from ..fullness import run
from ..plan import GaugeLine, HeadingMark, HeadingPlan
from ..widths import made_count, made_width
from ..wording import at_least, decimal, near, say, term
from .face import Hang, HangTerm, HeadingKind, beside_the_top

Pleats = PinchPleats | BoxPleats | InvertedBoxPleats
Edge = Literal["left", "right"]


@dataclass(frozen=True, slots=True, kw_only=True)
class PleatPlan(HeadingPlan):
    """The pleats of one panel; each has two marks, the lines that are brought together."""

    given: Pleats
    pleats: int
    flat: Length
    finished: Length
    """Of the panel, return and overlap with it."""
    pleat: Length
    """Cloth in one pleat, line to line."""
    space: Length
    first: Length
    """Return edge to the first pleat."""
    last: Length
    """Last pleat to the leading edge."""
    leading: Edge
    """Where the leading edge is, the back towards you; for a pair, on the panels that hang on the left as seen from
    the front."""
    mirrored: bool
    """Whether as many panels are made the other way round."""

    @property
    def on_each(self) -> int:
        return self.pleats

    @property
    def spaced(self) -> bool:
        return False


def hang(spec: Spec, heading: Pleats) -> Hang:
    """The hooks' bends hang the carrier's drop below the rod's top, the top edge above them."""
    terms = HangTerm("hooks below the top edge", heading.hook_set), HangTerm("carrier's drop", -heading.carrier_drop)
    return Hang(heading.style, terms)


def explain(tape: Tape, hang: Hang) -> str:
    """How a panel hangs by its pleats, as a clause."""
    return f"by its pleats, its top edge lies {beside_the_top(tape, hang)}"


def doubled(spec: Spec, heading: Pleats) -> Length:
    """The stiffening lies between two layers."""
    return heading.heading_depth


def finished_width(spec: Spec, given: Length | None) -> Length:
    """Of one panel: given, or its share of rod + overlap + both returns (UFGS-12491N)."""
    return run(spec) / made_count(spec) if given is None else given


def lay_out(spec: Spec, heading: Pleats) -> PleatPlan:
    """The pleats of one panel, from its return edge to its leading edge."""
    flat, finished = made_width(spec), finished_width(spec, heading.finished_width)
    first = spec.rod.returns if spec.rod.returns else heading.last_back
    between = finished - first - heading.last_back
    count = heading.pleats if heading.pleats is not None else _chosen(heading.style, between, flat - finished)
    pleat = max(NOTHING, flat - finished) / count
    space = max(NOTHING, between) / (count - 1)
    leading: Edge = "right" if spec.panel.leading_edge == "left" else "left"
    starts = [first + i * (pleat + space) for i in range(count)]
    marks = [
        (f"{i}{letter}", at)
        for i, start in enumerate(starts, 1)
        for letter, at in (("a", start), ("b", start + pleat))
    ]
    # From the back, the return edge lies to the right where the leading edge lies to the left.
    if leading == "left":
        marks = [(label, flat - at) for label, at in reversed(marks)]
    return PleatPlan(
        style=heading.style,
        thing="pleat",
        given=heading,
        marks=tuple(HeadingMark(label, at) for label, at in marks),
        thing_width=NOTHING,
        edge_inset=marks[0][1],
        pitch=pleat + space,
        pleats=count,
        flat=flat,
        finished=finished,
        pleat=pleat,
        space=space,
        first=first,
        last=heading.last_back,
        leading=leading,
        mirrored=spec.panel.leading_edge == "pair" and made_count(spec) > 1,
        lines=(
            *((GaugeLine("hook's bend", heading.hook_set, "mark"),) if heading.hook_set else ()),
            GaugeLine("pleats are sewn to here", heading.heading_depth, "stitch"),
        ),
    )


def _chosen(style: str, between: Length, to_take_up: Length) -> int:
    """The number of pleats whose spaces come nearest to 4 in, of those that make good pleats; 2 at the least."""
    least, most = PLEAT_SIZES[style]
    wanted = round(Fraction(max(NOTHING, between).mm, PLEAT_SPACE.mm)) + 1
    fewest, greatest = -(-to_take_up.mm // most.mm), to_take_up.mm // least.mm
    return int(max(2, min(max(wanted, fewest), max(greatest, fewest))))


def hang_figures(spec: Spec, pleats: PleatPlan) -> tuple[Figure, ...]:
    """Drop and depth of the hooks."""
    given = pleats.given
    return (
        Figure("carrier_drop", "carrier's drop", given.carrier_drop, "as given: the rod's top down to what holds"),
        Figure("hook_set", "hook below edge", given.hook_set, "as given: down from the top edge"),
    )


def figures(spec: Spec, pleats: PleatPlan) -> tuple[Figure, ...]:
    """From flat to finished, pleat by pleat."""
    tape, given = spec.tape, pleats.given
    finished = "as given"
    if given.finished_width is None:
        finished = f"its share of rod, overlap and returns: {say(tape, run(spec))} ÷ {made_count(spec)}"
    first = "the return: the first pleat stands at its corner"
    if not spec.rod.returns:
        first = "no return: as far back as the last pleat from the leading edge"
    chosen = ""
    if given.pleats is None:
        chosen = f"; {pleats.pleats} pleats chosen: spaces as near to 4 in as makes good pleats"
    found = [
        Figure("pleat_finished_width", "finished width", pleats.finished, finished),
        Figure("pleat_first", "first pleat from edge", pleats.first, first),
        Figure("pleat_last", "last pleat from edge", pleats.last, "back from the leading edge"),
        Figure(
            "pleat_size",
            "cloth in one pleat",
            pleats.pleat,
            f"(flat {say(tape, pleats.flat)} − finished {say(tape, pleats.finished)}) ÷ {pleats.pleats} pleats",
        ),
        Figure(
            "pleat_space",
            "space between pleats",
            pleats.space,
            f"(finished {say(tape, pleats.finished)} {term(tape, -1, 'first', pleats.first)} "
            f"{term(tape, -1, 'last', pleats.last)}) ÷ {plural(pleats.pleats - 1, 'space')}{chosen}",
        ),
    ]
    if isinstance(given, PinchPleats):
        working = f"pleat {say(tape, pleats.pleat)} ÷ (2 × {given.fingers} fingers)"
        found.append(Figure("finger_depth", "finger, depth", pleats.pleat / (2 * given.fingers), working))
    else:
        working = f"half of a pleat {say(tape, pleats.pleat)}, pressed flat to both sides"
        found.append(Figure("box_width", "box, width", pleats.pleat / 2, working))
    return tuple(found)


def notices(spec: Spec, pleats: PleatPlan) -> tuple[Notice, ...]:
    """Too little cloth, pleats too thin or too thick, boxes that overlap, no room for spaces."""
    tape, style = spec.tape, pleats.style
    if pleats.flat <= pleats.finished:
        text = (
            f"There is nothing to pleat: the panel is {near(tape, pleats.flat)} wide flat, and it has to cover "
            f"{near(tape, pleats.finished)}. Two times is the least for pleats (common practice)."
        )
        return (Notice("nothing_to_pleat", "stop", text),)
    if pleats.finished <= pleats.first + pleats.last:
        text = (
            f"There is no room for pleats: return and leading edge take {near(tape, pleats.first + pleats.last)} of a "
            f"finished width of {near(tape, pleats.finished)}."
        )
        return (Notice("no_room_for_pleats", "stop", text),)
    found = []
    least, most = PLEAT_SIZES[style]
    if not least <= pleats.pleat <= most:
        thin = pleats.pleat < least
        how = "thin" if thin else "thick"
        other = int((pleats.flat - pleats.finished).mm // least.mm) if thin else int(
            -(-(pleats.flat - pleats.finished).mm // most.mm)
        )
        cure = f" {other} pleats would come within it." if other >= 2 else " Take more panels, or wider ones."
        text = (
            f"The pleats are {how}: {near(tape, pleats.pleat)} of cloth in each; {near(tape, least)} to "
            f"{near(tape, most)} makes a good one.{cure}"
        )
        found.append(Notice(f"pleats_{how}", "warning", text))
    found += _box_notices(spec, pleats)
    full = pleats.flat / pleats.finished
    low, high = PLEAT_FULLNESS
    if not low <= full <= high:
        text = (
            f"The cloth is {decimal(float(full))} times the finished width; 2 to 2.5 times is usual for pleats (common "
            "practice; UFGS-12491N counts 2, 2.5 and 3 times). The choice is yours."
        )
        found.append(Notice("pleat_fullness", "note", text))
    if made_count(spec) > 2 and spec.rod.returns:
        text = (
            "More than two panels share the rod, and only those at its ends have a return: those between need a strip "
            "of their own, from a spec without returns."
        )
        found.append(Notice("return_at_ends_only", "warning", text))
    return tuple(found)


def _box_notices(spec: Spec, pleats: PleatPlan) -> list[Notice]:
    """Boxes against their spaces."""
    if isinstance(pleats.given, PinchPleats) or pleats.pleat / 2 <= pleats.space:
        return []
    tape = spec.tape
    text = (
        f"The boxes are {near(tape, pleats.pleat / 2)} wide and stand {near(tape, pleats.space)} apart, so they "
        f"overlap. A box as wide as its space takes {BOX_AS_WIDE_AS_ITS_SPACE} times the finished width (Stephenson "
        f"1905); this cloth is {decimal(float(pleats.flat / pleats.finished))} times. Spaces of at least "
        f"{at_least(tape, pleats.pleat / 2)} would clear them."
    )
    return [Notice("boxes_overlap", "warning", text)]


def _kind(name: str, title: str) -> HeadingKind[Pleats, PleatPlan]:
    return HeadingKind(
        name=name,
        title=title,
        marks_said="Pleat lines",
        edge="heading",
        hang=hang,
        explain=explain,
        doubled=doubled,
        lay_out=lay_out,
        hang_figures=hang_figures,
        figures=figures,
        notices=notices,
        takes_up="pleated",
    )


PINCH_PLEATS = _kind("pinch pleats", "The pleats")
BOX_PLEATS = _kind("box pleats", "The box pleats")
INVERTED_BOX_PLEATS = _kind("inverted box pleats", "The inverted box pleats")
