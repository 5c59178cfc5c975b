"""Cloth that has still to shrink: what is carried for it, in a deeper hem or in a tuck, and how it is let out."""

from __future__ import annotations

from fractions import Fraction
from typing import Any

from ...lengths import NOTHING, Length, millimetres
from ...spec import Spec
from ..choices import MOST_SHRINKAGE, TUCK_ABOVE_HEM
from ..drop import finish_heights
from ..figures import Amount, Figure, Notice
from ..hems import HEMS
from ..plan import HemPlan, ShrinkagePlan
from ..top import plan_top
from ..wording import decimal, near, say, term


def still_to_shrink(spec: Spec) -> Fraction:
    """How much of its length the cloth will lose, of one; nothing where it was washed, or nothing is said of it."""
    shrinkage = spec.fabric.shrinkage
    return Fraction(0) if shrinkage is None or spec.fabric.washed else shrinkage.share


def made_for(length: Length, share: Fraction) -> Length:
    """How long cloth is made that is to be ``length`` once it has lost ``share``: F / (1 − q), not F (1 + q)."""
    return length / (1 - share)


def longest_finished(spec: Spec) -> Length | None:
    """Top edge to finished edge where the panel ends lowest; None where its length is not known."""
    if spec.panel.length is None:
        return None
    return spec.panel.length - plan_top(spec).lowered - min(finish_heights(spec))


def plan_hem(spec: Spec) -> tuple[HemPlan, ShrinkagePlan | None]:
    """The hem as it is made now, and what is carried for shrinkage.

    Carried in the hem, the hem is unpicked after washing and folded again, so
    that the hem's own cloth has to come out right as well: (finished + hem
    allowance) / (1 − q). In a tuck, the hem stays as it is folded, and only
    what hangs above its lower edge counts: finished / (1 − q). The heading is
    counted with the rest: our choice, because it is washed with it.
    """
    kind, share, finished = HEMS[spec.hem.style], still_to_shrink(spec), longest_finished(spec)
    plain: HemPlan = kind.plan(spec, spec.hem)
    if not share or finished is None or finished <= NOTHING:
        return plain, None
    if spec.fabric.shrinkage_in == "hem":
        length = finished + plain.allowance
        extra = made_for(length, share) - length
        if (deeper := _deeper(spec, plain, extra)) is not None:
            return deeper, ShrinkagePlan("hem", share, length, extra, plain.depth)
    extra = made_for(finished, share) - finished
    return plain, ShrinkagePlan("tuck", share, finished, extra, plain.depth)


def _deeper(spec: Spec, plain: HemPlan, extra: Length) -> HemPlan | None:
    """The hem of the same kind that takes ``extra`` more cloth; None where its kind takes no more for being deeper."""
    kind = HEMS[spec.hem.style]

    def made(depth: Length) -> HemPlan:
        hem = spec.hem.model_copy(update={"depth": depth})
        found: HemPlan = kind.plan(spec.model_copy(update={"hem": hem}), hem)
        return found

    given: Any = getattr(spec.hem, "depth", None)
    if not isinstance(given, Length):
        return None
    per_mm = (made(given + millimetres(1)).allowance - plain.allowance).mm
    if per_mm <= 0:
        return None
    deeper = made(given + extra / per_mm)
    return deeper if deeper.allowance == plain.allowance + extra else None


def hem_figures(figures: tuple[Figure, ...], spec: Spec, shrinkage: ShrinkagePlan | None) -> tuple[Figure, ...]:
    """The hem's figures, its depth said to be what it is."""
    if shrinkage is None or shrinkage.carried_in == "tuck":
        return figures
    tape = spec.tape
    found = []
    for figure in figures:
        working = figure.working
        if figure.key == "hem_depth":
            given = shrinkage.hem_depth
            working = f"as given {say(tape, given)} {term(tape, 1, 'carried for shrinkage', figure.value - given)}"
        found.append(Figure(figure.key, figure.label, figure.value, working))
    return tuple(found)


def percent(share: Fraction) -> str:
    """A share as it is said: "3 %"."""
    return f"{decimal(float(100 * share))} %"


def shrinkage_figures(spec: Spec, hem: HemPlan, plan: ShrinkagePlan | None) -> tuple[Figure, ...]:
    """What is carried, and by how much the rule of thumb is wrong."""
    if plan is None:
        return ()
    tape, lost = spec.tape, percent(plan.share)
    what = "top edge to raw edge" if plan.carried_in == "hem" else "top edge to finished edge"
    carried = Figure(
        "shrinkage_extra",
        "carried for shrinkage",
        plan.extra,
        f"{what} {say(tape, plan.length)} ÷ (1 − {lost}) − itself; {lost} of it would be "
        f"{near(tape, plan.short_by_rule)} too little",
    )
    rule = Figure(
        "shrinkage_rule_short",
        "short by rule of thumb",
        plan.short_by_rule,
        f"carried {say(tape, plan.extra)} − {lost} of {say(tape, plan.length)}",
    )
    if plan.carried_in == "hem":
        working = "as given: unpicked, let down and folded again"
        return (carried, rule, Figure("hem_after_washing", "hem, once washed", plan.hem_depth, working))
    low = tuck_line(hem)
    above = f"{say(tape, TUCK_ABOVE_HEM)} above the hem {say(tape, hem.depth)}"
    half = f"half of what is carried {say(tape, plan.extra)}"
    further = f"lower line {say(tape, low)} {term(tape, 1, 'carried for shrinkage', plan.extra)}"
    return (
        carried,
        rule,
        Figure("tuck_depth", "tuck, as it is folded", plan.extra / 2, half),
        Figure("tuck_lower_line", "tuck, lower line", low, f"up from the finish line: {above}"),
        Figure("tuck_upper_line", "tuck, upper line", low + plan.extra, further),
    )


def tuck_line(hem: HemPlan) -> Length:
    """Finished edge up to the tuck's lower line."""
    return hem.depth + TUCK_ABOVE_HEM


def shrinkage_amounts(plan: ShrinkagePlan | None) -> tuple[Amount, ...]:
    """The share itself."""
    if plan is None:
        return ()
    return (Amount("shrinkage", "shrinkage", 100 * plan.share, "%", percent(plan.share), "of its length, as given"),)


def shrinkage_notices(spec: Spec, hem: HemPlan, plan: ShrinkagePlan | None) -> list[Notice]:
    """Where the cloth is carried; whether it shrinks more than curtain cloth should; whether the tuck shows."""
    if plan is None:
        return []
    tape, found = spec.tape, []
    if plan.share > MOST_SHRINKAGE:
        text = (
            f"The cloth loses {percent(plan.share)} of its length; curtain cloth loses at most "
            f"{percent(MOST_SHRINKAGE)} in five launderings (ASTM D3691/D3691M-09, Table 1). Wash the panels before "
            "they are measured, and write fabric.washed = true: then nothing has to be carried."
        )
        found.append(Notice("shrinks_much", "warning", text))
    if spec.fabric.shrinkage_in == "hem" and plan.carried_in == "tuck":
        text = (
            f"A hem of this kind ({spec.hem.style}) takes no more cloth for being deeper, so "
            f"{near(tape, plan.extra)} for shrinkage is carried in a tuck."
        )
        found.append(Notice("shrinkage_in_tuck", "note", text))
    if plan.carried_in == "tuck" and plan.extra / 2 > tuck_line(hem):
        below = plan.extra / 2 - tuck_line(hem)
        text = (
            f"The tuck, {near(tape, plan.extra / 2)} deep, hangs {near(tape, below)} below the finished edge: carry "
            "the cloth in the hem, or wash the panels before they are measured."
        )
        found.append(Notice("tuck_hangs_out", "warning", text))
    return found
