"""What is said of a facing and of a border."""

from __future__ import annotations

from collections.abc import Iterator

from ...lengths import Length
from ...planning import Plan
from ...planning.hems.sewn_on import SewnOnPlan
from ...templates.said import plain
from ..pictures.hem_of_other_cloth import bordered, bordered_single, faced, halved, pressed, strip
from ..step import Step
from .face import CARD, HemWork


def facing_steps(plan: Plan, hem: SewnOnPlan) -> Iterator[Step]:
    """Strip, seam, turn."""
    assert hem.turn_under is not None, "a facing has a turn-under"
    yield Step(
        "Facing",
        f"Cut {_strips(plan, hem)}. Press a fold {plain(plan, hem.turn_under)} deep along one long "
        f"edge{' of each' if plan.panels > 1 else ''}, by the hem gauge card, and turn the ends in.",
        "once",
        view=pressed(plan, hem),
        uses=CARD,
    )
    yield Step(
        "Hem",
        f"Sew the facing's other edge to the panel's bottom edge, right sides together, {plain(plan, hem.seam)} from "
        "the edges. Turn it to the back, the seam just behind the edge, press, and pin it "
        f"{plain(plan, hem.depth)} up.",
        view=faced(plan, hem),
    )


def border_steps(plan: Plan, hem: SewnOnPlan) -> Iterator[Step]:
    """Strip, fold, seam."""
    if hem.own_hem is not None:
        yield from _single_border(plan, hem, hem.own_hem)
        return
    yield Step(
        "Border",
        f"Cut {_strips(plan, hem)}. Press {'each' if plan.panels > 1 else 'it'} in half lengthwise, right side out, "
        f"and press {plain(plan, hem.seam)} of one long edge under.",
        "once",
        view=halved(plan, hem),
    )
    yield Step(
        "Hem",
        f"Sew the border's flat edge to the panel's bottom edge, right sides together, {plain(plan, hem.seam)} from "
        f"the edges. Fold it down: it must come {plain(plan, hem.depth)} below the seam. Turn the ends in and pin "
        "the pressed edge over the seam at the back.",
        view=bordered(plan, hem),
    )


def _single_border(plan: Plan, hem: SewnOnPlan, own: Length) -> Iterator[Step]:
    """Strip, seam, its own hem."""
    yield Step("Border", f"Cut {_strips(plan, hem)}.", "once", view=strip(plan, hem))
    yield Step(
        "Hem",
        f"Sew the border's upper edge to the panel's bottom edge, right sides together, {plain(plan, hem.seam)} from "
        "the edges. Neaten both edges of the seam together, press them up, and turn the ends in. Turn the lower edge "
        f"up twice, {plain(plan, own)} each time, by the hem gauge card: the border must be {plain(plan, hem.depth)} "
        "deep. Pin its hem.",
        view=bordered_single(plan, hem),
        uses=CARD,
    )


def _strips(plan: Plan, hem: SewnOnPlan) -> str:
    size = f"{plain(plan, hem.strip)} wide and {plain(plan, hem.strip_length)} long"
    return f"a strip of other cloth {size}" if plan.panels == 1 else f"{plan.panels} strips of other cloth {size}"


FACED = HemWork(name="faced", steps=facing_steps)
BORDER = HemWork(name="border", steps=border_steps)
