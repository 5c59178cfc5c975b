"""What is cut off the bottom, and how many loops or tabs can be cut from it."""

from __future__ import annotations

from ..lengths import NOTHING, Length
from ..spec import Spec
from .drop import least_cut
from .figures import Figure
from .lots import shorter
from .plan import DropPlan, OffcutPlan, Pieces, PiecesPlan
from .widths import made_count
from .wording import say, term


def whole(length: Length, part: Length) -> int:
    """How many whole parts go into a length; none where there is no part."""
    return max(0, length // part) if part.mm > 0 else 0


def plan_offcut(spec: Spec, drop: DropPlan, pieces: Pieces | None) -> OffcutPlan:
    """The offcuts of all panels, and the ``pieces`` that the heading takes of them.

    Where the cut line slopes, what counts is the least depth across the width; where lots differ, the shortest.
    """
    panel, cut = spec.panel, least_cut(drop) - shorter(spec)
    depth = max(NOTHING, cut)
    unpicked = max(NOTHING, cut + panel.hem + panel.turn_under)
    clear = max(NOTHING, cut - panel.hem)
    return OffcutPlan(depth, unpicked, clear, _pieces(spec, pieces, depth, unpicked, clear) if pieces else None)


def _pieces(spec: Spec, pieces: Pieces, depth: Length, unpicked: Length, clear: Length) -> PiecesPlan:
    """Strips run across the panel's width, pieces are cut off the strips."""
    bought = spec.panel.count
    per_strip = whole(spec.panel.width, pieces.length)
    needed = made_count(spec) * pieces.on_each
    as_cut = bought * whole(depth, pieces.strip)
    let_down = bought * whole(unpicked, pieces.strip)
    return PiecesPlan(
        pieces=pieces,
        per_strip=per_strip,
        strips_needed=-(-needed // max(1, per_strip)),
        strips_clear=bought * whole(clear, pieces.strip),
        strips_as_cut=as_cut,
        strips_unpicked=let_down,
        needed=needed,
        available=as_cut * per_strip,
        available_unpicked=let_down * per_strip,
    )


def offcut_figures(spec: Spec, drop: DropPlan, offcut: OffcutPlan) -> tuple[Figure, ...]:
    """The offcut three ways: as it hangs, let down, and what is clear of the old hem."""
    tape, panel, cut = spec.tape, spec.panel, least_cut(drop) - shorter(spec)
    line = "cut line" if drop.level else "lowest cut line"
    line += " of the shortest lot" if shorter(spec) else ""
    start = f"{line} {say(tape, cut)}"
    hem = term(tape, 1, "old hem", panel.hem)
    turn = term(tape, 1, "old turn-under", panel.turn_under)
    nothing = ", so nothing"
    as_hung = f"all below the {start}"
    gain = panel.hem + panel.turn_under
    let_down = (
        Figure(
            "let_down_gain",
            "old hem let down",
            gain,
            f"gains what is folded up in it: hem {say(tape, panel.hem)} "
            f"{term(tape, 1, 'turn-under', panel.turn_under)}",
        ),
    )
    return (
        *(let_down if gain and cut < panel.hem else ()),
        Figure(
            "offcut_depth",
            "offcut, as it hangs",
            offcut.depth,
            as_hung if cut > NOTHING else f"{start}{nothing} comes off",
        ),
        Figure(
            "offcut_unpicked",
            "offcut, hem let down",
            offcut.unpicked,
            f"{start} {hem} {turn}{nothing if offcut.unpicked == NOTHING else ''}",
        ),
        Figure(
            "offcut_clear",
            "offcut above old hem",
            offcut.clear,
            f"{start} {term(tape, -1, 'old hem', panel.hem)}{nothing if offcut.clear == NOTHING else ''}",
        ),
    )
