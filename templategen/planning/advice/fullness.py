"""Whether the panels cover their rod, and fall in folds."""

from __future__ import annotations

from fractions import Fraction

from ...lengths.counting import plural
from ...spec import Spec
from ..choices import LEAST_FULLNESS, MOST_FULLNESS
from ..figures import Notice
from ..fullness import fullness, panels_for, run
from ..wording import decimal, near


def fullness_notices(spec: Spec) -> list[Notice]:
    """Too few panels for the rod, or so many that something was misread."""
    if run(spec).mm <= 0:
        return []
    full, tape = fullness(spec), spec.tape
    across = f"{near(tape, run(spec))} of rod{', overlap and returns' if run(spec) > spec.rod.length else ''}"
    if full < 1:
        text = (
            f"The panels do not cover {across}: side by side they are {near(tape, run(spec) * full)} wide. "
            f"{_takes(spec, Fraction(1))} to cover it flat, {panels_for(spec, LEAST_FULLNESS)} to fall in "
            "folds."
        )
        return [Notice("not_covered", "warning", text)]
    if full < LEAST_FULLNESS:
        text = (
            f"The panels hang nearly flat: {decimal(_down(full))} times {across}. "
            f"{_takes(spec, LEAST_FULLNESS)} for {decimal(float(LEAST_FULLNESS))}, the least that falls in "
            "folds (common practice for flat headings)."
        )
        return [Notice("fullness_low", "warning", text)]
    if full > MOST_FULLNESS:
        text = (
            f"The panels are {decimal(-_down(-full))} times as wide as {across}; "
            f"{decimal(float(MOST_FULLNESS))} times is already crowded. Measure the rod and the panels "
            "again."
        )
        return [Notice("fullness_high", "warning", text)]
    return []


def _down(ratio: Fraction) -> float:
    """A ratio rounded down to two places, so that what falls short of a limit is never shown as the limit."""
    return (100 * ratio // 1) / 100


def _takes(spec: Spec, wanted: Fraction) -> str:
    needed = panels_for(spec, wanted)
    return f"It takes {plural(needed, 'panel')} like these"
