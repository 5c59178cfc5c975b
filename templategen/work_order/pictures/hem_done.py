"""The folded hem of every kind, cut across and from the back: sewn or bonded, pressed, and let down later."""

from __future__ import annotations

from dataclasses import dataclass, replace

from ...document.view import Label, Note, Rise, Shape, Stroke, View, Within
from ...drawing import LineType
from ...planning import Plan
from ...planning.hems.double_fold import DoubleFoldPlan
from ...planning.hems.sewn_on import SewnOnPlan
from ...planning.hems.single_fold import SingleFoldPlan
from ...planning.plan import HemPlan
from .cloth import broken, broken_up, turned, turned_below
from .hem_folds import TAPE
from .sections import LAYER, ROOM, numbered, other, section, sides, through, turned_up, unit
from .signs import across, arc, figure, mm

FLAT = 52.0
"""Units of the cloth's width that are seen flat: five stitches."""
ABOVE = 0.4
"""How much of the panel above the hem is seen, of the hem's depth."""


@dataclass(frozen=True, slots=True)
class Done:
    """A finished hem, cut across, its lower edge at 0."""

    shapes: tuple[Shape, ...]
    left: float
    right: float
    """Between which its layers lie."""
    upper: float
    """The height of its upper edge at the back, as it is seen there."""


def height_of(hem: HemPlan) -> float:
    """How much of the panel's foot is drawn."""
    return max(mm(hem.depth), mm(hem.stitch_line) + TAPE) * (1 + ABOVE)


def done(hem: HemPlan, x: float, top: float) -> Done:
    """The hem folded, the panel's front at ``x``, up to ``top``."""
    u = unit(top)
    gap, deep = LAYER * u, mm(hem.depth)
    if isinstance(hem, SewnOnPlan):
        if hem.turn_under is not None:
            return _faced(hem, x, top, gap)
        return _bordered(hem, x, top, gap) if hem.own_hem is None else _bordered_single(hem, x, top, gap)
    if isinstance(hem, DoubleFoldPlan):
        points = turned_up(x, gap, deep, mm(hem.turn_under), top, 0.0)
        return Done((section(points),), x, x + 2 * gap, deep)
    assert isinstance(hem, SingleFoldPlan), "no other kind of hem is folded"
    if hem.bonded:
        return _bonded(hem, x, top, gap)
    tape = Stroke(LineType.TRIM, ((x + 2 * gap, deep - TAPE), (x + 2 * gap, deep + TAPE)))
    return Done((section(turned_up(x, gap, deep, 0.0, top, 0.0)), tape), x, x + 2 * gap, deep + TAPE)


def _bonded(hem: SingleFoldPlan, x: float, top: float, gap: float) -> Done:
    """Its web, a zigzag line between the layers."""
    low, high = mm(hem.stitch_line), mm(hem.depth)
    outer = x + 2 * gap
    web = tuple((x + gap * (0.6 if i % 2 else 1.4), low + (high - low) * i / 10) for i in range(11))
    points = ((x, top), *turned_below(x, outer, 0.0), (outer, high))
    return Done((section(points), Stroke(LineType.THIN, web)), x, outer, high)


def _faced(hem: SewnOnPlan, x: float, top: float, gap: float) -> Done:
    """The seam's edges between panel and facing, the facing behind all."""
    seam, deep = mm(hem.seam), mm(hem.depth)
    turn = mm(hem.turn_under) if hem.turn_under is not None else 0.0
    outer = x + 3 * gap
    inside = outer - gap * (1 if deep - turn > seam else 0.5)
    facing = (
        (x + 2 * gap, seam), *turned_below(x + 2 * gap, outer, 0.0), *turned(outer, inside, deep), (inside, deep - turn)
    )
    stitched = Stroke(LineType.MARK, ((x + 0.4 * gap, 0.7 * gap), (x + 2.6 * gap, 0.7 * gap)))
    panel = section(((x, top), *turned_below(x, x + gap, 0.0), (x + gap, seam)))
    return Done((panel, other(facing), stitched), x, outer, deep)


def _bordered(hem: SewnOnPlan, x: float, top: float, gap: float) -> Done:
    """The panel's edge and the border's between the border's two layers, the back one turned in over the seam."""
    seam, deep = mm(hem.seam), mm(hem.depth)
    front, back = x - 2 * gap, x + 2 * gap
    border = (
        (x - gap, deep - seam), *turned(x - gap, front, deep), *turned_below(front, back, 0.0),
        *turned(back, x + gap, deep + gap), (x + gap, deep - seam),
    )  # fmt: skip
    return Done((section(((x, top), (x, deep - seam))), other(border)), front, back, deep + gap)


def _bordered_single(hem: SewnOnPlan, x: float, top: float, gap: float) -> Done:
    """Both edges of the seam pressed up; the border's lower edge turned up twice alike."""
    assert hem.own_hem is not None, "a single border has its own hem"
    seam, deep, own = mm(hem.seam), mm(hem.depth), mm(hem.own_hem)
    outer = x + 2 * gap
    panel = ((x, top), *turned_below(x, x + gap, deep), (x + gap, deep + seam))
    under = (*turned(outer, x + gap, own), (x + gap, 0.5 * gap))
    border = ((outer, deep + seam), (outer, deep - gap), (x, deep - 2 * gap), *turned_below(x, outer, 0.0), *under)
    stitched = Stroke(LineType.MARK, ((x + 0.4 * gap, deep + 0.7 * gap), (outer + 0.6 * gap, deep + 0.7 * gap)))
    return Done((section(panel), other(border), stitched), x, outer, own)


def sewn(plan: Plan, hem: HemPlan) -> View:
    """1: the hem cut across, its row of stitching through all of it. 2: the same from the back."""
    bonded = isinstance(hem, SingleFoldPlan) and hem.bonded
    taped = isinstance(hem, SingleFoldPlan) and not hem.bonded
    top, row = height_of(hem), mm(hem.stitch_line)
    u = unit(top)
    x = (FLAT + ROOM * 1.3) * u
    made = done(hem, x, top)
    last = "web's lower edge" if bonded else "stitching"
    shapes: list[Shape] = [
        *_from_the_back(made.upper, top, u),
        *([across(LineType.MARK, 0, FLAT * u, mm(hem.depth) - TAPE)] if taped else []),
        across(LineType.FOLD if bonded else LineType.STITCH, 0, FLAT * u, row),
        *made.shapes,
    ]
    if not bonded:
        shapes.append(through(made.left, made.right, row, u))
    notes: list[Note] = [
        Rise(figure(plan, hem.stitch_line), 0, row, 0, "left"),
        Label(last, (made.right + (0 if bonded else u), row)),
        Label("finished edge", ((made.left + made.right) / 2, 0)),
        *sides(made.left, made.right, max(made.upper, row) + 2 * u, top, u),
        *numbered((FLAT / 2 * u, (made.left + made.right) / 2), 0.0, u),
    ]
    if isinstance(hem, SingleFoldPlan):
        what = ("bonding web", (x + LAYER * u, (row + made.upper) / 2)) if bonded else (
            "tape", (made.right, mm(hem.depth) - TAPE * 0.5)
        )
        notes.append(Label(*what))
    holds = "the web's lower edge comes" if bonded else "a row of stitching goes through all its layers"
    return View(
        title="The hem bonded" if bonded else "The hem sewn",
        spoken=(
            f"The finished hem. 1: from the back: {holds} {figure(plan, hem.stitch_line)} above the finished edge. "
            "2: the same cut across, the front on the left and the back on the right."
        ),
        shapes=tuple(shapes),
        notes=tuple(notes),
    )


def tried(plan: Plan, hem: SingleFoldPlan) -> View:
    """A scrap folded and bonded as the hem will be."""
    return replace(sewn(plan, hem), title="A scrap, bonded as the hem will be")


def _from_the_back(upper: float, top: float, u: float) -> list[Shape]:
    """The foot of the panel, flat, its back towards you: the hem's upper edge."""
    wide = FLAT * u
    return [
        Stroke(LineType.MARK, ((0, top), (0, 0), (wide, 0))),
        broken(0, wide, top, u),
        broken_up(wide, 0, top, u),
        across(LineType.MARK, 0, wide, upper),
    ]


def pressed(plan: Plan, hem: HemPlan) -> View:
    """The finished hem from the back, the iron on it."""
    top = height_of(hem)
    u = unit(top)
    made = done(hem, 0.0, top)
    left, right, half = 30 * u, 56 * u, min(8 * u, top * 0.2)
    middle = min(max(made.upper / 2, half * 1.3), top * 0.6)
    heel = Stroke(LineType.MARK, ((right, middle - half), (right, middle + half)))
    nose = tuple((left + (right - left) * (1 - (1 - i / 10) ** 0.5), middle + half * i / 10) for i in range(11))
    sole = ((right, middle - half), *((a, 2 * middle - b) for a, b in reversed(nose)), *nose, (right, middle + half))
    handle = arc(LineType.MARK, (right - 9 * u, middle), 2.2 * u, 90, 270).points
    grip = (*handle, (right - 2 * u, middle - 2.2 * u), (right - 2 * u, middle + 2.2 * u), handle[0])
    wide = 84 * u
    return View(
        title="The hem pressed, its back towards you",
        spoken="The foot of the panel lies on the board, its back towards you, and the iron is set down on the hem.",
        shapes=(
            Stroke(LineType.MARK, ((0, top), (0, 0), (wide, 0))),
            broken(0, wide, top, u),
            broken_up(wide, 0, top, u),
            across(LineType.MARK, 0, left if middle - half < made.upper < middle + half else wide, made.upper),
            *((across(LineType.MARK, right, wide, made.upper),)
              if middle - half < made.upper < middle + half else ()),
            heel,
            Stroke(LineType.CUT, sole),
            Stroke(LineType.MARK, grip),
        ),
        notes=(
            Label("dry iron", (right, middle)),
            Label("finished edge", (wide * 0.9, 0)),
            Label("upper edge of the hem", (wide * 0.9, made.upper)),
            Within("back", (0, made.upper + u), (wide, top)),
        ),
    )  # fmt: skip


def let_down_later(plan: Plan) -> View:
    """The hem as it is sewn now, and as it is folded once the panel has shrunk."""
    assert plan.shrinkage is not None, "cloth is carried for shrinkage"
    now, later = mm(plan.hem.depth), mm(plan.shrinkage.hem_depth)
    turn = mm(plan.hem.turn_under) if isinstance(plan.hem, DoubleFoldPlan) else 0.0
    top = max(now, later) * (1 + ABOVE)
    u = unit(top)
    gap, second = LAYER * u, (ROOM * 2) * u
    low = min(turn, now) if turn else 0.0
    end = 2 * gap if turn else gap
    equal = isinstance(plan.hem, DoubleFoldPlan) and plan.hem.turn_under == plan.hem.depth
    return View(
        title="The hem now, and once it is washed",
        spoken=(
            f"The hem cut across, the front on the left. 1: as it is sewn now, {figure(plan, plan.hem.depth)} deep. "
            f"2: as it is pinned once the panel has been washed, {figure(plan, plan.shrinkage.hem_depth)} deep."
        ),
        shapes=(
            section(turned_up(0.0, gap, now, low, top, 0.0)),
            section(turned_up(second, gap, later, min(later if equal else turn, later), top, 0.0)),
        ),
        notes=(
            Rise(figure(plan, plan.hem.depth), 0, now, 0, "left"),
            Rise(figure(plan, plan.shrinkage.hem_depth), 0, later, second + end, "right"),
            *sides(second, second + gap * 0.3, later + 2 * u, top, u),
            Label("now", (gap, 0), "left"),
            Label("once it is washed", (second + gap, 0)),
            *numbered((gap, second + gap), 0.0, u),
        ),
    )


