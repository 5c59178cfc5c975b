"""What a single fold needs: a tape and its two rows, or a web and none."""

from __future__ import annotations

from collections.abc import Iterator

from ....planning import Plan
from ....planning.choices import STRIP_END
from ....planning.hems.single_fold import SingleFoldPlan
from ....planning.wording import say, term
from ..amounts import Seam, Thing, times
from .face import HemNeeds, row


def seams(plan: Plan, hem: SingleFoldPlan) -> Iterator[Seam]:
    """The tape onto the raw edge, and the hem by the tape."""
    if not hem.bonded:
        yield row(plan, "hem tape, sewn on")
        yield row(plan)


def things(plan: Plan, hem: SingleFoldPlan) -> Iterator[Thing]:
    """The tape, a little more at each end to be turned under, or the web."""
    tape, each = plan.tape, plan.width + 2 * STRIP_END
    if hem.bonded:
        yield Thing("bonding web", plan.width * plan.panels, times(tape, plan.panels, plan.width))
        return
    working = f"panel {say(tape, plan.width)} {term(tape, 1, '2 × end turned under', STRIP_END)}"
    yield Thing("hem tape", each * plan.panels, f"{plan.panels} × ({working})" if plan.panels > 1 else working)


SINGLE_FOLD = HemNeeds(name="single fold with tape", seams=seams, things=things)
