"""Tabs over the rod: strips folded over it, both ends of each sewn to the panel's doubled top.

The panel's top edge hangs a gap below the rod, which shows above it.
"""

from __future__ import annotations

from dataclasses import dataclass

from ...lengths import NOTHING, Length, Tape
from ...spec import Spec
from ...spec.headings import Tabs
from .. import hanging, spacing
from ..choices import (
    DOUBLED_BEYOND,
    LEAST_DOUBLED,
    LEAST_TAB_GAP,
    NARROW_SHARE,
    TAB_GAP,
    TAB_GAP_RANGE,
    TAB_PITCH_LIMITS,
    TAB_WIDTH,
)
from ..figures import Figure, Notice
from ..plan import HeadingPlan, Pieces
from ..widths import made_width
from ..wording import near, say, term
from . import along
from .face import Hang, HangTerm, HeadingKind


@dataclass(frozen=True, slots=True, kw_only=True)
class TabPlan(HeadingPlan):
    """The tabs of one panel; each mark is the centre of one."""

    given: Tabs
    gap: Length
    """Rod's underside down to the panel's top edge."""
    between: Length
    """Of a tab's length, between the two places where it leaves the panel's top edge."""
    on_rod: Length
    """Of that, what lies on the rod."""
    end_allowance: Length
    """Sewn to the panel at either end."""
    length: Length
    """Cut length."""
    strip: Length
    """Cut width of the strip the tabs are folded from."""

    @property
    def width(self) -> Length:
        """Finished width."""
        return self.thing_width


def _gap(heading: Tabs) -> Length:
    return TAB_GAP if heading.gap is None else heading.gap


def _width(spec: Spec, heading: Tabs) -> Length:
    """Given, or chosen, and then narrower on a very narrow panel."""
    return min(TAB_WIDTH, made_width(spec) * NARROW_SHARE) if heading.tab_width is None else heading.tab_width


def _inset(spec: Spec, heading: Tabs) -> Length:
    """Given, or with the end tabs flush with the panel's edges."""
    if heading.edge_inset is not None:
        return heading.edge_inset
    return min(_width(spec, heading) / 2, made_width(spec) * NARROW_SHARE)


def _limit(spec: Spec, heading: Tabs) -> Length:
    return TAB_PITCH_LIMITS[spec.cloth] if heading.max_pitch is None else heading.max_pitch


def hang(spec: Spec, heading: Tabs) -> Hang:
    """The panel's top edge hangs under the rod. Offset: D + gap."""
    terms = HangTerm("rod's thickness", -spec.rod.diameter), HangTerm("gap under the rod", -_gap(heading))
    return Hang("tabs", terms)


def explain(tape: Tape, hang: Hang) -> str:
    """How a panel hangs by its tabs, as a clause."""
    return f"by its tabs, its top edge lies {near(tape, hang.offset)} below the rod's top"


def doubled(spec: Spec, heading: Tabs) -> Length:
    """The tabs' ends are sewn to doubled cloth, with some of it below them."""
    return max(LEAST_DOUBLED, heading.end_allowance + DOUBLED_BEYOND)


def lay_out(spec: Spec, heading: Tabs) -> TabPlan:
    """The tabs of one panel."""
    inset, width, gap = _inset(spec, heading), _width(spec, heading), _gap(heading)
    count = along.count_along(spec, heading, inset, width, _limit(spec, heading))
    between = hanging.tab_length(spec.rod.diameter, gap)
    return TabPlan(
        style=heading.style,
        thing="tab",
        given=heading,
        marks=along.marks_along(spec, inset, count),
        thing_width=width,
        edge_inset=inset,
        pitch=spacing.pitch(made_width(spec), inset, count),
        gap=gap,
        between=between,
        on_rod=hanging.on_rod(spec.rod.diameter, gap),
        end_allowance=heading.end_allowance,
        length=between + 2 * heading.end_allowance,
        strip=2 * (width + heading.seam_allowance),
    )


def pieces(tabs: TabPlan) -> Pieces:
    """The tabs, as they are cut off the sewn strip."""
    return Pieces(
        thing="tab",
        on_each=tabs.count,
        length=tabs.length,
        strip=tabs.strip,
        seam_allowance=tabs.given.seam_allowance,
    )


def hang_figures(spec: Spec, tabs: TabPlan) -> tuple[Figure, ...]:
    """The gap, and how long a tab has to be for it; by how much the rule of thumb would be out."""
    tape = spec.tape
    return (
        Figure("tab_gap", "gap under the rod", tabs.gap, _gap_working(spec, tabs)),
        Figure("tab_round", "tab, edge to edge", tabs.between, _round_working(spec, tabs)),
        Figure(
            "tab_length",
            "tab, cut length",
            tabs.length,
            f"edge to edge {say(tape, tabs.between)} {term(tape, 1, '2 × end allowance', tabs.end_allowance)}",
        ),
    )


def _gap_working(spec: Spec, tabs: TabPlan) -> str:
    if tabs.given.gap is not None:
        return "as given"
    least, most = TAB_GAP_RANGE
    return f"chosen: between the handbooks' {say(spec.tape, least)} and {say(spec.tape, most)}; the choice is yours"


def rule_of_thumb(spec: Spec, tabs: TabPlan) -> Length:
    """A tab as long as twice what the panel's top edge lies below the rod's top."""
    return 2 * (spec.rod.diameter + tabs.gap)


def _round_working(spec: Spec, tabs: TabPlan) -> str:
    tape, rule = spec.tape, rule_of_thumb(spec, tabs)
    return (
        f"from the top edge round the rod and back: {say(tape, tabs.on_rod)} on the rod, "
        f"{say(tape, (tabs.between - tabs.on_rod) / 2)} straight on either side; twice the drop, "
        f"{say(tape, rule)}, would be {say(tape, tabs.between - rule)} too short"
    )


def figures(spec: Spec, tabs: TabPlan) -> tuple[Figure, ...]:
    """Where the tabs stand and how wide they are."""
    tape, limit = spec.tape, _limit(spec, tabs.given)
    strip = f"2 × (finished width {say(tape, tabs.width)} {term(tape, 1, 'seam allowance', tabs.given.seam_allowance)})"
    return (
        Figure("edge_inset", "edge inset", tabs.edge_inset, _inset_working(spec, tabs)),
        Figure("tab_pitch", "tab spacing", tabs.pitch, along.pitch_working(spec, tabs, tabs.given, limit)),
        Figure("tab_width", "tab, finished width", tabs.width, _width_working(spec, tabs)),
        Figure("tab_strip", "strip for tabs", tabs.strip, strip),
    )


def _inset_working(spec: Spec, tabs: TabPlan) -> str:
    if tabs.given.edge_inset is not None:
        return "as given"
    if tabs.edge_inset == tabs.width / 2:
        return f"half the tab's width {say(spec.tape, tabs.width)}: the end tabs are flush with the panel's edges"
    return f"chosen: a sixth of the panel's width {say(spec.tape, made_width(spec))}, as it is narrow"


def _width_working(spec: Spec, tabs: TabPlan) -> str:
    if tabs.given.tab_width is not None:
        return "as given"
    if tabs.width < TAB_WIDTH:
        return f"chosen: a sixth of the panel's width {say(spec.tape, made_width(spec))}, as it is narrow"
    return "chosen, as handbooks have it"


def notices(spec: Spec, tabs: TabPlan) -> tuple[Notice, ...]:
    """Everything that looks wrong with the tabs of one panel."""
    limit = _limit(spec, tabs.given)
    return (
        *_gap_notices(spec, tabs),
        *along.over_edge(spec, tabs),
        *along.corner_droops(spec, tabs, limit),
        *along.spacing_notices(spec, tabs, tabs.given, limit),
        *along.even_notices(tabs),
    )


def _gap_notices(spec: Spec, tabs: TabPlan) -> list[Notice]:
    """Whether the tabs slide, and whether so much gap is usual."""
    tape, (least, most) = spec.tape, TAB_GAP_RANGE
    usual = f"Handbooks have {near(tape, least)} to {near(tape, most)}"
    if tabs.gap < LEAST_TAB_GAP:
        much = f"a gap of {near(tape, tabs.gap)}" if tabs.gap > NOTHING else "no gap"
        text = (
            f"With {much} under the rod the tabs hug it: they are hard to push on, and do not slide. Their own "
            f"seams take up about {near(tape, LEAST_TAB_GAP)}. {usual}."
        )
        return [Notice("tabs_hug_rod", "warning", text)]
    if not least <= tabs.gap <= most:
        text = (
            f"The panel's top edge hangs {near(tape, tabs.gap)} under the rod, and that much of what is behind "
            f"shows. {usual}; the choice is yours."
        )
        return [Notice("tab_gap_unusual", "note", text)]
    return []


TABS = HeadingKind(
    name="tabs",
    title="The tabs",
    marks_said="Tab centres",
    edge="top",
    hang=hang,
    explain=explain,
    doubled=doubled,
    lay_out=lay_out,
    hang_figures=hang_figures,
    figures=figures,
    notices=notices,
    pieces=pieces,
)
