"""Side edges, corners, weights, a lining and a tuck."""

from __future__ import annotations

from ...document.view import Circle, Hatch, Label, Note, Point, Rise, Shape, Span, Stroke, View, Within
from ...drawing import LineType
from ...lengths import NOTHING
from ...planning import Plan
from ...planning.extras import lining_shorter
from ...planning.plan import MitrePlan
from ...planning.widths import kept_edge
from .cloth import broken, broken_up
from .lying import GAP, back_up, folded_left, folded_right, going_on, layer, stitches
from .signs import across, box, figure, mm


def narrowed(plan: Plan) -> View:
    """The panel from the front, and where it is cut narrower or in several."""
    sides, whole = plan.spec.sides, mm(plan.spec.panel.width)
    side_cut = mm(plan.figures["side_cut"].value)
    high, cut = whole * 0.35, figure(plan, plan.figures["side_cut"].value)
    inner = mm(plan.width + 2 * plan.figures["side_allowance"].value)
    cuts = [side_cut]
    if sides.split > 1:
        cuts = [side_cut + inner * i for i in range(sides.split - 1)]
    elif kept_edge(plan.spec) == "right":
        cuts = [whole - side_cut]
    shapes: list[Shape] = [
        Stroke(LineType.MARK, ((0, 0), (0, high), (whole, high), (whole, 0))),
        broken(0, whole, 0, whole * 0.012),
        *(Stroke(LineType.CUT, ((x, 0), (x, high))) for x in cuts),
    ]
    notes: list[Note] = [Span(figure(plan, plan.spec.panel.width), 0, whole, high, "above")]
    if sides.split > 1:
        notes.append(Span(cut, 0, side_cut, 0, "below"))
        if sides.split > 2:
            notes.append(Span(figure(plan, plan.width + 2 * plan.figures["side_allowance"].value),
                              cuts[0], cuts[1], 0, "below"))  # fmt: skip
        notes.append(Label("cut here", (cuts[-1], high * 0.5)))
        said = f"It is cut in {sides.split} from top to bottom, the first time {cut} from a side edge."
    else:
        (x,) = cuts
        start, end = (0.0, x) if kept_edge(plan.spec) == "left" else (x, whole)
        notes.append(Span(cut, start, end, 0, "below"))
        off = (end, 0.0, whole, high) if start == 0.0 else (0.0, 0.0, x, high)
        shapes.append(Hatch(((off[0], 0), (off[2], 0), (off[2], high), (off[0], high))))
        notes.append(Within("cut off", (off[0], 0), (off[2], high), "right" if start == 0.0 else "left"))
        notes.append(Within("front", (start, high * 0.1), (end, high * 0.9)))
        said = f"It is cut {cut} wide, measured from its {kept_edge(plan.spec)} edge, which stays."
    return View(
        title="Where the panel is cut",
        spoken=f"The panel from the front, {figure(plan, plan.spec.panel.width)} wide. {said}",
        shapes=tuple(shapes),
        notes=tuple(notes),
    )


def mitred(plan: Plan, mitre: MitrePlan) -> View:
    """A corner with its creases and the one straight fold, the back up."""
    up, along = mm(mitre.up_the_side), mm(mitre.along_the_bottom)
    side, hem = mm(mitre.side_allowance), mm(mitre.hem_allowance)
    wide, high = along * 1.25, up * 1.25
    shapes: list[Shape] = [
        Stroke(LineType.CUT, ((wide, 0), (0, 0), (0, high))),
        broken_up(wide, 0, high, wide * 0.03),
        broken(0, wide, high, wide * 0.03),
        Stroke(LineType.THIN, ((side, 0), (side, high))),
        Stroke(LineType.THIN, ((0, hem), (wide, hem))),
        Stroke(LineType.FOLD, ((0, up), (along, 0))),
    ]
    return View(
        title="A corner opened, the back up",
        spoken=(
            "The corner of the panel opened flat, its back up, the raw corner below on the left. The one straight "
            f"fold runs from {figure(plan, mitre.up_the_side)} up the side's raw edge to "
            f"{figure(plan, mitre.along_the_bottom)} along the bottom's raw edge, over the crossing of the two creases "
            "that come to lie at the finished edges."
        ),
        shapes=tuple(shapes),
        notes=(
            Rise(figure(plan, mitre.up_the_side), 0, up, 0, "left"),
            Span(figure(plan, mitre.along_the_bottom), 0, along, 0, "below"),
            Label("fold the corner in along this", (along * 0.4, up * 0.6)),
            Label("crease of the bottom hem", (wide * 0.95, hem)),
            Label("crease of the side hem", (side, high * 0.97)),
        ),
    )


def weighted(plan: Plan) -> View:
    """The foot of the panel from the back, weights in their pockets inside the hem."""
    hem = max(mm(plan.hem.depth), 1.0)
    wide_pocket, long_pocket = (mm(plan.figures[key].value) for key in ("weight_pocket", "weight_pocket_length"))
    many = plan.counts["weights"] > 2
    pocket_high = long_pocket / 2
    tall = max(hem, pocket_high) * 2.2
    first = wide_pocket * 0.7
    pitch = min(mm(plan.figures["weight_pitch"].value), tall * 1.6) if many else 0.0
    places = [first, first + max(pitch, wide_pocket * 1.6)] if many else [first]
    wide = places[-1] + wide_pocket * 1.3
    shapes: list[Shape] = [
        Stroke(LineType.CUT, ((wide, 0), (0, 0), (0, tall))),
        broken_up(wide, 0, tall, tall * 0.03),
        broken(0, wide, tall, tall * 0.03),
        across(LineType.STITCH, 0, wide, hem),
    ]
    size = min(mm(plan.spec.weights.size) / 2, wide_pocket * 0.45, pocket_high * 0.45)
    for x in places:
        left, right = x - wide_pocket / 2, x + wide_pocket / 2
        shapes.append(box(LineType.FOLD, (left, hem * 0.05), (right, hem * 0.05 + pocket_high)))
        shapes.append(Circle(LineType.THIN, (x, hem * 0.05 + pocket_high / 2), size))
    notes: list[Note] = [
        Label("pocket, inside the hem", (places[-1] + wide_pocket / 2, hem * 0.05 + pocket_high * 0.7)),
        Label("weight", (places[-1] + size, hem * 0.05 + pocket_high / 2)),
        Label("top of the hem", (wide * 0.97, hem)),
        Span(figure(plan, plan.figures["weight_pocket"].value), first - wide_pocket / 2, first + wide_pocket / 2, 0),
    ]
    others = ""
    if many:
        pitched = figure(plan, plan.figures["weight_pitch"].value)
        notes.append(Span(pitched, places[0], places[1], tall, "above"))
        others = f", the others {pitched} from centre to centre"
    return View(
        title="Weights in the hem, the back towards you",
        spoken=(
            "The lower left corner of the panel, its back towards you. Weights hang in small pockets inside the hem, "
            "the first at the "
            f"corner{others}. "
            f"A pocket is {figure(plan, plan.figures['weight_pocket'].value)} wide when it is sewn."
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
    """The tuck in section: a fold that stands on the back, pressed down behind the hem."""
    assert plan.shrinkage is not None, "there is a tuck"
    low, high = (plan.figures[key].value for key in ("tuck_lower_line", "tuck_upper_line"))
    deep = mm(plan.shrinkage.extra / 2)
    start = min(mm(low), deep * 4)
    right = start + deep * 3
    gap = right * GAP
    level = -9 * gap
    shapes: list[Shape] = [
        layer((0, 0), (right + 2 * deep, 0)),
        Stroke(LineType.MARK, ((start, -gap), (start, gap))),
        Stroke(LineType.MARK, ((start + 2 * deep, -gap), (start + 2 * deep, gap))),
        layer(
            (0, level), *folded_right(start + gap / 2, level, level + gap),
            *folded_left(start - deep, level + gap, level + 2 * gap)[::-1],
            (start, level + 2 * gap), (start + gap, level), (right, level),
        ),
        stitches(start - gap, level, level + 2 * gap, gap),
        going_on(right, level, gap),
    ]  # fmt: skip
    notes: list[Note] = [
        Span(figure(plan, high - low), start, start + 2 * deep, 0, "above"),
        Label("lower line", (start, -gap), "left"),
        Label("upper line", (start + 2 * deep, -gap)),
        Span(figure(plan, plan.shrinkage.extra / 2), start - deep, start, level, "below"),
        Label("tuck, pressed down", (start - deep, level + 1.5 * gap), "left"),
        Label("long stitches", (start - gap, level + 2.8 * gap)),
        back_up(0, right, level),
    ]
    return View(
        title="The tuck, cut across",
        spoken=(
            "The cloth cut across, its back up, the bottom edge on the left. Above: two lines, "
            f"{figure(plan, low)} and {figure(plan, high)} above the finish line and {figure(plan, high - low)} apart. "
            "Below: one is brought to the other and stitched, and the fold of "
            f"{figure(plan, plan.shrinkage.extra / 2)} is pressed down towards the hem."
        ),
        shapes=tuple(shapes),
        notes=tuple(notes),
    )


def let_down(plan: Plan) -> View:
    """The old hem unpicked and flat: a thread marks where the bottom edge was."""
    panel = plan.spec.panel
    hem, turn = mm(panel.hem), mm(panel.turn_under)
    low, tall = -hem - turn, max(hem * 2, 40.0)
    wide = (tall - low) * 1.3
    shapes: list[Shape] = [
        Stroke(LineType.CUT, ((0, tall), (0, low), (wide, low), (wide, tall))),
        broken(0, wide, tall, tall * 0.03),
        across(LineType.STITCH, 0, wide, 0),
        across(LineType.THIN, 0, wide, hem),
    ]
    points: list[Point] = [(wide, 0), (wide, hem), (wide, low)]
    notes: list[Note] = [
        Label("thread: the old bottom edge", points[0]),
        Label("holes of the old stitching", points[1]),
        Label("raw edge", points[2]),
        Rise(figure(plan, panel.hem + panel.turn_under), low, 0, 0, "left"),
    ]
    return View(
        title="The old hem let down, the back towards you",
        spoken=(
            "The foot of the panel, its back towards you, the old hem unpicked and flat. A thread right across marks "
            f"where the bottom edge was; {figure(plan, panel.hem + panel.turn_under)} of cloth lie below it."
        ),
        shapes=tuple(shapes),
        notes=tuple(notes),
    )
