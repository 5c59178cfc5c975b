"""A double fold, by guide lines: the raw edge turned under, then the hem turned up over it."""

from __future__ import annotations

from dataclasses import dataclass

from ...lengths import Length, Tape
from ...spec import Spec
from ...spec.hems import DoubleFold
from ..choices import FULL_LENGTH_HEM, HEM_LIMITS, LEAST_HEM
from ..figures import Figure, Notice
from ..plan import GaugeLine, HemPlan
from ..wording import at_least, at_most, near, say, term
from .face import HemKind, fold_to, stitch_line


@dataclass(frozen=True, slots=True, kw_only=True)
class DoubleFoldPlan(HemPlan):
    """A hem of two folds."""

    turn_under: Length
    fold_to_turn: Length
    """From the raw edge to the line that the raw edge is folded to: twice the turn-under."""
    fold_to_depth: Length
    """From the first fold to the line that it is folded to: twice the depth."""


def plan(spec: Spec, hem: DoubleFold) -> DoubleFoldPlan:
    """The hem the spec asks for."""
    return double_fold(hem.style, hem.depth, hem.turn_under)


def double_fold(style: str, depth: Length, turn: Length) -> DoubleFoldPlan:
    """A hem of this depth with this turn-under."""
    stitches = stitch_line(depth)
    lines = (
        GaugeLine("turn-under", turn, "fold"),
        GaugeLine("hem depth", depth, "fold"),
        GaugeLine("hem + turn-under", depth + turn, "mark"),
        GaugeLine("stitching", stitches, "stitch"),
        GaugeLine("fold-to line 1", fold_to(turn), "mark"),
        GaugeLine("fold-to line 2", fold_to(depth), "mark"),
    )
    return DoubleFoldPlan(
        style=style,
        depth=depth,
        turn_under=turn,
        fold_to_turn=fold_to(turn),
        fold_to_depth=fold_to(depth),
        stitch_line=stitches,
        allowance=depth + turn,
        lines=tuple(sorted(lines, key=lambda line: line.length)),
        steps=tuple(sorted({turn, depth, depth + turn})),
    )


def terms(spec: Spec, hem: DoubleFoldPlan) -> str:
    """− hem − turn-under."""
    return f"{term(spec.tape, -1, 'hem', hem.depth)} {term(spec.tape, -1, 'turn-under', hem.turn_under)}"


def figures(spec: Spec, hem: DoubleFoldPlan) -> tuple[Figure, ...]:
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


def notices(spec: Spec, hem: DoubleFoldPlan) -> tuple[Notice, ...]:
    """Too shallow for its cloth, turned under so that it shows, or turned twice where once is better. A turn-under
    deeper than its hem never comes here: the spec's reader refuses it."""
    return (*shallow(spec, hem), *_turn_shows(spec, hem), *_pile(spec))


def shallow(spec: Spec, hem: HemPlan) -> tuple[Notice, ...]:
    """A hem less deep than its cloth asks for."""
    tape = spec.tape
    least, why = HEM_LIMITS[spec.cloth]
    full = f"; {near(tape, FULL_LENGTH_HEM)} suits full length (A Manual of Home-Making)"
    if spec.drop.to != "floor":
        least, why, full = LEAST_HEM, "short curtains have 1 in (newspaper, 24 May 1935)", ""
    if hem.depth >= least:
        return ()
    text = (
        f"A hem {near(tape, hem.depth)} deep is shallow for {spec.cloth} cloth: {at_least(tape, least)} at "
        f"least, as {why}{full}."
    )
    return (Notice("hem_shallow", "warning", text),)


def _turn_shows(spec: Spec, hem: DoubleFoldPlan) -> tuple[Notice, ...]:
    tape, depth, turn = spec.tape, hem.depth, hem.turn_under
    if spec.cloth != "light" or turn >= depth:
        return ()
    text = (
        "On sheer cloth the turned-in edge shows through as a line. Both turns equal hide it "
        f"(newspaper, 24 May 1935): a turn-under of {near(tape, depth)}, and the cut line "
        f"{near(tape, depth - turn)} lower."
    )
    return (Notice("turn_shows", "note", text),)


def _pile(spec: Spec) -> tuple[Notice, ...]:
    if not spec.fabric.pile:
        return ()
    text = (
        "Pile cloth is turned once, as two turns of it are too thick (newspaper, 24 May 1935): a hem of \"single fold "
        "with tape\"."
    )
    return (Notice("pile_turned_twice", "note", text),)


def said(tape: Tape, hem: DoubleFoldPlan) -> str:
    """Its depth and its turn-under."""
    return f"a hem of {near(tape, hem.depth)} with a turn-under of {near(tape, hem.turn_under)}"


def shallower(tape: Tape, hem: DoubleFoldPlan, short: Length) -> str:
    """A hem less deep with the same turn-under, or one of equal turns."""
    depth = hem.depth - short
    if depth >= max(LEAST_HEM, hem.turn_under):
        return f"A hem {at_most(tape, depth)} deep would just do."
    both = (depth + hem.turn_under) / 2
    if both >= LEAST_HEM:
        return f"A hem and a turn-under of {at_most(tape, both)} each would just do."
    return ""


def shallower_equal(tape: Tape, hem: DoubleFoldPlan, short: Length) -> str:
    """One less deep, of equal turns still."""
    both = (hem.allowance - short) / 2
    return f"A hem of two turns of {at_most(tape, both)} would just do." if both >= LEAST_HEM else ""


DOUBLE_FOLD = HemKind(
    name="double fold",
    plan=plan,
    terms=terms,
    figures=figures,
    notices=notices,
    said=said,
    shallower=shallower,
)
