"""The error budget of a template: how far out a mark may come, counted from the template's zero.

Along the datum edge five things count. The print may be too long or too short: a bar
was accepted that is a little out, the eye misread it, the rule itself is not true. All
three grow with the distance, and no way of splitting changes them. Every join before
the mark slips a little, wherever it lies; joins beyond the mark cost nothing. Every
join also turns what comes after it, which shortens the way along in second order and
in first order carries it sideways, the more the nearer to zero the join lies. Last
comes the pencil on its line.

The datum edge does not lie between the two registration marks of a join. A slip at
them is larger at the edge, as on a lever: keeping them far apart and near the edge
does as much for a template as leaving out joins.

What is bounded by the bars alone is large, since a bar shows its fault over 100 mm and
the template repeats it. The taped template is a longer bar: measured from end to end,
laid to a straight edge so that its turns are pressed out, it bounds scale and joins
together. Of what the check leaves open a mark at the share q of the length has q; to
that come 1 - q of the slips before it and q of those after it, which may have made up
for each other.

Left out: how the zero is laid against the work, which is no fault of the template;
and the paper's swelling with damp air (measured by ISO 8226-1), because bars and closing length
swell with it: they are to be measured on the day the template is used.

These are estimates, and floats; where a mark stands remains exact.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from fractions import Fraction
from math import ceil, floor
from typing import TYPE_CHECKING

from ..drawing import Drawing, Mark, Number
from ..lengths import MM_PER_INCH, Tape
from .chance import within
from .furniture import BAR
from .pieces import Piece
from .taping import USUAL, Limits, Way, far_mark, slips_at, span_of

if TYPE_CHECKING:
    from .kit import Correction
    from .placed import Placed

TOLERANCE = MM_PER_INCH / 4
"""What the work is held to, in mm: made within 1/4 in, UFGS-12491N, US federal guide specification, 2.2.1.1
(its metric text says 6 mm)."""
SHARE = 0.99
"""Our choice, because once in a hundred is as often as anybody cares to tape a template again."""
HALF_MILLIMETRE = Fraction(1, 2)
THIRTY_SECOND = MM_PER_INCH / 32
"""Finest divisions read on a rule. Our choice, because rules for the bench are sold with them."""


def step_of(tape: Tape) -> Fraction:
    """The finest division of a rule in the tape's units, in mm: half a millimetre or 1/32 in."""
    return THIRTY_SECOND if tape.units == "inch" else HALF_MILLIMETRE


@dataclass(frozen=True, slots=True)
class Closing:
    """What the taped template must measure from end to end, and what that is worth.

    Reckoned as for a printer that was not corrected: the length proves the print, however it came to be true.
    """

    length: Fraction
    joins: int
    tolerance: float
    """What joins that were made with care may bring, in mm: what is more has another cause."""
    usable: float | None
    """By how much it may be out before some mark may lie beyond what the work is held to, in mm; None where
    one may even if it is not out at all."""
    mark: Mark
    """The mark of which least is known once the length was found within the tolerance."""
    worst: float
    likely: float
    """For that mark, in mm, as in a budget."""


@dataclass(frozen=True, slots=True)
class Budget:
    """How far out one mark of a template may come, in mm: each cause at its limit, and all together."""

    template: str
    mark: Mark
    turns: frozenset[int]
    """How the pieces lie on their sheets: 0 along the bar across, 90 along the bar along."""
    printer: float
    """What is left of the printer's scale once the bars have passed; none where it was measured and corrected."""
    eye: float
    rule: float
    joins: float
    turning: float
    pen: float
    likely: float
    """What 99 tapings in 100 keep within. The turning, which is of second order, is not in it."""
    across: float
    across_likely: float
    """How far sideways the mark may lie from the first piece's datum edge produced, in mm, before the template
    is laid to a straight edge: at worst, and in 99 tapings of 100."""
    closing: Closing | None
    """None for a template in one piece."""

    @property
    def worst(self) -> float:
        """Every cause at its limit, and all the same way."""
        return self.printer + self.eye + self.rule + self.joins + self.turning + self.pen

    @property
    def promised(self) -> float:
        """The worst once all checks are made: the closing length too, where there is one."""
        return min(self.worst, self.closing.worst) if self.closing else self.worst


def budgets(
    sheets: Sequence[Sequence[Placed]],
    drawings: Sequence[Drawing],
    correction: Correction,
    step: Fraction = HALF_MILLIMETRE,
    limits: Limits = USUAL,
) -> list[Budget]:
    """The budget of every drawing whose pieces lie on ``sheets``, in the order of the drawings."""
    placed: dict[str, list[tuple[Piece, int]]] = {drawing.name: [] for drawing in drawings}
    for on_it in sheets:
        for each in on_it:
            placed[each.piece.drawing.name].append((each.piece, each.turn))
    corrected = tuple(axis for axis, ratio in ((0, correction.across), (90, correction.along)) if ratio != 1)
    found: list[Budget] = []
    for pairs in placed.values():
        pairs.sort(key=lambda pair: pair[0].number)
        pieces, turns = [piece for piece, _ in pairs], [turn for _, turn in pairs]
        found.append(budget_of(pieces, turns, corrected, None, step, limits))
    return found


def budget_of(
    pieces: Sequence[Piece],
    turns: Sequence[int],
    corrected: Sequence[int] = (),
    mark: Mark | None = None,
    step: Fraction = HALF_MILLIMETRE,
    limits: Limits = USUAL,
) -> Budget:
    """The budget of one template at ``mark``, which left out is the one farthest from its zero.

    ``pieces`` are all of the template's, in order, and ``turns`` how each lies
    on its sheet (0 or 90). ``corrected`` names those turns along which the
    printer was measured and is corrected for. ``step`` is the finest division
    of the rule, in mm, to which tolerances are rounded.
    """
    drawing = pieces[0].drawing
    mark = mark or far_mark(drawing)
    way = Way.to(mark, pieces, turns)
    share = {turn: abs(float(length)) / float(BAR) for turn, length in way.by_turn.items()}
    loose = [limits.accepted * part for turn, part in share.items() if turn not in corrected]
    misread = [limits.eye * part for part in share.values()]
    rule = limits.rule_over(float(BAR)) * sum(share.values())
    scale = [*loose, *misread, rule]
    turning, across = way.turned(drawing, limits)
    slips = slips_at(drawing, 0, limits)
    pen = [limits.line, limits.pencil]
    levers = [limits.slip * lever / span_of(drawing) for lever in way.beyond]
    return Budget(
        template=drawing.name,
        mark=mark,
        turns=frozenset(turns),
        printer=sum(loose),
        eye=sum(misread),
        rule=rule,
        joins=way.joins * sum(slips),
        turning=turning,
        pen=sum(pen),
        likely=within([*scale, *slips * way.joins, *pen], SHARE),
        across=across,
        across_likely=within([*levers, *levers, *[limits.slip] * way.joins], SHARE),
        closing=_closing(pieces, step, limits) if len(pieces) > 1 else None,
    )


def closing_tolerance(
    drawing: Drawing,
    joins: int,
    height: Number = 0,
    step: Fraction = HALF_MILLIMETRE,
    limits: Limits = USUAL,
) -> float:
    """By how much a length measured over ``joins`` joins of ``drawing`` may be out, in mm, if they were made with care.

    ``height`` is where on the template it is measured: along the datum edge, 0,
    or along a line that is printed at some other height. What 99 tapings in 100
    bring, and never more than all joins at their limit, with the eye's
    misreading: rounded up to a whole ``step``. How long the length is does not
    come into it, nor the printer, nor the rule: a tolerance that let their
    faults pass would find none.
    """
    slips = slips_at(drawing, height, limits)
    out = min(joins * sum(slips), within(slips * joins, SHARE)) + limits.eye
    return float(ceil(out / float(step) - 1e-9) * step)


def _closing(pieces: Sequence[Piece], step: Fraction, limits: Limits) -> Closing:
    drawing, joins = pieces[0].drawing, len(pieces) - 1
    length = float(drawing.length)
    tolerance = closing_tolerance(drawing, joins, 0, step, limits)
    reading = [limits.rule_over(length), limits.eye]
    slips, pen = slips_at(drawing, 0, limits), [limits.line, limits.pencil]
    slip, held_to = sum(slips), float(TOLERANCE) - sum(pen)
    places = [float(piece.right.at) for piece in pieces if piece.right]
    usable, worst, known = float("inf"), -1.0, (far_mark(drawing), 0.0, 0)
    for mark in drawing.marks or (far_mark(drawing),):
        at = float(mark.at)
        share, before = abs(at) / length, sum(min(0.0, at) < place < max(0.0, at) for place in places)
        rest = slip * ((1 - share) * before + share * (joins - before))
        unchecked = limits.scale * abs(at) + slip * before
        if share and unchecked > held_to:
            usable = min(usable, (held_to - rest) / share - sum(reading))
        out = min(unchecked, share * (tolerance + sum(reading)) + rest)
        if out > worst:
            worst, known = out, (mark, share, before)
    mark, share, before = known
    checked = [share * part for part in (tolerance, *reading)]
    checked += [(1 - share) * part for part in slips * before] + [share * part for part in slips * (joins - before)]
    return Closing(
        length=drawing.length,
        joins=joins,
        tolerance=tolerance,
        usable=_usable(usable, tolerance, step),
        mark=mark,
        worst=worst + sum(pen),
        likely=within([*checked, *pen], SHARE),
    )


def _usable(most: float, tolerance: float, step: Fraction) -> float | None:
    """The most that a length may be out, rounded down to a whole step; None for less than nothing."""
    if most < 0:
        return None
    return tolerance if most == float("inf") else float(floor(most / float(step) + 1e-9) * step)
