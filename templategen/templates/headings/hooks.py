"""What is said of hooks."""

from __future__ import annotations

from collections.abc import Iterator

from ...planning import Plan
from ...planning.headings.points import PointPlan
from ...spec.headings import Hooks
from ..choices import Choices
from ..said import Step, plain
from .face import HeadingWords
from .height_card import held_to
from .marking import marking


def made(plan: Plan, hooks: PointPlan) -> str:
    """How many there are."""
    return f"with {hooks.count} hooks on its back"


def strip(plan: Plan, hooks: PointPlan) -> tuple[str, ...]:
    """How far down they are set."""
    return (f"Tops of the hooks: {plain(plan, hooks.set_below)} below the panel's top edge.",)


def steps(plan: Plan, hooks: PointPlan, choices: Choices) -> Iterator[Step]:
    """Marks along, heights by the card, hooks."""
    assert isinstance(hooks.given, Hooks), "only hooks are called hooks"
    yield marking(plan, choices, "the back of the panel"), True
    below = plain(plan, hooks.set_below)
    yield (
        "At each mark lay the hook height card on the panel, its ledge level with the top edge, and mark at its line "
        f"“hooks”: {below} below the top edge.",
        True,
    ) if hooks.set_below else ("The hooks are set level with the top edge.", True)
    if hooks.given.fixed == "pinned on":
        yield (
            "Push the pin of a hook up into the doubled cloth at each mark, through the back layer only, until the top "
            "of the hook, where it hangs, is level with the mark.",
            True,
        )
    else:
        yield (
            "Sew a hook to the back at each mark, the top of the hook, where it hangs, level with the mark: by hand, "
            "with doubled button thread, through the back layers only, at the top and at the foot of its shank.",
            True,
        )


HOOKS = HeadingWords(name="hooks", made=made, hung="its hooks", held_to=held_to, steps=steps, strip=strip)
