"""What is said of hooks."""

from __future__ import annotations

from collections.abc import Iterator

from ...planning import Plan
from ...planning.headings.points import PointPlan
from ...spec.headings import Hooks
from ...templates import Choices
from ...templates.said import plain
from ..pictures import points as pictures
from ..step import Step
from .face import HeadingWork
from .height_card import card_of, held_to
from .marking import marking
from .trying import trying


def made(plan: Plan, hooks: PointPlan) -> str:
    """How many there are."""
    return f"with {hooks.count} hooks on its back"


def steps(plan: Plan, hooks: PointPlan, choices: Choices) -> Iterator[Step]:
    """Marks along, heights by the card, hooks: pinned on, or tried and sewn."""
    assert isinstance(hooks.given, Hooks), "only hooks are called hooks"
    yield marking(plan, choices, "the back of the panel")
    below = plain(plan, hooks.set_below)
    if hooks.set_below:
        yield Step(
            "Heights",
            "At each mark lay the hook height card on the panel, its ledge level with the top edge, and mark at its "
            f"line “hooks”: {below} below the top edge.",
            view=pictures.heights(plan, hooks),
            uses=card_of(hooks),
        )
    else:
        yield Step("Heights", "The hooks are set level with the top edge.")
    if hooks.given.fixed == "pinned on":
        yield Step(
            "Fasten",
            "Push the pin of a hook up into the doubled cloth at each mark, through the back layer only, until the top "
            "of the hook, where it hangs, is level with the mark.",
            view=pictures.hung(plan, hooks),
        )
        return
    yield trying(plan, "hold every hook with two stitches, its top level with the mark")
    yield Step(
        "Fasten",
        "Sew a hook to the back at each mark, the top of the hook, where it hangs, level with the mark: by hand, "
        "with doubled button thread, through the back layers only, at the top and at the foot of its shank.",
        view=pictures.hung(plan, hooks),
    )


HOOKS = HeadingWork(name="hooks", made=made, hung="its hooks", steps=steps, held_to=held_to, holding=card_of)
