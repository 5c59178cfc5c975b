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

from ..lengths import NOTHING
from ..spec import Spec
from .choices import LEAST_SPLIT
from .figures import Figure, Notice
from .hanging import slant
from .plan import HemPlan, MitrePlan
from .widths import made_width, side_allowance, side_offcut
from .wording import near, say, term


def plan_mitre(spec: Spec, hem: HemPlan) -> MitrePlan | None:
    """The fold; None where no mitre is asked for, or the hem is sewn on and has no corner to fold."""
    if not spec.sides.mitre or hem.allowance < hem.depth:
        return None
    side, beside = spec.sides.hem, side_allowance(spec)
    return MitrePlan(
        hem=hem.depth,
        side=side,
        hem_allowance=hem.allowance,
        side_allowance=beside,
        up_the_side=hem.depth * (beside / side) + hem.allowance,
        along_the_bottom=side * (hem.allowance / hem.depth) + beside,
        seam=slant(hem.depth, side),
    )


def side_figures(spec: Spec, mitre: MitrePlan | None) -> tuple[Figure, ...]:
    """Cuts, side hems, mitre; none where nothing is done to the sides."""
    return (*_cut_figures(spec), *(_mitre_figures(spec, mitre) if mitre else ()))


def _cut_figures(spec: Spec) -> tuple[Figure, ...]:
    tape, sides, width = spec.tape, spec.sides, made_width(spec)
    if sides.split == 1 and sides.finished_width is None:
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
            f"from the side edge that stays: made {say(tape, width)} {term(tape, 1, 'allowance', allowance)}",
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
    return (
        Figure(
            "mitre_up",
            "mitre, up the side",
            mitre.up_the_side,
            f"from the raw corner: hem {say(tape, mitre.hem)} × side allowance {say(tape, mitre.side_allowance)} ÷ "
            f"side hem {say(tape, mitre.side)} {term(tape, 1, 'hem allowance', mitre.hem_allowance)}",
        ),
        Figure(
            "mitre_along",
            "mitre, along bottom",
            mitre.along_the_bottom,
            f"from the raw corner: side hem {say(tape, mitre.side)} × hem allowance {say(tape, mitre.hem_allowance)} ÷ "
            f"hem {say(tape, mitre.hem)} {term(tape, 1, 'side allowance', mitre.side_allowance)}",
        ),
        Figure("mitre_seam", "finished mitre", mitre.seam, "from the corner to where the hems' inner edges meet"),
    )


def side_notices(spec: Spec, hem: HemPlan) -> list[Notice]:
    """Panels too narrow after a split, a mitre that cannot be, and one that is not at 45 degrees."""
    tape, sides, width = spec.tape, spec.sides, made_width(spec)
    found = []
    if width < LEAST_SPLIT:
        made = f"{near(tape, width)} wide" if width > NOTHING else "nothing"
        text = (
            f"Split in {sides.split}, each panel comes to {made}: less than {near(tape, LEAST_SPLIT)} is no panel. "
            "Split it in fewer, or take narrower side hems."
        )
        found.append(Notice("split_too_narrow", "stop", text))
    if sides.mitre and plan_mitre(spec, hem) is None:
        text = "A facing or a border has no corner to fold to a mitre: its ends are turned in square."
        found.append(Notice("no_mitre", "note", text))
    elif sides.mitre and sides.hem != hem.depth:
        text = (
            f"The mitre is not at 45 degrees: the hem is {near(tape, hem.depth)} deep and the side hem "
            f"{near(tape, sides.hem)}. A fold at 45 degrees would not meet; use the mitre card."
        )
        found.append(Notice("mitre_unequal", "note", text))
    return found
