"""Pictures of the headings: each can be read at any size, and shows what the plan says."""

from __future__ import annotations

import re
from collections.abc import Iterator
from typing import Any

import pytest
from hypothesis import HealthCheck, given, settings

from templategen.document.setting import set_view
from templategen.document.view import Circle, Heights, Label, Rise, Span, View
from templategen.planning import Plan, hanging, make_plan
from templategen.planning.headings.back_loops import LoopPlan
from templategen.planning.headings.casing import CasingPlan
from templategen.planning.headings.points import PointPlan
from templategen.planning.headings.tabs import TabPlan
from templategen.spec import Spec, read_spec
from templategen.spec.starting import spec_text, starting_literals
from templategen.templates import Choices
from templategen.work_order.headings import HEADING_WORK
from templategen.work_order.pictures import back_loops, casing, points, tabs
from templategen.work_order.pictures.signs import figure
from templategen.work_order.stages import stages_of

from ..document.laws import outside, touching
from ..strategies import kind_specs

SIZES = ((92.0, 9.0), (185.0, 18.0))
FIGURE = re.compile(r"−?\d[\d./ ]*(?:in|mm|cm|ft)\b(?: [+−])?")


def plan_of(style: str, units: Any = "inch", **fields: str) -> Plan:
    """A starting spec of this kind, with some fields written otherwise: ``heading__drop="2 in"``."""
    literals = starting_literals(units, {"heading.style": style})
    literals |= {path.replace("__", "."): said for path, said in fields.items()}
    return make_plan(read_spec(spec_text(literals, units)))


def views_of(plan: Plan, half_strip: bool = False) -> Iterator[View]:
    """The pictures of the work on the heading, and of how it hangs."""
    work = HEADING_WORK[plan.heading.style]
    choices = Choices(half_strip=half_strip)
    steps = [step for stage in stages_of(plan, choices) for step in stage.steps if step.view is not None]
    of_heading = {step.title for step in work.steps(plan, plan.heading, choices)} | {"On the rod", "Fold the top"}
    return (step.view for step in steps if step.view is not None and step.title in of_heading)


def legible(view: View, tallest: float = 62.0) -> list[str]:
    """What is wrong with a picture as it is set, at either size."""
    found = []
    for width, size in SIZES:
        setting = set_view(view, width, size, tallest * size / 9)
        if setting.width > width + 0.01:
            found.append(f"{view.title}: {setting.width} wide")
        found += [f"{view.title}: {item} sticks out" for item in outside(setting)]
        found += [f"{view.title}: {said}" for said in touching(setting.items)]
    return found


EXTREMES: tuple[tuple[str, dict[str, str]], ...] = (
    ("back loops", {"rod.diameter": '"150 mm"'}),
    ("back loops", {"heading.loop_length": '"1 1/16 in"'}),
    ("back loops", {"heading.count": "2000", "heading.edge_inset": '"1 mm"'}),
    ("back loops", {"heading.loop_width": '"1 m"', "heading.loop_length": '"1 m"'}),
    ("tabs", {"heading.gap": '"0 mm"'}),
    ("tabs", {"heading.gap": '"1 mm"', "rod.diameter": '"150 mm"'}),
    ("casing", {"heading.depth": '"1 m"', "heading.header": '"1 m"'}),
    ("casing", {"heading.depth": '"5 mm"', "heading.header": '"0 mm"'}),
    ("casing", {"heading.depth": '"4 in"', "panel.header": '"1 in"', "heading.header": '"0 in"'}),
    ("eyelets", {"heading.count": "2", "rod.projection": '"4 in"'}),
    ("eyelets", {"heading.count": "3", "heading.eyelet_centre": '"1 mm"'}),
    ("eyelets", {"heading.count": "401", "heading.eyelet_inside": '"190 mm"', "heading.eyelet_outside": '"200 mm"'}),
    ("rings", {"heading.drop": '"1 m"'}),
    ("rings", {"heading.held_by": '"clips"', "heading.set_below": '"1 in"'}),
    ("hooks", {"heading.hooks_on": '"gliders"', "heading.set_below": '"0 mm"', "heading.fixed": '"pinned on"'}),
    ("hooks", {"heading.set_below": '"1 m"', "heading.drop": '"1 mm"'}),
    ("pinch pleats", {"heading.pleats": "2", "heading.fingers": "2"}),
    ("pinch pleats", {"heading.pleats": "500"}),
    ("box pleats", {"heading.finished_width": '"60 in"'}),
    ("inverted box pleats", {"panel.leading_edge": '"right"'}),
    ("gathering tape", {"heading.tape_width": '"4 in"', "heading.tape_turn": '"0 in"', "heading.cord_side": '"leading"'}),
    ("gathering tape", {"heading.tape_top": '"0 in"', "heading.gathered_width": '"1 in"'}),
)


@pytest.mark.parametrize("units", ["inch", "metric"])
@pytest.mark.parametrize("style", HEADING_WORK)
def test_every_step_of_every_heading_shows_how_it_looks(style: str, units: str) -> None:
    plan = plan_of(style, units)
    shown = list(views_of(plan))
    assert len(shown) >= 2
    assert [said for view in shown for said in legible(view)] == []


@pytest.mark.parametrize(("style", "fields"), EXTREMES)
def test_the_oddest_heading_can_still_be_read(style: str, fields: dict[str, str]) -> None:
    plan = plan_of(style, **fields)
    assert [said for half in (False, True) for view in views_of(plan, half) for said in legible(view)] == []


@settings(max_examples=25, deadline=None, suppress_health_check=[HealthCheck.too_slow])
@given(kind_specs())
def test_any_heading_can_be_read_and_is_told_in_words(spec: Spec) -> None:
    for view in views_of(make_plan(spec)):
        assert legible(view) == []
        assert untold(view) == []


def untold(view: View) -> list[str]:
    """Figures of a picture that its words do not name."""
    told = set(FIGURE.findall(view.spoken))
    return [note.text for note in view.notes if isinstance(note, Span | Rise) and note.text not in told] + [
        said
        for note in view.notes
        if isinstance(note, Label)
        for said in FIGURE.findall(note.text)
        if said not in told
    ]


@pytest.mark.parametrize("style", HEADING_WORK)
def test_what_is_shown_is_told(style: str) -> None:
    shown = list(views_of(plan_of(style)))
    assert [said for view in shown for said in untold(view)] == []
    assert all(view.title and view.spoken.endswith(".") for view in shown)
    assert any(isinstance(note, Span | Rise | Heights) for view in shown for note in view.notes)


def test_the_teardrop_of_a_loop_comes_together_where_the_plan_has_it() -> None:
    """R + s below the rod's top: the tube's depth less what it takes up."""
    plan = plan_of("back loops")
    loops = plan.heading
    assert isinstance(loops, LoopPlan)
    view = back_loops.hung(plan, loops)
    falls = loops.tube_depth - hanging.take_up(plan.spec.rod.diameter, loops.tube_depth)
    below, above = rises(view)
    assert below.text == figure(plan, falls)
    assert below.high - below.low == pytest.approx(float(falls.mm))
    assert below.high == pytest.approx(float(plan.spec.rod.diameter.mm) / 2)
    assert above.high - above.low == pytest.approx(float(loops.upper_seam.mm))


def test_the_loops_seams_are_where_the_plan_has_them() -> None:
    plan = plan_of("back loops")
    loops = plan.heading
    assert isinstance(loops, LoopPlan)
    upper, tube, lower = rises(back_loops.sewn(plan, loops))
    assert (upper.high, -upper.low) == (0, pytest.approx(float(loops.upper_seam.mm)))
    assert tube.high - tube.low == pytest.approx(float(loops.tube_depth.mm))
    assert lower.high - lower.low == pytest.approx(float(loops.lower_allowance.mm))
    assert [note.text for note in (upper, tube, lower)] == [
        figure(plan, each) for each in (loops.upper_seam, loops.tube_depth, loops.lower_allowance)
    ]


def test_a_tab_hangs_the_gap_below_its_rod() -> None:
    plan = plan_of("tabs")
    plan_of_tabs = plan.heading
    assert isinstance(plan_of_tabs, TabPlan)
    (gap, _) = rises(tabs.tried(plan, plan_of_tabs))
    assert gap.high == pytest.approx(-float(plan.spec.rod.diameter.mm) / 2)
    assert gap.high - gap.low == pytest.approx(float(plan_of_tabs.gap.mm))


def test_the_casing_hangs_by_the_same_teardrop() -> None:
    plan = plan_of("casing", heading__header='"1 in"')
    of_casing = plan.heading
    assert isinstance(of_casing, CasingPlan)
    below, header = rises(casing.hung(plan, of_casing))
    taken = hanging.take_up(plan.spec.rod.diameter, of_casing.depth)
    assert below.high - below.low == pytest.approx(float((of_casing.depth - taken).mm))
    assert header.high - header.low == pytest.approx(25.4)


def test_a_ring_holds_the_drop_below_the_top_of_the_rod_it_hangs_on() -> None:
    plan = plan_of("hooks")
    hooks = plan.heading
    assert isinstance(hooks, PointPlan)
    view = points.hung(plan, hooks)
    (drop, below) = rises(view)
    assert (drop.high, -drop.low) == (0.0, pytest.approx(float(hooks.drop.mm)))
    assert below.high - below.low == pytest.approx(float(hooks.set_below.mm))
    round_rod, ring, *_ = (shape for shape in view.shapes if isinstance(shape, Circle))
    assert 2 * round_rod.radius == pytest.approx(float(plan.spec.rod.diameter.mm))
    assert 2 * ring.radius == pytest.approx(float(hooks.drop.mm))


def rises(view: View) -> list[Rise]:
    return [note for note in view.notes if isinstance(note, Rise)]
