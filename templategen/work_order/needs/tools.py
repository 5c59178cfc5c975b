"""The tools that a job needs, and no others."""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from ...drawing import Drawing
from ...planning import Plan
from ...planning.drop import least_cut
from ...planning.widths import cuts_sides
from .amounts import Seam
from .headings import HEADING_NEEDS
from .things import cards_of

RULE = "A steel or wooden rule: a cloth tape stretches"
"""A New Zealand newspaper of May 1935 (Papers Past) asks for a steel or wooden rule."""
SEWN_BY_HAND = "button thread"


def tools_of(plan: Plan, seams: Sequence[Seam]) -> Iterator[str]:
    """What the panels of a plan take; ``seams`` are those that are sewn."""
    heading = HEADING_NEEDS[plan.heading.style]
    things = {thing.name for thing in heading.things(plan, plan.heading)}
    ways = {seam.way for seam in seams}
    yield RULE
    yield "A long straight edge, to join marks across the panel"
    yield "Scissors for cloth, and others for paper"
    yield "Chalk or a marker that washes out: try it on a scrap"
    yield "An iron and a pressing board"
    if unpicks(plan):
        yield "An unpicker"
    if ways & {"machine", "zigzag"}:
        yield f"A sewing machine{' that sews zigzag' if 'zigzag' in ways else ''}"
    if "hand" in ways or SEWN_BY_HAND in things:
        yield "A needle for seams by hand, and a thimble"
    if ways or SEWN_BY_HAND in things:
        yield "Thread snips"
    yield from heading.tools(plan, plan.heading)


def unpicks(plan: Plan) -> bool:
    """Whether anything is unpicked: the old hem or top, a side hem, the strips for loops, a hem let down later."""
    heading = HEADING_NEEDS[plan.heading.style]
    return (
        least_cut(plan.drop) < plan.spec.panel.hem
        or bool(plan.top.refolded and (plan.top.doubled or plan.spec.heading.top_cut))
        or bool(cuts_sides(plan.spec) and plan.top.doubled)
        or bool(plan.mitres)
        or plan.shrinkage is not None
        or heading.unpicks(plan, plan.heading)
    )


def template_tools(drawings: Sequence[Drawing]) -> Iterator[str]:
    """What the templates take."""
    if drawings:
        yield "Paper glue or adhesive tape, for the joins of the templates"
    if cards_of(drawings):
        yield "A cutting knife or strong scissors, for card"
