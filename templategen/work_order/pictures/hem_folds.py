"""Each fold of a hem, as it is marked by the card, brought to its line, and folded."""

from __future__ import annotations

from dataclasses import dataclass, replace

from ...document.view import Label, Note, Point, Rise, Shape, Stroke, View, Within
from ...drawing import LineType
from ...lengths import Length
from ...planning import Plan
from ...planning.choices import HEM_TAPE
from ...planning.hems.double_fold import DoubleFoldPlan
from ...planning.hems.single_fold import SingleFoldPlan
from .cloth import broken, broken_up
from .sections import (
    LAYER,
    ROOM,
    brought_up,
    hanging_down,
    numbered,
    pin,
    section,
    sides,
    through,
    tick,
    turned_up,
    unit,
    upside_down,
)
from .signs import across, figure, mm

TAIL = 0.5
"""How much of the cloth above the line is seen, of the fold's depth."""
FLAT = 16.0
"""Units of the cloth's width that are seen flat."""
CARD = "gauge card"
TAPE = mm(HEM_TAPE) / 2
"""Half the width of a hem tape."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Fold:
    """A fold of the cloth's edge to its back."""

    depth: Length
    edge: str
    """What is brought to the line: "raw edge"."""
    line: str
    """What that is called."""
    turn: float = 0.0
    """Mm of cloth that the edge has turned up already."""
    card: bool = True
    """Whether the line is marked by the hem gauge card."""
    pinned: bool = False
    tape: float = 0.0
    """Half the width of the tape on the edge, in mm."""
    top: bool = False
    """Whether it is the panel's top that is folded."""


def turn_under(plan: Plan, hem: DoubleFoldPlan) -> View:
    """The raw edge brought to fold-to line 1."""
    fold = Fold(depth=hem.turn_under, edge="raw edge", line="fold-to line 1")
    return folding(plan, fold, "The turn-under: marked, brought to its line, folded")


def hem_turned_up(plan: Plan, hem: DoubleFoldPlan) -> View:
    """The first fold brought to fold-to line 2, and the hem pinned."""
    fold = Fold(depth=hem.depth, edge="first fold", line="fold-to line 2", turn=mm(hem.turn_under), pinned=True)
    return folding(plan, fold, "The hem: marked, brought to its line, folded and pinned")


def turned_once(plan: Plan, hem: SingleFoldPlan) -> View:
    """The raw edge of a single fold brought to its line."""
    tape = 0.0 if hem.bonded else TAPE
    fold = Fold(depth=hem.depth, edge="raw edge", line="fold-to line", pinned=True, tape=tape)
    return folding(plan, fold, "The hem: marked, brought to its line, folded and pinned")


def folding(plan: Plan, fold: Fold, title: str) -> View:
    """1: the back, with the line marked. 2: cut across, the way the edge goes. 3: cut across, the cloth folded."""
    deep = mm(fold.depth)
    top = deep * (2 + TAIL)
    u = unit(top)
    gap = LAYER * u
    second, third = (FLAT + ROOM) * u, (FLAT + ROOM + 12) * u
    outer = third + (2 if fold.turn else 1) * gap
    before = hanging_down(second, gap, fold.turn, top)
    behind = second + (gap if fold.turn else 0.0)
    shapes: list[Shape] = [
        *_marked(plan, fold, deep, top, u),
        section(before),
        tick(second, 2 * deep, u),
        brought_up(behind, 0.0, 2 * deep, u),
        section(turned_up(third, gap, deep, fold.turn, top, deep)),
    ]
    if fold.tape:
        shapes += _taped(fold.tape, second - gap, third + 2 * gap, deep)
    if fold.pinned:
        shapes.append(pin(outer, 2 * deep + (0.5 * fold.tape if fold.tape else -2.5 * u), u))
    notes: list[Note] = [
        Rise(figure(plan, 2 * fold.depth), 0, 2 * deep, 0, "left"),
        Label(fold.line, (FLAT * u * 0.1, 2 * deep), "left"),
        Label("taped edge" if fold.tape else fold.edge, (FLAT * u * 0.1, 0), "left"),
        *([Label(CARD, (FLAT * u * 0.3, deep * 1.3), "left")] if fold.card else []),
        *sides(second, outer, 2 * deep + 1.5 * u, top, u),
        Rise(figure(plan, fold.depth), deep, 2 * deep, outer, "right"),
        *([Label("pin", (outer + u, 2 * deep + (0.5 * fold.tape if fold.tape else -2.5 * u)))] if fold.pinned else []),
    ]
    view = View(title=title, spoken=_folding_said(plan, fold), shapes=tuple(shapes), notes=tuple(notes))
    view = upside_down(view) if fold.top else view
    numbers = numbered((FLAT * u / 2, second, third + gap / 2), -top if fold.top else 0.0, u)
    return replace(view, notes=(*view.notes, *numbers))


def _marked(plan: Plan, fold: Fold, deep: float, top: float, u: float) -> list[Shape]:
    """The cloth flat, its back towards you, its line right across; the card laid on it where there is one."""
    wide = FLAT * u
    shapes: list[Shape] = [
        Stroke(LineType.MARK, ((0, top), (0, 0), (wide, 0))),
        broken(0, wide, top, u),
        broken_up(wide, 0, top, u),
        across(LineType.MARK, 0, wide, 2 * deep),
    ]
    if fold.turn:
        shapes.append(across(LineType.THIN, 0, wide, fold.turn))
    if fold.card:
        card = min(mm(plan.hem.lines[-1].length), top - 2 * u)
        left, right = wide * 0.3, wide * 0.75
        outline: tuple[Point, ...] = ((left, card), (left, 0), (right, 0), (right, card))
        shapes.append(Stroke(LineType.CUT, (*outline, outline[0]) if card < top - 2 * u else outline))
        if card >= top - 2 * u:
            shapes.append(broken(left, right, card, 0.8 * u))
    return shapes


def _taped(half: float, front: float, back: float, deep: float) -> list[Shape]:
    """The tape on the raw edge, before and after the fold."""
    return [
        Stroke(LineType.TRIM, ((front, -half), (front, half))),
        Stroke(LineType.TRIM, ((back, 2 * deep - half), (back, 2 * deep + half))),
    ]


def _folding_said(plan: Plan, fold: Fold) -> str:
    to, deep = figure(plan, 2 * fold.depth), figure(plan, fold.depth)
    by = f" The hem {CARD} lies on it, its base edge on the {fold.edge}." if fold.card else ""
    pinned = ", and is pinned" if fold.pinned else ""
    return (
        f"1: the cloth, its back towards you. {fold.line.capitalize()} is marked {to} from the {fold.edge}.{by} "
        f"2: cut across, the front on the left and the back on the right: the {fold.edge} is brought to the line, "
        f"behind the cloth. 3: cut across: the cloth lies folded {deep} deep{pinned}."
    )


def taped(plan: Plan, hem: SingleFoldPlan) -> View:
    """The tape on the raw edge, on the right side of the cloth, flat and cut across."""
    high = TAPE * 7
    u = unit(high)
    gap, wide = LAYER * u, 40 * u
    x, row = wide + ROOM * 1.5 * u, TAPE * 0.6
    width = figure(plan, HEM_TAPE)
    return View(
        title="The tape sewn on",
        spoken=(
            f"1: the cloth, its front towards you. A tape {width} wide lies over the raw edge, half of it beyond, and "
            "is sewn along its upper edge. 2: the same cut across, the front with the tape on the left."
        ),
        shapes=(
            Stroke(LineType.MARK, ((0, high * 0.7), (0, TAPE))),
            Stroke(LineType.MARK, ((wide, high * 0.7), (wide, TAPE))),
            broken(0, wide, high * 0.7, u),
            Stroke(LineType.CUT, ((0, TAPE), (0, -TAPE), (wide, -TAPE), (wide, TAPE), (0, TAPE))),
            across(LineType.FOLD, 0, wide, 0),
            across(LineType.STITCH, 0, wide, row),
            section(((x, high * 0.7), (x, 0))),
            Stroke(LineType.TRIM, ((x - gap, -TAPE), (x - gap, TAPE))),
            through(x - gap, x, row, u),
        ),
        notes=(
            Rise(width, -TAPE, TAPE, 0, "left"),
            Within("front", (0, TAPE), (wide, high * 0.7)),
            Label("raw edge, under the tape", (x, 0)),
            Label("tape", (x - gap, -TAPE)),
            Label("stitching", (x + u, row)),
            *numbered((wide / 2, x), -TAPE, u),
        ),
    )
