"""What small pieces cut off sewn tubes need, loops and tabs: the tubes, cloth for them, their ends."""

from __future__ import annotations

from collections.abc import Iterator

from ....lengths import Length
from ....planning import Plan
from ....planning.plan import PiecesPlan
from ....planning.wording import near, say
from ..amounts import Seam, Thing

TURNER = "A bodkin or a safety pin, to turn the tubes"


def pieces_of(plan: Plan) -> PiecesPlan:
    """The pieces of a heading that takes some."""
    assert plan.offcut.pieces is not None, "loops and tabs are cut from strips"
    return plan.offcut.pieces


def tubes(plan: Plan, width: Length) -> Iterator[Seam]:
    """The long seams of the strips, and the zigzag over both ends of every piece, which is ``width`` wide.

    Strips from offcuts are as long as a panel is wide; of other cloth just what the pieces take is sewn.
    """
    cut, thing = pieces_of(plan), pieces_of(plan).pieces.thing
    name = f"long seams for {thing}s"
    strips = min(cut.strips_needed, cut.strips_unpicked) if cut.per_strip else 0
    yield Seam(name, plan.spec.panel.width, strips)
    yield Seam(name, cut.pieces.length, missing(cut))
    yield Seam(f"ends of {thing}s", width, 2 * cut.needed, "zigzag")


def missing(cut: PiecesPlan) -> int:
    """How many the offcuts do not yield, their old hem let down."""
    return max(0, cut.needed - cut.available_unpicked)


def other_cloth(plan: Plan) -> Iterator[Thing]:
    """Cloth for those that the offcuts do not yield; nothing where they yield all."""
    cut, tape = pieces_of(plan), plan.tape
    thing, lacking = cut.pieces.thing, missing(cut)
    if not lacking:
        return
    yielded = cut.available_unpicked
    had = f"{cut.needed} {thing}s, of which the offcuts yield {yielded}: " if yielded else ""
    yield Thing(
        f"other cloth for {thing}s, in strips {near(tape, cut.pieces.strip)} wide",
        cut.pieces.length * lacking,
        f"{had}{lacking} × {say(tape, cut.pieces.length)}, in pieces long enough for whole {thing}s",
    )


def unpicked(plan: Plan) -> bool:
    """Whether offcuts are unpicked for the strips: side hems always, and the old hem where it has to be let down."""
    cut = pieces_of(plan)
    return bool(cut.strips_needed and cut.strips_unpicked and cut.per_strip)
