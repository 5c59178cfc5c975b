"""How the strips for loops or tabs are come by, and sewn."""

from __future__ import annotations

from ...planning import Plan
from ..said import plain


def sew_strips(plan: Plan) -> str:
    """Where the strips are cut from, and how the long seam is sewn."""
    needs, panel = plan.offcut.pieces, plan.spec.panel
    assert needs is not None, "only what is cut from strips asks"
    wide, things = plain(plan, needs.pieces.strip), f"{needs.pieces.thing}s"
    sew = (
        "Fold it lengthwise, right side in; sew the long edge with a seam allowance of "
        f"{plain(plan, needs.pieces.seam_allowance)}, and turn it."
    )
    if not needs.strips_needed or not needs.strips_unpicked:
        return f"Make a strip of other cloth {wide} wide, in pieces long enough for whole {things}. {sew}"
    hemmed = needs.strips_needed > needs.strips_clear and bool(panel.hem)
    first = "Let down the old hem of the offcuts and press it flat. " if hemmed else ""
    source = "from the offcuts"
    if needs.strips_needed > needs.strips_unpicked:
        source = f"{needs.strips_unpicked} of them from the offcuts and the rest from other cloth"
    cut = "a strip" if needs.strips_needed == 1 else f"{needs.strips_needed} strips"
    return (
        f"{first}Cut {cut} {wide} wide, as long as a panel is wide with its side hems unpicked, {source}. {sew}"
    )
