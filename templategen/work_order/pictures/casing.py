"""A casing stitched to a new depth: what is unpicked, what is stitched, and the rod in it."""

from __future__ import annotations

from ...document.view import Label, Note, Rise, Shape, View, Within
from ...planning import Plan, hanging
from ...planning.headings.casing import CasingPlan
from .cloth import (
    APART,
    TAIL,
    cloth,
    corner,
    front_and_back,
    half_round,
    rod,
    row,
    rows,
    turned,
)  # fmt: skip
from .signs import figure, mm


def _deep(casing: CasingPlan) -> float:
    return max(mm(casing.stitch_line), *(mm(row) for row in casing.unpicked), 1.0) * (1 + TAIL)


def unpicked(plan: Plan, casing: CasingPlan) -> View:
    """Old rows that would stop the rod."""
    deep = _deep(casing)
    wide = deep * 1.8
    ys = [-mm(row) for row in casing.unpicked]
    said = " and ".join(figure(plan, row) for row in casing.unpicked)
    return View(
        title="Old rows that are unpicked",
        spoken=(
            f"The panel's upper left corner, its back towards you. The old row of stitching to unpick lies {said} "
            "below the top edge, right across the panel."
        ),
        shapes=(*corner(wide, deep), *rows(wide, ys)),
        notes=(
            *(Rise(figure(plan, each), -mm(each), 0, 0) for each in casing.unpicked),
            *(Label("unpick this row", (wide * 0.9, y)) for y in ys),
            Label("top edge", (wide * 0.9, 0)),
        ),
    )


def stitched(plan: Plan, casing: CasingPlan) -> View:
    """The rows of the new casing, seen from the back."""
    deep, header, line = _deep(casing), mm(casing.header), mm(casing.stitch_line)
    wide = deep * 1.8
    depth = figure(plan, casing.depth)
    shapes: list[Shape] = [*corner(wide, deep), *rows(wide, [-line])]
    notes: list[Note] = [
        Rise(depth, -line, -header, 0),
        Label("stitch line", (wide * 0.92, -line)),
        Within("casing", (wide * 0.1, -line), (wide * 0.85, -header)),
    ]
    above = ""
    if header:
        shapes += rows(wide, [-header])
        above = f" The upper row lies {figure(plan, casing.header)} below the top edge: above it stands the header."
        notes += [
            Rise(figure(plan, casing.header), -header, 0, 0),
            Label("row under the header", (wide * 0.92, -header)),
        ]
    return View(
        title="The casing stitched, the back towards you",
        spoken=(
            f"The panel's upper left corner, its back towards you. The casing is {depth} deep, from its top down to "
            f"its stitch line.{above} Both ends stay open for the rod."
        ),
        shapes=tuple(shapes),
        notes=tuple(notes),
    )


def hung(plan: Plan, casing: CasingPlan) -> View:
    """The rod in the casing, cut across: the teardrop."""
    depth = max(mm(casing.depth), 1.0)
    falls = casing.depth - hanging.take_up(plan.spec.rod.diameter, casing.depth)
    radius = min(mm(plan.spec.rod.diameter) / 2, depth / 3.1416)
    below = max(mm(falls) - radius, radius)
    tail = depth * TAIL
    header = min(mm(casing.header), 3 * (radius + below))
    gap = (radius + below + header + tail) * APART
    top = radius + header if header else radius + gap
    front, back = (half_round(radius, below, gap, side, 0.5 * gap) for side in (-1, 1))
    if header:
        # The two layers meet in the row under the header, on the rod's top, and stand up together.
        up = max(top, radius + 3 * gap)
        over = turned(-0.5 * gap, 0.5 * gap, up)
    else:
        over = ()
    path = (
        (-0.5 * gap, -below - tail),
        *reversed(front[2 if header else 0 :]),
        *over,
        *back[2 if header else 0 :],
        (0.5 * gap, -below - 1.5 * gap),
    )
    shapes: list[Shape] = [*rod((0.0, 0.0), radius), cloth(*path), row(-0.5 * gap, 0.5 * gap, -below, gap)]
    notes: list[Note] = [
        Rise(figure(plan, falls), -below, radius, -radius - gap),
        Label("rod", (radius * 0.5, radius * 0.3)),
        Label("stitch line", (gap, -below)),
        *front_and_back(-1.2 * gap, 1.2 * gap, -below - tail, -below - 1.8 * gap, gap),
    ]
    above = ""
    if header:
        above = f" The header stands {figure(plan, casing.header)} above the rod."
        shapes.append(row(-0.5 * gap, 0.5 * gap, radius + 1.7 * gap, gap))
        notes += [
            Rise(figure(plan, casing.header), radius, up, -0.5 * gap),
            Label("header", (0.5 * gap, (radius + 1.7 * gap + up) / 2)),
        ]
    return View(
        title="The rod in the casing, cut across",
        spoken=(
            "Rod and casing cut across, the front on the left. Both layers go round the rod and come together at the "
            f"stitch line, {figure(plan, falls)} below the top of the rod.{above}"
        ),
        shapes=tuple(shapes),
        notes=tuple(notes),
    )
