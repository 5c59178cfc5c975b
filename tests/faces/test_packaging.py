"""The wheel: built, installed into an environment of its own, and used there."""

from __future__ import annotations

import subprocess
import sys
import zipfile
from pathlib import Path

import pytest

ROOT = Path(__file__).parents[2]
SPEC = ROOT / "out_examples" / "east-window" / "spec.toml"


@pytest.fixture(scope="module")
def wheel(tmp_path_factory: pytest.TempPathFactory) -> Path:
    folder = tmp_path_factory.mktemp("wheel")
    command = [sys.executable, "-m", "build", "--wheel", "--outdir", str(folder), str(ROOT)]
    subprocess.run(command, check=True, capture_output=True)
    (built,) = folder.glob("*.whl")
    return built


def test_the_wheel_carries_fonts_their_licence_and_the_marker_of_types(wheel: Path) -> None:
    names = set(zipfile.ZipFile(wheel).namelist())
    fonts = {"Lato-Regular.ttf", "Lato-Bold.ttf", "OFL.txt"}
    assert {f"templategen/fonts/{name}" for name in fonts} | {"templategen/py.typed"} <= names
    assert any(name.endswith("licenses/LICENSE") for name in names)
    assert not any(name.startswith(("tests/", "out_examples/")) for name in names)


def test_the_wheel_makes_the_same_kit_as_the_checkout(wheel: Path, tmp_path: Path) -> None:
    """Unpacked away from the checkout, so that it must find everything in itself."""
    unpacked = tmp_path / "site"
    zipfile.ZipFile(wheel).extractall(unpacked)
    for home, out in ((unpacked, "from-wheel"), (ROOT, "from-checkout")):
        code = (
            f"import sys; sys.path.insert(0, {str(home)!r}); import templategen; "
            f"assert templategen.__file__.startswith({str(home)!r}); from templategen.cli import main; "
            f"sys.argv[1:] = ['make', {str(SPEC)!r}, '--out', {str(tmp_path / out)!r}]; main()"
        )
        subprocess.run([sys.executable, "-c", code], check=True, capture_output=True, cwd=tmp_path)
    for path in (tmp_path / "from-wheel").iterdir():
        assert path.read_bytes() == (tmp_path / "from-checkout" / path.name).read_bytes(), path.name
