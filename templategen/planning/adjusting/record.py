"""An adjustment as plain data: what other programs read."""

from __future__ import annotations

from ..plan import Plan
from ..record import length_record
from .adjustment import Adjustment, Move, Remedy


def adjustment_record(plan: Plan, adjustment: Adjustment) -> dict[str, object]:
    """Readings and remedies, ready for JSON; places are from the left end, the back towards you."""
    taken = adjustment.taken
    return {
        "title": plan.spec.title,
        "units": plan.spec.units,
        "stitched": adjustment.stitched,
        "within": adjustment.within,
        "hangs": [
            {"at": length_record(plan, place.at), "low": length_record(plan, place.low), "where": place.said}
            for place in adjustment.hung.places
        ],
        "taken": taken.key if taken else None,
        "remedies": [_remedy(plan, remedy) for remedy in adjustment.remedies],
    }


def _remedy(plan: Plan, remedy: Remedy) -> dict[str, object]:
    return {
        "key": remedy.key,
        "title": remedy.title,
        "does_all": remedy.does_all,
        "short": remedy.short,
        "left": length_record(plan, remedy.left),
        "unpicked": length_record(plan, remedy.unpicked),
        "sewn": length_record(plan, remedy.sewn),
        "heading": [_move(plan, move) for move in remedy.at_heading],
        "hem": [_move(plan, move) for move in remedy.at_hem],
        "how": list(remedy.how),
    }


def _move(plan: Plan, move: Move) -> dict[str, object]:
    return {
        "label": move.label,
        "at": length_record(plan, move.at),
        "wanted": length_record(plan, move.wanted),
        "distance": length_record(plan, move.distance),
        "raised": length_record(plan, move.raised),
    }
