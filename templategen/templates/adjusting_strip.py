"""Adjusting strips: what is moved at each mark of the heading, and where the hem is folded again."""

from __future__ import annotations

from collections.abc import Sequence

from ..drawing import USUAL, Drawing, Look
from ..lengths import NOTHING, Length
from ..planning import Plan
from ..planning.adjusting import Move, Remedy
from .said import unit_of
from .spacing_strip import BACK, Labelled, Ruled, ruled_strip

AGAINST = "Back of the panel towards you, heading away: this edge up against the old fold."
UNSAID = "How far it is moved stands on the page of words."
MOST_APART = 6
"""The new fold of a hem is said at least at every so many parts of the width: our choice, since a rule of 18 in then
lies from mark to mark on a panel of twice 54 in."""


def draw(plan: Plan, remedy: Remedy, look: Look = USUAL) -> list[Drawing]:
    """The strip for the heading, where something is moved there, and the strip for the hem."""
    drawings = []
    if remedy.at_heading:
        drawings.append(_at_heading(plan, remedy.at_heading, look))
    if any(move.distance for move in remedy.at_hem):
        drawings.append(_at_hem(plan, remedy.at_hem, look))
    return drawings


def _amount(plan: Plan, distance: Length) -> str:
    """"↓ 1/4 −": which way, and how far."""
    if not distance:
        return "0"
    return f"{'up' if distance > NOTHING else 'down'} {plan.tape.read(abs(distance)).label}"


def _at_heading(plan: Plan, moves: Sequence[Move], look: Look) -> Drawing:
    """Laid along the panel's top edge like the spacing strip; it has the marks alone that are touched."""
    heading = plan.heading
    labels = tuple(
        Labelled(move.label, move.at.mm, f"{'down' if move.distance > NOTHING else 'up'} {_size(plan, move)}")
        for move in moves
    )
    kept = (
        "What is not here stays as it is.",
        *((f"Short lines: a {heading.thing}'s edges.",) if heading.thing_width else ()),
    )
    return ruled_strip(
        Ruled(
            name="adjusting strip",
            caption=(
                BACK,
                f"Down, up: so many {unit_of(plan)} lower or higher on the cloth than now.",
                *kept,
            ),
            unsaid=(BACK, *kept, UNSAID),
            up="the panel's top edge",
            width=plan.width.mm,
            marks=labels,
            thing_width=heading.thing_width.mm,
        ),
        look,
    )


def _size(plan: Plan, move: Move) -> str:
    return plan.tape.read(abs(move.distance)).label


def _at_hem(plan: Plan, moves: Sequence[Move], look: Look) -> Drawing:
    """Laid along the finished edge. Between two places the new fold is straight, and it is said at some between too."""
    places = sorted({move.at for move in moves} | {plan.width * part / MOST_APART for part in range(MOST_APART + 1)})
    return ruled_strip(
        Ruled(
            name="hem adjusting strip",
            caption=(
                AGAINST,
                f"Up: the new fold lies so many {unit_of(plan)} nearer the heading; down: farther from it.",
            ),
            unsaid=(AGAINST, UNSAID),
            up="the panel's bottom edge",
            width=plan.width.mm,
            marks=tuple(
                Labelled(str(number), at.mm, _amount(plan, _between(moves, at))) for number, at in enumerate(places, 1)
            ),
            thing_width=NOTHING.mm,
        ),
        look,
    )


def _between(moves: Sequence[Move], at: Length) -> Length:
    """The distance there, by the straight line between the moves beside it."""
    before = max((move for move in moves if move.at <= at), key=lambda move: move.at)
    after = min((move for move in moves if move.at >= at), key=lambda move: move.at)
    if before.at == after.at:
        return before.distance
    return before.distance + (after.distance - before.distance) * ((at - before.at) / (after.at - before.at))
