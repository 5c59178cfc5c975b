"""Weights in the hem, and a lining behind the panel."""

from __future__ import annotations

from dataclasses import dataclass

from ..lengths import NOTHING, Length
from ..lengths.counting import plural
from ..spec import Spec
from .choices import LINING_ABOVE, LINING_SHORTER, POCKET_EASE, POCKET_SEAM, WEIGHTS_EVERY
from .figures import Figure, Notice
from .plan import DropPlan, HemPlan
from .widths import made_count, made_width
from .wording import near, say, term


@dataclass(frozen=True, slots=True)
class WeightPlan:
    """The weights of one panel."""

    count: int
    pitch: Length
    """Centre to centre."""
    size: Length

    @property
    def pocket(self) -> Length:
        """Width of a pocket, and its depth, inside its seams."""
        return self.size + POCKET_EASE

    @property
    def pocket_wide(self) -> Length:
        """Cut width of the cloth for a pocket: a seam at either side."""
        return self.pocket + 2 * POCKET_SEAM

    @property
    def pocket_long(self) -> Length:
        """Cut length of it: folded in half, with a seam at the open end."""
        return 2 * (self.pocket + POCKET_SEAM)


def plan_weights(spec: Spec) -> WeightPlan | None:
    """One at each corner and as many between as keep them no further apart than asked; None without weights.

    The pockets at the corners end with the panel's edges, so that their centres lie half a pocket inside.
    """
    every = spec.weights.every
    if every is None:
        return None
    span = max(NOTHING, made_width(spec) - spec.weights.size - POCKET_EASE)
    spaces = max(1, int(-(-span.mm // every.mm)))
    return WeightPlan(spaces + 1, span / spaces, spec.weights.size)


def weight_figures(spec: Spec, weights: WeightPlan | None) -> tuple[Figure, ...]:
    """How far apart they are, and the pocket for one."""
    if weights is None:
        return ()
    tape, every = spec.tape, spec.weights.every or NOTHING
    size, ease, seam = say(tape, weights.size), term(tape, 1, "ease", POCKET_EASE), POCKET_SEAM
    return (
        Figure(
            "weight_pitch",
            "weights, apart",
            weights.pitch,
            f"centre to centre; {plural(weights.count, 'weight')} on each panel, a pocket at each corner, no more than "
            f"{say(tape, every)} apart; {weights.count * made_count(spec)} in all",
        ),
        Figure(
            "weight_pocket",
            "pocket, cut width",
            weights.pocket_wide,
            f"weight {size} {ease} {term(tape, 1, '2 × seam', seam)}",
        ),
        Figure(
            "weight_pocket_length",
            "pocket, cut length",
            weights.pocket_long,
            f"2 × (weight {size} {ease} {term(tape, 1, 'seam', seam)}); folded in half, it hangs inside the hem",
        ),
    )


def weight_notices(spec: Spec, weights: WeightPlan | None, hem: HemPlan) -> list[Notice]:
    """Weights too large for the hem, or further apart than a handbook has them."""
    if weights is None:
        return []
    tape = spec.tape
    found = []
    if weights.pocket > hem.depth:
        text = (
            f"Weights of {near(tape, weights.size)}, in pockets {near(tape, weights.pocket)} deep, do not go into a "
            f"hem {near(tape, hem.depth)} deep. Take smaller ones, or a deeper hem."
        )
        found.append(Notice("weight_too_large", "warning", text))
    if weights.pitch > WEIGHTS_EVERY:
        text = (
            f"The weights hang {near(tape, weights.pitch)} apart; {near(tape, WEIGHTS_EVERY)} is given (Te Ao Hou, "
            "July 1955). The choice is yours."
        )
        found.append(Notice("weights_far_apart", "note", text))
    return found


def lining_shorter(spec: Spec, drop: DropPlan) -> Length | None:
    """How much higher than the panel's cut line the lining's lies, cut alike at the top; None without a lining.

    Negative where the lining is cut longer, as it is behind a border, above which the panel's own cloth ends.
    """
    lining, first = spec.lining, drop.marks[0]
    if lining.ends_above is None:
        return lining.cut_shorter
    return lining.ends_above - lining.hem - lining.turn_under + first.finish - first.cut


def lining_figures(spec: Spec, drop: DropPlan, lowered: Length) -> tuple[Figure, ...]:
    """The lining's width and, where the panel's length is known, its length; none without a lining."""
    lining, tape = spec.lining, spec.tape
    shorter = lining_shorter(spec, drop)
    if shorter is None:
        return ()
    width, inside = made_width(spec), lining.narrower
    first = drop.marks[0]
    found = [
        Figure(
            "lining_width",
            "lining, finished width",
            width - 2 * inside,
            f"panel {say(tape, width)} {term(tape, -1, '2 × inside its edge', inside)}",
        ),
        *_lining_ends(spec, drop, shorter),
    ]
    if spec.panel.length is not None:
        length = spec.panel.length - lowered - first.cut - shorter
        working = (
            f"panel {say(tape, spec.panel.length)} {term(tape, -1, 'off the top', lowered)} "
            f"{term(tape, -1, 'cut line', first.cut)} {term(tape, -1, 'cut shorter', shorter)}"
        )
        found.append(Figure("lining_cut_length", "lining, cut length", length, working))
    return tuple(found)


def _lining_ends(spec: Spec, drop: DropPlan, shorter: Length) -> tuple[Figure, Figure]:
    """Its cut line and its finished edge: whichever was given leads to the other."""
    lining, tape, first = spec.lining, spec.tape, drop.marks[0]
    allowance = lining.hem + lining.turn_under
    cut, finish = say(tape, first.cut), term(tape, -1, "finish line", first.finish)
    line = f"cut line {cut} {term(tape, 1, 'cut shorter', shorter)}"
    above = (
        f"cut line {cut} {term(tape, 1, 'shorter', shorter)} {term(tape, 1, 'its hem and turn', allowance)} {finish}"
    )
    if lining.ends_above is not None:
        line = (
            f"finish line {say(tape, first.finish)} {term(tape, 1, 'ends above', lining.ends_above)} "
            f"{term(tape, -1, 'its hem and turn', allowance)}"
        )
        above = "as given"
    return (
        Figure("lining_cut_line", "lining's cut line", first.cut + shorter, f"up from the old bottom edge: {line}"),
        Figure(
            "lining_above",
            "lining ends above hem",
            first.cut + shorter + allowance - first.finish,
            f"its finished edge above the panel's: {above}",
        ),
    )


def lining_notices(spec: Spec, drop: DropPlan, hem: HemPlan) -> list[Notice]:
    """A lining that shows below the panel, or ends so high that light comes through above the hem."""
    lining, tape = spec.lining, spec.tape
    shorter = lining_shorter(spec, drop)
    if shorter is None:
        return []
    first = drop.marks[0]
    above = first.cut + shorter + lining.hem + lining.turn_under - first.finish
    if above <= NOTHING:
        text = (
            f"The lining would end {near(tape, -above)} below the panel's edge, and show: cut it at least that much "
            "shorter, or turn up a deeper hem."
        )
        return [Notice("lining_shows", "stop", text)]
    least, most = LINING_SHORTER
    if above >= hem.depth:
        text = (
            f"The lining would end {near(tape, above)} above the panel's edge, and the hem is {near(tape, hem.depth)} "
            f"deep: light shows above it. Write lining.ends_above, {near(tape, LINING_ABOVE)}, instead. Cut "
            f"{near(tape, least)} to {near(tape, most)} shorter (The Complete Photo Guide to Curtains and Draperies, "
            "2006) it is right behind hems turned twice alike."
        )
        return [Notice("lining_above_hem", "warning", text)]
    if lining.cut_shorter is not None and not least <= shorter <= most:
        text = (
            f"The lining is cut {near(tape, shorter)} shorter than the panel; {near(tape, least)} at the "
            f"sill and {near(tape, most)} at the floor are given (The Complete Photo Guide to Curtains and "
            "Draperies, 2006). The choice is yours."
        )
        return [Notice("lining_unusual", "note", text)]
    return []
