"""Gathering tape: sewn to the back, gathered by its cords to the finished width, hung by hooks in its pockets."""

from __future__ import annotations

from dataclasses import dataclass

from ...lengths import NOTHING, Length, Tape
from ...spec import Spec
from ...spec.headings import GatheringTape
from .. import spacing
from ..choices import HOOKS_IN_TAPE, PLEAT_FULLNESS, TAPE_MARKS
from ..figures import Figure, Notice
from ..plan import GaugeLine, HeadingMark, HeadingPlan
from ..widths import made_count, made_width
from ..wording import at_most, decimal, near, say, term
from .face import Hang, HangTerm, HeadingKind, beside_the_top
from .pleats import finished_width


@dataclass(frozen=True, slots=True, kw_only=True)
class TapePlan(HeadingPlan):
    """The tape of one panel; its marks are the quarters between which the gathers are spread."""

    given: GatheringTape
    finished: Length
    """Of the panel when it is gathered."""
    tape: Length
    """Cut length of the tape."""
    tape_top: Length
    """Panel's top edge down to the tape's upper edge."""
    tape_bottom: Length
    fold_over: Length
    """How much of the top is turned to the back, under the tape."""
    hooks: int


def _fold_over(heading: GatheringTape) -> Length:
    """Given, or to the tape's middle, so that the raw edge lies under it."""
    return heading.tape_below + heading.tape_width / 2 if heading.fold_over is None else heading.fold_over


def hang(spec: Spec, heading: GatheringTape) -> Hang:
    """As any hooks: the bends hang the carrier's drop below the rod's top, the top edge above them."""
    terms = HangTerm("hooks below the top edge", heading.hook_set), HangTerm("carrier's drop", -heading.carrier_drop)
    return Hang("gathering tape", terms)


def explain(tape: Tape, hang: Hang) -> str:
    """How a panel hangs by its tape, as a clause."""
    return f"by its gathering tape, its top edge lies {beside_the_top(tape, hang)}"


def doubled(spec: Spec, heading: GatheringTape) -> Length:
    """The top is turned over as far as the tape covers its raw edge."""
    return _fold_over(heading)


def lay_out(spec: Spec, heading: GatheringTape) -> TapePlan:
    """Where the tape lies, how long it is cut, and the quarters."""
    width, finished = made_width(spec), finished_width(spec, heading.finished_width)
    places = spacing.positions(width, width / (TAPE_MARKS + 1), TAPE_MARKS)
    top, bottom = heading.tape_below, heading.tape_below + heading.tape_width
    lines = [
        GaugeLine("tape's upper edge", top, "stitch"),
        GaugeLine("hook's bend", heading.hook_set, "mark"),
        GaugeLine("tape's lower edge", bottom, "stitch"),
    ]
    return TapePlan(
        style=heading.style,
        thing="mark",
        given=heading,
        marks=tuple(HeadingMark(str(number), at) for number, at in enumerate(places, 1)),
        thing_width=NOTHING,
        edge_inset=places[0],
        pitch=places[1] - places[0],
        finished=finished,
        tape=width + 2 * heading.tape_turn,
        tape_top=top,
        tape_bottom=bottom,
        fold_over=_fold_over(heading),
        hooks=max(2, int(-(-finished.mm // HOOKS_IN_TAPE.mm)) + 1),
        lines=tuple(sorted((line for line in lines if line.length), key=lambda line: line.length)),
    )


def hang_figures(spec: Spec, tape: TapePlan) -> tuple[Figure, ...]:
    """Drop and depth of the hooks."""
    given = tape.given
    return (
        Figure("carrier_drop", "carrier's drop", given.carrier_drop, "as given: the rod's top down to what holds"),
        Figure("hook_set", "hook below edge", given.hook_set, "as given: down from the top edge"),
    )


def figures(spec: Spec, tape: TapePlan) -> tuple[Figure, ...]:
    """The tape, and what the panel is gathered to."""
    show, given = spec.tape, tape.given
    fold = "as given" if given.fold_over is not None else "chosen: to the middle of the tape"
    return (
        Figure(
            "gathered_width",
            "gathered width",
            tape.finished,
            "as given" if given.finished_width is not None else "the panel's share of rod, overlap and returns",
        ),
        Figure("tape_top", "tape's upper edge", tape.tape_top, "down from the top edge"),
        Figure(
            "tape_bottom",
            "tape's lower edge",
            tape.tape_bottom,
            f"down from the top edge: {say(show, tape.tape_top)} {term(show, 1, 'tape', given.tape_width)}",
        ),
        Figure("fold_over", "top folded over", tape.fold_over, f"to the back, under the tape, {fold}"),
        Figure(
            "tape_length",
            "tape, cut length",
            tape.tape,
            f"panel {say(show, made_width(spec))} {term(show, 1, '2 × turned under', 2 * given.tape_turn)}; "
            f"for all panels {say(show, tape.tape * made_count(spec))}",
        ),
    )


def notices(spec: Spec, tape: TapePlan) -> tuple[Notice, ...]:
    """A raw edge that the tape does not cover, hooks beside it, too little or too much to gather."""
    show, given = spec.tape, tape.given
    found = []
    if not tape.tape_top < tape.fold_over < tape.tape_bottom:
        text = (
            f"The top is folded over {near(show, tape.fold_over)}, and the tape covers from "
            f"{near(show, tape.tape_top)} to {near(show, tape.tape_bottom)} below the edge: the raw edge must come "
            "under it."
        )
        found.append(Notice("raw_edge_beside_tape", "warning", text))
    if not tape.tape_top <= given.hook_set <= tape.tape_bottom:
        text = (
            f"The hooks sit {near(show, given.hook_set)} below the top edge, and the tape with its pockets lies from "
            f"{near(show, tape.tape_top)} to {near(show, tape.tape_bottom)}: measure the pocket again."
        )
        found.append(Notice("hooks_beside_tape", "stop", text))
    width = made_width(spec)
    if width <= tape.finished:
        text = (
            f"There is nothing to gather: the panel is {near(show, width)} wide flat, and has to cover "
            f"{near(show, tape.finished)}."
        )
        return (*found, Notice("nothing_to_gather", "stop", text))
    full = width / tape.finished
    low, high = PLEAT_FULLNESS
    if not low <= full <= high:
        text = (
            f"The tape gathers the cloth {decimal(float(full))} times; 2 to 2.5 times is usual (common practice), and "
            f"a tape is made for one of them: read its packet. For 2 times a panel covers "
            f"{at_most(show, width / 2)} at most."
        )
        found.append(Notice("gathers_unusual", "note", text))
    return tuple(found)


GATHERING_TAPE = HeadingKind(
    name="gathering tape",
    title="The gathering tape",
    marks_said="Marks for spreading the gathers",
    edge="heading",
    hang=hang,
    explain=explain,
    doubled=doubled,
    lay_out=lay_out,
    hang_figures=hang_figures,
    figures=figures,
    notices=notices,
    takes_up="gathered",
)
