"""Every kind of heading shows the same face."""

from __future__ import annotations

import ast
from pathlib import Path

import pytest

import templategen.planning
from templategen.lengths import NOTHING
from templategen.planning import make_plan
from templategen.planning.headings import HEADINGS
from templategen.planning.hems import HEMS
from templategen.spec import FIELDS, Spec, read_spec, starting_spec
from templategen.work_order.headings import HEADING_WORK
from templategen.work_order.hems import HEM_WORK

PLANNING = Path(templategen.planning.__file__).parent


@pytest.mark.parametrize("name", list(HEADINGS))
def test_every_heading_says_how_the_panel_hangs_by_it(name: str) -> None:
    kind, spec = HEADINGS[name], starting_job(name)
    hang = kind.hang(spec, spec.heading)
    assert (kind.name, hang.heading) == (name, name)
    assert hang.offset == -sum((term.raises for term in hang.terms), NOTHING)
    assert hang.tube is None or hang.tube.passes is (hang.tube.depth >= hang.tube.least)
    assert kind.explain(spec.tape, hang).startswith("by its ")


@pytest.mark.parametrize("name", list(HEADINGS))
def test_a_plan_of_every_heading_has_its_numbers_and_stays_on_the_cloth(name: str) -> None:
    plan = make_plan(starting_job(name))
    assert plan.heading.style == name and not plan.stops
    assert HEADINGS[name].title in [section.title for section in plan.sections]
    assert all(NOTHING <= mark.at <= plan.width for mark in plan.heading.marks)
    assert all(figure.value >= NOTHING for figure in plan.figures.values() if figure.key.endswith("_pitch"))


def test_every_style_that_a_spec_can_name_can_be_made_and_told() -> None:
    assert set(HEADINGS) == set(FIELDS["heading.style"].choices) == set(HEADING_WORK)
    assert set(HEMS) == set(FIELDS["hem.style"].choices) == set(HEM_WORK)


def starting_job(name: str) -> Spec:
    """The starting spec for a heading."""
    return read_spec(starting_spec("inch", {"heading.style": name}))


def test_planning_knows_lengths_spec_and_errors_and_nothing_else_of_the_house() -> None:
    allowed = {"lengths", "spec", "errors", "planning"}
    for module in PLANNING.rglob("*.py"):
        depth = len(module.relative_to(PLANNING).parts)
        for node in ast.walk(ast.parse(module.read_text(encoding="utf-8"))):
            if isinstance(node, ast.ImportFrom) and node.level > depth:
                assert node.module and node.module.split(".")[0] in allowed, f"{module.name}: {node.module}"
            if isinstance(node, ast.Import):
                assert {alias.name for alias in node.names} <= {"math", "re"}, module.name
