"""What is said of gathering tape."""

from __future__ import annotations

from collections.abc import Iterator

from ...planning import Plan
from ...planning.headings.tape import TapePlan
from ..choices import Choices
from ..said import Step, plain
from .face import HeadingWords
from .marking import marking


def made(plan: Plan, tape: TapePlan) -> str:
    """How wide it is gathered."""
    return f"gathered by tape to {plain(plan, tape.finished)}"


def strip(plan: Plan, tape: TapePlan) -> tuple[str, ...]:
    """What the lines are for."""
    return ("The gathers are spread alike between one line and the next.",)


def card(plan: Plan, tape: TapePlan) -> tuple[str, ...]:
    """What the heading card measures."""
    return ("Lay the tape between its two lines; the edge folded over must come under it.",)


def steps(plan: Plan, tape: TapePlan, choices: Choices) -> Iterator[Step]:
    """Tape, gathers, hooks."""
    yield (
        f"Cut the tape {plain(plan, tape.tape)} long for each panel. At the end that comes to the leading edge pull "
        f"the cords out on the back and knot them; at the other pull them out on the front and leave them long. Turn "
        f"{plain(plan, tape.given.tape_turn)} under at each end. Pin the tape by the heading card's lines, its pockets "
        "towards you, and sew along both its edges in the same direction, without catching the cords.",
        True,
    )
    yield marking(plan, choices, "the back of the top"), True
    yield (
        f"Pull the cords from the long end until the panel is {plain(plan, tape.finished)} wide. Spread the gathers so "
        f"that the marks come {plain(plan, tape.finished / (tape.count + 1))} apart, knot the cords, wind them up and "
        f"tuck them away; do not cut them. Put {tape.hooks} hooks into the pockets, one at either end.",
        True,
    )


GATHERING_TAPE = HeadingWords(
    name="gathering tape", made=made, hung="the hooks of its tape", steps=steps, strip=strip, card=card
)
