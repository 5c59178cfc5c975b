"""Hems of other cloth: a facing turned up behind the edge, or a doubled border sewn on below it."""

from __future__ import annotations

from dataclasses import dataclass

from ...lengths import Length, Tape
from ...spec import Spec
from ...spec.hems import Border, Faced
from ..choices import STRIP_END
from ..figures import Figure, Notice
from ..plan import GaugeLine, HemPlan
from ..widths import made_count, made_width
from ..wording import near, say, term
from .double_fold import shallow
from .face import HemKind, fold_to, stitch_line


@dataclass(frozen=True, slots=True, kw_only=True)
class SewnOnPlan(HemPlan):
    """Other cloth sewn to the bottom edge."""

    seam: Length
    strip: Length
    """Cut width of the strip of other cloth."""
    strip_length: Length
    """Cut length of the strip for one panel."""
    turn_under: Length | None = None
    """Of a facing's upper edge."""
    own_hem: Length | None = None
    """Depth of the hem of a border of single cloth; None of one that is doubled."""


def plan_facing(spec: Spec, hem: Faced) -> SewnOnPlan:
    """The seam lies on the finished edge; of the facing seam + depth + turn-under are cut."""
    stitches = stitch_line(hem.depth)
    lines = (
        GaugeLine("seam", hem.seam, "stitch"),
        GaugeLine("turn-under", hem.turn_under, "fold"),
        GaugeLine("fold-to line", fold_to(hem.turn_under), "mark"),
        GaugeLine("facing's depth", hem.depth, "fold"),
        GaugeLine("facing, cut width", hem.seam + hem.depth + hem.turn_under, "mark"),
    )
    return SewnOnPlan(
        style=hem.style,
        depth=hem.depth,
        allowance=hem.seam,
        stitch_line=stitches,
        lines=tuple(sorted(lines, key=lambda line: line.length)),
        steps=tuple(sorted({hem.turn_under, hem.depth})),
        seam=hem.seam,
        strip=hem.seam + hem.depth + hem.turn_under,
        strip_length=made_width(spec) + 2 * STRIP_END,
        turn_under=hem.turn_under,
    )


def plan_border(spec: Spec, hem: Border) -> SewnOnPlan:
    """The panel ends depth − seam above the finished edge.

    A doubled band is cut twice its depth and two seams wide; a single one
    seam, depth and its own hem's two turns.
    """
    own = hem.own_hem
    lines = [GaugeLine("seam", hem.seam, "stitch")]
    if own is None:
        lines += [
            GaugeLine("border's depth", hem.depth, "fold"),
            GaugeLine("border, half its cut width", hem.depth + hem.seam, "mark"),
        ]
    else:
        lines += [
            GaugeLine("border's hem", own, "fold"),
            GaugeLine("fold-to line", fold_to(own), "mark"),
            GaugeLine("border's depth", hem.depth, "mark"),
            GaugeLine("border, cut width", hem.seam + hem.depth + 2 * own, "mark"),
        ]
    return SewnOnPlan(
        style=hem.style,
        depth=hem.depth,
        allowance=hem.seam - hem.depth,
        stitch_line=hem.depth if own is None else stitch_line(own),
        lines=tuple(sorted(lines, key=lambda line: line.length)),
        steps=(hem.depth,) if own is None else tuple(sorted({own, hem.depth})),
        sewn_on=hem.depth,
        seam=hem.seam,
        strip=2 * (hem.depth + hem.seam) if own is None else hem.seam + hem.depth + 2 * own,
        strip_length=made_width(spec) + 2 * STRIP_END,
        own_hem=own,
    )


def facing_terms(spec: Spec, hem: SewnOnPlan) -> str:
    """− seam."""
    return term(spec.tape, -1, "seam", hem.seam)


def border_terms(spec: Spec, hem: SewnOnPlan) -> str:
    """+ border − seam."""
    return f"{term(spec.tape, 1, 'border', hem.depth)} {term(spec.tape, -1, 'seam', hem.seam)}"


def facing_figures(spec: Spec, hem: SewnOnPlan) -> tuple[Figure, ...]:
    """Depth, strip, seams."""
    tape, turn = spec.tape, hem.turn_under
    assert turn is not None, "a facing has a turn-under"
    return (
        Figure("hem_depth", "facing, depth", hem.depth, "as given"),
        Figure("hem_turn_under", "turn-under", turn, "as given, of the facing's upper edge"),
        Figure("hem_allowance", "hem allowance", hem.allowance, "below the finished edge: the seam alone"),
        Figure(
            "facing_strip",
            "facing, cut width",
            hem.strip,
            f"seam {say(tape, hem.seam)} {term(tape, 1, 'depth', hem.depth)} {term(tape, 1, 'turn-under', turn)}",
        ),
        _strip_length(spec, hem),
        Figure(
            "stitch_line",
            "stitch line",
            hem.stitch_line,
            f"up from the finished edge: facing {say(tape, hem.depth)} "
            f"{term(tape, -1, 'below its fold', hem.depth - hem.stitch_line)}",
        ),
    )


def border_figures(spec: Spec, hem: SewnOnPlan) -> tuple[Figure, ...]:
    """Depth, strip, seam."""
    tape, own = spec.tape, hem.own_hem
    cut = f"2 × (depth {say(tape, hem.depth)} {term(tape, 1, 'seam', hem.seam)}), folded in half"
    stitched = Figure("stitch_line", "seam line", hem.stitch_line, "up from the finished edge: the border's depth")
    if own is not None:
        cut = (
            f"seam {say(tape, hem.seam)} {term(tape, 1, 'depth', hem.depth)} "
            f"{term(tape, 1, '2 × its own hem', own)}"
        )
        below = term(tape, -1, "below its fold", own - hem.stitch_line)
        working = f"up from the finished edge: border's own hem {say(tape, own)} {below}"
        stitched = Figure("stitch_line", "stitch line", hem.stitch_line, working)
    return (
        Figure("hem_depth", "border, depth", hem.depth, "as given"),
        Figure(
            "hem_allowance",
            "hem allowance",
            hem.allowance,
            f"below the finished edge: seam {say(tape, hem.seam)} {term(tape, -1, 'border', hem.depth)}, so the panel "
            "ends above it",
        ),
        Figure(
            "border_strip",
            "border, cut width",
            hem.strip,
            cut,
        ),
        _strip_length(spec, hem),
        stitched,
    )


def _strip_length(spec: Spec, hem: SewnOnPlan) -> Figure:
    tape, width = spec.tape, made_width(spec)
    working = f"panel {say(tape, width)} {term(tape, 1, '2 × end', STRIP_END)}; {made_count(spec)} of them"
    return Figure("sewn_on_length", "strip, cut length", hem.strip_length, working)


def facing_notices(spec: Spec, hem: SewnOnPlan) -> tuple[Notice, ...]:
    """Shallow; on sheer cloth it shows through."""
    found = shallow(spec, hem)
    if spec.cloth != "light":
        return found
    text = (
        "On sheer cloth a facing shows through as a band as deep as it is: take cloth of the same colour, or a border, "
        "which is meant to be seen."
    )
    return (*found, Notice("facing_shows", "note", text))


def border_notices(spec: Spec, hem: SewnOnPlan) -> tuple[Notice, ...]:
    """A border not deeper than its seam."""
    if hem.depth > hem.seam:
        return ()
    tape = spec.tape
    text = (
        f"The border, {near(tape, hem.depth)} deep, is no deeper than its seam, {near(tape, hem.seam)}: make it "
        "deeper, or the seam narrower."
    )
    return (Notice("border_in_seam", "stop", text),)


def facing_said(tape: Tape, hem: SewnOnPlan) -> str:
    """Its seam, which is all the cloth it takes."""
    return f"a facing with a seam of {near(tape, hem.seam)}"


def border_said(tape: Tape, hem: SewnOnPlan) -> str:
    """Its depth."""
    return f"a border of {near(tape, hem.depth)} with a seam of {near(tape, hem.seam)}"


def facing_shallower(tape: Tape, hem: SewnOnPlan, short: Length) -> str:
    """A narrower seam does not help; a border below the edge does."""
    return f"A border at least {near(tape, short)} deeper than its seam would reach (hem.style \"border\")."


def border_shallower(tape: Tape, hem: SewnOnPlan, short: Length) -> str:
    """A deeper border reaches."""
    return f"A border {near(tape, hem.depth + short)} deep would just reach."


FACED = HemKind(
    name="faced",
    plan=plan_facing,
    terms=facing_terms,
    figures=facing_figures,
    notices=facing_notices,
    said=facing_said,
    shallower=facing_shallower,
)
BORDER = HemKind(
    name="border",
    plan=plan_border,
    terms=border_terms,
    figures=border_figures,
    notices=border_notices,
    said=border_said,
    shallower=border_shallower,
)
