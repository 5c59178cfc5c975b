"""Weights, a lining, a tuck, and the old hem let down."""

from __future__ import annotations

from ...document.view import Circle, Label, Note, Rise, Shape, Span, Stroke, View, Within
from ...drawing import LineType
from ...lengths import NOTHING
from ...planning import Plan
from ...planning.choices import POCKET_SEAM
from ...planning.extras import lining_shorter
from .cloth import broken, broken_up, turned_below
from .hem_done import done
from .sections import LAYER, ROOM, numbered, section, sides, unit
from .signs import across, box, figure, mm


def weighted(plan: Plan) -> View:
    """1: the cloth for a pocket. 2: the foot of the panel from the back, weights in their pockets inside the hem."""
    cut_wide, cut_long = (plan.figures[key].value for key in ("weight_pocket", "weight_pocket_length"))
    pocket, hem = mm(cut_wide - 2 * POCKET_SEAM), max(mm(plan.hem.depth), 1.0)
    many = plan.counts["weights"] > 2
    tall = max(max(hem, pocket) * 1.5, mm(cut_long) * 1.05)
    u = unit(tall)
    start = mm(cut_wide) + 16 * u
    places = [start + pocket / 2, *([start + pocket / 2 + max(20 * u, pocket * 1.6)] if many else [])]
    wide = places[-1] + pocket / 2 + 12 * u
    shapes: list[Shape] = [
        box(LineType.CUT, (0, 0), (mm(cut_wide), mm(cut_long))),
        across(LineType.FOLD, 0, mm(cut_wide), mm(cut_long) / 2),
        Stroke(LineType.CUT, ((start, tall), (start, 0), (wide, 0))),
        broken(start, wide, tall, u),
        broken_up(wide, 0, tall, u),
        across(LineType.MARK, start, wide, hem),
    ]
    for x in places:
        shapes.append(box(LineType.FOLD, (x - pocket / 2, 0.0), (x + pocket / 2, pocket)))
        shapes.append(Circle(LineType.MARK, (x, pocket / 2), min(mm(plan.spec.weights.size), pocket) / 2))
    notes: list[Note] = [
        Rise(figure(plan, cut_long), 0, mm(cut_long), 0, "left"),
        Span(figure(plan, cut_wide), 0, mm(cut_wide), 0),
        Label("pocket", (places[-1] + pocket / 2, pocket * 0.8)),
        Label("weight", (places[-1] + min(mm(plan.spec.weights.size), pocket) / 2, pocket / 2)),
        Label("top of the hem", (wide - 2 * u, hem)),
        Within("1", (0, mm(cut_long) / 2), (mm(cut_wide), mm(cut_long)), at=(mm(cut_wide) / 2, mm(cut_long) * 0.75)),
        Within("2", (start, hem), (wide, tall), at=((start + wide) / 2, tall * 0.9)),
    ]
    others = ""
    if many:
        pitched = figure(plan, plan.figures["weight_pitch"].value)
        notes.append(Span(pitched, places[0], places[1], tall, "above"))
        others = f", the others {pitched} from centre to centre"
    return View(
        title="A pocket's cloth, and weights in the hem, from the back",
        spoken=(
            f"1: the cloth for a pocket is cut {figure(plan, cut_wide)} wide and {figure(plan, cut_long)} long, and "
            "folded in half. 2: the lower left corner of the panel, its back towards you. Weights hang in their "
            f"pockets inside the hem, the first at the corner{others}."
        ),
        shapes=tuple(shapes),
        notes=tuple(notes),
    )


def lined(plan: Plan) -> View:
    """The foot of panel and lining from the back."""
    shorter = lining_shorter(plan.spec, plan.drop)
    assert shorter is not None, "there is a lining"
    above, hem = mm(plan.figures["lining_above"].value), mm(plan.spec.lining.hem)
    tall = max(abs(above) + hem, 40.0) * 1.8
    wide, edge = tall * 1.3, tall * 0.08
    foot = min(0.0, above)
    shapes: list[Shape] = [
        Stroke(LineType.CUT, ((0, tall), (0, 0), (wide, 0), (wide, tall))),
        Stroke(LineType.MARK, ((edge, tall), (edge, above), (wide - edge, above), (wide - edge, tall))),
        across(LineType.STITCH, edge, wide - edge, above + hem),
        broken(0, wide, tall, tall * 0.03),
    ]
    apart = plan.figures["lining_above"].value
    notes: list[Note] = [
        Label("panel's finished edge", (wide, 0)),
        Label("lining's edge", (wide - edge, above)),
        Within("lining", (edge, above + hem), (wide - edge, tall)),
        Rise(figure(plan, plan.spec.lining.hem), above, above + hem, 0, "left"),
    ]
    if apart:
        notes.append(Rise(figure(plan, abs(apart)), foot, max(above, 0.0), 0, "left"))
    return View(
        title="The lining, the back towards you",
        spoken=(
            f"The foot of the panel, its back towards you. The lining's hem is {figure(plan, plan.spec.lining.hem)} "
            f"deep; its edge hangs {figure(plan, abs(apart))} {'above' if apart >= NOTHING else 'below'} the panel's."
        ),
        shapes=tuple(shapes),
        notes=tuple(notes),
    )


def tucked(plan: Plan) -> View:
    """1: the panel's back, with the tuck's two lines. 2: cut across, one brought to the other, stitched and pressed."""
    assert plan.shrinkage is not None, "there is a tuck"
    low, high = (plan.figures[key].value for key in ("tuck_lower_line", "tuck_upper_line"))
    top = mm(high) * 1.18
    u = unit(top)
    wide, hem = 26 * u, mm(plan.hem.depth)
    x = wide + ROOM * u
    shapes = [
        Stroke(LineType.MARK, ((0, top), (0, 0), (wide, 0))),
        broken(0, wide, top, u),
        broken_up(wide, 0, top, u),
        across(LineType.THIN, 0, wide, hem),
        across(LineType.MARK, 0, wide, mm(low)),
        across(LineType.MARK, 0, wide, mm(high)),
        *_tuck(plan, x, top),
    ]
    gap, deep = LAYER * u, mm(plan.shrinkage.extra / 2)
    return View(
        title="The tuck: marked on the back; stitched, cut across",
        spoken=(
            f"1: the back of the panel: two lines right across, {figure(plan, low)} and {figure(plan, high)} above the "
            "finished edge. 2: cut across, the front on the left: one line is brought to the other and both are "
            f"stitched together with long stitches; the fold, {figure(plan, plan.shrinkage.extra / 2)} deep, is "
            "pressed down behind the hem."
        ),
        shapes=tuple(shapes),
        notes=(
            Rise(figure(plan, low), 0, mm(low), 0, "left"),
            Rise(figure(plan, high), 0, mm(high), 0, "left"),
            Label("long stitches", (x + 1.2 * gap, mm(low) + 2.2 * gap)),
            Label("tuck", (x + 4.5 * gap, mm(low) - deep * 0.6)),
            *sides(x, x + gap, mm(low) + 4 * gap, top - mm(high - low) * 0.2, u),
            *numbered((wide / 2, x + gap), 0, u),
        ),
    )


def let_out(plan: Plan) -> View:
    """1: the tuck as it is sewn. 2: its stitches out, its cloth flat."""
    assert plan.shrinkage is not None, "there is a tuck"
    low, high = (mm(plan.figures[key].value) for key in ("tuck_lower_line", "tuck_upper_line"))
    top = high * 1.18
    u = unit(top)
    second = ROOM * 2.4 * u
    flat = done(plan.hem, second, top)
    gap = LAYER * u
    return View(
        title="The tuck let out, cut across",
        spoken=(
            "Cut across, the front on the left. 1: the tuck as it is sewn, pressed down behind the hem. 2: its "
            f"stitches are out, and the {figure(plan, plan.shrinkage.extra)} that it took up hang in the panel."
        ),
        shapes=(
            *_tuck(plan, 0.0, top),
            *flat.shapes,
            *(Stroke(LineType.MARK, ((second, y), (second + 2.4 * u, y))) for y in (low, high)),
        ),
        notes=(
            Rise(figure(plan, plan.shrinkage.extra), low, high, flat.right, "right"),
            Label("stitches to take out", (1.2 * gap, low + 2.2 * gap), "left"),
            Label("old line", (second + 2.4 * u, high)),
            Label("old line", (second + 2.4 * u, low)),
            *numbered((gap, second + gap), 0, u),
        ),
    )


def _tuck(plan: Plan, x: float, top: float) -> tuple[Shape, ...]:
    """The panel's foot cut across, from its hem up past the tuck, which hangs behind."""
    assert plan.shrinkage is not None, "there is a tuck"
    low, deep = mm(plan.figures["tuck_lower_line"].value), mm(plan.shrinkage.extra / 2)
    u = unit(top)
    gap = LAYER * u
    made = done(plan.hem, x, top)
    inner, outer = made.right + gap, made.right + 2 * gap
    fold = turned_below(inner, outer, low - deep)
    hem = [shape for shape in made.shapes[1:]]
    first = made.shapes[0]
    assert isinstance(first, Stroke), "a hem begins with the panel's own cloth"
    foot = ((x, low), *first.points[1:])
    upper = ((outer, low + 0.3 * gap), (x, low + 1.5 * gap), (x, top - 2 * deep))
    return (
        section((*foot[::-1], (inner, low - gap), *fold, *upper)),
        *hem,
        Stroke(LineType.MARK, ((x + 1.2 * gap, low - 1.3 * gap), (x + 1.2 * gap, low + 2.2 * gap))),
    )


def let_down(plan: Plan) -> View:
    """The old hem unpicked and flat: a thread marks where the bottom edge was."""
    panel = plan.spec.panel
    hem, turn = mm(panel.hem), mm(panel.turn_under)
    low, tall = -hem - turn, max(hem * 2, 40.0)
    wide = (tall - low) * 1.3
    return View(
        title="The old hem let down, the back towards you",
        spoken=(
            "The foot of the panel, its back towards you, the old hem unpicked and flat. A thread right across marks "
            f"where the bottom edge was; {figure(plan, panel.hem + panel.turn_under)} of cloth lie below it."
        ),
        shapes=(
            Stroke(LineType.CUT, ((0, tall), (0, low), (wide, low), (wide, tall))),
            broken(0, wide, tall, tall * 0.03),
            across(LineType.STITCH, 0, wide, 0),
            across(LineType.THIN, 0, wide, hem),
        ),
        notes=(
            Label("thread: the old bottom edge", (wide, 0)),
            Label("holes of the old stitching", (wide, hem)),
            Label("raw edge", (wide, low)),
            Rise(figure(plan, panel.hem + panel.turn_under), low, 0, 0, "left"),
            Within("back", (0, hem), (wide, tall)),
        ),
    )
