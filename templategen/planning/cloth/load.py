"""What hangs on the rod, and what each bracket carries of it.

Of one panel, the cloth: finished length, hem, and what is doubled along the
top, by its width; and its loops or tabs. Rod, rings, lining and side hems are
not in it.
"""

from __future__ import annotations

from dataclasses import dataclass
from fractions import Fraction

from ...lengths import NOTHING, Length
from ...lengths.counting import plural
from ...spec import Spec
from ..doubled import doubled_now, taken, turned_now
from ..drop import least_cut
from ..figures import Amount, Figure, Notice
from ..plan import DropPlan, Pieces, TopPlan
from ..widths import made_count, made_width
from ..wording import decimal, say

_GRAMS_IN_KG = 1000
_SQUARE_MM = Fraction(1, 10**6)


@dataclass(frozen=True, slots=True)
class LoadPlan:
    """Weights in kilogrammes."""

    cloth: Length
    """The length of cloth in one panel, all of it laid flat."""
    panel: Fraction
    hung: Fraction
    """All the panels on the rod."""
    closed: Fraction
    """On the bracket that bears most, the panels drawn closed."""
    open: Fraction
    """The same drawn open."""

    @property
    def worst(self) -> Fraction:
        return max(self.closed, self.open)


def reactions(supports: int) -> tuple[Fraction, ...]:
    """What each of evenly spaced supports bears of an even load on one rod through all of them, the whole being one.

    Clapeyron's three moments for equal spans l under w: M(i−1) + 4 M(i) + M(i+1) = −w l² / 2, nothing at the
    ends; solved by elimination, exactly. Two bear a half each; of three the middle one bears 5/8 and not a third
    (T. G. Hicks, Civil Engineering Formulas, Table 2.1).
    """
    spans = supports - 1
    inner = spans - 1
    right = Fraction(-1, 2)  # w = l = 1
    upper: list[Fraction] = []
    values: list[Fraction] = []
    for at in range(inner):
        below = 4 - upper[at - 1] if at else Fraction(4)
        upper.append(1 / below)
        values.append((right - (values[at - 1] if at else 0)) / below)
    moments = [Fraction(0)] * supports
    for at in reversed(range(inner)):
        moments[at + 1] = values[at] - upper[at] * moments[at + 2]
    found = [Fraction(0)] * supports
    for span in range(spans):
        turn = moments[span + 1] - moments[span]
        found[span] += Fraction(1, 2) + turn
        found[span + 1] += Fraction(1, 2) - turn
    return tuple(each / spans for each in found)


def opens_one_way(spec: Spec) -> bool:
    """Whether all panels are drawn to one end; left out, a single panel is."""
    return spec.rod.opens == "one way" if spec.rod.opens else made_count(spec) == 1


def most_on_one_side(spec: Spec) -> int:
    """How many panels stand at one end of the rod when they are open."""
    return made_count(spec) if opens_one_way(spec) else -(-made_count(spec) // 2)


def cloth_length(spec: Spec, drop: DropPlan, top: TopPlan) -> Length | None:
    """The length of one panel's cloth laid flat: below the new top edge, and doubled behind it."""
    if spec.panel.length is None:
        return None
    below = spec.panel.length - top.lowered - least_cut(drop)
    if top.refolded:
        return below + taken(spec.heading, top.needed)
    return below + doubled_now(spec) + turned_now(spec)


def plan_load(spec: Spec, drop: DropPlan, top: TopPlan, pieces: Pieces | None) -> LoadPlan | None:
    """The weights; None where the cloth's weight or the panel's length is not known."""
    cloth = cloth_length(spec, drop, top)
    if spec.fabric.weight is None or cloth is None:
        return None
    area = made_width(spec).mm * max(cloth, NOTHING).mm
    area += pieces.on_each * pieces.length.mm * pieces.strip.mm if pieces else 0
    panel = area * _SQUARE_MM * spec.fabric.weight.value / _GRAMS_IN_KG
    hung = panel * made_count(spec)
    return LoadPlan(
        cloth=cloth,
        panel=panel,
        hung=hung,
        closed=hung * max(reactions(spec.rod.brackets)),
        open=panel * most_on_one_side(spec),
    )


def weigh(spec: Spec, kilograms: Fraction) -> str:
    """A load as it is said, rounded up to a tenth: "11.1 lb (5.1 kg)"."""
    kg, lb = (f"{float(-(-each * 10 // 1) / 10):.1f}" for each in (kilograms, kilograms / Fraction("0.45359237")))
    return f"{lb} lb ({kg} kg)" if spec.units == "inch" else f"{kg} kg ({lb} lb)"


def load_figures(plan: LoadPlan | None) -> tuple[Figure, ...]:
    """How much cloth one panel is."""
    if plan is None:
        return ()
    working = "all of a panel's cloth laid flat: below the new top edge, and doubled behind it"
    return (Figure("cloth_length", "cloth in one panel", plan.cloth, working),)


def load_amounts(spec: Spec, plan: LoadPlan | None) -> tuple[Amount, ...]:
    """The weights, rounded up."""
    if plan is None or spec.fabric.weight is None:
        return ()
    tape, panels, brackets = spec.tape, made_count(spec), spec.rod.brackets
    ounces = spec.fabric.weight.value / spec.fabric.weight.UNITS["oz/yd²"]
    weights = (f"{decimal(float(ounces))} oz/yd²", f"{decimal(float(spec.fabric.weight.value))} g/m²")
    grams = weights[0] if spec.units == "inch" else weights[1]
    evenly = max(reactions(brackets))
    share = "half of it" if brackets == 2 else f"{evenly} of it, on the one that bears most; {_not_even(brackets)}"
    side = most_on_one_side(spec)
    where = "all" if side == panels else f"{side} of {panels}"
    rows = (
        ("panel_weight", "one panel", plan.panel,
         f"{say(tape, plan.cloth)} × {say(tape, made_width(spec))} of {grams}, and what is sewn on"),
        ("hung_weight", "all panels", plan.hung, f"× {plural(panels, 'panel')}; rod, rings and lining not counted"),
        ("bracket_load_closed", "on a bracket, closed", plan.closed, share),
        ("bracket_load_open", "on a bracket, open", plan.open, f"{where} of the panels beside an end bracket"),
    )  # fmt: skip
    return tuple(Amount(key, label, value, "kg", weigh(spec, value), working) for key, label, value, working in rows)


def _not_even(brackets: int) -> str:
    """What sharing the load out evenly would say."""
    return f"not 1/{brackets}, as an even share would be, where one rod goes through all"


def load_notices(spec: Spec, plan: LoadPlan | None) -> list[Notice]:
    """Where a bracket bears more than its maker allows."""
    rating = spec.rod.bracket_rating
    if plan is None or rating is None or plan.worst <= rating.value:
        return []
    how = "open" if plan.open >= plan.closed else "closed"
    text = (
        f"A bracket bears up to {weigh(spec, plan.worst)} of cloth when the panels are {how}, and its maker allows "
        f"{weigh(spec, rating.value)}. The rod, the rings and the pull of a hand come on top. Take brackets that bear "
        "more, and fix them into the structure; ask a licensed trade where you are not sure."
    )
    return [Notice("bracket_overloaded", "warning", text)]
