"""What pleats folded by hand need."""

from __future__ import annotations

from collections.abc import Iterator

from ....planning import Plan
from ....planning.headings.pleats import PleatPlan
from ....planning.wording import near
from ....spec.headings import PinchPleats
from ..amounts import Seam, Thing, times
from .face import HeadingNeeds


def seams(plan: Plan, pleats: PleatPlan) -> Iterator[Seam]:
    """Each pleat from the top edge down, and its foot by hand: through the fingers, or across the box."""
    number, given = pleats.pleats * plan.panels, pleats.given
    foot = pleats.pleat / (2 * given.fingers) if isinstance(given, PinchPleats) else pleats.pleat / 2
    yield Seam("pleats", given.heading_depth, number)
    yield Seam("feet of the pleats", foot, number, "hand")


def things(plan: Plan, pleats: PleatPlan) -> Iterator[Thing]:
    """Stiffening; a hook behind each pleat and one at either edge, and what they hang on."""
    tape, each = plan.tape, pleats.pleats + 2
    yield Thing(
        f"stiffening, {near(tape, pleats.given.heading_depth)} deep",
        plan.width * plan.panels,
        times(tape, plan.panels, plan.width),
    )
    working = f"{pleats.pleats} pleats and 2 edges on each panel"
    yield Thing("hooks", each * plan.panels, f"{plan.panels} × {each}: {working}" if plan.panels > 1 else working)
    yield Thing("rings or gliders", each * plan.panels, "one for each hook")


def _kind(name: str) -> HeadingNeeds[PleatPlan]:
    return HeadingNeeds(name=name, seams=seams, things=things, pins=lambda plan, pleats: 2 * pleats.pleats)


PINCH_PLEATS = _kind("pinch pleats")
BOX_PLEATS = _kind("box pleats")
INVERTED_BOX_PLEATS = _kind("inverted box pleats")
