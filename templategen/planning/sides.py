"""Side edges: where a panel is cut to be narrower or in two, its new side hems, and the mitred corner.

The mitre: with the finished corner as origin, the bottom hem H deep and the
side hem S deep, the cloth is folded once along the line through the corner in
the direction (S, -H). Turned up along y = 0 and in along x = 0, that line comes
to lie on the seam from the corner to (S, H), where the hems' inner edges meet;
the turn-unders T and U only shift where it meets the raw edges, which are
H + T below and S + U beside the finished edges. So it runs H (S + U) / S + H + T
up the side's raw edge from the raw corner, and S (H + T) / H + S + U along the
bottom's. With T = H and U = S that is 4 H and 4 S, the handbook's marks.
"""

from __future__ import annotations

from ..lengths import NOTHING, Length
from ..spec import Spec
from .choices import LEAST_SPLIT
from .figures import Figure, Notice
from .hanging import slant
from .plan import DropPlan, HemPlan, MitrePlan, ShrinkagePlan
from .widths import cuts_sides, kept_edge, made_width, side_allowance, side_offcut
from .wording import near, say, term


def plan_mitres(spec: Spec, hem: HemPlan) -> tuple[MitrePlan, ...]:
    """The folds; none where no mitre is asked for, or the hem is sewn on and has no corner to fold.

    One does for every corner, unless a panel is cut and the side hem of the edge that stays is not folded alike.
    """
    sides = spec.sides
    if not sides.mitre or hem.allowance < hem.depth:
        return ()
    new = _mitre(hem, sides.hem, side_allowance(spec), False)
    if not cuts_sides(spec) or sides.old_hem is None or sides.old_turn_under is None:
        return (new,)
    old = _mitre(hem, sides.old_hem, sides.old_hem + sides.old_turn_under, True)
    return (new,) if (old.side, old.side_allowance) == (new.side, new.side_allowance) else (new, old)


def _mitre(hem: HemPlan, side: Length, beside: Length, old: bool) -> MitrePlan:
    return MitrePlan(
        hem=hem.depth,
        side=side,
        hem_allowance=hem.allowance,
        side_allowance=beside,
        up_the_side=hem.depth * (beside / side) + hem.allowance,
        along_the_bottom=side * (hem.allowance / hem.depth) + beside,
        seam=slant(hem.depth, side),
        beside_old=old,
    )


def side_figures(spec: Spec, mitres: tuple[MitrePlan, ...]) -> tuple[Figure, ...]:
    """Cuts, side hems, mitres; none where nothing is done to the sides."""
    return (*_cut_figures(spec), *(figure for mitre in mitres for figure in _mitre_figures(spec, mitre)))


def _cut_figures(spec: Spec) -> tuple[Figure, ...]:
    tape, sides, width = spec.tape, spec.sides, made_width(spec)
    if not cuts_sides(spec):
        return ()
    allowance = side_allowance(spec)
    hem = Figure(
        "side_allowance",
        "side hem allowance",
        allowance,
        f"side hem {say(tape, sides.hem)} {term(tape, 1, 'turn-under', sides.turn_under)}",
    )
    if sides.split > 1:
        cuts = sides.split - 1
        made = Figure(
            "made_width",
            "panel, made",
            width,
            f"(panel {say(tape, spec.panel.width)} − {2 * cuts} × side hem allowance {say(tape, allowance)}) ÷ "
            f"{sides.split}",
        )
        cut = Figure(
            "side_cut",
            "first side cut",
            width + allowance,
            f"from the side edge: made {say(tape, width)} {term(tape, 1, 'allowance', allowance)}",
        )
        return made, hem, cut
    return (
        Figure("made_width", "panel, made", width, "as given"),
        hem,
        Figure(
            "side_cut",
            "side cut",
            width + allowance,
            f"from the {kept_edge(spec)} edge, as seen from the front, which stays: made {say(tape, width)} "
            f"{term(tape, 1, 'allowance', allowance)}",
        ),
        Figure(
            "side_offcut",
            "strip cut off",
            side_offcut(spec),
            f"panel {say(tape, spec.panel.width)} − cut {say(tape, width + allowance)}, its old side hem with it",
        ),
    )


def _mitre_figures(spec: Spec, mitre: MitrePlan) -> tuple[Figure, ...]:
    tape = spec.tape
    key, label = ("old_mitre", "old side's mitre") if mitre.beside_old else ("mitre", "mitre")
    return (
        Figure(
            f"{key}_up",
            f"{label}, up" if mitre.beside_old else "mitre, up the side",
            mitre.up_the_side,
            f"from the raw corner: hem {say(tape, mitre.hem)} × side allowance {say(tape, mitre.side_allowance)} ÷ "
            f"side hem {say(tape, mitre.side)} {term(tape, 1, 'hem allowance', mitre.hem_allowance)}",
        ),
        Figure(
            f"{key}_along",
            f"{label}, along" if mitre.beside_old else "mitre, along bottom",
            mitre.along_the_bottom,
            f"from the raw corner: side hem {say(tape, mitre.side)} × hem allowance {say(tape, mitre.hem_allowance)} ÷ "
            f"hem {say(tape, mitre.hem)} {term(tape, 1, 'side allowance', mitre.side_allowance)}",
        ),
        Figure(
            f"{key}_seam",
            f"{label}, finished" if mitre.beside_old else "finished mitre",
            mitre.seam,
            "from the corner to where the hems' inner edges meet",
        ),
    )


def side_notices(spec: Spec, hem: HemPlan, drop: DropPlan, shrinkage: ShrinkagePlan | None) -> list[Notice]:
    """Panels too narrow after a split, or no longer alike."""
    tape, sides, width = spec.tape, spec.sides, made_width(spec)
    found = []
    if width < LEAST_SPLIT:
        made = f"{near(tape, width)} wide" if width > NOTHING else "nothing"
        text = (
            f"Split in {sides.split}, each panel comes to {made}: less than {near(tape, LEAST_SPLIT)} is no panel. "
            "Split it in fewer, or take narrower side hems."
        )
        found.append(Notice("split_too_narrow", "stop", text))
    if sides.split > 1 and not drop.level:
        text = (
            "The cut line is not level, so the panels that come of one are not alike: each keeps its own part of it. "
            "Number them from left to right as seen from the front, and hang them so."
        )
        found.append(Notice("split_not_alike", "warning", text))
    return [*found, *_mitre_notices(spec, hem, shrinkage)]


def _mitre_notices(spec: Spec, hem: HemPlan, shrinkage: ShrinkagePlan | None) -> list[Notice]:
    """A mitre that cannot be, one that is not at 45 degrees, and one that is folded twice."""
    tape, found = spec.tape, []
    mitres = plan_mitres(spec, hem)
    if spec.sides.mitre and not mitres:
        text = "A facing or a border has no corner to fold to a mitre: its ends are turned in square."
        return [Notice("no_mitre", "note", text)]
    if uneven := next((mitre for mitre in mitres if mitre.side != mitre.hem), None):
        text = (
            f"The mitre is not at 45 degrees: the hem is {near(tape, hem.depth)} deep and the side hem "
            f"{near(tape, uneven.side)}. A fold at 45 degrees would not meet; use the mitre card."
        )
        found.append(Notice("mitre_unequal", "note", text))
    if mitres and folded_twice(shrinkage):
        text = (
            "The hem carries cloth for shrinkage, and its corners are folded anew when it is let down: leave the cloth "
            "of the corners in, and make the mitre card again with fabric.washed = true and what is measured then."
        )
        found.append(Notice("mitre_folded_twice", "warning", text))
    return found


def folded_twice(shrinkage: ShrinkagePlan | None) -> bool:
    """Whether the hem is let down after washing and folded again, so that nothing of it may be cut away."""
    return shrinkage is not None and shrinkage.carried_in == "hem"
