"""One panel tried on the rod before the heading's last stitching: J. W. Stephenson, Cutting and Draping, 1905."""

from __future__ import annotations

from ...document.view import View
from ...planning import Plan
from ...planning.choices import MADE_WITHIN
from ...templates.said import plain
from ..ends import ends
from ..step import Step


def trying(plan: Plan, held: str, view: View | None = None) -> Step:
    """The trial; ``held`` is how the things are held for it, "tack every loop", and ``view`` shows it."""
    panel = "one panel" if plan.panels > 1 else "the panel"
    return Step(
        "Try",
        f"On {panel} {held}. Hang it on the rod, let it settle and measure: the hem must end {ends(plan)}, within "
        f"{plain(plan, MADE_WITHIN)}. If it does not, do not sew yet: the step “Adjust” says how to find what to move.",
        "once",
        view,
    )
