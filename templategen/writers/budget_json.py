"""The error budget of a template as plain data, for kit.json."""

from __future__ import annotations

from typing import Any

from ..layout.error_budget import TOLERANCE, Budget, Closing
from .numbers import decimal


def budget_record(budget: Budget) -> dict[str, Any]:
    """The budget as plain data, in millimetres.

    ``parts_mm`` add up to ``worst_mm``; ``closing`` is null for a template in
    one piece, and its ``usable_mm`` is null where no length will do.
    """
    return {
        "template": budget.template,
        "mark": budget.mark.label,
        "along_mm": decimal(budget.mark.at),
        "worst_mm": decimal(budget.worst),
        "likely_mm": decimal(budget.likely),
        "parts_mm": {
            "printer": decimal(budget.printer),
            "eye": decimal(budget.eye),
            "rule": decimal(budget.rule),
            "joins": decimal(budget.joins),
            "turning": decimal(budget.turning),
            "pen": decimal(budget.pen),
        },
        "across_mm": {"worst": decimal(budget.across), "likely": decimal(budget.across_likely)},
        "held_to_mm": decimal(TOLERANCE),
        "promised_mm": decimal(budget.promised),
        "closing": _closing(budget.closing) if budget.closing else None,
    }


def _closing(closing: Closing) -> dict[str, Any]:
    return {
        "length_mm": decimal(closing.length),
        "joins": closing.joins,
        "tolerance_mm": decimal(closing.tolerance),
        "usable_mm": None if closing.usable is None else decimal(closing.usable),
        "mark": closing.mark.label,
        "worst_mm": decimal(closing.worst),
        "likely_mm": decimal(closing.likely),
    }
