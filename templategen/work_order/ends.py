"""Where the hem ends, in words."""

from __future__ import annotations

from ..lengths import Length
from ..planning import Plan
from ..planning.lines import line_of
from ..templates.said import plain


def apart(plan: Plan, rise: Length, what: str) -> str:
    """How far above ``what`` something stands, or below it: "1 3/4 in below the floor pins"; "level with" where the
    tape shows no distance."""
    if not plan.tape.read(rise).value:
        return f"level with {what}"
    return f"{plain(plan, abs(rise))} {'below' if rise.mm < 0 else 'above'} {what}"


def ends(plan: Plan) -> str:
    """Where the finished hem ends: "3/4 in above the floor"; a hem level above an uneven floor, by its highest mark."""
    at = ", where that is highest" if plan.drop.above_marks else ""
    return f"{apart(plan, plan.drop.clearance, line_of(plan.spec).the)}{at}"
