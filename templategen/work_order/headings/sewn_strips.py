"""How the strips that loops or tabs are cut from are come by, and sewn."""

from __future__ import annotations

from collections.abc import Iterator

from ...lengths import Length
from ...planning import Plan
from ...templates.said import plain
from ..pictures import strips as pictures
from ..step import Step


def sewn_strips(plan: Plan, width: Length, seam: str = "") -> Iterator[Step]:
    """Strips, and tubes ``width`` wide; ``seam`` says where a tube's seam comes, ", its seam along the middle"."""
    offcut = plan.offcut.pieces
    assert offcut is not None, "loops and tabs are cut from strips"
    words, strip = _strips(plan)
    yield Step("Strips", words, "once", pictures.cutting(plan))
    yield Step("Tube", f"{_sewn(plan, width, strip)}{seam}.", "once", pictures.sewing(plan, width))


def _strips(plan: Plan) -> tuple[str, str]:
    """From the offcuts as far as they do, the old hem let down only where it has to be; and what a strip is called."""
    offcut, panel = plan.offcut.pieces, plan.spec.panel
    assert offcut is not None, "loops and tabs are cut from strips"
    needed, wide, thing = offcut.strips_needed, plain(plan, offcut.pieces.strip), offcut.pieces.thing
    if not needed or not offcut.strips_unpicked:
        return f"Make a strip of other cloth {wide} wide, in pieces long enough for whole {thing}s.", "each piece"
    from_each, let_down = pictures.strips_of_one(plan)
    cut = "a strip" if needed == 1 else f"{needed} strips"
    most = f", up to {from_each} from each" if needed > 1 and panel.count > 1 else ""
    if needed > offcut.strips_unpicked:
        most = f": {offcut.strips_unpicked} of them, and the rest from other cloth"
    what = "offcut" if panel.count == 1 else "offcuts"
    first = "the old hem and the side hems" if let_down else "the side hems"
    words = f"Unpick {first} of the {what} and press flat. Cut {cut} {wide} wide right across the {what}{most}."
    return words, "the strip" if needed == 1 else "each strip"


def _sewn(plan: Plan, width: Length, strip: str) -> str:
    """From strip to tube; ``strip`` is "the strip" where there is one only."""
    offcut = plan.offcut.pieces
    assert offcut is not None, "loops and tabs are cut from strips"
    tube = "the tube" if strip == "the strip" else "each tube"
    return (
        f"Fold {strip} lengthwise, right side in; sew the long edge with a seam allowance of "
        f"{plain(plan, offcut.pieces.seam_allowance)}, and turn it. Press {tube} {plain(plan, width)} wide"
    )


def tube(plan: Plan) -> str:
    """What the loops or tabs are cut from: "the tube", or where there are several "a tube"."""
    offcut = plan.offcut.pieces
    return "the tube" if offcut is not None and offcut.strips_needed == 1 and offcut.strips_unpicked else "a tube"
