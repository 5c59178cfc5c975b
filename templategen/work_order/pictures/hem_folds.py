"""The hem in section, before, during and after each fold, and sewn."""

from __future__ import annotations

from ...document.view import Label, Note, Shape, Span, Stroke, View
from ...drawing import LineType
from ...lengths import Length
from ...planning import Plan
from ...planning.choices import HEM_TAPE
from ...planning.hems.double_fold import DoubleFoldPlan
from ...planning.hems.single_fold import SingleFoldPlan
from ...planning.plan import HemPlan
from .lying import GAP, back_up, folded_left, folded_right, going_on, layer, over, stitches, tick
from .signs import figure, mm

TAIL = 0.5
"""How much of the panel beyond the mark is seen, of a fold's depth."""


def turn_under(plan: Plan, hem: DoubleFoldPlan) -> View:
    """The raw edge brought to fold-to line 1."""
    return _fold(plan, hem.turn_under, "The turn-under, cut across", "raw edge", "fold-to line 1", NO_TURN)


def turned_up(plan: Plan, hem: DoubleFoldPlan) -> View:
    """The first fold brought to fold-to line 2, and the hem pinned."""
    return _fold(plan, hem.depth, "The hem, cut across", "first fold", "fold-to line 2", mm(hem.turn_under))


def turned_once(plan: Plan, hem: SingleFoldPlan) -> View:
    """The raw edge of a single fold brought to its line."""
    edge = "raw edge" if hem.bonded else "raw edge, taped"
    return _fold(plan, hem.depth, "The hem, cut across", edge, "fold-to line", NO_TURN, taped=not hem.bonded)


NO_TURN = 0.0
TAPE = mm(HEM_TAPE) / 2
"""Half the width of a hem tape."""


def _fold(
    plan: Plan, depth: Length, title: str, edge: str, line: str, turn: float, *, taped: bool = False
) -> View:
    """Above: the cloth with its mark, and the way its edge goes. Below: the fold."""
    deep = mm(depth)
    wide = deep * (2 + TAIL)
    gap = wide * GAP
    right, low = deep * (1 + TAIL), -(deep * 0.2 + 9 * gap)
    turn = min(turn, deep)
    top = gap if turn else 0.0
    before = layer((right, 0), (-deep, 0))
    if turn:
        before = layer((turn - deep, gap), *folded_left(-deep, 0, gap), (right, 0))
    shapes: list[Shape] = [before, tick(deep, 0, gap * 1.3), over(-deep, deep, top + gap)]
    shapes += _after(deep, turn, low, gap, right)
    if taped:
        half = TAPE
        shapes.append(Stroke(LineType.TRIM, ((-deep - half, -gap * 0.7), (-deep + half, -gap * 0.7))))
        shapes.append(Stroke(LineType.TRIM, ((deep - half, low + gap * 1.7), (deep + half, low + gap * 1.7))))
    notes: list[Note] = [
        Span(figure(plan, 2 * depth), -deep, deep, top + gap * 2 + deep * 0.45, "above"),
        Label(edge, (-deep, top / 2), "left"),
        Label(line, (deep, gap)),
        Span(figure(plan, depth), 0, deep, low, "below"),
        Label("fold", (0, low + (gap if turn else gap / 2)), "left"),
        back_up(0, right, low),
    ]
    shapes.append(going_on(right, low, gap))
    return View(
        title=title,
        spoken=(
            f"The cloth cut across, its back up, the bottom edge on the left. Above: the {line} is marked "
            f"{figure(plan, 2 * depth)} from the {edge}, and the {edge} is brought to it. Below: the cloth lies "
            f"folded {figure(plan, depth)} deep."
        ),
        shapes=tuple(shapes),
        notes=tuple(notes),
    )


def _after(deep: float, turn: float, low: float, gap: float, right: float) -> list[Shape]:
    """The cloth once it is folded, its fold at 0."""
    if not turn:
        return [layer((deep, low + gap), *folded_left(0, low, low + gap), (right, low))]
    inside = max(deep - turn, gap)
    points = ((inside, low + gap), *folded_right(deep, low + gap, low + 2 * gap), *folded_left(0, low, low + 2 * gap))
    return [layer(*points, (right, low))]


def sewn(plan: Plan, hem: HemPlan) -> View:
    """The pinned hem with its row of stitching."""
    deep, row = mm(hem.depth), mm(hem.stitch_line)
    turn = mm(hem.turn_under) if isinstance(hem, DoubleFoldPlan) else 0.0
    taped = isinstance(hem, SingleFoldPlan) and not hem.bonded
    what, held = ("web's lower edge", "bonded") if isinstance(hem, SingleFoldPlan) and hem.bonded else (
        "the row of stitching", "sewn"
    )
    right = max(deep, row) * (1 + TAIL)
    gap = right * GAP
    layers = 2 * gap if turn else gap
    shapes: list[Shape] = [*_after(deep, min(turn, deep), 0.0, gap, right), stitches(row, 0.0, layers, gap)]
    if taped:
        half = TAPE
        shapes.append(Stroke(LineType.TRIM, ((deep - half, gap * 1.7), (deep + half, gap * 1.7))))
    notes: list[Note] = [
        Span(figure(plan, hem.stitch_line), 0, row, layers, "above"),
        Label(what, (row, layers + gap * 0.8)),
        Label("finished edge", (0, layers / 2), "left"),
        back_up(0, right, 0.0),
    ]
    shapes.append(going_on(right, 0.0, gap))
    return View(
        title=f"The hem {held}, cut across",
        spoken=(
            f"The finished hem cut across, its back up, the finished edge on the left. {what.capitalize()} holds all "
            f"its layers, {figure(plan, hem.stitch_line)} from the finished edge."
        ),
        shapes=tuple(shapes),
        notes=tuple(notes),
    )


def pressed(plan: Plan, hem: HemPlan) -> View:
    """The finished hem under the iron."""
    deep = mm(hem.depth)
    turn = mm(hem.turn_under) if isinstance(hem, DoubleFoldPlan) else 0.0
    right = deep * (1 + TAIL)
    gap = right * GAP
    sole = (2 * gap if turn else gap) + gap
    left, end, tall = deep * 0.15, deep * 0.85, deep * 0.34
    back, front = (end, sole + tall * 0.4), (left + tall * 0.9, sole + tall * 0.55)
    iron = ((left, sole), (end, sole), back, front, (left, sole))
    handle = (back, (end, sole + tall), (left + tall, sole + tall), front)
    shapes: list[Shape] = [
        *_after(deep, min(turn, deep), 0.0, gap, right),
        Stroke(LineType.MARK, iron),
        Stroke(LineType.MARK, handle),
        going_on(right, 0.0, gap),
        Stroke(LineType.THIN, ((-deep * 0.1, -gap), (right, -gap))),
    ]
    return View(
        title="The hem pressed, cut across",
        spoken="The finished hem lies on the board, its back up, and the iron is set down on it.",
        shapes=tuple(shapes),
        notes=(
            Label("iron, dry", (end, sole + tall * 0.6)),
            Label("finished edge", (0, gap if turn else gap / 2), "left"),
            back_up(0, right, 0.0),
        ),
    )


def taped(plan: Plan, hem: SingleFoldPlan) -> View:
    """The tape on the raw edge, on the right side of the cloth."""
    deep = mm(hem.depth)
    half, right = TAPE, max(deep, 4 * TAPE)
    gap = right * GAP
    return View(
        title="The tape, cut across",
        spoken=(
            "The cloth cut across, its front up, the raw edge on the left. The tape lies over the raw edge, half of it "
            "beyond, and is sewn to the cloth close to the edge."
        ),
        shapes=(
            layer((0, 0), (right, 0)),
            Stroke(LineType.TRIM, ((-half, gap), (half, gap))),
            stitches(half * 0.5, 0, gap, gap),
            going_on(right, 0, gap),
        ),
        notes=(
            Label("tape", (-half, gap), "left"),
            Label("raw edge", (0, 0), "left"),
            Label("stitching", (half * 0.5, gap * 1.8)),
            Label("front, up", (right * 0.82, 0)),
        ),
    )


def let_down_later(plan: Plan) -> View:
    """The hem as it is folded once the panel has shrunk."""
    assert plan.shrinkage is not None, "cloth is carried for shrinkage"
    now, later = mm(plan.hem.depth), mm(plan.shrinkage.hem_depth)
    turn = mm(plan.hem.turn_under) if isinstance(plan.hem, DoubleFoldPlan) else 0.0
    right = max(now, later) * (1 + TAIL)
    gap = right * GAP
    low = -9 * gap
    return View(
        title="The hem, before and after it is let down",
        spoken=(
            f"The hem cut across, its back up. Above: as it is sewn now, {figure(plan, plan.hem.depth)} deep. Below: "
            f"as it is pinned once the panel has been washed, {figure(plan, plan.shrinkage.hem_depth)} deep."
        ),
        shapes=(
            *_after(now, min(turn, now), 0.0, gap, right),
            *_after(later, min(turn, later), low, gap, right),
            going_on(right, 0, gap),
            going_on(right, low, gap),
        ),
        notes=(
            Span(figure(plan, plan.hem.depth), 0, now, 2 * gap, "above"),
            Span(figure(plan, plan.shrinkage.hem_depth), 0, later, low, "below"),
            Label("now", (right * 0.95, 0)),
            Label("once it is washed", (right * 0.95, low)),
        ),
    )
