"""The error budget in words: what may be promised of each template, and what to measure for it.

What may be out is rounded up, and what may be let pass is rounded down: nothing said here
is better than it is.
"""

from __future__ import annotations

import re
from collections.abc import Sequence
from fractions import Fraction
from math import ceil, floor
from textwrap import wrap

from ..drawing import capitalised
from ..lengths import MM_PER_INCH, Length, Tape
from ..lengths.showing import mixed_number
from .error_budget import THIRTY_SECOND, TOLERANCE, Budget, step_of
from .furniture import BAR

HEADING = "How true the templates come"
_TIE = "\N{NO-BREAK SPACE}"
_SHARES = ((1 / 4, "a quarter of"), (1 / 3, "a third of"), (1 / 2, "half of"), (2 / 3, "two thirds of"), (1, "within"))


def tell(budget: Budget, tape: Tape) -> str:
    """How far out the template's far mark may come: by the bars alone, and with the closing length measured.

    One sentence for a template in one piece, two for one that is taped.
    """
    mark = budget.mark.label
    name = f"mark {mark}" if mark.isdecimal() else f"“{mark}”"
    far = f"{name}, {tape.read(Length(abs(budget.mark.at))).plain} from its zero, comes within"
    held_to = f"the {_exactly(TOLERANCE, tape)} that the work is held to"
    template, closing = capitalised(budget.template), budget.closing
    if closing is None:
        share = f"{_share(budget.worst)} {held_to}"
        return (
            f"{template}: {far} {_out(budget.worst, tape)} at worst, {share}, "
            f"and within {_out(budget.likely, tape, False)} 99 times in 100."
        )
    return (
        f"{template}: taped, and measured from end to end, every mark comes within {_out(closing.worst, tape)} at "
        f"worst, {_share(closing.worst)} {held_to}, and within {_out(closing.likely, tape, False)} 99 times in 100. "
        f"By the bars alone {far} {_out(budget.worst, tape)}, and within {_out(budget.likely, tape, False)} "
        "99 times in 100."
    )


def tell_parts(budget: Budget) -> str:
    """How the worst by the bars alone came about: "printer 6.7 + misread bars 3.3 + ... = 21.9 mm".

    In tenths of a millimetre in either unit, each rounded by itself.
    """
    parts = {
        "printer": budget.printer,
        "misread bars": budget.eye,
        "rule": budget.rule,
        "joins": budget.joins,
        "turns at joins": budget.turning,
        "pencil": budget.pen,
    }
    said = " + ".join(f"{name} {part:.1f}" for name, part in parts.items() if part)
    return f"{said} = {budget.worst:.1f} mm"


def tell_closing(budget: Budget, tape: Tape) -> list[str]:
    """What to measure once the template is taped, and what that is worth; nothing for one in one piece."""
    closing = budget.closing
    if closing is None:
        return []
    length = tape.read(Length(closing.length)).text
    joins = "its join is" if closing.joins == 1 else f"its {closing.joins} joins are"
    said = [
        f"{capitalised(budget.template)}: lay it taped to a straight edge, on the day it is used, and measure it from "
        f"end to end. It must be {length}. Up to {_passes(closing.tolerance, tape)} more or less, {joins} good."
    ]
    held_to = _exactly(TOLERANCE, tape)
    if closing.usable is None or closing.usable < closing.tolerance:
        said.append(f"So many joins cannot promise {held_to}: measure every mark from the zero as well.")
    elif closing.usable > closing.tolerance:
        said.append(f"Up to {_passes(closing.usable, tape)}, every mark still comes within {held_to}.")
    return said


def tell_remedy(budget: Budget) -> str:
    """What to do where a taped template is out by more than that; nothing where its pieces lie both ways."""
    axes = {frozenset({0}): "the bar across", frozenset({90}): "the bar along"}
    bar = axes.get(budget.turns)
    if budget.closing is None or bar is None:
        return ""
    return (
        f"If it is out by more, and every join right, it is the printer: multiply what {bar} measured ({BAR} mm, if "
        "nothing is written under [printer]) by what the template measures, divide by what it must be, write that "
        "under [printer] and make the kit again."
    )


def plan_lines(budgets: Sequence[Budget], tape: Tape, width: int = 96) -> list[str]:
    """A section of the plan's text: a heading, and for each template what is promised and how it came about."""
    lines = [HEADING]
    for budget in budgets:
        lines += _wrapped(tell(budget, tape), width, "  ")
        lines += _wrapped(f"Worst by the bars alone: {tell_parts(budget)}", width, "    ")
        if remedy := tell_remedy(budget):
            lines += _wrapped(remedy, width, "    ")
    return lines


def first_page_lines(budgets: Sequence[Budget], tape: Tape) -> list[str]:
    """What the first page says, a paragraph each: what to measure on every taped template."""
    return [" ".join(said) for budget in budgets if (said := tell_closing(budget, tape))]


def _out(mm: float, tape: Tape, both: bool = True) -> str:
    """How far out something may be, rounded up: "3/32 in (2.3 mm)"; in millimetres, tenths."""
    metric = f"{ceil(mm * 10 - 1e-9) / 10:.1f} mm"
    if tape.units == "metric":
        return metric
    inches = f"{mixed_number(Fraction(ceil(mm / float(THIRTY_SECOND) - 1e-9), 32))} in"
    return f"{inches} ({metric})" if both else inches


def _passes(mm: float, tape: Tape) -> str:
    """What may be let pass, rounded down to a division of the rule: "1/16 in", "2 mm"."""
    step = step_of(tape)
    value = floor(mm / float(step) + 1e-9) * step
    return f"{mixed_number(value / MM_PER_INCH)} in" if tape.units == "inch" else f"{float(value):g} mm"


def _exactly(mm: Fraction, tape: Tape) -> str:
    inches, metric = f"{mixed_number(mm / MM_PER_INCH)} in", f"{float(mm):g} mm"
    return f"{inches} ({metric})" if tape.units == "inch" else f"{metric} ({inches})"


def _share(mm: float) -> str:
    """How much of what the work is held to this is: "a third of"; "3.5 times" where it is more."""
    share = mm / float(TOLERANCE)
    return next((words for most, words in _SHARES if share <= most), f"{ceil(share * 10) / 10:.1f} times")


def _wrapped(text: str, width: int, indent: str) -> list[str]:
    tied = re.sub(r"(?<=\d) (?=[\w=+])", _TIE, text)
    lines = wrap(tied, width, initial_indent=indent, subsequent_indent=indent + "  ", break_on_hyphens=False)
    return [line.replace(_TIE, " ") for line in lines]
