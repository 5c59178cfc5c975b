"""The wheel: built, installed into an environment of its own, and used there."""

from __future__ import annotations

import subprocess
import sys
import zipfile
from pathlib import Path

import httpx
import psutil
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


def test_the_wheel_carries_the_whole_page(wheel: Path) -> None:
    page = [path.relative_to(ROOT).as_posix() for path in (ROOT / "templategen" / "page").rglob("*") if path.is_file()]
    assert len(page) > 2 and set(page) <= set(zipfile.ZipFile(wheel).namelist())


def test_the_wheel_serves_the_page_and_works_a_job_out(wheel: Path, tmp_path: Path) -> None:
    """Its workers, too, must find everything in itself, wherever it is started from."""
    unpacked = tmp_path / "site"
    zipfile.ZipFile(wheel).extractall(unpacked)
    (tmp_path / "templategen.py").write_text("raise SystemExit('this is another program of the same name')")
    code = (
        f"import sys; sys.path[0] = {str(unpacked)!r}; from templategen.cli import main; "
        "sys.argv[1:] = ['serve', '--port', '0', '--no-browser']; main()"
    )
    with subprocess.Popen([sys.executable, "-c", code], cwd=tmp_path, stdout=subprocess.PIPE, text=True) as started:
        assert started.stdout is not None
        url = started.stdout.readline().split()[4]
        for path in ("", "page/main.js", "fonts/Lato-Bold.ttf", "api/fields"):
            assert httpx.get(f"{url}{path}", timeout=60).status_code == 200
        planned = httpx.post(f"{url}api/plan", json={"spec": SPEC.read_text()}, timeout=60)
        assert planned.status_code == 200 and planned.json()["plan"]
        children = psutil.Process(started.pid).children()
        assert children and all(child.environ()["PYTHONPATH"].startswith(str(unpacked)) for child in children)
        started.terminate()
        assert started.wait(20) == 0


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
