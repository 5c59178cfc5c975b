"""A casing: a tube along the top that the rod is pushed through, as it came or stitched to a new depth."""

from __future__ import annotations

from dataclasses import dataclass

from ...lengths import NOTHING, Length, Tape
from ...spec import Spec
from ...spec.headings import Casing
from .. import hanging
from ..choices import EASY_TUBE_IN_DIAMETERS
from ..figures import Figure, Notice
from ..plan import GaugeLine, HeadingPlan
from ..wording import at_least, near, say, term
from .face import Hang, HeadingKind


@dataclass(frozen=True, slots=True, kw_only=True)
class CasingPlan(HeadingPlan):
    """A casing stitched anew. It has no marks along its edge: its lines run across the whole width."""

    given: Casing
    header: Length
    depth: Length
    """From the casing's top down to its stitch line."""
    stitch_line: Length
    """Panel's top edge down to the casing's stitch line."""


def _sizes(spec: Spec, heading: Casing) -> tuple[Length, Length]:
    """Header and depth: as given, or as the panel has them."""
    header = spec.panel.header if heading.header is None else heading.header
    return header, spec.panel.casing if heading.depth is None else heading.depth


def hang(spec: Spec, heading: Casing) -> Hang:
    """The rod lifts the casing's top; the header stands above it. Offset: -header - take-up(casing)."""
    header, depth = _sizes(spec, heading)
    return Hang.of_tube("casing", "header", header, depth, spec.rod.diameter)


def explain(tape: Tape, hang: Hang) -> str:
    """How a panel hangs by its casing, as a clause."""
    tube = hang.tube
    assert tube is not None, "a casing is a tube"
    standing = f"its header stands {near(tape, tube.top)} above the rod and " if tube.top else ""
    return (
        f"by its casing, {standing}the casing, {near(tape, tube.depth)} deep, "
        f"takes up {near(tape, tube.take_up)} going round the rod"
    )


def doubled(spec: Spec, heading: Casing) -> Length:
    """Header and casing are both of doubled cloth."""
    header, depth = _sizes(spec, heading)
    return header + depth


def lay_out(spec: Spec, heading: Casing) -> CasingPlan:
    """The casing's lines, from the panel's top edge down."""
    header, depth = _sizes(spec, heading)
    under = (GaugeLine("stitching under the header", header, "stitch"),) if header else ()
    return CasingPlan(
        style=heading.style,
        thing="casing",
        given=heading,
        marks=(),
        thing_width=NOTHING,
        edge_inset=NOTHING,
        pitch=NOTHING,
        header=header,
        depth=depth,
        stitch_line=header + depth,
        lines=(*under, GaugeLine("casing's stitch line", header + depth, "stitch")),
    )


def hang_figures(spec: Spec, casing: CasingPlan) -> tuple[Figure, ...]:
    """Header and depth."""
    given, panel = casing.given, spec.panel
    return (
        Figure("casing_header", "header", casing.header, _kept(spec, given.header is None, panel.header)),
        Figure("casing_depth", "casing depth", casing.depth, _kept(spec, given.depth is None, panel.casing)),
    )


def _kept(spec: Spec, left: bool, now: Length) -> str:
    return f"as it is now, {say(spec.tape, now)}" if left else "as given"


def figures(spec: Spec, casing: CasingPlan) -> tuple[Figure, ...]:
    """Where it is stitched."""
    tape = spec.tape
    working = f"down from the top edge: header {say(tape, casing.header)} {term(tape, 1, 'casing', casing.depth)}"
    return (Figure("casing_stitch_line", "casing's stitch line", casing.stitch_line, working),)


def notices(spec: Spec, casing: CasingPlan) -> tuple[Notice, ...]:
    """Whether the rod goes through, and easily."""
    tape, rod = spec.tape, spec.rod.diameter
    least, easy = hanging.least_tube(rod), EASY_TUBE_IN_DIAMETERS * rod
    if not hanging.passes(rod, casing.depth):
        text = (
            f"The rod does not go through the new casing: a rod {near(tape, rod)} thick needs one at least "
            f"{at_least(tape, least)} deep, half its girth, and this one is {near(tape, casing.depth)}."
        )
        return (Notice("new_casing_too_tight", "stop", text),)
    if casing.depth < easy:
        text = (
            f"The rod goes through the casing with little to spare: it is {near(tape, casing.depth)} deep. Twice "
            f"the rod's diameter, {near(tape, easy)}, goes on easily (A Manual of Home-Making)."
        )
        return (Notice("new_casing_tight", "note", text),)
    return ()


CASING = HeadingKind(
    name="casing",
    title="The casing",
    marks_said="",
    edge="casing",
    hang=hang,
    explain=explain,
    doubled=doubled,
    lay_out=lay_out,
    hang_figures=hang_figures,
    figures=figures,
    notices=notices,
    takes_up="gathered",
)
