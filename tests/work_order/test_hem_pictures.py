"""Pictures of the hems and of all else but the heading: legible, true to the plan, told in words."""

from __future__ import annotations

import re
from collections.abc import Iterator
from itertools import pairwise
from math import hypot
from typing import Any

import pytest
from hypothesis import HealthCheck, given, settings

from templategen.document.setting import set_view
from templategen.document.view import Heights, Label, Rise, Span, Stroke, View
from templategen.drawing import LineType
from templategen.planning import Plan, make_plan
from templategen.planning.choices import HEM_TAPE
from templategen.planning.hems.double_fold import DoubleFoldPlan
from templategen.planning.hems.sewn_on import SewnOnPlan
from templategen.planning.hems.single_fold import SingleFoldPlan
from templategen.spec import Spec, read_spec
from templategen.spec.starting import spec_text, starting_literals
from templategen.templates import Choices
from templategen.work_order.headings import HEADING_WORK
from templategen.work_order.hems import HEM_WORK
from templategen.work_order.pictures import before_the_cut, finishing, hem_done, hem_folds, panel
from templategen.work_order.pictures import sides as corners
from templategen.work_order.pictures.sections import LAYER, unit
from templategen.work_order.pictures.signs import figure
from templategen.work_order.stages import stages_of

from ..document.laws import outside, touching
from ..planning.building import planned
from ..strategies import kind_specs
from .random_plans import random_plan
from .test_no_overlap import views

SIZES = ((92.0, 9.0, 62.0), (185.0, 18.0, 124.0))
"""Width, size of type, and height of the shapes."""
FIGURE = re.compile(r"−?\d[\d./ ]*(?:in|mm|cm|ft)\b(?: [+−])?")
BONDED = {"hem.style": '"single fold with tape"', "hem.held_by": '"bonding"'}
SINGLE_BORDER = {"hem.style": '"border"', "hem.own_hem": '"1 in"'}


def plan_of(fields: dict[str, str] | None = None, units: Any = "inch") -> Plan:
    """A starting spec with some fields written otherwise."""
    fields = fields or {}
    styles = {path: said.strip('"') for path, said in fields.items() if path.endswith("style")}
    return make_plan(read_spec(spec_text(starting_literals(units, styles) | fields, units)))


def views_of(plan: Plan) -> Iterator[View]:
    """The pictures of all steps but those of the heading itself."""
    of_heading = {step.title for step in HEADING_WORK[plan.heading.style].steps(plan, plan.heading, Choices())}
    for stage in stages_of(plan, Choices()):
        for step in stage.steps:
            if step.view is not None and step.title not in of_heading:
                yield step.view
        if stage.gate and stage.gate_view:
            yield stage.gate_view


def illegible(view: View) -> list[str]:
    """What is wrong with a picture as it is set, usual and in large print."""
    found = []
    for width, size, tallest in SIZES:
        setting = set_view(view, width, size, tallest)
        if setting.width > width + 0.01:
            found.append(f"{view.title}: {setting.width} wide")
        if setting.height < 9:
            found.append(f"{view.title}: {setting.height} high")
        found += [f"{view.title}: {item} sticks out" for item in outside(setting)]
        found += [f"{view.title}: {said}" for said in touching(setting.items)]
    return found


def untold(view: View) -> list[str]:
    """Figures of a picture that its words do not name."""
    told = set(FIGURE.findall(view.spoken))
    shown = [said for n in view.notes if isinstance(n, Span | Rise | Label) for said in FIGURE.findall(n.text)]
    return [said for said in shown if said not in told]


KINDS: tuple[dict[str, str], ...] = (*({"hem.style": f'"{style}"'} for style in HEM_WORK), BONDED, SINGLE_BORDER)
ALL = {
    "sides.hem": '"1 in"', "sides.turn_under": '"1/2 in"', "sides.mitre": "true", "weights.every": '"12 in"',
    "lining.ends_above": '"1 in"', "lining.hem": '"2 in"', "fabric.shrinkage": '"3 %"', "heading.style": '"casing"',
}  # fmt: skip
EXTREMES: tuple[dict[str, str], ...] = (
    {"hem.depth": '"1 m"', "hem.turn_under": '"1 mm"'},
    {"hem.depth": '"5 mm"', "hem.turn_under": '"5 mm"'},
    {"hem.style": '"single fold with tape"', "hem.depth": '"3 mm"'},
    {"hem.style": '"single fold with tape"', "hem.depth": '"1 m"'},
    {**BONDED, "hem.depth": '"1 mm"'},
    {"hem.style": '"faced"', "hem.depth": '"10 mm"', "hem.turn_under": '"9 mm"', "hem.seam": '"100 mm"'},
    {"hem.style": '"faced"', "hem.depth": '"1 m"', "hem.turn_under": '"1 mm"', "hem.seam": '"1 mm"'},
    {"hem.style": '"border"', "hem.depth": '"1 m"', "hem.seam": '"1 mm"'},
    {"hem.style": '"border"', "hem.depth": '"13 mm"', "hem.seam": '"12 mm"'},
    {"hem.style": '"border"', "hem.depth": '"1 m"', "hem.own_hem": '"5 mm"'},
    {"hem.style": '"border"', "hem.depth": '"2 in"', "hem.own_hem": '"1 in"'},
    {**ALL, "fabric.shrinkage_in": '"tuck"', "sides.finished_width": '"30 in"'},
    {**ALL, "fabric.shrinkage_in": '"hem"', "sides.split": "3", "panel.width": '"100 in"'},
    {**ALL, "sides.finished_width": '"20 in"', "sides.cut_edge": '"left"', "sides.hem": '"4 in"'},
    {"heading.style": '"casing"', "heading.top_cut": '"4 in"', "heading.top_turn": '"1/2 in"'},
    {"heading.style": '"eyelets"', "heading.top_cut": '"4 in"'},
    {"drop.floor_marks": '["1 in", "1 1/2 in", "3 in"]', "drop.clearance": '"-1 in"'},
    {"drop.floor_marks": '["-3 in"]', "hem.style": '"border"', "hem.depth": '"8 in"'},
)


@pytest.mark.parametrize("units", ["inch", "metric"])
@pytest.mark.parametrize("fields", KINDS)
def test_the_pictures_of_every_hem_can_be_read_and_are_told(fields: dict[str, str], units: str) -> None:
    shown = list(views_of(plan_of(fields, units)))
    assert len(shown) >= 9
    assert [said for view in shown for said in (*illegible(view), *untold(view))] == []
    assert all(view.title and view.spoken.endswith(".") for view in shown)


@pytest.mark.parametrize("fields", EXTREMES)
def test_the_oddest_hem_can_still_be_read(fields: dict[str, str]) -> None:
    assert [said for view in views_of(plan_of(fields)) for said in (*illegible(view), *untold(view))] == []


@settings(max_examples=40, deadline=None, suppress_health_check=[HealthCheck.too_slow])
@given(kind_specs())
def test_any_hem_can_be_read(spec: Spec) -> None:
    assert [said for view in views_of(make_plan(spec)) for said in (*illegible(view), *untold(view))] == []


def rises(view: View) -> dict[str, tuple[float, float]]:
    """Dimensions up and down, by their figures."""
    return {note.text: (note.low, note.high) for note in view.notes if isinstance(note, Rise)}


def panel_lines(view: View, kind: LineType = LineType.CUT) -> list[Stroke]:
    """Lines of cloth that is cut across: those that go up and down, and are not closed."""
    found = [shape for shape in view.shapes if isinstance(shape, Stroke) and shape.kind is kind]
    return [stroke for stroke in found if stroke.points[0] != stroke.points[-1] and upright(stroke)]


def upright(stroke: Stroke) -> bool:
    """Whether it is much higher than wide."""
    xs, ys = [x for x, _ in stroke.points], [y for _, y in stroke.points]
    return max(ys) - min(ys) > 2 * (max(xs) - min(xs))


def long(stroke: Stroke) -> float:
    return sum(hypot(c - a, d - b) for (a, b), (c, d) in pairwise(stroke.points))


DEPTHS = ((4, "5/8"), (4, 4), (2, "1/4"), (8, 1))


@pytest.mark.parametrize(("depth", "turn"), DEPTHS)
def test_a_fold_is_brought_to_a_line_twice_its_depth_away_and_keeps_all_its_cloth(depth: int, turn: Any) -> None:
    """Raw edge to line 1 2 t, first fold to line 2 2 h; the cloth as long after a fold as before it, but for what its
    rounds take: half a turn of two layers' distance more, and that distance less."""
    plan = plan_of({"hem.depth": f'"{depth} in"', "hem.turn_under": f'"{turn} in"'})
    hem = plan.hem
    assert isinstance(hem, DoubleFoldPlan)
    first, second = hem_folds.turn_under(plan, hem), hem_folds.hem_turned_up(plan, hem)
    for view, deep in ((first, hem.turn_under), (second, hem.depth)):
        shown = rises(view)
        assert shown[figure(plan, 2 * deep)] == (0, pytest.approx(2 * float(deep.mm)))
        low, high = shown[figure(plan, deep)]
        assert (low, high) == (pytest.approx(float(deep.mm)), pytest.approx(2 * float(deep.mm)))
        before, after = panel_lines(view)[-2:]
        layer = unit(2.5 * float(deep.mm)) * LAYER
        assert long(after) == pytest.approx(long(before), abs=1.5 * layer)
        assert min(y for _, y in after.points) == pytest.approx(low)


def test_all_cloth_of_a_finished_hem_is_there() -> None:
    """From the picture's upper end down to the finished edge, then the allowance; of other cloth its strip."""
    for fields in KINDS:
        plan = plan_of(fields)
        hem = plan.hem
        top = hem_done.height_of(hem)
        layer = unit(top) * LAYER
        made = hem_done.done(hem, 0.0, top)
        panel = made.shapes[0]
        assert isinstance(panel, Stroke)
        assert long(panel) == pytest.approx(top + float(hem.allowance.mm), abs=2 * layer), fields
        if isinstance(hem, SewnOnPlan):
            strip = made.shapes[1]
            assert isinstance(strip, Stroke)
            assert long(strip) == pytest.approx(float(hem.strip.mm), abs=6 * layer), fields


@pytest.mark.parametrize("fields", KINDS)
def test_the_row_of_stitching_stands_where_the_plan_has_it(fields: dict[str, str]) -> None:
    plan = plan_of(fields)
    view = hem_done.sewn(plan, plan.hem)
    row = float(plan.hem.stitch_line.mm)
    assert rises(view) == {figure(plan, plan.hem.stitch_line): (0, pytest.approx(row))}
    kind = LineType.FOLD if fields is BONDED else LineType.STITCH
    (stitches,) = (shape for shape in view.shapes if isinstance(shape, Stroke) and shape.kind is kind)
    assert [y for _, y in stitches.points] == pytest.approx([row, row])


def test_a_tape_is_sewn_to_the_hem_before_the_fold_and_to_the_panel_after_it() -> None:
    """Half of the tape lies on the hem, half beyond: a row goes through either."""
    plan = plan_of({"hem.style": '"single fold with tape"'})
    hem = plan.hem
    assert isinstance(hem, SingleFoldPlan)
    half = float(HEM_TAPE.mm) / 2
    (first,) = (s for s in hem_folds.taped(plan, hem).shapes if isinstance(s, Stroke) and s.kind is LineType.STITCH)
    assert all(0 < y < half for _, y in first.points)
    assert 0 < float((hem.stitch_line - hem.depth).mm) < half
    tapes = [s for s in hem_folds.turned_once(plan, hem).shapes if isinstance(s, Stroke) and s.kind is LineType.TRIM]
    deep = float(hem.depth.mm)
    assert [sum(y for _, y in tape.points) / 2 for tape in tapes] == [0.0, pytest.approx(2 * deep)]


def test_a_corner_is_folded_along_the_plans_own_line_and_comes_to_lie_on_its_seam() -> None:
    """H 4, T 5/8, S 1, U 1/2: 4 x 1 1/2 + 4 5/8 up the side, 1 x 4 5/8 / 4 + 1 1/2 along the bottom."""
    plan = plan_of(ALL | {"hem.style": '"double fold"', "fabric.shrinkage_in": '"tuck"'})
    (mitre,) = plan.mitres
    view = corners.mitred(plan, mitre)
    up, along = float(mitre.up_the_side.mm), float(mitre.along_the_bottom.mm)
    assert (up, along) == (pytest.approx(10.625 * 25.4), pytest.approx((4.625 / 4 + 1.5) * 25.4))
    (line,) = (s for s in view.shapes if isinstance(s, Stroke) and s.kind is LineType.FOLD)
    assert line.points == ((0, up), (along, 0))
    flap = next(s for s in view.shapes if isinstance(s, Stroke) and s.kind is LineType.MARK and len(s.points) == 3)
    (a, b), (tip_x, tip_y), (c, d) = flap.points
    assert hypot(tip_x - a, tip_y - b) == pytest.approx(up), "what lay up the side from the raw corner is as long"
    assert hypot(tip_x - c, tip_y - d) == pytest.approx(along)


def test_a_tuck_takes_up_what_is_carried() -> None:
    plan = plan_of(ALL | {"fabric.shrinkage_in": '"tuck"'})
    assert plan.shrinkage is not None
    view = finishing.let_out(plan)
    low, high = rises(view)[figure(plan, plan.shrinkage.extra)]
    assert high - low == pytest.approx(float(plan.shrinkage.extra.mm))
    now, let_out = panel_lines(view)[0], panel_lines(view)[-1]
    layer = unit(1.18 * float(plan.figures["tuck_upper_line"].value.mm)) * LAYER
    assert long(now) == pytest.approx(long(let_out), abs=10 * layer)


def test_before_the_cut_the_finish_line_stands_as_far_from_the_floor_as_shift_and_clearance_say() -> None:
    plan = planned()
    view = before_the_cut.look(plan)
    (line,) = [s for s in view.shapes if isinstance(s, Stroke) and s.kind is LineType.FOLD]
    expected = float((plan.drop.clearance - plan.drop.hang_shift).mm)
    assert line.points[0][1] == pytest.approx(expected)
    assert any("finish line" in note.text for note in view.notes if isinstance(note, Label))


def test_the_whole_panel_is_drawn_to_one_scale() -> None:
    """Its outline, and the lines across it, at their own heights."""
    plan = planned()
    view = panel.flat(plan)
    assert view.to_scale
    heights = {shape.kind: shape.points[0][1] for shape in view.shapes if isinstance(shape, Stroke)}
    assert heights[LineType.CUT] == pytest.approx(float(plan.drop.marks[0].cut.mm))
    assert heights[LineType.FOLD] == pytest.approx(float(plan.drop.marks[0].finish.mm))
    outline = next(s for s in view.shapes if isinstance(s, Stroke) and s.kind is LineType.MARK)
    assert max(x for x, _ in outline.points) == pytest.approx(54 * 25.4)
    assert max(y for _, y in outline.points) == pytest.approx(96 * 25.4)


def test_a_panel_whose_length_is_not_known_is_not_to_scale() -> None:
    plan = planned({"panel.length": None, "drop.rod_to_floor": None})
    assert not panel.flat(plan).to_scale and not panel.hanging(plan).to_scale


@pytest.mark.parametrize("part", range(4))
def test_whoever_cannot_see_a_picture_is_told_every_figure_in_it(part: int) -> None:
    for number in range(part, 60, 4):
        for view in views(random_plan(number)):
            assert view.title and view.spoken.endswith(".")
            dimensions = [note.text for note in view.notes if isinstance(note, Span | Rise)]
            dimensions += [text for note in view.notes if isinstance(note, Heights) for _, text in note.places]
            for shown in dimensions:
                assert FIGURE.findall(shown), (number, view.title, shown)
                assert all(said in view.spoken for said in FIGURE.findall(shown)), (number, view.title, shown)
