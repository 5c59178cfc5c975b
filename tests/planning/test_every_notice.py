"""Every notice that the planner can give is named in a test that triggers it and in one that does not."""

from __future__ import annotations

import ast
import re
from pathlib import Path

import templategen.planning

PLANNING = Path(templategen.planning.__file__).parent
TESTS = Path(__file__).parents[1]
THINGS = {
    "thing": ("loop", "tab", "ring", "clip", "hook"),
    "plan.thing": ("tab", "ring", "clip", "hook"),
    "things": ("loops", "tabs", "rings", "clips", "hooks"),
}
NEVER = re.compile(
    "(ring|clip|hook)s?_(over_edge|overlap|short|from_offcuts)|unpick_for_(ring|clip|hook)s"  # points, not strips
    "|even_(ring|clip|hook)s|(loop|tab)s_low|(ring|clip|hook)s_sag|(clip|hook)_corner_droops|clips_low"
)
"""Codes that the wording of the source allows and no plan has, or that share every line with a tested one."""


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
                name = re.search(r"\{([\w.]+)\}", pattern)
                assert name, f"{module}: {pattern}"
                for thing in THINGS.get(name[1], ()):
                    codes.add(pattern.replace(name[0], thing))
    return {code for code in codes if not NEVER.fullmatch(code)}


def test_every_notice_is_named_in_a_test() -> None:
    tests = "\n".join(path.read_text(encoding="utf-8") for path in TESTS.rglob("test_*.py"))
    missing = sorted(code for code in _codes() if f'"{code}"' not in tests)
    assert missing == []
