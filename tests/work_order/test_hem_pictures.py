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
from templategen.document.view import Label, Rise, Span, Stroke, View
from templategen.drawing import LineType
from templategen.lengths import Length
from templategen.planning import Plan, make_plan
from templategen.planning.choices import HEM_TAPE
from templategen.planning.hems.double_fold import DoubleFoldPlan
from templategen.planning.hems.sewn_on import SewnOnPlan
from templategen.planning.hems.single_fold import SingleFoldPlan
from templategen.planning.plan import HemPlan
from templategen.spec import Spec, read_spec
from templategen.spec.starting import spec_text, starting_literals
from templategen.templates import Choices
from templategen.work_order.headings import HEADING_WORK
from templategen.work_order.hems import HEM_WORK
from templategen.work_order.pictures import hem_done, hem_folds, hem_of_other_cloth
from templategen.work_order.pictures.signs import figure
from templategen.work_order.stages import stages_of

from ..document.laws import outside, touching
from ..strategies import kind_specs

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
