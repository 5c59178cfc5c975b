"""What is left of the offcuts once loops or tabs have been cut, and what it yields."""

from __future__ import annotations

from fractions import Fraction

from ...lengths import NOTHING, Length
from ...spec import Spec
from ..choices import FACING_SEAM, TIE_BACK
from ..doubled import doubled_now
from ..figures import Amount, Figure, Notice
from ..hems.sewn_on import SewnOnPlan
from ..offcut import whole
from ..plan import DropPlan, HemPlan, OffcutPlan
from ..widths import made_count, side_offcut
from ..wording import near, say, term


def left_depth(spec: Spec, offcut: OffcutPlan) -> Length:
    """What is left of each offcut, its old hem let down, below the strips that are cut from it."""
    if offcut.pieces is None:
        return offcut.unpicked
    strips = -(-offcut.pieces.strips_needed // spec.panel.count)
    return max(NOTHING, offcut.unpicked - offcut.pieces.pieces.strip * strips)


def leftover_figures(spec: Spec, offcut: OffcutPlan) -> tuple[Figure, ...]:
    """How deep the rest is; nothing where nobody asks."""
    if not spec.fabric.leftovers:
        return ()
    tape, working = spec.tape, f"offcut, hem let down {say(spec.tape, offcut.unpicked)}"
    if offcut.pieces is not None:
        strips = -(-offcut.pieces.strips_needed // spec.panel.count)
        working += f" {term(tape, -1, f'{strips} × strip', offcut.pieces.pieces.strip)}"
    left = left_depth(spec, offcut)
    working += ", so nothing" if left == NOTHING else f"; {say(tape, spec.panel.width)} wide, from each panel"
    return (Figure("left_depth", "cloth left over", left, working),)


def leftover_amounts(spec: Spec, drop: DropPlan, hem: HemPlan, offcut: OffcutPlan) -> tuple[Amount, ...]:
    """Tie-backs and facing strips that the rest yields, one or the other; and tie-backs from what comes off a side."""
    if not spec.fabric.leftovers:
        return ()
    tape, left, bought = spec.tape, left_depth(spec, offcut), spec.panel.count
    long, wide = spec.fabric.tie_back_length or TIE_BACK[0], spec.fabric.tie_back_width or TIE_BACK[1]
    ties = bought * max(_laid(left, spec.panel.width, wide, long), _laid(left, spec.panel.width, long, wide))
    strip = max(hem.allowance, hem.depth) + FACING_SEAM
    strips = bought * whole(left, strip)
    rows = [
        ("tie_backs", "tie-backs", ties, f"{say(tape, long)} × {say(tape, wide)} each, cut"),
        ("facing_strips", "or facing strips", strips,
         f"{say(tape, strip)} deep: hem and turn-under, and a seam of {say(tape, FACING_SEAM)}"),
    ]  # fmt: skip
    aside, high = side_offcut(spec), side_height(spec, drop)
    if aside and high:
        count = bought * max(_laid(high, aside, wide, long), _laid(high, aside, long, wide))
        how = f"from strips {say(tape, aside)} wide and {say(tape, high)} long, cut off the sides"
        rows.append(("side_tie_backs", "tie-backs, sides", count, how))
    return tuple(Amount(key, label, Fraction(count), "pieces", str(count), how) for key, label, count, how in rows)


def side_height(spec: Spec, drop: DropPlan) -> Length:
    """How long the strip is that comes off a side, once the bottom has been cut; nothing where nobody knows.

    From the highest point of the cut line up to the casing, whose cloth is doubled, on the shortest panel.
    """
    if spec.panel.length is None:
        return NOTHING
    lowest_top = min((spec.panel.length, *spec.panel.lots)) - doubled_now(spec)
    return max(NOTHING, lowest_top - max(mark.cut for mark in drop.marks))


def leftover_notices(spec: Spec, drop: DropPlan, hem: HemPlan) -> list[Notice]:
    """Whether what comes off the sides gives the strips that are sewn on; nothing where none come off, or too few."""
    aside, high = side_offcut(spec), side_height(spec, drop)
    if not isinstance(hem, SewnOnPlan) or not aside or not high:
        return []
    given = spec.panel.count * whole(aside, hem.strip) * whole(high, hem.strip_length)
    if given < made_count(spec):
        return []
    tape, each = spec.tape, made_count(spec)
    text = (
        f"The strips cut off the sides, {near(tape, aside)} wide, give {given} strips {near(tape, hem.strip)} × "
        f"{near(tape, hem.strip_length)}, and {each} are sewn on: no other cloth is needed. Their grain then runs "
        "across the panel's."
    )
    return [Notice("strips_from_sides", "note", text)]


def _laid(depth: Length, width: Length, down: Length, across: Length) -> int:
    """Pieces from one offcut, all the same way round."""
    return whole(depth, down) * whole(width, across)
