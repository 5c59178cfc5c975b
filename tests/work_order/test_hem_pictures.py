"""Pictures of hems and of all up to the cut: true to the plan, and told in words as they are shown."""

from __future__ import annotations

from itertools import pairwise
from math import hypot

import pytest

from templategen.document.view import Heights, Label, Note, Rise, Span, Stroke, View
from templategen.drawing import LineType
from templategen.lengths import inches, read_length
from templategen.planning import Plan
from templategen.planning.hems.double_fold import DoubleFoldPlan
from templategen.planning.hems.sewn_on import SewnOnPlan
from templategen.planning.hems.single_fold import SingleFoldPlan
from templategen.work_order.pictures import before_the_cut, finishing, hem_folds, hem_of_other_cloth, panel
from templategen.work_order.pictures.signs import figure
from tests.planning.building import planned

from .random_plans import random_plan
from .test_no_overlap import views


def figures(view: View) -> list[str]:
    """What stands on its dimensions."""
    return [text for note in view.notes for text in _of(note)]


def _of(note: Note) -> list[str]:
    if isinstance(note, Span | Rise):
        return [note.text]
    return [text for _, text in note.places] if isinstance(note, Heights) else []


def cloth(view: View) -> list[float]:
    """How long each layer of cloth in a section is, along it."""
    layers = [shape.points for shape in view.shapes if isinstance(shape, Stroke) and shape.kind is LineType.CUT]
    return [sum(hypot(c - a, d - b) for (a, b), (c, d) in pairwise(points)) for points in layers]


def double(plan: Plan) -> DoubleFoldPlan:
    assert isinstance(plan.hem, DoubleFoldPlan)
    return plan.hem


@pytest.mark.parametrize(("depth", "turn"), [("4 in", "5/8 in"), ("1 in", "1/2 in"), ("3 in", "1/4 in")])
def test_a_fold_is_drawn_by_the_fold_law_and_loses_no_cloth(depth: str, turn: str) -> None:
    """A line twice the depth from the edge; the edge brought to it: FM 10-16, single-edge hem (1 and 2 in for 1/2, 1).

    The layers are drawn a little apart, so that a fold takes up to two of these gaps more or less.
    """
    plan = planned({"hem.depth": depth, "hem.turn_under": turn})
    for view, deep in (
        (hem_folds.turn_under(plan, double(plan)), double(plan).turn_under),
        (hem_folds.turned_up(plan, double(plan)), plan.hem.depth),
    ):
        assert figures(view) == [figure(plan, 2 * deep), figure(plan, deep)]
        (line,) = [note for note in view.notes if isinstance(note, Span) and note.side == "above"]
        assert line.end - line.start == pytest.approx(float((2 * deep).mm))
        before, after = cloth(view)
        gap = float(deep.mm) * 2.5 / 28
        assert after == pytest.approx(before, abs=2.5 * gap)


def test_the_row_of_stitching_stands_where_the_plan_has_it() -> None:
    plan = planned()
    view = hem_folds.sewn(plan, plan.hem)
    (span,) = [note for note in view.notes if isinstance(note, Span)]
    assert span.text == "3 7/8 in" and span.end - span.start == pytest.approx(float(inches("31/8").mm))


def test_a_tape_is_seen_over_the_raw_edge_and_the_row_beyond_it() -> None:
    plan = planned({"hem.style": "single fold with tape", "hem.turn_under": None})
    assert isinstance(plan.hem, SingleFoldPlan)
    view = hem_folds.sewn(plan, plan.hem)
    (tape,) = [s for s in view.shapes if isinstance(s, Stroke) and s.kind is LineType.TRIM]
    depth = float(plan.hem.depth.mm)
    assert tape.points[0][0] == pytest.approx(depth - 6.35) and tape.points[1][0] == pytest.approx(depth + 6.35)
    (span,) = [note for note in view.notes if isinstance(note, Span)]
    assert depth < span.end < tape.points[1][0]


def test_a_facing_keeps_its_cloth_when_it_is_turned() -> None:
    plan = planned({"hem.style": "faced"})
    assert isinstance(plan.hem, SewnOnPlan)
    panel_before, facing_before, panel_after, facing_after = cloth(hem_of_other_cloth.faced(plan, plan.hem))
    gap = float(plan.hem.depth.mm) / 14
    assert facing_after == pytest.approx(facing_before, abs=3 * gap)
    assert panel_after == pytest.approx(panel_before, abs=3 * gap)


def test_the_mitre_is_the_one_straight_fold_through_its_two_marks() -> None:
    plan = planned({"sides.mitre": True, "sides.hem": "1 in", "sides.turn_under": "1 in", "hem.turn_under": "1 in"})
    mitre = plan.mitres[0]
    view = finishing.mitred(plan, mitre)
    (fold,) = [s for s in view.shapes if isinstance(s, Stroke) and s.kind is LineType.FOLD]
    assert fold.points == ((0, float(mitre.up_the_side.mm)), (float(mitre.along_the_bottom.mm), 0))


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
    for number in range(part, 80, 4):
        for view in views(random_plan(number)):
            assert view.title and view.spoken.endswith(".")
            for shown in figures(view):
                assert shown in view.spoken, (number, view.title, shown)
                read_length(shown.partition(",")[0].rstrip("+− "))
