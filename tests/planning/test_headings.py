"""Every kind of heading shows the same face."""

from __future__ import annotations

import ast
from pathlib import Path

import pytest

import templategen.planning
from templategen.planning.headings import HEADINGS

from .building import job

PLANNING = Path(templategen.planning.__file__).parent


@pytest.mark.parametrize("name", list(HEADINGS))
def test_every_heading_says_how_the_panel_hangs_by_it(name: str) -> None:
    kind, spec = HEADINGS[name], job()
    hang = kind.hang(spec)
    assert (kind.name, hang.heading) == (name, name)
    assert hang.offset == -hang.below_top - hang.take_up
    assert hang.passes is (hang.tube_depth >= hang.least_tube)
    assert kind.explain(spec.tape, hang).startswith("by its ")


def test_every_style_that_a_spec_can_name_can_be_made() -> None:
    assert HEADINGS["back loops"].maker is not None
    assert HEADINGS["casing"].maker is None


def test_planning_knows_lengths_spec_and_errors_and_nothing_else_of_the_house() -> None:
    allowed = {"lengths", "spec", "errors", "planning"}
    for module in PLANNING.rglob("*.py"):
        depth = len(module.relative_to(PLANNING).parts)
        for node in ast.walk(ast.parse(module.read_text(encoding="utf-8"))):
            if isinstance(node, ast.ImportFrom) and node.level > depth:
                assert node.module and node.module.split(".")[0] in allowed, f"{module.name}: {node.module}"
            if isinstance(node, ast.Import):
                assert {alias.name for alias in node.names} <= {"math", "re"}, module.name
