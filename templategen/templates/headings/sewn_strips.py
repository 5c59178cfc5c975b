"""How the strips that loops or tabs are cut from are come by, and sewn."""

from __future__ import annotations

from ...planning import Plan
from ..said import plain


def sewn_strips(plan: Plan) -> str:
    """From the offcuts as far as they do, the old hem let down only where it has to be."""
    offcut, panel = plan.offcut.pieces, plan.spec.panel
    assert offcut is not None, "loops and tabs are cut from strips"
    needed, wide, thing = offcut.strips_needed, plain(plan, offcut.pieces.strip), offcut.pieces.thing
    sew = (
        "Fold it lengthwise, right side in; sew the long edge with a seam allowance of "
        f"{plain(plan, offcut.pieces.seam_allowance)}, and turn it."
    )
    if not needed or not offcut.strips_unpicked:
        return f"Make a strip of other cloth {wide} wide, in pieces long enough for whole {thing}s. {sew}"
    hemmed = needed > offcut.strips_clear and bool(panel.hem)
    first = "Let down the old hem of the offcuts and press it flat. " if hemmed else ""
    source = "from the offcuts"
    if needed > offcut.strips_unpicked:
        source = f"{offcut.strips_unpicked} of them from the offcuts and the rest from other cloth"
    cut = "a strip" if needed == 1 else f"{needed} strips"
    return (
        f"{first}Cut {cut} {wide} wide, as long as a panel is wide with its side hems unpicked, {source}. {sew}"
    )
