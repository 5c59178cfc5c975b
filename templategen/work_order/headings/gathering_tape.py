"""What is said of a gathering tape."""

from __future__ import annotations

from collections.abc import Iterator

from ...lengths.counting import plural
from ...planning import Plan
from ...planning.headings.gathering_tape import TapePlan
from ...templates import Choices
from ...templates.said import plain
from ..pictures import gathering_tape as pictures
from ..step import Step
from .face import HeadingWork
from .marking import marking


def made(plan: Plan, tape: TapePlan) -> str:
    """How far it is drawn up."""
    return f"with a gathering tape that draws it up to {plain(plan, tape.gathered)}"


def steps(plan: Plan, tape: TapePlan, choices: Choices) -> Iterator[Step]:
    """Tape, rows of stitching, divisions, cords, hooks."""
    pulled = tape.given.cord_side
    knotted = "leading" if pulled == "return" else "return"
    yield Step(
        "Cut tape",
        f"Cut {plural(plan.panels, 'piece')} of tape {plain(plan, tape.tape_length)} long. The pockets up, at the end "
        f"for the {knotted} edge draw the cords out at the back of the tape and knot each; at the end for the {pulled} "
        "edge draw them out at the front and leave them free.",
        "once",
        pictures.piece(plan, tape),
    )
    turned = (
        f"Turn {plain(plan, tape.given.tape_turn)} of it in at each end, the knots inside the turn. "
        if tape.given.tape_turn
        else ""
    )
    yield Step(
        "Pin",
        "Lay the tape card's upper edge on the panel's top edge, here and there along it, and mark the tape's upper "
        f"edge. Lay the tape on the marks, {plain(plan, tape.top)} below the top edge, the pockets towards you. "
        f"{turned}Pin it.",
        view=pictures.pinned(plan, tape),
        uses=("tape card",),
    )
    yield Step(
        "Sew",
        "Stitch along the upper edge and along the lower edge, both rows in the same direction so that the cloth does "
        f"not pull askew, and across both ends. At the {pulled} edge no stitch may catch a cord.",
        view=pictures.rows_sewn(plan, tape),
    )
    yield marking(plan, choices, "the tape", "every division")
    yield Step(
        "Gather",
        f"Mark the rod or track where the panel goes in {len(tape.marks) + 1} equal parts, each "
        f"{plain(plan, tape.gathered_division)}. Pull the cords together from the {pulled} edge until the panel is "
        f"{plain(plan, tape.gathered)} wide, and push the gathers along until every division comes to its place. Tie "
        "the cords in a bow and do not cut them: the panel is let out flat to be washed. Tuck them away, with no loop "
        "hanging.",
        view=pictures.gathered(plan, tape),
    )
    yield Step(
        "Hooks",
        f"Put {plural(tape.hooks, 'hook')} in the pockets, one at either end and the others "
        f"{plain(plan, tape.hook_pitch)} apart, all in one row: {plain(plan, tape.hook_set)} below the top edge.",
        view=pictures.hooks(plan, tape),
    )


GATHERING_TAPE = HeadingWork(
    name="gathering tape",
    made=made,
    hung="its hooks",
    steps=steps,
    stage="Gathering tape",
    on_the_rod=pictures.hung,
    holds_the_fold=True,
)
