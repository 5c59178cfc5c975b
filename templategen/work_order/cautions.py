"""The usual cautions, in plain words, each at the stage where it matters; they defer to codes, makers and trades."""

from __future__ import annotations

from ..document.blocks import Remark
from ..planning import Plan

HEAT = Remark(
    "Heat",
    "Press cloth and templates with a dry iron at the cloth's own setting, never over laser printing; try a corner "
    "first.",
)
"""Before the first pressing."""
BLADES = Remark("Blades", "Keep the hand that holds the cloth out of the way of the blades.")
"""Before the cut."""
LOAD = Remark(
    "Load",
    "Hold the weight of the hung panels against what the maker says of rod and brackets. For fixings into the "
    "building, and where you are not sure, ask a licensed trade. Stand on a proper ladder.",
)
CORDS = Remark("Cords", "No loose or looped cord and no long tie within a child's reach (EN 13120, ANSI/WCMA A100.1).")
TRIPS = Remark("Trips", "This panel lies on the floor: not where people walk, not on stairs, not near an exit.")
FLAME = Remark(
    "Flame",
    "Keep curtains clear of heaters (fire services ask for at least 12 in, 30 cm, from a fixed baseboard heater and "
    "3 ft, 90 cm, from a portable one), of candles and of cookers. In public places they are held to codes (NFPA 701, "
    "BS 5867-2, EN 13773): nothing here says that altered cloth keeps a rating, and washing can remove a treatment; "
    "ask your local authority.",
)


def hanging_cautions(plan: Plan) -> tuple[Remark, ...]:
    """Those before the panels are hung to stay; that about trips where they lie on the floor."""
    lies = plan.drop.clearance.mm < 0 and plan.spec.drop.to == "floor"
    return (LOAD, CORDS, *((TRIPS,) if lies else ()), FLAME)
