"""Strips for loops and tabs: cut from the offcut, sewn to a tube, and the tube cut up on its card."""

from __future__ import annotations

from ...document.view import Hatch, Label, Note, Rise, Shape, Span, Stroke, Symbol, View, Within
from ...drawing import LineType
from ...lengths import Length
from ...lengths.counting import plural
from ...planning import Plan
from ...templates.ladder import rungs_of
from .cloth import broken_up, cloth
from .signs import figure, mm

MOST_STRIPS = 5
"""Strips that are drawn one below the other: our choice; of more, so many."""


def cutting(plan: Plan) -> View | None:
    """One offcut with the strips that are cut from it; None where none are."""
    offcut = plan.offcut.pieces
    assert offcut is not None, "loops and tabs are cut from strips"
    from_each, let_down = strips_of_one(plan)
    if not from_each or not offcut.strips_needed:
        return None
    count = min(from_each, offcut.strips_needed, MOST_STRIPS)
    strip = mm(offcut.pieces.strip)
    hem = 0.0 if let_down else mm(plan.spec.panel.hem)
    clear = min(mm(plan.offcut.unpicked if let_down else plan.offcut.clear), (count + 0.8) * strip)
    deep = clear + hem
    wide = deep * 2.6 if count > 1 else deep * 3.6
    cut = figure(plan, offcut.pieces.strip)
    shapes: list[Shape] = [
        cloth((wide, 0), (0, 0), (0, -deep), (wide, -deep)),
        broken_up(wide, -deep, 0, strip * 0.12),
        *(Stroke(LineType.CUT, ((0, -i * strip), (wide, -i * strip))) for i in range(1, count + 1)),
        Symbol("scissors", (wide * 0.5, -count * strip), 0.0),
    ]
    notes: list[Note] = [
        Rise(cut, -strip, 0, 0),
        *(Within(f"strip {i}", (wide * 0.1, -i * strip), (wide * 0.9, (1 - i) * strip)) for i in range(1, count + 1)),
        Label("cut line of the panel", (wide * 0.9, 0)),
    ]
    if hem:
        shapes.append(Hatch(((0, -deep), (wide, -deep), (wide, -clear), (0, -clear))))
        notes.append(Within("old hem: leave it", (0, -deep), (wide, -clear)))
    needed = plural(offcut.strips_needed, "strip")
    left = " The old hem below them is left." if hem else ""
    return View(
        title="Strips from one offcut",
        spoken=(
            f"An offcut lies flat, cut line above. Strips {cut} wide run right across it, from side edge to side edge, "
            f"one below the other, {from_each} at the most; {needed} in all.{left}"
        ),
        shapes=tuple(shapes),
        notes=tuple(notes),
    )


def strips_of_one(plan: Plan) -> tuple[int, bool]:
    """How many strips one offcut gives, and whether its old hem is let down for them, as it is only where it has to."""
    offcut, panel = plan.offcut.pieces, plan.spec.panel
    assert offcut is not None, "loops and tabs are cut from strips"
    let_down = offcut.strips_needed > offcut.strips_clear and bool(panel.hem)
    return (offcut.strips_unpicked if let_down else offcut.strips_clear) // panel.count, let_down


def sewing(plan: Plan, width: Length) -> View:
    """A strip folded lengthwise, right side in, and the seam along it."""
    offcut = plan.offcut.pieces
    assert offcut is not None, "loops and tabs are cut from strips"
    high, seam = mm(width + offcut.pieces.seam_allowance), mm(offcut.pieces.seam_allowance)
    wide = high * 2.4
    allowance, tube = figure(plan, offcut.pieces.seam_allowance), figure(plan, width)
    lean = high * 0.12
    shapes: list[Shape] = [
        cloth((wide, 0), (0, 0), (0, high), (wide, high)),
        cloth((0, 0), (-lean, lean), (-lean, high + lean), (wide - lean, high + lean)),
        Stroke(LineType.STITCH, ((0, high - seam), (wide, high - seam))),
        broken_up(wide, 0, high, high * 0.05),
    ]
    return View(
        title="The strip folded right side in, and sewn",
        spoken=(
            "The strip is folded lengthwise, right side in, so that its wrong side is seen: the fold below, both long "
            f"raw edges above, one on the other. The seam runs {allowance} below the raw edges, which leaves a tube "
            f"{tube} wide."
        ),
        shapes=tuple(shapes),
        notes=(
            Rise(allowance, high - seam, high, wide, "right"),
            Rise(tube, 0, high - seam, wide, "right"),
            Label("two raw edges", (wide * 0.1, high), "left"),
            Label("fold", (wide * 0.1, 0), "left"),
            Label("seam", (wide * 0.05, high - seam), "left"),
            Within("wrong side", (wide * 0.1, 0), (wide * 0.9, high - seam)),
        ),
    )


def ladder(plan: Plan, width: Length, length: Length, thing: str, card: str) -> View:
    """The tube on its card, marked where it is cut into pieces."""
    high, long = mm(width), min(mm(length), 6 * mm(width))
    long = max(long, high * 0.6)
    rungs = rungs_of(length, plan.counts[f"{thing}s_needed"])
    seen, over = min(rungs, 2), high * 0.6
    wide, end = seen * long, seen * long + high
    cut = figure(plan, length)
    needed = plural(plan.counts[f"{thing}s_needed"], thing)
    edges = ((wide, -over), (0, -over), (0, high + over), (wide, high + over))
    shapes: list[Shape] = [
        Stroke(LineType.MARK, edges if rungs > seen else (*edges, edges[0])),
        *((broken_up(wide, -over, high + over, high * 0.08),) if rungs > seen else ()),
        cloth((end, 0), (0, 0), (0, high), (end, high)),
        broken_up(end, 0, high, high * 0.08),
        *(Stroke(LineType.MARK, ((i * long, -over * 0.7), (i * long, 0))) for i in range(1, seen + 1)),
        *(Stroke(LineType.FOLD, ((i * long, 0), (i * long, high))) for i in range(1, seen + 1)),
    ]
    return View(
        title=f"The tube on the {card}",
        spoken=(
            f"The tube lies along the {card}, its end at the left edge of the card, and is marked at every line that "
            f"says cut, {cut} apart. It is then taken off the card and cut there: {needed} in all."
        ),
        shapes=tuple(shapes),
        notes=(
            Span(cut, 0, long, -over, "below"),
            Label(card, (wide * 0.9, high + over)),
            Label("tube", (end, high * 0.5)),
            Label("mark here, then cut", (wide, -over * 0.4)),
            Within(thing, (0, 0), (long, high)),
        ),
    )
