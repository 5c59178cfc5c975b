"""Pleats folded by hand: flat cloth brought to its finished width, pleat by pleat.

From the return edge to the leading edge a panel has its return, the pleats with
a space between each two, and what stands beyond the last pleat. The pleats take
up flat width - finished width between them; the spaces are what is left of the
finished width (How to Make Draperies, booklet, undated: half-opening 49 + return
3 + overlap 1 = 53 finished, flat 144, 13 pleats of 7 in, spaces of 4 in).
"""

from __future__ import annotations

from fractions import Fraction

from ....lengths import NOTHING, Length, Tape
from ....lengths.counting import plural
from ....spec import Spec
from ....spec.headings import PinchPleats
from ...figures import Figure
from ...fullness import run, share
from ...heading_choices import BOX_SIZES, FINGERED_SIZES, HOOK_BELOW_RINGS, LAST_PLEAT_BACK, PLEAT_SPACE
from ...plan import GaugeLine, HeadingMark
from ...widths import made_count, made_width
from ...wording import beside_the_rod, say, term
from ..face import Hang, HangTerm, HeadingKind
from .advice import pleat_notices
from .plan import Edge, PleatPlan, Pleats


def hooks_below(heading: Pleats) -> Length:
    """Panel's top edge down to the hooks' bends: given, or so that the edge just touches the rings."""
    return HOOK_BELOW_RINGS if heading.set_below is None else heading.set_below


def hang(spec: Spec, heading: Pleats) -> Hang:
    """The hooks' bends hang the carrier's drop below the rod's top, the top edge above them."""
    terms = HangTerm("hooks below the top edge", hooks_below(heading)), HangTerm("carrier's drop", -heading.drop)
    return Hang(heading.style, terms)


def explain(tape: Tape, hang: Hang) -> str:
    """How a panel hangs by its pleats, as a clause."""
    return f"by its pleats, its top edge lies {beside_the_rod(tape, hang.offset)}"


def doubled(spec: Spec, heading: Pleats) -> Length:
    """The stiffening lies between two layers."""
    return heading.heading_depth


def finished_width(spec: Spec, given: Length | None) -> Length:
    """Of one panel: given, or its share of rod + overlap + both returns (UFGS-12491N)."""
    return share(spec) if given is None else given


def lay_out(spec: Spec, heading: Pleats) -> PleatPlan:
    """The pleats of one panel, from its return edge to its leading edge."""
    flat, finished = made_width(spec), finished_width(spec, heading.finished_width)
    last, sizes = _last_back(spec, heading), _sizes(heading)
    first = spec.rod.returns if spec.rod.returns else last
    between = finished - first - last
    count = heading.pleats if heading.pleats is not None else _chosen(sizes, between, flat - finished)
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
        last=last,
        hooks_below=hooks_below(heading),
        sizes=sizes,
        leading=leading,
        mirrored=spec.panel.leading_edge == "pair" and made_count(spec) > 1,
        lines=(
            *((GaugeLine("hook's bend", hooks_below(heading), "mark"),) if hooks_below(heading) else ()),
            GaugeLine("pleats are sewn to here", heading.heading_depth, "stitch"),
        ),
    )


def _last_back(spec: Spec, heading: Pleats) -> Length:
    """From the leading edge back to the last pleat: given, or chosen; a panel that covers the rod alone has a return
    at that end too, and its last pleat stands at the corner."""
    if heading.last_back is not None:
        return heading.last_back
    alone = made_count(spec) == 1 and spec.rod.returns
    return spec.rod.returns if alone else LAST_PLEAT_BACK


def _sizes(heading: Pleats) -> tuple[Length, Length]:
    """The least and the most cloth in a good pleat."""
    return FINGERED_SIZES[heading.fingers] if isinstance(heading, PinchPleats) else BOX_SIZES


def _chosen(sizes: tuple[Length, Length], between: Length, to_take_up: Length) -> int:
    """The number of pleats whose spaces come nearest to 4 in, of those that make good pleats; 2 at the least."""
    least, most = sizes
    wanted = round(Fraction(max(NOTHING, between).mm, PLEAT_SPACE.mm)) + 1
    fewest, greatest = -(-to_take_up.mm // most.mm), to_take_up.mm // least.mm
    return int(max(2, min(max(wanted, fewest), max(greatest, fewest))))


def hang_figures(spec: Spec, pleats: PleatPlan) -> tuple[Figure, ...]:
    """Drop and depth of the hooks."""
    given = pleats.given
    return (
        Figure("carrier_drop", "carrier's drop", given.drop, "as given: the rod's top down to what holds"),
        Figure("hook_set", "hook below edge", pleats.hooks_below, "as given: down from the top edge"),
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
    last = "back from the leading edge: "
    if given.last_back is not None:
        last += "as given"
    elif pleats.last == LAST_PLEAT_BACK:
        last += "How to Make Draperies"
    else:
        last = "the other return: the last pleat stands at its corner"
    chosen = ""
    if given.pleats is None:
        chosen = f"; {pleats.pleats} pleats chosen: spaces as near to 4 in as makes good pleats"
    found = [
        Figure("pleat_finished_width", "finished width", pleats.finished, finished),
        Figure("pleat_first", "first pleat from edge", pleats.first, first),
        Figure("pleat_last", "last pleat from edge", pleats.last, last),
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


def _kind(name: str, title: str) -> HeadingKind[Pleats, PleatPlan]:
    return HeadingKind(
        name=name,
        title=title,
        marks_said="Pleat lines",
        edge="top",
        hang=hang,
        explain=explain,
        doubled=doubled,
        lay_out=lay_out,
        hang_figures=hang_figures,
        figures=figures,
        notices=pleat_notices,
        takes_up="pleated",
    )


PINCH_PLEATS = _kind("pinch pleats", "The pleats")
BOX_PLEATS = _kind("box pleats", "The box pleats")
INVERTED_BOX_PLEATS = _kind("inverted box pleats", "The inverted box pleats")

__all__ = ["BOX_PLEATS", "INVERTED_BOX_PLEATS", "PINCH_PLEATS", "PleatPlan", "Pleats", "finished_width"]
