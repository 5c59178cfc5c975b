"""The ways to put a hanging panel right: at the heading, at the hem, at both."""

from __future__ import annotations

from dataclasses import replace

from ...lengths import NOTHING, Length
from ..choices import LEAST_HEM, LEAST_TURN, MADE_WITHIN
from ..plan import HeadingMark, Plan
from ..wording import at_most, near, say
from .adjustment import Move, Remedy
from .gives import GIVES
from .hung import Hung, Place

REFOLD = "The hem folded again"


def remedies(plan: Plan, hung: Hung, stitched: bool) -> tuple[Remedy, ...]:
    """Every way there is: least unpicking first, then least sewing; those that fall short last."""
    found = [hem_remedy(plan, hung, stitched)]
    heading = heading_remedy(plan, hung)
    if heading is not None:
        found.append(heading)
        if heading.short and (both := _both(plan, hung, heading, stitched)):
            found.append(both)
    return tuple(sorted(found, key=lambda each: (bool(each.short), each.unpicked, each.sewn)))


def heading_remedy(plan: Plan, hung: Hung) -> Remedy | None:
    """What can be done at the marks of the heading; None for a heading that has nothing to move."""
    give = GIVES.get(plan.heading.style)
    if give is None:
        return None
    # What the tape cannot show is not worth a seam.
    wanted = [(mark, hung.low_at(mark.at)) for mark in _marks(plan, hung)]
    moves = tuple(give.move(plan, mark, low) for mark, low in wanted if abs(low) >= plan.tape.step)
    done = tuple(each for each in moves if each.distance)
    if give.across and done:
        done = (replace(done[0], sewn=plan.width), *done[1:])
    left = hung_after(plan, hung, done).worst
    short = ""
    if left > MADE_WITHIN:
        up, down = give.limits(plan)
        short = (
            f"it would leave the hem {near(plan.tape, left)} off: this heading raises the hem at most "
            f"{at_most(plan.tape, up)} and lowers it at most {at_most(plan.tape, down)}"
        )
    return Remedy("heading", give.title, done, (), give.how(plan, done) if done else (), left, short)


def _marks(plan: Plan, hung: Hung) -> tuple[HeadingMark, ...]:
    """The heading's marks; for one without marks, whose row runs right across, the places that were read and
    the edges."""
    if plan.heading.marks:
        return plan.heading.marks
    return tuple(HeadingMark(str(number), place.at) for number, place in enumerate(_with_edges(plan, hung), 1))


def hung_after(plan: Plan, hung: Hung, moves: tuple[Move, ...]) -> Hung:
    """How the panel hangs once the heading has been moved: between two marks the hem rises in a straight line."""
    if not moves:
        return hung
    raised = {move.at: move.raised for move in moves}
    lifts = Hung(tuple(Place(mark.at, raised.get(mark.at, NOTHING), "") for mark in _marks(plan, hung)))
    return Hung(tuple(Place(each.at, each.low - lifts.low_at(each.at), each.said) for each in hung.places))


def hem_remedy(plan: Plan, hung: Hung, stitched: bool) -> Remedy:
    """The hem folded again: higher where the panel hangs low, lower where it hangs high.

    Only stitching beside a place that is off is unpicked, as far as the next place that is right, and none of a hem
    that is only pinned.
    """
    places = _with_edges(plan, hung)
    moves = []
    for number, place in enumerate(places, 1):
        off = _stretch(places, number - 1) if place.low else NOTHING
        sewn = off if stitched else NOTHING
        moves.append(Move(str(number), place.at, place.low, place.low, place.low, sewn, sewn))
    give = plan.hem.allowance - LEAST_HEM - LEAST_TURN
    down = -min(place.low for place in places)
    short = ""
    if down > max(NOTHING, give):
        there = at_most(plan.tape, give) if give > NOTHING else "nothing"
        short = (
            f"the hem would have to come down {near(plan.tape, down)}, and it can give {there}: a hem of "
            f"{near(plan.tape, LEAST_HEM)} with {near(plan.tape, LEAST_TURN)} turned under must be left"
        )
    return Remedy("hem", REFOLD, (), tuple(moves), _refolding(plan, moves, stitched), NOTHING, short)


def _with_edges(plan: Plan, hung: Hung) -> tuple[Place, ...]:
    """The places that were read, and both edges."""
    places = {place.at: place for place in hung.places}
    for at, said in ((NOTHING, "at the right edge"), (plan.width, "at the left edge")):
        places.setdefault(at, Place(at, hung.low_at(at), said))
    return tuple(sorted(places.values(), key=lambda place: place.at))


def _stretch(places: tuple[Place, ...], index: int) -> Length:
    """The length of hem on either side of a place that moves with it: halfway to a neighbour that moves too,
    all the way to one that does not."""
    total = NOTHING
    for other in (index - 1, index + 1):
        if 0 <= other < len(places):
            between = abs(places[other].at - places[index].at)
            total = total + (between / 2 if places[other].low else between)
    return total


def _refolding(plan: Plan, moves: list[Move], stitched: bool) -> tuple[str, ...]:
    tape = plan.tape
    up = max((move.wanted for move in moves), default=NOTHING)
    down = -min((move.wanted for move in moves), default=NOTHING)
    first = ("Unpick the hem where it moves, and a hand's width beyond, and press it flat.",) if stitched else ()
    fold = (
        "Lay the adjusting strip along the old fold. At each of its lines mark the cloth as far above that fold (up) "
        "or below it (down) as the strip says; join the marks with a rule, and fold there."
    )
    if up > NOTHING:
        fold += f" Up to {say(tape, up)} more cloth goes into the hem; let the turn-under take it."
    if down > NOTHING:
        left = near(tape, plan.hem.allowance - down)
        fold += f" Up to {say(tape, down)} comes out of the hem: {left} is left there for fold and turn-under."
    return (*first, fold, "Press, pin, and stitch when it has hung and is right.")


def _both(plan: Plan, hung: Hung, heading: Remedy, stitched: bool) -> Remedy | None:
    """The heading as far as it goes, and the hem for what is left."""
    if not heading.at_heading:
        return None
    rest = hem_remedy(plan, hung_after(plan, hung, heading.at_heading), stitched)
    title = f"{heading.title}, and the hem for the rest"
    how = (*heading.how, *rest.how)
    return Remedy("both", title, heading.at_heading, rest.at_hem, how, rest.left, rest.short)
