"""What is done about a panel that has been hung and is off, in the order of the work."""

from __future__ import annotations

from collections.abc import Iterator

from ..document.blocks import Block, Heading, NumberRow, Numbers, Paragraph, Remark, Step
from ..planning import Plan
from ..planning.adjusting import Adjustment, Remedy
from ..planning.adjusting.telling import cost, folded, moved, off, place_of, verdict


def words(plan: Plan, adjustment: Adjustment) -> list[Block]:
    """What was read, what is done, and what else could be."""
    places = (NumberRow(place.said, off(plan, place.low)) for place in reversed(adjustment.hung.places))
    return [
        Heading("After hanging", first=True),
        Paragraph(f"{plan.spec.title}: how it hangs, as seen from the front."),
        Numbers(tuple(places)),
        *(Paragraph(text) for text in verdict(plan, adjustment)),
        *(_taken(plan, adjustment.taken) if adjustment.taken else ()),
        *_others(plan, adjustment),
    ]


def _taken(plan: Plan, remedy: Remedy) -> Iterator[Block]:
    yield Heading(remedy.title)
    yield Paragraph(f"{cost(plan, remedy)}.")
    for number, sentence in enumerate(remedy.how, 1):
        yield Step(number, sentence, 1, "panel")
    last = len(remedy.how) + 1
    yield Step(last, "Hang it again, let it settle, and look before anything else is unpicked.", 1, "panel")
    if remedy.at_heading:
        yield Heading("At the heading")
        yield Paragraph("From the left end, the back towards you: how far what is set or sewn anew is moved.")
        rows = (NumberRow(place_of(plan, move), moved(plan, move)) for move in remedy.at_heading)
        yield Numbers(tuple(rows))
    if any(move.distance for move in remedy.at_hem):
        yield Heading("Along the hem")
        yield Paragraph("From the left end, the back towards you: where the new fold lies from the old.")
        yield Numbers(
            tuple(NumberRow(f"at {plan.tape.show(move.at)}", folded(plan, move)) for move in remedy.at_hem)
        )


def _others(plan: Plan, adjustment: Adjustment) -> Iterator[Block]:
    others = [each for each in adjustment.remedies if each is not adjustment.taken]
    if others:
        yield Heading("Other ways")
        for remedy in others:
            why = f" It falls short: {remedy.short}." if remedy.short else ""
            yield Remark(remedy.title, f"{cost(plan, remedy)}.{why}")
