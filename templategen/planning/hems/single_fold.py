"""A single fold whose raw edge is covered by a tape, or bonded to the panel."""

from __future__ import annotations

from dataclasses import dataclass

from ...lengths import Length, Tape
from ...spec import Spec
from ...spec.hems import SingleFold
from ..choices import HEM_TAPE, LEAST_HEM, WEB_WIDTH
from ..figures import Figure, Notice
from ..plan import GaugeLine, HemPlan
from ..widths import made_count, made_width
from ..wording import at_most, near, say, term
from .double_fold import shallow
from .face import HemKind, fold_to


@dataclass(frozen=True, slots=True, kw_only=True)
class SingleFoldPlan(HemPlan):
    """A hem of one fold."""

    bonded: bool
    """Whether a web holds it, and no stitching; its stitch line is then the web's lower edge."""


def plan(spec: Spec, hem: SingleFold) -> SingleFoldPlan:
    """The raw edge comes to the top of the hem, and the tape over it or the web under it."""
    bonded = hem.held_by == "bonding"
    # The row that holds the hem goes through the tape's free half, beyond the raw edge, and through the panel.
    stitches = hem.depth - min(WEB_WIDTH, hem.depth / 2) if bonded else hem.depth + HEM_TAPE / 4
    lines = (
        GaugeLine("hem depth", hem.depth, "fold"),
        GaugeLine("web's lower edge", stitches, "mark") if bonded else GaugeLine("stitching", stitches, "stitch"),
        GaugeLine("fold-to line", fold_to(hem.depth), "mark"),
    )
    return SingleFoldPlan(
        style=hem.style,
        depth=hem.depth,
        allowance=hem.depth,
        stitch_line=stitches,
        lines=tuple(sorted(lines, key=lambda line: line.length)),
        steps=(hem.depth,),
        bonded=bonded,
    )


def terms(spec: Spec, hem: SingleFoldPlan) -> str:
    """− hem."""
    return term(spec.tape, -1, "hem", hem.depth)


def figures(spec: Spec, hem: SingleFoldPlan) -> tuple[Figure, ...]:
    """Depth, line, tape."""
    line, tape_or_web = ("web, lower edge", "bonding web") if hem.bonded else ("stitch line", "hem tape")
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
            line,
            hem.stitch_line,
            f"up from the finished edge: hem {depth} {_beyond(tape, hem)}",
        ),
        Figure(
            "hem_tape",
            tape_or_web,
            width * made_count(spec),
            f"{made_count(spec)} × {say(tape, width)}"
            + ("" if hem.bonded else ", and what is turned under at the ends"),
        ),
    )


def _beyond(tape: Tape, hem: SingleFoldPlan) -> str:
    """Where the row or the web lies from the raw edge, as a term of a sum."""
    if hem.bonded:
        return term(tape, -1, "below its edge", hem.depth - hem.stitch_line)
    return term(tape, 1, "beyond it, on the tape's free half", hem.stitch_line - hem.depth)


def notices(spec: Spec, hem: SingleFoldPlan) -> tuple[Notice, ...]:
    """Shallow; on sheer cloth tape or web shows; a web bears little."""
    found = shallow(spec, hem)
    if hem.bonded and spec.cloth == "heavy":
        text = (
            "Bonding web lets go of heavy cloth, and of any that is washed often (common practice): sew a tape over "
            "the raw edge instead."
        )
        found = (*found, Notice("web_lets_go", "warning", text))
    if spec.cloth != "light":
        return found
    shows = "web under" if hem.bonded else "tape over"
    text = f"On sheer cloth the {shows} the raw edge shows through: a double fold of equal turns hides it."
    return (*found, Notice("tape_shows", "note", text))


def said(tape: Tape, hem: SingleFoldPlan) -> str:
    """Its depth."""
    return f"a single hem of {near(tape, hem.depth)}"


def shallower(tape: Tape, hem: SingleFoldPlan, short: Length) -> str:
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
