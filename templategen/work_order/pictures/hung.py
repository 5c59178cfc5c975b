"""A panel that hangs: what is measured of it, before anything is cut and once it is done."""

from __future__ import annotations

from ...document.view import Arrow, Heights, Label, Note, Rise, Shape, Span, Stroke, View, Within
from ...drawing import LineType
from ...lengths import NOTHING
from ...planning import Plan
from ...planning.choices import MADE_WITHIN
from ...planning.lines import line_of
from .cloth import broken
from .panel import length_of
from .signs import across, box, figure, mm

PROPORTION = 0.55
"""Width of the whole panel as it is drawn, of its height: our choice, such a picture is not to scale."""
SHALLOW = 0.42
"""Height of what is seen of the panel's foot, of its width as it is drawn."""


def checked(plan: Plan) -> View:
    """The panel hung as it came: its width, the floor mark, rod to floor."""
    spec, line = plan.spec, line_of(plan.spec)
    floor = plan.drop.marks[-1].floor
    high = mm(spec.drop.rod_to_floor or length_of(plan)[0] - floor)
    wide, foot = high * PROPORTION, -mm(floor)
    thick = max(mm(spec.rod.diameter), high * 0.02)
    low, top = min(foot, 0.0), max(high, foot + thick)
    heights = [(high, figure(plan, spec.drop.rod_to_floor))] if spec.drop.rod_to_floor else []
    shapes: list[Shape] = [
        across(LineType.CUT, -wide * 0.25, wide * 1.25, 0),
        box(LineType.MARK, (-wide * 0.12, high - thick), (wide * 1.12, high)),
        Stroke(LineType.CUT, ((0, foot), (wide, foot), (wide, top), (0, top), (0, foot))),
    ]
    notes: list[Note] = [
        Span(f"{figure(plan, spec.panel.width)}, laid flat", 0, wide, low, "below"),
        Label("rod", (wide * 1.12, high - thick / 2)),
        Label(line.the, (wide * 1.25, 0)),
        Label("old bottom edge", (wide, foot)),
        Heights(0.0, tuple(heights), -wide * 0.12),
        Within("front", (0, max(foot, 0.0)), (wide, high - thick)),
    ]
    if floor:
        notes.append(Rise(figure(plan, abs(floor)), min(foot, 0.0), max(foot, 0.0), wide, "right"))
    rod = f" From the top of the rod to {line.the} it is {heights[0][1]}." if heights else ""
    side = "below" if floor > NOTHING else "above"
    where = "" if len({mark.floor for mark in plan.drop.marks}) == 1 else " at the right edge, and otherwise elsewhere"
    return View(
        title="What is measured",
        spoken=(
            f"The panel hangs as it came; its width is {figure(plan, spec.panel.width)}, laid flat. Its bottom edge is "
            f"{figure(plan, abs(floor))} {side} {line.the}{where}.{rod}"
        ),
        shapes=tuple(shapes),
        notes=tuple(notes),
    )


def measured(plan: Plan) -> View:
    """The foot of the finished panel: measured at both edges and in the middle."""
    line, drop = line_of(plan.spec), plan.drop
    gap = mm(drop.clearance) if drop.level else 0.0
    wide = max(abs(gap) * 8, 300.0)
    high = wide * SHALLOW
    shapes = _foot(wide, high, gap, gap)
    places = (wide * 0.03, wide * 0.5, wide * 0.97)
    shapes += [Arrow(((x, gap + high * 0.22), (x, gap + high * 0.02))) for x in places]
    notes: list[Note] = [
        Label(line.the, (wide * 1.1, 0)),
        Label("finished edge", (wide, gap)),
        Within("left", (0, gap + high * 0.25), (wide * 0.3, gap + high * 0.6), "left"),
        Within("middle", (wide * 0.32, gap + high * 0.25), (wide * 0.68, gap + high * 0.6)),
        Within("right", (wide * 0.7, gap + high * 0.25), (wide, gap + high * 0.6)),
    ]
    said = "as the work order says"
    if drop.level and drop.clearance:
        notes.append(Rise(figure(plan, abs(drop.clearance)), min(gap, 0.0), max(gap, 0.0), 0, "left"))
        said = f"{figure(plan, abs(drop.clearance))} {'above' if gap > 0 else 'below'} {line.the}"
    elif drop.level:
        said = f"just at {line.the}"
    return View(
        title="Where the hem is measured",
        spoken=(
            "The foot of the hanging panel, seen from the front. It is measured at the left edge, in the middle and "
            f"at the right edge: the finished edge must be {said}."
        ),
        shapes=tuple(shapes),
        notes=tuple(notes),
    )


def _foot(wide: float, high: float, left: float, right: float) -> list[Shape]:
    """The foot of a hanging panel, what it hangs to at 0, its finished edge as high as that at either side."""
    return [
        across(LineType.CUT, -wide * 0.1, wide * 1.1, 0),
        Stroke(LineType.CUT, ((0, max(left, 0) + high), (0, left), (wide, right), (wide, max(left, 0) + high))),
        broken(0, wide, max(left, 0) + high, high * 0.05),
    ]


def off(plan: Plan) -> View:
    """A hem that came out lower at one side than it should."""
    by = MADE_WITHIN * 2
    wide = mm(by) * 24
    high, drop = wide * SHALLOW, mm(by)
    shapes: list[Shape] = [
        Stroke(LineType.CUT, ((0, high), (0, -drop), (wide, 0), (wide, high))),
        broken(0, wide, high, high * 0.05),
        across(LineType.FOLD, 0, wide, 0),
    ]
    return View(
        title="A hem that is off",
        spoken=(
            "The foot of a hanging panel, seen from the front. At the left its edge hangs "
            f"{figure(plan, by)} lower than it should; at the right it is good."
        ),
        shapes=tuple(shapes),
        notes=(
            Rise(figure(plan, by), -drop, 0, 0, "left"),
            Label("where it should end", (wide, 0)),
            Within("left: low", (0, high * 0.1), (wide * 0.4, high * 0.8), "left"),
            Within("right: good", (wide * 0.6, high * 0.1), (wide, high * 0.8)),
        ),
    )


def compared(plan: Plan) -> View:
    """Two pinned panels held against each other: how far their hems may be apart."""
    within = figure(plan, MADE_WITHIN)
    by, wide, high = mm(MADE_WITHIN), mm(MADE_WITHIN) * 26, mm(MADE_WITHIN) * 12
    hem, aside = high * 0.4, wide * 0.08
    if plan.spec.sides.split > 1 and not plan.drop.level:
        return _side_by_side(within, by, wide, high)
    return View(
        title="Two panels, one on another",
        spoken=(
            "The feet of two pinned panels that lie one on another, the same side up, top edges level. The lower one "
            f"is seen a little beside the upper one: their finished edges must not be more than {within} apart."
        ),
        shapes=(
            Stroke(LineType.CUT, ((0, high), (0, 0), (wide, 0), (wide, high))),
            across(LineType.MARK, 0, wide, hem),
            broken(0, wide, high, high * 0.05),
            Stroke(LineType.MARK, ((aside, 0), (aside, -by), (wide + aside, -by), (wide + aside, high))),
            across(LineType.MARK, wide, wide + aside, hem - by),
            across(LineType.THIN, wide, wide + aside, high),
        ),
        notes=(
            Rise(f"{within} at most", -by, 0, 0, "left"),
            Within("upper panel", (0, hem), (wide, high)),
            Within("hem", (0, 0), (wide, hem)),
            Label("lower panel", (wide + aside, high * 0.7)),
        ),
    )


def _side_by_side(within: str, by: float, wide: float, high: float) -> View:
    """Panels that are not alike: each hem runs on from the other."""
    half, slope = wide / 2, by * 2
    return View(
        title="Two panels, side by side",
        spoken=(
            "The feet of two pinned panels that hang side by side, laid beside each other, top edges level. Each hem "
            f"runs on from the other: where they meet, their finished edges must not be more than {within} apart."
        ),
        shapes=(
            Stroke(LineType.CUT, ((0, high), (0, slope + by), (half, by), (half, high))),
            Stroke(LineType.CUT, ((half + by / 2, high), (half + by / 2, 0), (wide, -slope), (wide, high))),
            broken(0, half, high, high * 0.05),
            broken(half + by / 2, wide, high, high * 0.05),
        ),
        notes=(
            Rise(f"{within} at most", 0, by, wide, "right"),
            Within("left", (0, high * 0.3), (half, high)),
            Within("right", (half + by / 2, high * 0.3), (wide, high)),
        ),
    )
