"""Whether the eyelets that a panel came with are still in its top."""

from __future__ import annotations

from ...spec import Spec
from ...spec.headings import Eyelets
from ..figures import Notice
from ..wording import at_least, near


def old_holes_notices(spec: Spec) -> list[Notice]:
    """Holes along the top that nothing cuts off."""
    old, cut = spec.panel.heading, spec.heading.top_cut
    if not isinstance(old, Eyelets) or old.eyelet_centre is None:
        return []
    reach = old.eyelet_centre + old.eyelet_inside / 2
    if cut >= reach:
        return []
    text = (
        f"The panel's old eyelets stay in its top: their openings reach {near(spec.tape, reach)} down from the edge, "
        f"and {near(spec.tape, cut) if cut else 'nothing'} is cut off. Where they are in the way, write "
        f"heading.top_cut, at least {at_least(spec.tape, reach)} and the width of their rims."
    )
    return [Notice("old_eyelets_stay", "note", text)]
