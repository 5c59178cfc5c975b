"""Gathering tape: bought tape with cords in it, sewn along the back of the top, drawn up, and hung by hooks.

The tape is sewn on flat. The cords are knotted at one edge and pulled from the
other; the hooks in its pockets hang on rings or gliders.
"""

from __future__ import annotations

from ....lengths import NOTHING, Length, Tape
from ....lengths.counting import plural
from ....spec import Spec
from ....spec.headings import GatheringTape
from ...doubled import doubled_now, kept
from ...figures import Figure
from ...heading_choices import NARROW_TAPE, TAPE_BEYOND
from ...plan import HeadingMark
from ...widths import made_count, made_width
from ...wording import decimal, near, say, term
from ..face import Hang, HangTerm, HeadingKind
from .advice import fullness_range, tape_notices
from .plan import TapePlan
from .sizes import divisions, fold, gathered, hook_count, hook_limit, hook_set, tape_top

HOOKS_BELOW, CARRIERS = "hooks below top edge", "carrier drop"


def hang(spec: Spec, heading: GatheringTape) -> Hang:
    """The rings or gliders hold the hooks. Offset: +drop - hooks below the top edge."""
    below, drop = hook_set(heading), heading.drop
    return Hang("gathering tape", (HangTerm(HOOKS_BELOW, below), HangTerm(CARRIERS, -drop)))


def explain(tape: Tape, hang: Hang) -> str:
    """How a panel hangs by its tape, as a clause."""
    below, carriers = hang.terms
    return (
        f"by its tape, the hooks hold {near(tape, below.raises)} below its top edge and "
        f"{near(tape, -carriers.raises)} below the top of the rod or track"
    )


def doubled(spec: Spec, heading: GatheringTape) -> Length:
    """The fold whose edge the tape covers."""
    return fold(heading)


def lay_out(spec: Spec, heading: GatheringTape) -> TapePlan:
    """The tape of one panel, and the places at which it is divided."""
    width, parts = made_width(spec), divisions(spec)
    drawn, hooks = gathered(spec, heading), hook_count(spec, heading)
    return TapePlan(
        style=heading.style,
        thing="division",
        marks=tuple(HeadingMark(str(number), width * number / parts) for number in range(1, parts)),
        thing_width=NOTHING,
        edge_inset=width / parts,
        pitch=width / parts,
        needs=(("hooks", hooks),),
        given=heading,
        top=tape_top(heading),
        width=heading.tape_width,
        hook_set=hook_set(heading),
        fold=fold(heading),
        tape_length=width + 2 * heading.tape_turn,
        flat=width,
        gathered=drawn,
        gathered_division=drawn / parts,
        hooks=hooks,
        hook_pitch=drawn / (hooks - 1),
    )


def hang_figures(spec: Spec, tape: TapePlan) -> tuple[Figure, ...]:
    """Where the hooks hold, above and below."""
    said, given = spec.tape, tape.given
    working = "as given"
    if given.set_below is None:
        pocket = "half the tape" if given.pocket is None else "pocket"
        upper = f"down from the top edge: tape's upper edge {say(said, tape.top)}"
        working = f"{upper} {term(said, 1, pocket, tape.hook_set - tape.top)}"
    return (
        Figure("carrier_drop", CARRIERS, given.drop, "as given, down from the top of the rod or track"),
        Figure("hook_set", HOOKS_BELOW, tape.hook_set, working),
    )


def figures(spec: Spec, tape: TapePlan) -> tuple[Figure, ...]:
    """Where the tape lies, how long it is, and how it is drawn up."""
    said, given = spec.tape, tape.given
    parts = len(tape.marks) + 1
    upper, flat = f"tape's upper edge {say(said, tape.top)}", f"panel {say(said, tape.flat)}"
    return (
        Figure("tape_top", "tape's upper edge", tape.top, _top_working(tape)),
        Figure(
            "tape_lower",
            "tape's lower edge",
            tape.lower,
            f"down from the top edge: {upper} {term(said, 1, 'tape', tape.width)}",
        ),
        Figure("tape_fold", "top folded", tape.fold, _fold_working(spec, tape)),
        Figure("tape_length", "tape, each panel", tape.tape_length, _length_working(spec, tape)),
        Figure(
            "tape_total",
            "tape, in all",
            made_count(spec) * tape.tape_length,
            f"{plural(made_count(spec), 'panel')} × {say(said, tape.tape_length)}",
        ),
        Figure("gathered_width", "gathered width", tape.gathered, _gathered_working(tape)),
        Figure("division", "division, flat", tape.pitch, f"{flat} ÷ {parts}, each to be drawn up alike"),
        Figure(
            "gathered_division",
            "division, gathered",
            tape.gathered_division,
            f"gathered width {say(said, tape.gathered)} ÷ {parts}: the same places on the rod",
        ),
        Figure(
            "hook_pitch",
            "hook spacing",
            tape.hook_pitch,
            f"gathered width {say(said, tape.gathered)} ÷ {plural(tape.hooks - 1, 'space')}"
            + ("" if given.count is not None else f"; the fewest no more than {say(said, hook_limit(given))} apart"),
        ),
    )


def _top_working(tape: TapePlan) -> str:
    if tape.given.tape_top is not None:
        return "as given, down from the top edge"
    narrow = tape.width <= NARROW_TAPE
    why = "a frill stands above it" if narrow else "its own pleats are the heading"
    return f"down from the top edge, chosen for {'a narrow' if narrow else 'a wide'} tape: {why}"


def _fold_working(spec: Spec, tape: TapePlan) -> str:
    said = spec.tape
    if kept(spec, tape.given, tape.fold):
        return f"at least; the top is doubled {say(said, doubled_now(spec))} deep now and stays as it is"
    if tape.given.top_fold is not None:
        return "as given, down from the top edge"
    upper = f"tape's upper edge {say(said, tape.top)}"
    return f"{upper} {term(said, 1, 'half the tape', tape.width / 2)}: the tape covers its edge"


def _length_working(spec: Spec, tape: TapePlan) -> str:
    said = spec.tape
    least, most = TAPE_BEYOND
    turn = term(said, 1, "2 × turned in", tape.given.tape_turn)
    beyond = f"sewing guides have {near(said, least)} to {near(said, most)} beyond the panel in all"
    return f"panel {say(said, tape.flat)} {turn}; {beyond}"


def _gathered_working(tape: TapePlan) -> str:
    least, most = fullness_range(tape)
    how = "as given" if tape.given.gathered_width is not None else "the panel's share of rod, overlap and returns"
    if tape.given.gathered_width is None and tape.gathered == tape.flat:
        how = "the panel's own width: it is no wider than its share"
    guides = f"sewing guides have {decimal(float(least))} to {decimal(float(most))} to 1 for such a tape"
    return f"{how}; {decimal(float(tape.fullness))} to 1, {guides}"


GATHERING_TAPE = HeadingKind(
    name="gathering tape",
    title="The gathering tape",
    marks_said="Divisions",
    edge="casing",
    hang=hang,
    explain=explain,
    doubled=doubled,
    lay_out=lay_out,
    hang_figures=hang_figures,
    figures=figures,
    notices=tape_notices,
    takes_up="gathered",
)

__all__ = ["GATHERING_TAPE", "TapePlan"]
