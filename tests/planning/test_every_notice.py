"""Every notice that the planner can give is named in a test that triggers it and in one that does not."""

from __future__ import annotations

import ast
import re
from pathlib import Path

import templategen.planning

PLANNING = Path(templategen.planning.__file__).parent
TESTS = Path(__file__).parents[1]
THINGS = {"thing": ("tab", "eyelet", "ring", "hook"), "things": ("loops", "tabs", "eyelets", "rings", "hooks")}
NEVER = {
    "ring_over_edge", "hook_over_edge", "rings_overlap", "hooks_overlap",  # a point has no width
    "eyelets_from_offcuts", "rings_from_offcuts", "hooks_from_offcuts", "unpick_for_eyelets", "unpick_for_rings",
    "unpick_for_hooks", "eyelets_short", "rings_short", "hooks_short",  # they are not cut from strips
}  # fmt: skip
"""Codes that the wording of the source allows and that no plan has."""


def _codes() -> set[str]:
    """The codes of all notices in the source; those with a thing's name in them once for each thing."""
    codes: set[str] = set()
    for module in PLANNING.rglob("*.py"):
        for node in ast.walk(ast.parse(module.read_text(encoding="utf-8"))):
            if not (isinstance(node, ast.Call) and isinstance(node.func, ast.Name) and node.func.id == "Notice"):
                continue
            first = node.args[0]
            if isinstance(first, ast.Constant):
                codes.add(first.value)
            elif isinstance(first, ast.JoinedStr):
                pattern = ast.unparse(first)[2:-1]
                name = re.search(r"\{(\w+)\}", pattern)
                assert name, f"{module}: {pattern}"
                for thing in THINGS.get(name[1], ()):
                    codes.add(pattern.replace(name[0], thing))
    return codes - NEVER


def test_every_notice_is_named_in_a_test() -> None:
    tests = "\n".join(path.read_text(encoding="utf-8") for path in TESTS.rglob("test_*.py"))
    missing = sorted(code for code in _codes() if f'"{code}"' not in tests)
    assert missing == []
