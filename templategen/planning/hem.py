"""The new double-fold hem, by guide lines.

Fold law: a fold of depth d is made by drawing a line 2 d from the present
edge and bringing the edge to it (FM 10-16, General Fabric Repair, 24 May
2000, single-edge hem: a line 1 in from the raw edge gives a turn of 1/2 in, a
line 2 in from that fold a hem of 1 in).
"""

from __future__ import annotations

from ..lengths import Length
from ..spec import Spec
from .choices import STITCH_BELOW_FOLD
from .plan import Figure, HemPlan
from .wording import say, term


def fold_to(depth: Length) -> Length:
    """How far from the present edge the line lies that the edge is brought to."""
    return 2 * depth


def stitch_line(depth: Length) -> Length:
    """Finished edge up to the stitching: just below the upper fold, a quarter of the depth at most,
    so that it stays in the upper half of a narrow hem."""
    return depth - min(STITCH_BELOW_FOLD, depth / 4)


def plan_hem(spec: Spec) -> HemPlan:
    """The hem the spec asks for."""
    depth, turn_under = spec.hem.depth, spec.hem.turn_under
    return HemPlan(
        depth=depth,
        turn_under=turn_under,
        fold_to_turn=fold_to(turn_under),
        fold_to_depth=fold_to(depth),
        stitch_line=stitch_line(depth),
        allowance=depth + turn_under,
    )


def hem_figures(spec: Spec, hem: HemPlan) -> tuple[Figure, ...]:
    """The hem's numbers, in the order of the sewing."""
    tape = spec.tape
    depth, turn = say(tape, hem.depth), say(tape, hem.turn_under)
    return (
        Figure("hem_depth", "hem depth", hem.depth, "as given"),
        Figure("hem_turn_under", "turn-under", hem.turn_under, "as given"),
        Figure("hem_allowance", "hem allowance", hem.allowance, f"below the finished edge: {depth} + {turn}"),
        Figure(
            "hem_fold_to_turn",
            "first fold to",
            hem.fold_to_turn,
            f"2 × turn-under {turn}: a line this far from the raw edge; bring the edge to it",
        ),
        Figure(
            "hem_fold_to_depth",
            "second fold to",
            hem.fold_to_depth,
            f"2 × hem {depth}: a line this far from that fold; bring the fold to it",
        ),
        Figure(
            "stitch_line",
            "stitch line",
            hem.stitch_line,
            f"up from the finished edge: hem {depth} "
            f"{term(tape, -1, 'below the fold', hem.depth - hem.stitch_line)}",
        ),
    )
