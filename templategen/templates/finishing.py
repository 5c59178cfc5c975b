"""What is said of side edges, corners, weights and a lining."""

from __future__ import annotations

from collections.abc import Iterator

from ..lengths import NOTHING
from ..lengths.counting import plural
from ..planning import Plan
from .said import Step, plain


def side_steps(plan: Plan) -> Iterator[Step]:
    """Cutting a panel narrower, or in several, before its hem is turned; nothing where it stays as it is."""
    sides = plan.spec.sides
    if "side_cut" not in plan.figures:
        return
    cut, made = plain(plan, plan.figures["side_cut"].value), plain(plan, plan.width)
    hems = (
        f"Turn {plain(plan, sides.turn_under)} under, then a side hem {plain(plan, sides.hem)} deep, on every new "
        f"edge, and sew it: the panel must come to {made}."
    )
    if sides.split > 1:
        yield (
            f"Split each panel in {sides.split}, from top to bottom along the grain: the first cut {cut} from a side "
            "edge, each other so that every inner piece is "
            f"{plain(plan, plan.width + 2 * plan.figures['side_allowance'].value)} wide. {hems}",
            True,
        )
        return
    yield f"Cut the panel {cut} wide, measured from the side edge that stays, along the grain. {hems}", True


def top_steps(plan: Plan) -> Iterator[Step]:
    """Cutting the top off or letting it down, and folding it anew; nothing where it stays as it is."""
    top, cut, turn = plan.top, plan.spec.heading.top_cut, plan.spec.heading.top_turn
    if not top.refolded:
        return
    said = []
    if cut:
        said.append(f"Cut {plain(plan, cut)} off the top, straight across and through all layers.")
        left = cut < plan.spec.panel.header + plan.spec.panel.casing
        said += ["Take away what is left of the back layer."] if left else []
    elif top.doubled:
        said.append("Unpick the rows of stitching along the top and press it flat.")
    if not top.needed:
        yield " ".join([*said, "Neaten the raw edge with a close zigzag: it is the new top edge."]), True
        return
    edge = "the raw edge"
    if turn:
        said.append(
            "Lay the heading card's base edge on the raw edge, mark at top fold-to line 1, bring the edge to the mark "
            f"and press {plain(plan, turn)} under."
        )
        edge = "that fold"
    said.append(
        f"Lay the heading card's base edge on {edge}, mark at top fold-to line 2, bring {edge} to the mark and press: "
        f"the top is doubled {plain(plan, top.needed)} deep."
    )
    if top.lowered:
        where = "below" if top.lowered > NOTHING else "above"
        said.append(f"The new top edge lies {plain(plan, abs(top.lowered))} {where} the old one.")
    yield " ".join(said), True


def corner_steps(plan: Plan) -> Iterator[Step]:
    """Mitred corners and weights, once the hem is pressed and before it is pinned."""
    if plan.mitre is not None:
        yield (
            "Corners: open both pressed hems at each corner. Lay the mitre card for that corner on the creases, mark "
            "its dashed line, fold the corner in along it, press, and turn both hems again: their edges meet in a seam "
            f"{plain(plan, plan.mitre.seam)} long. Cut the corner away, half an inch from its fold, only when it lies "
            "flat.",
            True,
        )
    if "weights" in plan.counts:
        size = plain(plan, plan.figures["weight_pocket"].value)
        yield (
            f"Weights: sew {plural(plan.counts['weights'], 'weight')} into pockets of {size} of cloth, folded in "
            "half; hang one inside the hem at each corner and the others "
            f"{plain(plan, plan.figures['weight_pitch'].value)} apart, sewn to the hem and not to the front.",
            True,
        )


def lining_steps(plan: Plan) -> Iterator[Step]:
    """Cutting and hemming a lining; nothing without one."""
    lining = plan.spec.lining
    if lining.cut_shorter is None:
        return
    length = plan.figures.get("lining_cut_length")
    cut = f"{plain(plan, length.value)} long" if length else f"{plain(plan, lining.cut_shorter)} shorter than the panel"
    yield (
        f"Lining: cut it {cut} and {plain(plan, plan.figures['lining_width'].value)} wide when hemmed at its sides. "
        f"Turn up a hem of {plain(plan, lining.hem)} with {plain(plan, lining.turn_under)} turned under; its edge "
        f"must hang {plain(plan, plan.figures['lining_above'].value)} above the panel's. Sew it in under the heading.",
        True,
    )
