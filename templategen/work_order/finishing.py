"""What is said of side edges, corners, weights and a lining."""

from __future__ import annotations

from collections.abc import Iterator

from ..lengths import NOTHING
from ..lengths.counting import plural
from ..planning import Plan
from ..planning.extras import lining_shorter
from ..planning.sides import folded_twice
from ..planning.widths import kept_edge
from ..templates.said import plain
from .pictures.finishing import lined, weighted
from .pictures.sides import hemmed, mitred, narrowed
from .step import Step


def side_steps(plan: Plan) -> Iterator[Step]:
    """Cutting a panel narrower, or in several, before its hem is turned; nothing where it stays as it is."""
    sides = plan.spec.sides
    if "side_cut" not in plan.figures:
        return
    cut, made = plain(plan, plan.figures["side_cut"].value), plain(plan, plan.width)
    down = f" down to {plain(plan, plan.mitres[0].up_the_side)} above the raw edge" if plan.mitres else ""
    panel = "every panel" if sides.split > 1 else "the panel"
    hems = (
        f"{_top_opened(plan)}Turn {plain(plan, sides.turn_under)} under, then a side hem {plain(plan, sides.hem)} "
        f"deep, on {'every' if sides.split > 1 else 'the'} new edge, and sew it{down}: {panel} must come to {made}."
        f"{_top_closed(plan)}"
    )
    if sides.split > 1:
        yield Step(
            "Split",
            f"Cut each panel in {sides.split}, from top to bottom along the grain: the first cut {cut} from a side "
            "edge, each other so that every inner piece is "
            f"{plain(plan, plan.width + 2 * plan.figures['side_allowance'].value)} wide.",
            "bought",
            view=narrowed(plan),
        )
        yield Step("Side hems", hems, view=hemmed(plan))
        return
    yield Step(
        "Narrow",
        f"Cut the panel {cut} wide, along the grain, measured from its {kept_edge(plan.spec)} edge as seen from the "
        f"front, which stays.",
        view=narrowed(plan),
    )
    yield Step("Side hems", hems, view=hemmed(plan))


def _top_opened(plan: Plan) -> str:
    """The doubled top is opened first: a side hem turned over it would close the ends of a casing."""
    if not plan.top.doubled:
        return ""
    allowance = plain(plan, 2 * plan.figures["side_allowance"].value)
    edge = "every" if plan.spec.sides.split > 1 else "the"
    return f"Unpick the doubled top up to {allowance} from {edge} new edge and open it: the side hem runs to its end. "


def _top_closed(plan: Plan) -> str:
    """What was opened is stitched again, unless the whole top is folded anew."""
    return " Fold the top back and stitch it as it was." if plan.top.doubled and not plan.top.refolded else ""


def corner_steps(plan: Plan) -> Iterator[Step]:
    """Mitred corners and weights, once the hem is pressed and pinned and before it is stitched."""
    if plan.mitres:
        seams = " or ".join(dict.fromkeys(plain(plan, mitre.seam) for mitre in plan.mitres))
        up = plain(plan, plan.mitres[-1].up_the_side)
        away = "half an inch" if plan.tape.units == "inch" else "a centimetre"
        cut = f"Cut the corner away, {away} from its fold, only when it lies flat."
        if folded_twice(plan.shrinkage):
            cut = "Cut nothing away: the hem is let down later."
        beside_old = " Beside an old side hem use the card that says so." if _two_kinds(plan) else ""
        yield Step(
            "Corners",
            f"At each corner take the pins out, open both pressed hems, and unpick an old side hem {up} up "
            "from the raw edge. Lay the mitre card for that corner on the creases, mark its dashed line, fold the "
            f"corner in along it, press, turn both hems again and pin them: their edges meet in a seam "
            f"{seams} long.{beside_old} {cut}",
            view=mitred(plan, plan.mitres[0]),
            uses=("mitre card",),
        )
    if "weights" in plan.counts:
        wide, long = (plain(plan, plan.figures[key].value) for key in ("weight_pocket", "weight_pocket_length"))
        between = f" and the others {plain(plan, plan.figures['weight_pitch'].value)} from centre to centre,"
        yield Step(
            "Weights",
            f"Sew {plural(plan.counts['weights'], 'weight')} into pockets cut {wide} wide and {long} "
            "long and folded in half; hang one inside the hem at each corner"
            f"{between if plan.counts['weights'] > 2 else ','} sewn to the hem and not to the front.",
            view=weighted(plan),
        )


def _two_kinds(plan: Plan) -> bool:
    """Whether panels that are split have corners of two kinds."""
    return len(plan.mitres) > 1 and plan.spec.sides.split > 1


def lining_steps(plan: Plan) -> Iterator[Step]:
    """Cutting and hemming a lining; nothing without one."""
    lining = plan.spec.lining
    shorter = lining_shorter(plan.spec, plan.drop)
    if shorter is None:
        return
    length = plan.figures.get("lining_cut_length")
    cut = f"{plain(plan, abs(shorter))} {'shorter' if shorter >= NOTHING else 'longer'} than the panel"
    cut = f"{plain(plan, length.value)} long" if length else cut
    yield Step(
        "Lining",
        f"Cut the lining {cut} and {plain(plan, plan.figures['lining_width'].value)} wide when hemmed at its sides. "
        f"Turn up a hem of {plain(plan, lining.hem)} with {plain(plan, lining.turn_under)} turned under; its edge "
        f"must hang {plain(plan, plan.figures['lining_above'].value)} above the panel's. Sew it in under the heading.",
        view=lined(plan),
    )
