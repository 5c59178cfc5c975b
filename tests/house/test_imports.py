"""Imports run one way: a storey uses those below it and never those above."""

from __future__ import annotations

import ast
import re
import subprocess
import sys
from pathlib import Path

import pytest

import templategen

HOUSE = Path(templategen.__file__).parent
STOREYS = [
    ["version"],
    ["errors"],
    ["fingerprint"],
    ["lengths"],
    ["papers"],
    ["misprints"],
    ["bars"],
    ["spec"],
    ["planning"],
    ["form"],
    ["drawing"],
    ["document"],
    ["templates"],
    ["work_order"],
    ["layout"],
    ["writers"],
    ["guides"],
    ["checking"],
    ["options"],
    ["making"],
    ["adjusting"],
    ["remaking"],
    ["printers"],
    ["serving"],
    ["cli"],
    ["__main__", "__init__"],
]
HEIGHT = {room: height for height, rooms in enumerate(STOREYS) for room in rooms}
STRANGERS = {
    ("drawing", "spec"),
    ("drawing", "planning"),
    ("document", "spec"),
    ("document", "planning"),
    ("layout", "work_order"),
    ("writers", "work_order"),
    ("layout", "templates"),
    ("layout", "planning"),
    ("layout", "spec"),
    ("writers", "templates"),
    ("writers", "planning"),
    ("writers", "spec"),
    ("guides", "planning"),
    ("guides", "templates"),
    ("guides", "layout"),
}
"""Rooms that stand above others and still must not know them: marks, sheets and files know no curtain."""


def _modules() -> list[Path]:
    return sorted(HOUSE.rglob("*.py"))


def _room(path: Path) -> str:
    relative = path.relative_to(HOUSE)
    return relative.parts[0].removesuffix(".py")


def _imported_rooms(path: Path) -> set[str]:
    """The rooms of the house that the module imports from, wherever in it the import stands."""
    package = ("templategen", *path.relative_to(HOUSE).parts[:-1])
    rooms = set()
    for node in ast.walk(ast.parse(path.read_text())):
        if isinstance(node, ast.ImportFrom) and node.level:
            base = package[: len(package) - node.level + 1]
            names = [*base[1:], *(node.module.split(".") if node.module else [])]
            rooms |= {names[0]} if names else {alias.name for alias in node.names}
        elif isinstance(node, ast.Import | ast.ImportFrom):
            named = [alias.name for alias in node.names] if isinstance(node, ast.Import) else [node.module or ""]
            assert not any(name.startswith("templategen") for name in named), f"{path}: import it relatively"
    return rooms & set(HEIGHT)


@pytest.mark.parametrize("path", _modules(), ids=lambda path: str(path.relative_to(HOUSE)))
def test_a_module_imports_only_from_below(path: Path) -> None:
    room = _room(path)
    for other in _imported_rooms(path) - {room}:
        assert HEIGHT[other] < HEIGHT[room], f"{room} must not import {other}"
        assert (room, other) not in STRANGERS, f"{room} must not know {other}"


def test_every_room_has_a_storey() -> None:
    assert {_room(path) for path in _modules()} == set(HEIGHT)


@pytest.mark.parametrize("path", _modules(), ids=lambda path: str(path.relative_to(HOUSE)))
def test_modules_and_functions_are_short(path: Path) -> None:
    """Our choice: a module of under 300 lines and a function of under 60 are read in one go."""
    text = path.read_text()
    assert len(text.splitlines()) < 300
    for node in ast.walk(ast.parse(text)):
        if isinstance(node, ast.FunctionDef):
            assert (node.end_lineno or 0) - node.lineno < 60, node.name


def _loads(code: str) -> set[str]:
    """The top-level modules that a new process has loaded after ``code``."""
    script = f"{code}\nimport sys; print(' '.join({{name.partition('.')[0] for name in sys.modules}}))"
    done = subprocess.run([sys.executable, "-c", script], check=True, capture_output=True, text=True)
    return set(done.stdout.split())


def test_planning_runs_with_no_pdf_library() -> None:
    spec = (HOUSE.parent / "out_examples" / "east-window" / "spec.toml").read_text()
    code = (
        "import sys\nfor name in ('reportlab', 'svgwrite', 'pypdf', 'fontTools'): sys.modules[name] = None\n"
        f"import templategen\nplan = templategen.make_plan(templategen.read_spec({spec!r}))\n"
        "assert plan.counts['loops'] == 9"
    )
    _loads(code)


def test_importing_the_package_loads_nothing_heavy() -> None:
    assert not _loads("import templategen") & {"pint", "pydantic", "reportlab", "svgwrite", "fontTools", "pypdf"}


def test_the_command_line_loads_no_server() -> None:
    assert not _loads("import templategen.cli") & {"fastapi", "starlette", "uvicorn", "anyio", "tomlkit", "asyncio"}


@pytest.mark.parametrize(
    ("library", "homes"),
    [
        ("pint", ["lengths/units.py"]),
        ("svgwrite", ["writers/svg.py"]),
        ("pypdfium2", ["checking/reading.py", "serving/seeing.py"]),  # a stranger's file is read, one's own is drawn
        ("tomlkit", ["form/editing.py"]),
        ("uvicorn", ["serving/protocol.py", "serving/running.py"]),
        ("fastapi", ["serving/app.py"]),
    ],
)
def test_few_modules_know_the_library(library: str, homes: list[str]) -> None:
    using = re.compile(rf"^\s*(from|import) {library}\b", re.MULTILINE)
    assert [str(p.relative_to(HOUSE)) for p in _modules() if using.search(p.read_text())] == homes


@pytest.mark.parametrize("room", ["drawing", "layout", "writers"])
def test_marks_sheets_and_files_know_no_curtain(room: str) -> None:
    """Outside their comments, no name and no text in these rooms holds a word of the trade."""
    trade = {"hem", "casing", "panel", "curtain", "loop", "rod", "cloth"}
    allowed = {"mark on the cloth"}  # the key to the line types, which speaks to who reads the sheet
    for path in (HOUSE / room).rglob("*.py"):
        tree = ast.parse(path.read_text())
        sentences = [node for node in ast.walk(tree) if isinstance(node, ast.Expr)]
        documented = {id(node.value) for node in sentences if isinstance(node.value, ast.Constant)}
        for node in ast.walk(tree):
            said = getattr(node, "id", None) or getattr(node, "attr", None) or getattr(node, "arg", None) or ""
            if isinstance(node, ast.Constant) and isinstance(node.value, str) and id(node) not in documented:
                said = node.value
            if said not in allowed:
                assert not set(re.split(r"[^a-z]+", str(said).lower())) & trade, (path.name, said)
