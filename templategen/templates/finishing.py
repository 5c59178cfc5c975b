"""What is said of side edges, corners, weights and a lining."""

from __future__ import annotations

from collections.abc import Iterator

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
