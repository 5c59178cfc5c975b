"""An adjustment told as text."""

from __future__ import annotations

from collections.abc import Iterator
from itertools import chain

from ...lengths import NOTHING, Length
from ..choices import MADE_WITHIN
from ..plan import Plan
from ..telling import WIDTH, columns, wrapped
from ..wording import near, say
from .adjustment import Adjustment, Move, Remedy


def tell_adjustment(plan: Plan, adjustment: Adjustment) -> str:
    """The text of ``templategen adjust``, at most 96 columns wide, ending in a line feed."""
    blocks = [
        _title(plan),
        ["How it hangs, as seen from the front", *_read(plan, adjustment)],
        *(wrapped(text, WIDTH) for text in verdict(plan, adjustment)),
        *(_remedy(plan, remedy) for remedy in adjustment.remedies),
    ]
    return "\n\n".join("\n".join(block) for block in blocks if block) + "\n"


def _title(plan: Plan) -> list[str]:
    lines = wrapped(f"{plan.spec.title}: after hanging", WIDTH)
    return [*lines, "=" * max(len(line) for line in lines)]


def _read(plan: Plan, adjustment: Adjustment) -> list[str]:
    """From the left as seen from the front, as one stands before it."""
    places = reversed(adjustment.hung.places)
    return [f"  {place.said}: {off(plan, place.low)}" for place in places]


def off(plan: Plan, low: Length) -> str:
    """"1/4 in low"."""
    return f"{say(plan.tape, abs(low))} {'low' if low > NOTHING else 'high'}" if low else "good"


def verdict(plan: Plan, adjustment: Adjustment) -> Iterator[str]:
    """Whether anything has to be done, and can be."""
    tape, worst = plan.tape, adjustment.hung.worst
    if not worst:
        yield "It hangs as it should. Nothing is to be done; stitch the hem if it is only pinned."
        return
    if adjustment.within:
        yield (
            f"It is {near(tape, worst)} off at most, and panels are made within {near(tape, MADE_WITHIN)} "
            "(UFGS-12491N): it may stay as it is. If it is to be put right all the same:"
        )
    if adjustment.taken is None:
        yield (
            "None of these ways can do all of it. Measure the drop again, and hold the rod against a level: what hangs "
            "this far off was measured, cut or hung wrong, and is not put right by a fold."
        )


def cost(plan: Plan, remedy: Remedy) -> str:
    """What a remedy takes, and what it leaves: "Nothing to unpick, 10 1/8 in to sew, then it hangs as it should"."""
    tape = plan.tape
    unpick = f"{near(tape, remedy.unpicked)} of stitching to unpick" if remedy.unpicked else "Nothing to unpick"
    sew = f"{near(tape, remedy.sewn)} to sew" if remedy.sewn else "nothing more to sew"
    said = f"{unpick}, {sew}, then {_left(plan, remedy.left)}"
    return said[0].upper() + said[1:]


def _remedy(plan: Plan, remedy: Remedy) -> list[str]:
    lines = [remedy.title, *wrapped(f"  {cost(plan, remedy)}.", WIDTH, "  ")]
    if remedy.short:
        lines += wrapped(f"  It falls short: {remedy.short}.", WIDTH, "  ")
    lines += chain.from_iterable(wrapped(f"  {sentence}", WIDTH, "  ") for sentence in remedy.how)
    if remedy.at_heading:
        entries = [f"{place_of(plan, move)}: {moved(plan, move)}" for move in remedy.at_heading]
        lines.append("  At the heading, from the left end, the back towards you, how far from where it was:")
        lines += _deeper(entries)
    if remedy.at_hem:
        entries = [f"at {say(plan.tape, move.at)}: {folded(plan, move)}" for move in remedy.at_hem]
        lines.append("  Along the hem, from the left end, the back towards you, the new fold from the old:")
        lines += _deeper(entries)
    return lines


def _deeper(entries: list[str]) -> list[str]:
    return [f"  {line}" for line in columns(entries)]


def _left(plan: Plan, left: Length) -> str:
    if not left:
        return "it hangs as it should"
    step = plan.tape.step
    return f"within {near(plan.tape, step)}" if left <= step else f"{near(plan.tape, left)} off at most"


def place_of(plan: Plan, move: Move) -> str:
    """"loop 3"; "at 27 in" for a heading without marks."""
    return f"{plan.heading.thing} {move.label}" if plan.heading.marks else f"at {say(plan.tape, move.at)}"


def moved(plan: Plan, move: Move) -> str:
    """"1/4 in below", where a new row lies from the old."""
    return f"{say(plan.tape, abs(move.distance))} {'below' if move.distance > NOTHING else 'above'}"


def folded(plan: Plan, move: Move) -> str:
    """"3/8 in above", where the new fold lies."""
    if not move.distance:
        return "as it is"
    return f"{say(plan.tape, abs(move.distance))} {'above' if move.distance > NOTHING else 'below'}"
