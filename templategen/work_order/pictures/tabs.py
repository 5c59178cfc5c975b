"""Tabs: one tried on the rod, sewn to the back of the top edge, and hung."""

from __future__ import annotations

from ...document.view import Label, Note, Point, Rise, Shape, Span, Stroke, Symbol, View
from ...drawing import LineType
from ...planning import Plan
from ...planning.headings.tabs import TabPlan
from .cloth import APART, cloth, corner, doubled, front_and_back, half_round, rod, row, shown
from .signs import box, figure, mm


def _round(plan: Plan, tabs: TabPlan, gap: float, side: int, ends: float) -> tuple[Point, ...]:
    """One side of a tab round the rod, from its top down to the panel's top edge."""
    radius = mm(plan.spec.rod.diameter) / 2
    return half_round(radius, radius + max(mm(tabs.gap), 0.0), gap, side, ends)


def tried(plan: Plan, tabs: TabPlan) -> View:
    """One tab over the rod, its ends pinned together."""
    radius, gap, ends = mm(plan.spec.rod.diameter) / 2, max(mm(tabs.gap), 0.0), mm(tabs.end_allowance)
    pin = -radius - gap
    apart = (2 * radius + gap + ends) * APART
    left, right = (_round(plan, tabs, apart, side, apart * 0.5) for side in (-1, 1))
    shapes: list[Shape] = [
        *rod((0.0, 0.0), radius),
        cloth((-apart * 0.5, pin - ends), *reversed(left), *right[1:], (apart * 0.5, pin - ends)),
        Symbol("pin", (-apart * 1.4, pin), 180.0),
    ]
    hangs, allowed = figure(plan, tabs.gap), figure(plan, tabs.end_allowance)
    return View(
        title="One tab tried on the rod, cut across",
        spoken=(
            f"One tab hangs over the rod, its ends pinned together {allowed} from the raw edges. From the rod's "
            f"underside down to the pin it must measure {hangs}."
        ),
        shapes=tuple(shapes),
        notes=(
            *([Rise(hangs, pin, -radius, -radius - apart)] if gap else []),
            Rise(allowed, pin - ends, pin, -radius - apart),
            Label("rod", (radius * 0.4, radius * 0.3)),
            Label("tab, folded in half", (radius + apart, 0.0)),
            Label("pin", (0.0, pin)),
            Label("raw ends", (apart * 0.5, pin - ends)),
        ),
    )


def sewn(plan: Plan, tabs: TabPlan) -> View:
    """The corner of the panel from the back, the first tabs sewn on."""
    ends = mm(tabs.end_allowance)
    deep = max(mm(plan.top.reach), ends * 1.4, 1.0)
    width = shown(tabs.width, deep * 0.1, deep * 1.4)
    first = shown(tabs.edge_inset, width / 2, width * 1.5)
    second = first + shown(tabs.pitch, width * 1.3, width * 2.6)
    stands = min(mm(tabs.between) / 2, deep * 1.2)
    wide = second + width * 0.8
    inside = min(ends, deep) * 0.18
    shapes: list[Shape] = [*corner(wide, deep * 1.25)]
    shapes.append(Stroke(LineType.STITCH, ((0, -deep), (wide, -deep))))
    for x in (first, second):
        left, right = x - width / 2, x + width / 2
        shapes.append(box(LineType.CUT, (left, -ends), (right, stands)))
        shapes += [Stroke(LineType.STITCH, ((left, y), (right, y))) for y in (-inside, inside - ends)]
    edge, pitch, allowed = (figure(plan, each) for each in (tabs.edge_inset, tabs.pitch, tabs.end_allowance))
    return View(
        title="The tabs sewn on, the back towards you",
        spoken=(
            "The panel's upper left corner, its back towards you. Both ends of a tab lie one on the other on the back, "
            f"{allowed} below the top edge, the fold of the tab above. Two rows are sewn right across each: one close "
            f"to the top edge, one close to the raw ends. The first tab's centre is {edge} from the side edge, the "
            f"next {pitch} farther on."
        ),
        shapes=tuple(shapes),
        notes=(
            Span(edge, 0, first, stands, "above"),
            Span(pitch, first, second, stands, "above"),
            Rise(allowed, -ends, 0, 0),
            Label("fold", (second, stands)),
            Label("top edge", (wide * 0.97, 0)),
            Label("two rows of stitching", (second + width * 0.3, -inside)),
        ),
    )


def hung(plan: Plan, tabs: TabPlan) -> View:
    """A tab round the rod, and the panel's top edge below it, cut across."""
    radius, gap, ends = mm(plan.spec.rod.diameter) / 2, max(mm(tabs.gap), 0.0), mm(tabs.end_allowance)
    deep = max(mm(plan.top.reach), ends * 1.2, 1.0)
    deep = min(deep, 4 * (2 * radius + gap))
    ends = min(ends, deep * 0.8)
    edge, tail = -radius - gap, deep * 1.4
    apart = (2 * radius + gap + tail) * APART
    left, right = (_round(plan, tabs, apart, side, apart * 0.5) for side in (-1, 1))
    shapes: list[Shape] = [
        *rod((0.0, 0.0), radius),
        cloth((-apart * 0.5, edge - ends), *reversed(left), *right[1:], (apart * 0.5, edge - ends)),
        Stroke(LineType.CUT, tuple((x - 2.5 * apart, y + edge) for x, y in doubled(deep, tail, apart).points)),
        *(row(-2.5 * apart, 0.5 * apart, edge - y, apart) for y in (max(apart, ends * 0.18), ends * 0.82)),
    ]
    notes: list[Note] = [
        Label("rod", (radius * 0.4, radius * 0.3)),
        Label("tab", (right[-1][0] + (right[-2][0] - right[-1][0]) / 2, (right[-1][1] + right[-2][1]) / 2)),
        Label("both ends of the tab, on the back", (apart * 0.5, edge - ends / 2)),
        *front_and_back(-3.5 * apart, 1.5 * apart, edge - tail, edge - ends - apart, apart),
    ]
    hangs = figure(plan, tabs.gap)
    if gap:
        notes.append(Rise(hangs, edge, -radius, -radius - apart))
    return View(
        title="A tab on the rod, cut across",
        spoken=(
            "Rod, tab and the panel's top cut across, the front on the left. The tab goes round the rod; both its ends "
            f"are sewn to the back of the panel. The panel's top edge hangs {hangs} below the rod's underside."
        ),
        shapes=tuple(shapes),
        notes=tuple(notes),
    )
