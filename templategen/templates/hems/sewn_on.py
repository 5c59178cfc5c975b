"""What is said of a facing and of a border."""

from __future__ import annotations

from collections.abc import Iterator

from ...lengths import Length
from ...planning import Plan
from ...planning.hems.sewn_on import SewnOnPlan
from ..said import Step, plain
from .face import HemWords


def facing_card(plan: Plan, hem: SewnOnPlan) -> tuple[str, ...]:
    """What each line measures."""
    return (
        "Base edge on the facing's upper raw edge: mark the cloth at its fold-to line, bring the edge to it, press.",
        "The other lines measure the facing's depth, its cut width and the seam.",
    )


def facing_steps(plan: Plan, hem: SewnOnPlan) -> Iterator[Step]:
    """Strip, seam, turn."""
    assert hem.turn_under is not None, "a facing has a turn-under"
    yield (
        f"Cut {_strips(plan, hem)} for the facing. Press a fold {plain(plan, hem.turn_under)} deep along one long "
        f"edge{' of each' if plan.panels > 1 else ''}, by the hem gauge card, and turn the ends in.",
        False,
    )
    yield (
        f"Sew the facing's other edge to the panel's bottom edge, right sides together, {plain(plan, hem.seam)} from "
        "the edges. Turn it to the back, the seam just behind the edge, press, and pin it "
        f"{plain(plan, hem.depth)} up. It is stitched when the panel has hung and is right.",
        True,
    )


def border_card(plan: Plan, hem: SewnOnPlan) -> tuple[str, ...]:
    """What each line measures."""
    if hem.own_hem is None:
        return ("The lines measure the border's depth, half its cut width, and the seam.",)
    return (
        "Base edge on the border's lower raw edge: mark the cloth at the fold-to line, bring the edge to it, press. "
        "Base edge on that fold: the same again.",
        "The other lines measure the border's depth, its cut width and the seam.",
    )


def border_steps(plan: Plan, hem: SewnOnPlan) -> Iterator[Step]:
    """Strip, fold, seam."""
    if hem.own_hem is not None:
        yield from _single_border(plan, hem, hem.own_hem)
        return
    yield (
        f"Cut {_strips(plan, hem)} for the border. Press {'each' if plan.panels > 1 else 'it'} in half lengthwise, "
        f"right side out, and press {plain(plan, hem.seam)} of one long edge under.",
        False,
    )
    yield (
        f"Sew the border's flat edge to the panel's bottom edge, right sides together, {plain(plan, hem.seam)} from "
        f"the edges. Fold it down: it must come {plain(plan, hem.depth)} below the seam. Turn the ends in and pin "
        "the pressed edge over the seam at the back. It is stitched when the panel has hung and is right.",
        True,
    )


def _single_border(plan: Plan, hem: SewnOnPlan, own: Length) -> Iterator[Step]:
    """Strip, seam, its own hem."""
    yield f"Cut {_strips(plan, hem)} for the border.", False
    yield (
        f"Sew the border's upper edge to the panel's bottom edge, right sides together, {plain(plan, hem.seam)} from "
        "the edges. Neaten both edges of the seam together, press them up, and turn the ends in. Turn the lower edge "
        f"up twice, {plain(plan, own)} each time, by the hem gauge card: the border must be {plain(plan, hem.depth)} "
        "deep. Pin its hem; it is stitched when the panel has hung and is right.",
        True,
    )


def _strips(plan: Plan, hem: SewnOnPlan) -> str:
    size = f"{plain(plan, hem.strip)} wide and {plain(plan, hem.strip_length)} long"
    return f"a strip of other cloth {size}" if plan.panels == 1 else f"{plan.panels} strips of other cloth {size}"


FACED = HemWords(name="faced", card=facing_card, steps=facing_steps)
BORDER = HemWords(name="border", card=border_card, steps=border_steps)
