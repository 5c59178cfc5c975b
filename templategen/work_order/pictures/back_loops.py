"""Loops on the back of the casing: sewn on, flat; and on the rod."""

from __future__ import annotations

from ...document.view import Label, Note, Point, Rise, Shape, Span, Stroke, View
from ...drawing import LineType
from ...planning import Plan, hanging
from ...planning.headings.back_loops import LoopPlan
from .cloth import (
    APART,
    TAIL,
    cloth,
    corner,
    doubled,
    front_and_back,
    half_round,
    rod,
    row,
    rows,
    shown,
    thread,
    turned,
)  # fmt: skip
from .signs import box, figure, mm


def sewn(plan: Plan, loops: LoopPlan) -> View:
    """A loop in section, sewn to the back layer of the casing, not yet on the rod."""
    seam, foot = mm(loops.upper_seam), mm(loops.upper_seam + loops.tube_depth)
    lower, turn = mm(loops.lower_allowance), mm(loops.upper_turn)
    tail = max(foot + lower, 1.0) * (1 + TAIL)
    gap = tail * APART
    bulge = gap * 0.9
    high = foot - seam
    loop: tuple[Point, ...] = (
        (2 * gap, -foot - lower),
        (2 * gap, -foot),
        *((2 * gap + bulge * (1 - (2 * i / 10 - 1) ** 2), -foot + high * i / 10) for i in range(1, 10)),
    )
    fold = turned(2.4 * gap, 1.7 * gap, -seam)
    under = (*fold, (1.7 * gap, -seam - turn))
    shapes: list[Shape] = [
        doubled(foot + gap, tail, gap),
        cloth(*loop, (2.4 * gap, -seam - gap), *under),
        row(0, gap, -foot - gap * 0.5, gap * 0.4),
        thread(0.55 * gap, 2.6 * gap, -foot, gap * 0.8),
        thread(0.55 * gap, 2.8 * gap, -seam - gap * 0.7, gap * 0.8),
    ]
    return View(
        title="A loop on the back of the casing, cut across",
        spoken=(
            "The panel's top cut across, its front on the left: two layers of cloth, folded at the top edge. A loop "
            f"lies on the back layer. Its upper end is turned under {figure(plan, loops.upper_turn)}, towards the "
            f"casing, and that fold is sewn to the back layer {figure(plan, loops.upper_seam)} below the top edge. "
            f"{figure(plan, loops.tube_depth)} farther down, on the casing's stitch line, the loop is sewn on again, "
            f"and {figure(plan, loops.lower_allowance)} of it lies below. Neither seam goes through the front layer."
        ),
        shapes=tuple(shapes),
        notes=(
            Rise(figure(plan, loops.upper_seam), -seam, 0, 0),
            Rise(figure(plan, loops.tube_depth), -foot, -seam, 0),
            Rise(figure(plan, loops.lower_allowance), -foot - lower, -foot, 0),
            Label("fold, sewn to the back layer only", (2.4 * gap, -seam - gap * 0.4)),
            Label(f"turned under {figure(plan, loops.upper_turn)}", (1.7 * gap, -seam - turn)),
            Label("loop", (2 * gap + bulge, -(seam + foot) / 2)),
            Label("sewn on the casing's stitch line, to the back layer only", (2.6 * gap, -foot)),
            *front_and_back(-gap, 3 * gap, -tail, -foot - lower - gap, gap),
        ),
    )


def from_the_back(plan: Plan, loops: LoopPlan, title: str = "The loops, the back towards you") -> View:
    """The casing's corner from the back, with the first loops on it."""
    seam, foot = mm(loops.upper_seam), mm(loops.upper_seam + loops.tube_depth)
    lower = mm(loops.lower_allowance)
    deep = max(foot + lower, 1.0) * (1 + TAIL)
    width = shown(loops.width, deep * 0.05, deep)
    first = shown(loops.edge_inset, width / 2, deep)
    second = first + shown(loops.pitch, width * 1.4, 1.1 * deep)
    wide = second + width
    shapes: list[Shape] = [*corner(wide, deep), *rows(wide, [-foot])]
    if plan.spec.panel.header:
        shapes += rows(wide, [-mm(plan.spec.panel.header)])
    for x in (first, second):
        left, right = x - width / 2, x + width / 2
        shapes.append(box(LineType.CUT, (left, -foot - lower), (right, -seam)))
        shapes.append(Stroke(LineType.STITCH, ((left, -seam - deep * 0.01), (right, -seam - deep * 0.01))))
    return View(
        title=title,
        spoken=(
            f"The panel's upper left corner, its back towards you. The first loop is {figure(plan, loops.width)} wide, "
            f"its centre {figure(plan, loops.edge_inset)} from the side edge, that of the next "
            f"{figure(plan, loops.pitch)} farther on. Their upper folds lie {figure(plan, loops.upper_seam)} below the "
            "top edge; below, they are sewn on the casing's stitch line."
        ),
        shapes=tuple(shapes),
        notes=(
            Span(figure(plan, loops.edge_inset), 0, first, 0, "above"),
            Span(figure(plan, loops.pitch), first, second, 0, "above"),
            Span(figure(plan, loops.width), second - width / 2, second + width / 2, -foot - lower, "below"),
            Rise(figure(plan, loops.upper_seam), -seam, 0, 0),
            Label("casing's stitch line", (wide * 0.97, -foot)),
            Label("loop", (second, -(seam + foot) / 2)),
        ),
    )


def hung(plan: Plan, loops: LoopPlan) -> View:
    """A loop on the rod, cut across: the teardrop."""
    depth = max(mm(loops.tube_depth), 1.0)
    falls = loops.tube_depth - hanging.take_up(plan.spec.rod.diameter, loops.tube_depth)
    radius = min(mm(plan.spec.rod.diameter) / 2, depth / 3.1416)
    below = max(mm(falls) - radius, radius)
    seam = max(mm(loops.upper_seam), 0.0)
    tail = depth * TAIL + mm(loops.lower_allowance)
    gap = (radius + seam + below + tail) * APART
    top = radius + max(seam, 2.5 * gap)
    back = half_round(radius, below, gap, -1, 0.6 * gap)
    front = half_round(radius, below, 2 * gap, -1, 1.6 * gap)
    loop = half_round(radius, below, gap, 1, 0.4 * gap)
    shapes: list[Shape] = [
        *rod((0.0, 0.0), radius),
        cloth(
            (-1.6 * gap, -below - tail),
            *(point for point in reversed(front) if point[0] < -0.9 * gap),
            *turned(-gap, 0.0, top),
            *back,
            (-0.6 * gap, -below - gap),
        ),
        cloth((gap * 0.9, radius + 1.7 * gap), *loop[1:], (0.4 * gap, -below - mm(loops.lower_allowance))),
        thread(-0.5 * gap, 1.4 * gap, radius + 1.6 * gap, gap * 0.8),
        thread(-1.1 * gap, 0.9 * gap, -below, gap * 0.8),
    ]
    notes: list[Note] = [
        Rise(figure(plan, falls), -below, radius, -radius - 2 * gap),
        *([Rise(figure(plan, loops.upper_seam), radius, top, -gap)] if loops.upper_seam.mm > 0 else []),
        Label("upper seam", (1.4 * gap, radius + 1.6 * gap)),
        Label("rod", (radius * 0.5, radius * 0.3)),
        Label("loop", (loop[-1][0] + (loop[-2][0] - loop[-1][0]) / 2, (loop[-1][1] + loop[-2][1]) / 2)),
        Label("lower seam", (0.9 * gap, -below)),
        *front_and_back(-2.6 * gap, 1.5 * gap, -below - tail, -below - mm(loops.lower_allowance) - gap, gap),
    ]
    return View(
        title="A loop on the rod, cut across",
        spoken=(
            "The rod and the panel's top cut across, the front on the left. The rod runs behind the panel, between it "
            "and the loop: panel and loop go round it and come together at the lower seam, "
            f"{figure(plan, falls)} below the top of the rod. The panel's top edge stands "
            f"{figure(plan, loops.upper_seam)} above the rod."
        ),
        shapes=tuple(shapes),
        notes=tuple(notes),
    )
