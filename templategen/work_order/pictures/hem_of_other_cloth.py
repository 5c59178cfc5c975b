"""Facing and border in section: the seam, and what becomes of it."""

from __future__ import annotations

from ...document.view import Label, Note, Shape, Span, View
from ...planning import Plan
from ...planning.hems.sewn_on import SewnOnPlan
from .lying import GAP, back_up, folded_left, folded_right, going_on, layer, stitches
from .signs import figure, mm

TAIL = 0.5


def pressed(plan: Plan, hem: SewnOnPlan) -> View:
    """A strip's long edge turned under."""
    assert hem.turn_under is not None, "a facing has a turn-under"
    turn, right = mm(hem.turn_under), mm(hem.strip)
    gap = right * GAP
    return View(
        title="The facing, cut across",
        spoken=(
            f"A strip {figure(plan, hem.strip)} wide cut across. One long edge is turned "
            f"{figure(plan, hem.turn_under)} under, and the strip is then {figure(plan, hem.strip - hem.turn_under)} "
            "wide: as the hem is deep, and the seam."
        ),
        shapes=(layer((turn, gap), *folded_left(0, 0, gap), (right - turn, 0)),),
        notes=(
            Span(figure(plan, hem.turn_under), 0, turn, gap, "above"),
            Span(figure(plan, hem.strip - hem.turn_under), 0, right - turn, 0, "below"),
            Label("turned under", (0, gap / 2), "left"),
            Label("raw edge", (right - turn, 0)),
        ),
    )


def halved(plan: Plan, hem: SewnOnPlan) -> View:
    """A doubled border pressed in half, one edge pressed under."""
    seam, deep = mm(hem.seam), mm(hem.depth)
    right = deep + seam
    gap = right * GAP
    return View(
        title="The border, cut across",
        spoken=(
            f"A strip {figure(plan, hem.strip)} wide cut across, pressed in half, right side out. Of one long edge "
            f"{figure(plan, hem.seam)} is pressed under; the other stays flat. The border is {figure(plan, hem.depth)} "
            "deep."
        ),
        shapes=(
            layer((right - 2 * seam, gap), *folded_right(deep, gap, 2 * gap), *folded_left(0, 0, 2 * gap), (right, 0)),
        ),
        notes=(
            Span(figure(plan, hem.depth), 0, deep, 2 * gap, "above"),
            Span(figure(plan, hem.seam), deep, right, 0, "below"),
            Label("pressed under", (deep, 1.5 * gap)),
            Label("flat edge", (right, 0)),
            Label("fold", (0, gap), "left"),
        ),
    )


def faced(plan: Plan, hem: SewnOnPlan) -> View:
    """Above: facing and panel, right sides together, with their seam. Below: the facing turned to the back."""
    assert hem.turn_under is not None, "a facing has a turn-under"
    deep, seam, turn = mm(hem.depth), mm(hem.seam), mm(hem.turn_under)
    right = deep * (1 + TAIL)
    gap = (right + seam) * GAP
    low = -10 * gap
    shapes: list[Shape] = [
        layer((-seam, 0), (right, 0)),
        layer((-seam, -gap), *folded_right(deep, -2 * gap, -gap)[::-1], (deep - turn, -2 * gap)),
        stitches(0, -gap, 0, gap),
        layer((seam, low + gap), *folded_left(-gap * 0.3, low, low + gap), (right, low)),
        layer(
            (seam, low + 2 * gap), *folded_left(0, low + 2 * gap, low + 3 * gap)[::-1],
            *folded_right(deep, low + 2 * gap, low + 3 * gap)[::-1], (deep - turn, low + 2 * gap),
        ),
        going_on(right, low, gap),
    ]  # fmt: skip
    notes: list[Note] = [
        Span(figure(plan, hem.seam), -seam, 0, 0, "above"),
        Label("panel, back up", (right * 0.7, 0)),
        Label("facing", (deep * 0.6, -gap)),
        Label("seam", (0, -gap * 1.8), "left"),
        Label("facing, turned to the back", (deep * 0.6, low + 3 * gap)),
        Label("finished edge", (-gap * 0.3, low + gap / 2), "left"),
        Span(figure(plan, hem.depth), 0, deep, low, "below"),
    ]
    return View(
        title="The facing sewn on and turned, cut across",
        spoken=(
            "Cut across, the panel's back up, its bottom edge on the left. Above: the facing lies under the panel, "
            f"right sides together, and a seam joins them {figure(plan, hem.seam)} from the edges. Below: the facing "
            f"is turned to the back and reaches {figure(plan, hem.depth)} up; the seam lies just behind the finished "
            "edge."
        ),
        shapes=tuple(shapes),
        notes=tuple(notes),
    )


def bordered(plan: Plan, hem: SewnOnPlan) -> View:
    """A doubled border, folded down and pinned over the seam at the back."""
    deep, seam = mm(hem.depth), mm(hem.seam)
    right = deep * (1 + TAIL) + seam
    gap = (right + seam) * GAP
    shapes: list[Shape] = [
        layer((right, 0), (deep - seam, 0)),
        layer(
            (deep - seam, gap), *folded_right(deep + gap, -gap, gap)[::-1], *folded_left(0, -gap, 3 * gap)[::-1],
            (deep, 3 * gap), *folded_right(deep + gap, 2 * gap, 3 * gap)[::-1], (deep - seam, 2 * gap),
        ),
        stitches(deep, 0, gap, gap),
        going_on(right, 0, gap),
    ]  # fmt: skip
    return View(
        title="The border sewn on and folded down, cut across",
        spoken=(
            "Cut across, the panel's back up, the finished edge on the left. The border's flat edge is sewn to the "
            f"panel's bottom edge, {figure(plan, hem.seam)} from the edges; folded down it comes "
            f"{figure(plan, hem.depth)} below the seam, and its pressed edge lies over the seam at the back."
        ),
        shapes=tuple(shapes),
        notes=(
            Span(figure(plan, hem.depth), 0, deep, -gap, "below"),
            Span(figure(plan, hem.seam), deep - seam, deep, 3 * gap, "above"),
            Label("pressed edge, pinned over the seam", (deep + gap, 2.5 * gap)),
            Label("panel, back up", (right * 0.95, 0)),
            Label("finished edge", (0, gap), "left"),
        ),
    )


def bordered_single(plan: Plan, hem: SewnOnPlan) -> View:
    """A border of single cloth with a hem of its own, of two equal turns."""
    assert hem.own_hem is not None, "a single border has its own hem"
    deep, seam, own = mm(hem.depth), mm(hem.seam), mm(hem.own_hem)
    right = deep * (1 + TAIL) + seam
    gap = (right + seam) * GAP
    shapes: list[Shape] = [
        layer((right, 0), (deep + gap, 0), *folded_left(deep, 0, gap), (deep + seam, gap)),
        layer(
            (deep + seam, 2 * gap), *folded_left(deep - gap, 0, 2 * gap), (deep - 2 * gap, 0), (gap, 0),
            *folded_left(0, 0, 2 * gap)[::-1], (own - gap, 2 * gap), *folded_right(own, gap, 2 * gap)[::-1], (gap, gap),
        ),
        stitches(deep, 0, 2 * gap, gap),
        going_on(right, 0, gap),
    ]  # fmt: skip
    return View(
        title="The border sewn on, cut across",
        spoken=(
            "Cut across, the panel's back up, the finished edge on the left. The border is sewn to the panel's bottom "
            f"edge, both edges of the seam pressed up, and is {figure(plan, hem.depth)} deep. Its lower edge is turned "
            f"up twice, {figure(plan, hem.own_hem)} each time."
        ),
        shapes=tuple(shapes),
        notes=(
            Span(figure(plan, hem.depth), 0, deep, 0, "below"),
            Span(figure(plan, hem.own_hem), 0, own, 2 * gap, "above"),
            Label("both edges, pressed up", (deep + seam, 1.5 * gap)),
            back_up(0, right, 0),
            Label("finished edge", (0, gap), "left"),
        ),
    )
