"""README and DEVELOPERS say what CI runs, and the root holds what it should."""

from __future__ import annotations

import re
import subprocess
from pathlib import Path

ROOT = Path(__file__).parents[2]


def _command(document: str, heading: str) -> str:
    """The one fenced command line under a heading."""
    (section,) = re.findall(rf"^## {heading}\n(.*?)(?=^## |\Z)", (ROOT / document).read_text(), re.M | re.S)
    blocks: list[str] = re.findall(r"```sh\n(.*?)\n```", section, re.S)
    assert "\n" not in blocks[0]
    return blocks[0]


def test_ci_runs_the_test_command_of_the_readme() -> None:
    assert _command("README.md", "Test") in (ROOT / ".ci" / "run").read_text().splitlines()


def test_developers_prints_the_same_command() -> None:
    assert _command("DEVELOPERS.md", "Commands") == _command("README.md", "Test")


def test_the_start_command_makes_the_kit_of_an_example() -> None:
    words = _command("README.md", "Start").split()
    assert words[:3] == ["bash", ".ci/setup", "&&"]
    assert (ROOT / words[words.index("make") + 1]).is_file()


def test_pictures_of_real_output_stand_in_the_readme() -> None:
    pictures = re.findall(r"!\[[^\]]+\]\(([^)]+)\)", (ROOT / "README.md").read_text())
    assert len(pictures) >= 3 and all((ROOT / picture).is_file() for picture in pictures)


def test_the_root_holds_nothing_else() -> None:
    tracked = subprocess.run(["git", "ls-files"], cwd=ROOT, capture_output=True, text=True, check=True).stdout
    top = {name.split("/")[0] for name in tracked.split()}
    known = {"README.md", "DEVELOPERS.md", "LICENSE", "pyproject.toml", "templategen", "fonts", "tests", "out_examples"}
    assert {name for name in top if not name.startswith(".")} == known
