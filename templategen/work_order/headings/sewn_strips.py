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
    hemmed = needed > offcut.strips_clear and bool(panel.hem)
    first = "Let down the old hem of the offcuts and press it flat. " if hemmed else ""
    source = "from the offcuts"
    if needed > offcut.strips_unpicked:
        source = f"{offcut.strips_unpicked} of them from the offcuts and the rest from other cloth"
    cut = "a strip" if needed == 1 else f"{needed} strips"
    words = f"{first}Cut {cut} {wide} wide, as long as a panel is wide with its side hems unpicked, {source}."
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
