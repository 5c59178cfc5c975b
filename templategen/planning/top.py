"""The cloth along the top: whether there is enough of it doubled for the new heading, or it is folded anew."""

from __future__ import annotations

from ..lengths import NOTHING, Length
from ..spec import Spec
from .doubled import doubled_now, kept, lowered, rows_left, turned_now
from .figures import Figure, Notice
from .headings import HEADINGS
from .plan import TopPlan
from .wording import at_least, near, say, term


def plan_top(spec: Spec) -> TopPlan:
    """What becomes of the top.

    A heading that needs no more doubled cloth than there is leaves the top as
    it is. One that needs more has the top let down, so that the cloth on the
    back counts too, and folded over again: ``doubled`` has the geometry.
    """
    heading = spec.heading
    needed = HEADINGS[heading.style].doubled(spec, heading)
    stays = kept(spec, heading, needed)
    return TopPlan(
        # Where something is cut off, the top is a raw edge, and what is left of the back layer is taken away.
        doubled=NOTHING if heading.top_cut else doubled_now(spec),
        needed=needed,
        refolded=not stays,
        lowered=lowered(spec, heading, needed),
    )


def top_figures(spec: Spec, top: TopPlan) -> tuple[Figure, ...]:
    """The new top edge, where it is not the old one."""
    if not top.refolded:
        return ()
    return (Figure("top_lowered", "new top edge", top.lowered, _lowered_working(spec, top)),)


def _lowered_working(spec: Spec, top: TopPlan) -> str:
    tape, heading = spec.tape, spec.heading
    if not top.needed:
        return f"below the old one: cut off the top {say(tape, heading.top_cut)}"
    fold = f"doubled for the heading {say(tape, top.needed)} {term(tape, 1, 'turned under', heading.top_turn)}"
    if heading.top_cut:
        return f"below the old one: cut off the top {say(tape, heading.top_cut)} + {fold}"
    return (
        f"below the old one: {fold} {term(tape, -1, 'doubled now', doubled_now(spec))} "
        f"{term(tape, -1, 'its turn-under', turned_now(spec))}"
    )


def fold_figures(spec: Spec, top: TopPlan) -> tuple[Figure, ...]:
    """How the top is folded anew, by the fold law: a line twice the depth from the edge, and the edge brought to it."""
    if not top.refolded or not top.needed:
        return ()
    tape, turn = spec.tape, spec.heading.top_turn
    found = [Figure("top_doubled", "top, doubled", top.needed, "what the new heading needs")]
    edge = "the raw edge"
    if turn:
        working = f"2 × turned under {say(tape, turn)}: a line this far from the raw edge; bring the edge to it"
        found.append(Figure("top_fold_to_turn", "first fold to", 2 * turn, working))
        edge = "that fold"
    working = f"2 × doubled {say(tape, top.needed)}: a line this far from {edge}; bring it to the line"
    found.append(Figure("top_fold_to_depth", "second fold to" if turn else "fold to", 2 * top.needed, working))
    return tuple(found)


def top_notices(spec: Spec, top: TopPlan) -> list[Notice]:
    """What cutting and folding the top does to the panel, and what of the old heading is left to be seen."""
    return [*_cut_notices(spec, top), *_refolding(spec, top), *_openings(spec, top)]


def _cut_notices(spec: Spec, top: TopPlan) -> list[Notice]:
    tape, cut, there = spec.tape, spec.heading.top_cut, doubled_now(spec)
    found = []
    if not cut:
        return []
    if not top.needed:
        text = (
            "The panel's top is a raw edge once it is cut, and the new heading folds none of it: it will fray. Bind "
            "it, zigzag it closely, or choose a heading that folds the top over."
        )
        found.append(Notice("top_raw", "warning", text))
    if cut < there:
        text = (
            f"The cut, {near(tape, cut)} below the top edge, goes through both layers of the old heading, which is "
            f"doubled {near(tape, there)} deep. Unpick its stitching; what is left of the back layer comes away. At "
            f"{at_least(tape, there)} or more the cut is clear of it."
        )
        found.append(Notice("top_cut_through", "note", text))
    reach = max(there, _opened(spec))
    if cut > reach:
        text = (
            f"{near(tape, cut)} is cut off the top, and the old heading reaches {near(tape, reach)} down: "
            f"{near(tape, cut - reach)} of sound cloth goes with it. Cut {near(tape, reach)} where length is short."
        )
        found.append(Notice("top_cut_deep", "note", text))
    return found


def _refolding(spec: Spec, top: TopPlan) -> list[Notice]:
    """That the top is folded anew, and the holes of its old stitching that come on the front."""
    if not top.refolded:
        return []
    tape, rows = spec.tape, rows_left(spec, spec.heading, top.needed)
    found = []
    if top.needed and not spec.heading.top_cut:
        way = "below" if top.lowered >= NOTHING else "above"
        there = f"{near(tape, top.doubled)} is doubled now" if top.doubled else "none is doubled now"
        keeps = " A heading that needs no more than is doubled now leaves it as it is." if top.doubled else ""
        text = (
            f"The top is folded anew: the new heading needs {near(tape, top.needed)} of doubled cloth, and {there}. "
            f"The new top edge comes {near(tape, abs(top.lowered))} {way} the old one, and the plan allows for it."
            f"{keeps}"
        )
        found.append(Notice("top_refolded", "note", text))
    if rows:
        places = " and ".join(near(tape, row) for row in rows)
        text = (
            f"The old stitching of the top leaves its holes on the front, {places} below the new top edge. Try on an "
            "inch of it whether they close when the cloth is damped and pressed; if they stay, choose a heading that "
            f"covers them, or cut the top off {at_least(tape, max(rows) + top.lowered)} down."
        )
        found.append(Notice("old_holes_show", "note", text))
    return found


def _opened(spec: Spec) -> Length:
    """How far down the old heading has left openings."""
    old = spec.panel.heading
    return HEADINGS[old.style].openings(spec, old)


def _openings(spec: Spec, top: TopPlan) -> list[Notice]:
    """Openings of the old heading that are not cut off."""
    tape, opened, cut = spec.tape, _opened(spec), spec.heading.top_cut
    if opened <= cut:
        return []
    where = "stay on the front"
    if top.refolded and opened <= top.lowered:
        where = f"come in the doubled cloth at the back, down to {near(tape, top.lowered - cut)} below the new top edge"
    elif top.refolded:
        where = f"come on the front, down to {near(tape, opened - top.lowered)} below the new top edge"
    text = (
        f"The openings of the old heading, {spec.panel.heading.style}, reach {near(tape, opened)} below the old top "
        f"edge and {where}. Write {at_least(tape, opened)} or more as heading.top_cut to be rid of them."
    )
    return [Notice("old_openings_stay", "warning", text)]
