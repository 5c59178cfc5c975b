"""The cloth along the top: whether there is enough of it doubled for the new heading, or it is folded anew."""

from __future__ import annotations

from ..lengths import NOTHING
from ..spec import Spec
from .figures import Figure
from .headings import HEADINGS
from .plan import TopPlan
from .wording import say, term


def plan_top(spec: Spec) -> TopPlan:
    """What becomes of the top.

    A heading that needs no more doubled cloth than there is leaves the top as
    it is. One that needs more has the top let down, so that the cloth on the
    back counts too, and folded over again: of all the cloth above the new top
    edge's place, needed + turn goes to the back. So the new top edge lies
    needed + turn - (doubled + old turn) below the old one. Where something is
    cut off the top first, nothing doubled counts.
    """
    heading = spec.heading
    kind = HEADINGS[heading.style]
    cut, there = heading.top_cut, spec.panel.header + spec.panel.casing
    needed = kind.doubled(spec, heading)
    if cut == NOTHING and needed <= there:
        return TopPlan(doubled=there, needed=needed, refolded=False, lowered=NOTHING)
    if cut == NOTHING:
        lowered = needed + heading.top_turn - there - (spec.panel.top_turn if there else NOTHING)
        return TopPlan(doubled=there, needed=needed, refolded=True, lowered=lowered)
    # Both layers are cut through: the top is a raw edge, and what is left of the back layer is cut away.
    lowered = cut + (needed + heading.top_turn if needed else NOTHING)
    return TopPlan(doubled=NOTHING, needed=needed, refolded=True, lowered=lowered)


def top_figures(spec: Spec, top: TopPlan) -> tuple[Figure, ...]:
    """The doubled cloth, where it is not all that is there already; the new top edge, where it is not the old one."""
    tape, heading, panel = spec.tape, spec.heading, spec.panel
    there = panel.header + panel.casing
    needs = Figure(
        "top_doubled",
        "doubled along the top",
        top.needed,
        f"what this heading needs; {say(tape, top.doubled)} is there",
    )
    if not top.refolded:
        return (needs,) if top.needed not in (there, NOTHING) else ()
    fold = f"doubled for the heading {say(tape, top.needed)} {term(tape, 1, 'turned under', heading.top_turn)}"
    if heading.top_cut:
        working = f"cut off the top {say(tape, heading.top_cut)} + {fold}"
    else:
        working = f"{fold} {term(tape, -1, 'doubled now', there)} {term(tape, -1, 'its turn-under', panel.top_turn)}"
    return (needs, Figure("top_lowered", "new top edge", top.lowered, f"below the old one: {working}"))
