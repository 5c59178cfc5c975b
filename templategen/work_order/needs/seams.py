"""Every seam that is sewn for a plan, in the order of the work."""

from __future__ import annotations

from collections.abc import Iterator

from ...lengths import NOTHING, Length
from ...planning import Plan
from ...planning.doubled import doubled_now, old_rows, turned_now
from ...planning.drop import least_cut
from ...planning.plan import MitrePlan
from ...planning.widths import cuts_sides, side_allowance
from ..headings import HEADING_WORK
from .amounts import Seam
from .headings import HEADING_NEEDS
from .hems import HEM_NEEDS
from .hems.face import row


def seams_of(plan: Plan) -> list[Seam]:
    """All of them, over all panels of the plan."""
    heading, hem = HEADING_NEEDS[plan.heading.style], HEM_NEEDS[plan.hem.style]
    found = (
        *_sides(plan),
        *hem.seams(plan, plan.hem),
        *_corners(plan),
        *_weights(plan),
        *_shrinkage(plan),
        *_top(plan),
        *_lining(plan),
        *heading.seams(plan, plan.heading),
    )
    return [seam for seam in found if seam.there]


def new_sides(plan: Plan) -> int:
    """How many side edges are cut, and get a new side hem, over all panels."""
    sides, bought = plan.spec.sides, plan.spec.panel.count
    if not cuts_sides(plan.spec):
        return 0
    return bought * 2 * (sides.split - 1) if sides.split > 1 else bought


def side_hem(plan: Plan) -> Length | None:
    """How long a new side hem is: the cloth of the longest panel where its cut comes lowest, an opened top with it,
    down to the mitre if there is one; None where the panel's length is not known."""
    panel = plan.spec.panel
    if panel.length is None:
        return None
    opened = doubled_now(plan.spec) + turned_now(plan.spec) if plan.top.doubled else NOTHING
    mitre = plan.mitres[0].up_the_side if plan.mitres else NOTHING
    return max((panel.length, *panel.lots)) + opened - least_cut(plan.drop) - mitre


def _sides(plan: Plan) -> Iterator[Seam]:
    """New side hems; and the rows of the old top over them, where it was opened and stays."""
    edges = new_sides(plan)
    yield Seam("side hems", side_hem(plan), edges)
    if plan.top.doubled and not plan.top.refolded:
        yield Seam("top, closed again", 2 * side_allowance(plan.spec), edges * len(old_rows(plan.spec)))


def _corners(plan: Plan) -> Iterator[Seam]:
    """The mitres, by hand; and what of the side hem was opened for them and no hem covers."""
    for mitre in plan.mitres:
        corners = corners_of(plan, mitre)
        yield Seam("mitres", mitre.seam, corners, "hand")
        yield Seam("side hems, above the mitres", mitre.above_the_hem - mitre.hem, corners)


def corners_of(plan: Plan, mitre: MitrePlan) -> int:
    """How many corners are folded to it, over all panels."""
    corners, new = 2 * plan.panels, new_sides(plan)
    if len(plan.mitres) == 1:
        return corners
    return corners - new if mitre.beside_old else new


def _weights(plan: Plan) -> Iterator[Seam]:
    """Each pocket folded in half: its two sides and its open end; and it is sewn to the hem by hand."""
    if "weights" not in plan.counts:
        return
    number = plan.counts["weights"] * plan.panels
    wide, long = (plan.figures[key].value for key in ("weight_pocket", "weight_pocket_length"))
    yield Seam("pockets for weights", long + wide, number)
    yield Seam("pockets, sewn to the hem", wide, number, "hand")


def _shrinkage(plan: Plan) -> Iterator[Seam]:
    """The tuck, or the hem a second time, once the panel has been washed."""
    if plan.shrinkage is not None:
        yield row(plan, "tuck" if plan.shrinkage.carried_in == "tuck" else "hem, again after washing")


def _top(plan: Plan) -> Iterator[Seam]:
    """A top that is folded anew: the row that holds it, unless the heading's own do, or a raw edge neatened."""
    if not plan.top.refolded:
        return
    if not plan.top.needed:
        yield Seam("top edge, neatened", plan.width, plan.panels, "zigzag")
    elif not HEADING_WORK[plan.heading.style].holds_the_fold:
        yield row(plan, "top, folded anew")


def _lining(plan: Plan) -> Iterator[Seam]:
    """Its side hems and its hem; and it is sewn in under the heading."""
    if "lining_width" not in plan.figures:
        return
    width, length = plan.figures["lining_width"].value, plan.figures.get("lining_cut_length")
    yield Seam("lining, its sides", None if length is None else length.value, 2 * plan.panels, of="lining")
    yield Seam("lining, its hem", width, plan.panels, of="lining")
    yield Seam("lining, sewn in", width, plan.panels, of="lining")
