"""A casing: a tube along the top that the rod is pushed through, as it came or stitched to a new depth."""

from __future__ import annotations

from dataclasses import dataclass

from ...lengths import NOTHING, Length, Tape
from ...spec import Spec
from ...spec.headings import Casing
from .. import hanging
from ..doubled import kept, old_rows, rows_left
from ..figures import Figure, Notice
from ..heading_choices import EASY_TUBE_IN_DIAMETERS, LEAST_HEADER, ROWS_APART, STANDS_UP, TUBE_EASE
from ..plan import HeadingPlan
from ..wording import at_least, at_most, near, say, term
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
    new_rows: tuple[Length, ...]
    """Rows to be stitched, down from the top edge; none where old rows already lie there."""
    unpicked: tuple[Length, ...]
    """Old rows inside the new casing, down from the top edge: they would stop the rod."""


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
    rows = (header, header + depth) if header else (depth,)
    there = old_rows(spec) if kept(spec, heading, header + depth) else ()
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
        new_rows=tuple(row for row in rows if row not in there),
        unpicked=tuple(row for row in there if header < row < header + depth),
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
    """Where it is stitched, and how deep it has to be for this rod."""
    tape, rod = spec.tape, spec.rod.diameter
    working = f"down from the top edge: header {say(tape, casing.header)} {term(tape, 1, 'casing', casing.depth)}"
    easy = EASY_TUBE_IN_DIAMETERS * rod
    return (
        Figure("casing_stitch_line", "casing's stitch line", casing.stitch_line, working),
        Figure("casing_least", "casing, at least", hanging.least_tube(rod), _least_working(spec)),
        Figure("casing_easy", "casing, easy", easy, f"2 × diameter {say(tape, rod)} (A Manual of Home-Making)"),
    )


def _least_working(spec: Spec) -> str:
    """Half the girth, and by how much the rule of thumb is wrong."""
    tape, rod = spec.tape, spec.rod.diameter
    least, thumb = hanging.least_tube(rod), rod + TUBE_EASE
    apart = f"{say(tape, abs(least - thumb))} {'too little: the rod does not pass' if thumb < least else 'more'}"
    return (
        f"half the girth of a rod {say(tape, rod)} thick; by the rule of thumb, the diameter and "
        f"{say(tape, TUBE_EASE)} over, it would be {say(tape, thumb)}, {apart}"
    )


def notices(spec: Spec, casing: CasingPlan) -> tuple[Notice, ...]:
    """Whether the rod goes through and easily, the header stands, and old rows are in the way."""
    return (*_rod_notices(spec, casing), *_header_notices(spec, casing), *_row_notices(spec, casing))


def _rod_notices(spec: Spec, casing: CasingPlan) -> tuple[Notice, ...]:
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


def _header_notices(spec: Spec, casing: CasingPlan) -> tuple[Notice, ...]:
    tape, header, most = spec.tape, casing.header, STANDS_UP[spec.cloth]
    if NOTHING < header < LEAST_HEADER:
        text = (
            f"A header {near(tape, header)} high is a ridge and no ruffle: make it {at_least(tape, LEAST_HEADER)} or "
            "more, or leave it away."
        )
        return (Notice("header_low", "note", text),)
    if header > most:
        text = (
            f"The header stands {near(tape, header)} above the rod, and {spec.cloth} cloth flops over: "
            f"{at_most(tape, most)} stands (A Manual of Home-Making). Make it lower, or stiffen it."
        )
        return (Notice("header_flops", "note", text),)
    return ()


def _row_notices(spec: Spec, casing: CasingPlan) -> tuple[Notice, ...]:
    """Old rows that are unpicked, and old rows or their holes that new rows nearly meet."""
    tape, found = spec.tape, []
    if casing.unpicked:
        rows = " and ".join(near(tape, row) for row in casing.unpicked)
        text = (
            f"Old stitching, {rows} below the top edge, lies inside the new casing and stops the rod: unpick it. Its "
            "holes are on the front, above the new stitch line; damp and press them."
        )
        found.append(Notice("old_row_in_casing", "note", text))
    left = rows_left(spec, casing.given, casing.stitch_line)
    close = [(new, old) for new in casing.new_rows for old in left if NOTHING < abs(new - old) < ROWS_APART]
    if close:
        new, old = close[0]
        text = (
            f"The new row of stitching, {near(tape, new)} below the top edge, runs {near(tape, abs(new - old))} beside "
            f"an old one or its holes, and the cloth tears between the two. Stitch on the old row, {near(tape, old)} "
            f"below the top edge, or keep {at_least(tape, ROWS_APART)} away."
        )
        found.append(Notice("rows_meet", "note", text))
    return tuple(found)


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
