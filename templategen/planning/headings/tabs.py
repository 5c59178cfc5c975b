"""Tabs over the rod: the panel's top edge hangs a gap below the rod's underside."""

from __future__ import annotations

from dataclasses import dataclass

from ...lengths import NOTHING, Length, Tape
from ...spec import Spec
from ...spec.headings import Tabs
from .. import hanging
from ..choices import NARROW_SHARE, TAB_PITCH, TAB_WIDTH
from ..figures import Figure, Notice
from ..plan import GaugeLine, HeadingPlan, Pieces
from ..widths import made_width
from ..wording import near, say, term
from .face import Hang, HangTerm, HeadingKind
from .rows import pitch_limit, row, row_figures_working, row_notices


@dataclass(frozen=True, slots=True, kw_only=True)
class TabPlan(HeadingPlan):
    """The tabs of one panel; each mark is the centre of one."""

    given: Tabs
    gap: Length
    length: Length
    """Cut length."""
    visible: Length
    """What goes over the rod, from the panel's top edge to its top edge: the cut length less both end allowances."""
    end_allowance: Length
    strip: Length
    """Cut width of the strip the tabs are folded from."""


def hang(spec: Spec, heading: Tabs) -> Hang:
    """The top edge hangs the rod's thickness and the gap below the rod's top. Offset: +D + gap."""
    return Hang("tabs", (HangTerm("rod's thickness", -spec.rod.diameter), HangTerm("gap", -heading.gap)))


def explain(tape: Tape, hang: Hang) -> str:
    """How a panel hangs by its tabs, as a clause."""
    return f"by its tabs, its top edge lies {near(tape, hang.offset)} below the top of the rod"


def doubled(spec: Spec, heading: Tabs) -> Length:
    """Their ends are sewn in behind doubled cloth, as deep as they reach."""
    return heading.end_allowance


def lay_out(spec: Spec, heading: Tabs) -> TabPlan:
    """The tabs of one panel, an odd number so that one is on the centre."""
    wide = heading.tab_width
    width = min(TAB_WIDTH, made_width(spec) * NARROW_SHARE) if wide is None else wide
    found = row(spec, heading, width, pitch_limit(spec, heading, TAB_PITCH), "odd")
    over = hanging.round_the_rod(spec.rod.diameter, heading.gap)
    return TabPlan(
        style=heading.style,
        thing="tab",
        given=heading,
        marks=found.marks,
        thing_width=width,
        edge_inset=found.inset,
        pitch=found.pitch,
        gap=heading.gap,
        length=over + 2 * heading.end_allowance,
        visible=over,
        end_allowance=heading.end_allowance,
        strip=2 * (width + heading.seam_allowance),
        lines=(GaugeLine("tab's end", heading.end_allowance, "stitch"),),
    )


def pieces(tabs: TabPlan) -> Pieces:
    """The tabs, as they are cut off the sewn strip."""
    return Pieces("tab", tabs.count, tabs.length, tabs.strip, tabs.given.seam_allowance)


def hang_figures(spec: Spec, tabs: TabPlan) -> tuple[Figure, ...]:
    """The gap, and the tab that gives it; the rule of thumb beside it."""
    tape, rod = spec.tape, spec.rod.diameter
    rule = 2 * (rod + tabs.gap)
    return (
        Figure("tab_gap", "gap below the rod", tabs.gap, "as given: the rod's underside to the panel's top edge"),
        Figure(
            "tab_over_rod",
            "tab over the rod",
            tabs.visible,
            f"round a rod {say(tape, rod)} thick and straight down to {say(tape, tabs.gap)} below it; twice the drop, "
            f"{say(tape, rule)}, would be {say(tape, tabs.visible - rule)} too short",
        ),
        Figure(
            "tab_length",
            "tab, cut length",
            tabs.length,
            f"tab over the rod {say(tape, tabs.visible)} {term(tape, 1, '2 × end allowance', 2 * tabs.end_allowance)}",
        ),
    )


def figures(spec: Spec, tabs: TabPlan) -> tuple[Figure, ...]:
    """Where they stand and how wide they are."""
    tape, given = spec.tape, tabs.given
    limit = pitch_limit(spec, given, TAB_PITCH)
    inset, pitch = row_figures_working(spec, tabs, given, limit, ", an odd number,")
    wide = "as given" if given.tab_width is not None else "chosen: wide enough not to cut into the top edge"
    return (
        Figure("edge_inset", "edge inset", tabs.edge_inset, inset),
        Figure("tab_pitch", "tab spacing", tabs.pitch, pitch),
        Figure("tab_width", "tab, finished width", tabs.thing_width, wide),
        Figure(
            "tab_strip",
            "strip for tabs",
            tabs.strip,
            f"2 × (finished width {say(tape, tabs.thing_width)} "
            f"{term(tape, 1, 'seam allowance', given.seam_allowance)})",
        ),
    )


def notices(spec: Spec, tabs: TabPlan) -> tuple[Notice, ...]:
    """Tabs that hug the rod, that stand wrong, or with none on the centre."""
    tape = spec.tape
    found = [*row_notices(spec, tabs, pitch_limit(spec, tabs.given, TAB_PITCH))]
    if tabs.gap == NOTHING:
        text = (
            "Without a gap the tabs close tight round the rod and drag when the panel is drawn. "
            f"A gap of a quarter of the rod's thickness, {near(tape, spec.rod.diameter / 4)}, lets them slide."
        )
        found.append(Notice("tabs_tight", "note", text))
    if tabs.count % 2 == 0:
        text = f"{tabs.count} tabs is an even number, so none sits on the centre (common practice is an odd number)."
        found.append(Notice("even_tabs", "note", text))
    return tuple(found)


TABS = HeadingKind(
    name="tabs",
    title="The tabs",
    marks_said="Tab centres",
    edge="heading",
    hang=hang,
    explain=explain,
    doubled=doubled,
    lay_out=lay_out,
    hang_figures=hang_figures,
    figures=figures,
    notices=notices,
    pieces=pieces,
)
