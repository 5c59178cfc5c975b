"""The plan as plan.json: what other programs read."""

from __future__ import annotations

from ..lengths import Length
from .headings import HEADINGS
from .plan import Plan

_UNITS = {"inch": "in", "metric": "mm"}


def plan_record(plan: Plan) -> dict[str, object]:
    """The plan as plain dicts, lists, strings and numbers, ready for JSON.

    ``lengths``, ``counts``, ``ratios``, ``marks``, ``cut_lines`` and
    ``notices`` are promised; ``title``, ``units`` and ``working`` (how each
    length came about, by its key) come with them, and ``amounts``: numbers that are no lengths.
    """
    edge = HEADINGS[plan.spec.heading.style].edge
    marked = {edge: plan.heading.marks}
    if plan.heading.mirrored:
        marked[f"{edge}, right panels"] = plan.mirrored_marks
    return {
        "title": plan.spec.title,
        "units": plan.spec.units,
        "lengths": {key: length_record(plan, figure.value) for key, figure in plan.figures.items()},
        "amounts": {
            each.key: {"value": float(each.value), "unit": each.unit, "shown": each.shown, "working": each.working}
            for section in plan.sections
            for each in section.amounts
        },
        "counts": dict(plan.counts),
        "ratios": {key: float(ratio) for key, ratio in plan.ratios.items()},
        "marks": {
            key: [{"label": mark.label, "at": length_record(plan, mark.at)} for mark in marks]
            for key, marks in marked.items()
        },
        "cut_lines": [
            {"at": length_record(plan, mark.at), "height": length_record(plan, mark.cut)}
            for mark in plan.drop.marks
        ],
        "notices": [
            {"code": notice.code, "level": notice.level, "text": notice.text} for notice in plan.notices
        ],
        "working": {key: figure.working for key, figure in plan.figures.items()},
    }


def length_record(plan: Plan, length: Length) -> dict[str, object]:
    """One length three ways: in millimetres, exactly in the spec's unit, and as the tape shows it."""
    return {
        "mm": float(length.mm),
        "exact": length.exact(_UNITS[plan.spec.units]),
        "shown": plan.tape.show(length),
    }
