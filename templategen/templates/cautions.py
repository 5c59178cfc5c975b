"""The usual cautions, in plain words; they defer to local codes, makers' ratings and licensed trades."""

from __future__ import annotations

from collections.abc import Iterator

from ..planning import Plan


def cautions(plan: Plan) -> Iterator[tuple[str, str]]:
    """Each with the word that it stands under."""
    yield (
        "Heat",
        "Press cloth and templates with a dry iron at the cloth's own setting, never over laser printing; try a "
        "corner first. Keep curtains clear of heaters (fire services ask for at least 12 in, 30 cm, from a fixed "
        "baseboard heater and 3 ft, 90 cm, from a portable one), of candles and of cookers.",
    )
    yield (
        "Load",
        "Hold the weight of the hung panels against what the maker says of rod and brackets. For fixings into the "
        "building, and where you are not sure, ask a licensed trade. Stand on a proper ladder.",
    )
    yield "Cords", "No loose or looped cord and no long tie within a child's reach (EN 13120, ANSI/WCMA A100.1)."
    if plan.drop.clearance.mm < 0 and plan.spec.drop.to == "floor":
        yield "Trips", "This panel lies on the floor: not where people walk, not on stairs, not near an exit."
    yield (
        "Flame",
        "In public places curtains are held to codes (NFPA 701, BS 5867-2, EN 13773). Nothing here says that altered "
        "cloth keeps a rating, and washing can remove a treatment: ask your local authority.",
    )
    yield "Blades", "Cut away from the hand that holds. Count the pins out and in again."
