"""A single fold whose raw edge is covered by a tape."""

from __future__ import annotations

from ...lengths import Length, Tape
from ...spec import Spec
from ...spec.hems import SingleFold
from ..choices import LEAST_HEM
from ..figures import Figure, Notice
from ..plan import GaugeLine, HemPlan
from ..widths import made_count, made_width
from ..wording import at_most, near, say, term
from .double_fold import shallow
from .face import HemKind, fold_to, stitch_line


def plan(spec: Spec, hem: SingleFold) -> HemPlan:
    """The raw edge comes to the top of the hem, and the tape over it."""
    stitches = stitch_line(hem.depth)
    lines = (
        GaugeLine("hem depth", hem.depth, "fold"),
        GaugeLine("stitching", stitches, "stitch"),
        GaugeLine("fold-to line", fold_to(hem.depth), "mark"),
    )
    return HemPlan(
        style=hem.style,
        depth=hem.depth,
        allowance=hem.depth,
        stitch_line=stitches,
        lines=tuple(sorted(lines, key=lambda line: line.length)),
        steps=(hem.depth,),
    )


def terms(spec: Spec, hem: HemPlan) -> str:
    """− hem."""
    return term(spec.tape, -1, "hem", hem.depth)


def figures(spec: Spec, hem: HemPlan) -> tuple[Figure, ...]:
    """Depth, line, tape."""
    tape, depth = spec.tape, say(spec.tape, hem.depth)
    width = made_width(spec)
    return (
        Figure("hem_depth", "hem depth", hem.depth, "as given"),
        Figure("hem_allowance", "hem allowance", hem.allowance, f"below the finished edge: {depth}, turned up once"),
        Figure(
            "hem_fold_to_depth",
            "fold to",
            fold_to(hem.depth),
            f"2 × hem {depth}: a line this far from the raw edge; bring the edge to it",
        ),
        Figure(
            "stitch_line",
            "stitch line",
            hem.stitch_line,
            f"up from the finished edge: hem {depth} {term(tape, -1, 'below its edge', hem.depth - hem.stitch_line)}",
        ),
        Figure(
            "hem_tape",
            "hem tape",
            width * made_count(spec),
            f"{made_count(spec)} × {say(tape, width)}, and what is turned under at the ends",
        ),
    )


def notices(spec: Spec, hem: HemPlan) -> tuple[Notice, ...]:
    """Shallow; on sheer cloth the tape shows."""
    found = shallow(spec, hem)
    if spec.cloth != "light":
        return found
    text = "On sheer cloth the tape over the raw edge shows through: a double fold of equal turns hides it."
    return (*found, Notice("tape_shows", "note", text))


def said(tape: Tape, hem: HemPlan) -> str:
    """Its depth."""
    return f"a single hem of {near(tape, hem.depth)}"


def shallower(tape: Tape, hem: HemPlan, short: Length) -> str:
    """One less deep."""
    depth = hem.depth - short
    return f"A hem {at_most(tape, depth)} deep would just do." if depth >= LEAST_HEM else ""


SINGLE_FOLD = HemKind(
    name="single fold with tape",
    plan=plan,
    terms=terms,
    figures=figures,
    notices=notices,
    said=said,
    shallower=shallower,
)
