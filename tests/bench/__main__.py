"""Speed as ratios, in one run, against a bare reportlab script writing the same marks.

    python -m tests.bench
"""

from __future__ import annotations

import json
import subprocess
import sys
import tempfile
from collections.abc import Callable
from pathlib import Path
from statistics import median
from time import perf_counter

from templategen import kit_files, make_kit, make_plan, read_spec
from templategen.drawing.faces import face
from templategen.writers.pdf import pdf

from .bare import write
from .jobs import ORDINARY, bare_marks, stage_curtain, with_marks

ROUNDS = 15
_AS_INSTALLED = "import sys; sys.modules['numpy'] = None; from templategen.cli import start; start()"
"""The command as people have it: numpy, which comes with the test tools and which Pint would load, is hidden."""


def paired(ours: Callable[[], object], theirs: Callable[[], object], rounds: int = ROUNDS) -> tuple[float, float]:
    """Median seconds of both, taken in turn so that the machine's moods hit them alike."""
    ours(), theirs()
    times: tuple[list[float], list[float]] = ([], [])
    for _ in range(rounds):
        for run, kept in ((ours, times[0]), (theirs, times[1])):
            start = perf_counter()
            run()
            kept.append(perf_counter() - start)
    return median(times[0]), median(times[1])


def warm(folder: Path) -> None:
    """A warm kit, plan to PDF, against the bare script."""
    spec = read_spec(ORDINARY)
    marks = bare_marks(make_kit(make_plan(spec)))
    fonts = face(False).path.parent
    ours, bare = paired(
        lambda: pdf(make_kit(make_plan(spec))), lambda: write(marks, fonts, str(folder / "bare.pdf"))
    )
    report("warm kit: spec read, plan, drawings, layout, PDF", ours, bare, "at most 1.5")
    every, _ = paired(lambda: kit_files(make_plan(spec)), lambda: None)
    report("the same with every SVG, JSON and text", every, bare, "no aim")


def cold(folder: Path) -> None:
    """The cold command against the bare script, each in a new process."""
    spec, marks = folder / "spec.toml", folder / "marks.json"
    spec.write_text(ORDINARY)
    marks.write_text(json.dumps(bare_marks(make_kit(make_plan(read_spec(ORDINARY))))))
    command = [sys.executable, "-c", _AS_INSTALLED, "make", str(spec), "--out", str(folder / "kit")]
    script = [sys.executable, str(Path(__file__).with_name("bare.py")), str(marks)]
    script += [str(face(False).path.parent), str(folder / "bare.pdf")]
    ours, bare = paired(lambda: _run(command), lambda: _run(script), 9)
    report("cold command: templategen make", ours, bare, "at most 3")


def _run(command: list[str]) -> None:
    subprocess.run(command, check=True, capture_output=True)


def growth() -> None:
    """A thousand marks against ten."""
    few, many = read_spec(with_marks(10)), read_spec(with_marks(1000))
    ours, base = paired(lambda: pdf(make_kit(make_plan(many))), lambda: pdf(make_kit(make_plan(few))), 5)
    report("1,000 marks against 10", ours, base, "at most 100")


def large() -> None:
    """A hundred feet with 150 marks: laid out, and written; against the ordinary job."""
    plan, usual = make_plan(read_spec(stage_curtain())), make_plan(read_spec(ORDINARY))
    ours, base = paired(lambda: make_kit(plan), lambda: make_kit(usual), 5)
    report("a stage curtain of 100 ft, laid out, against 54 in", ours, base, "under 2,000 ms")


def memory() -> None:
    """Peak memory of a cold command, whole process, in MiB, for an ordinary job and two large ones."""
    many = with_marks(1000)
    for name, text in (("an ordinary job", ORDINARY), ("100 ft, 150 marks", stage_curtain()), ("1,000 marks", many)):
        with tempfile.TemporaryDirectory() as folder:
            spec = Path(folder) / "spec.toml"
            spec.write_text(text)
            code = (
                "import resource, sys; from templategen.cli import start; "
                f"sys.argv = ['templategen', 'make', {str(spec)!r}, '--out', {folder!r}]\n"
                "try: start()\nexcept SystemExit: pass\n"
                "print(resource.getrusage(resource.RUSAGE_SELF).ru_maxrss)"
            )
            done = subprocess.run([sys.executable, "-c", code], check=True, capture_output=True, text=True)
            print(f"{'peak memory, ' + name:52} {int(done.stdout.split()[-1]) / 1024:7.1f} MiB   aim: under 120")


def report(what: str, ours: float, bare: float, aim: str) -> None:
    print(f"{what:52} {ours * 1000:7.1f} ms / {bare * 1000:7.1f} ms = {ours / bare:5.2f}   aim: {aim}")


def main() -> None:
    with tempfile.TemporaryDirectory() as folder:
        warm(Path(folder))
        cold(Path(folder))
    growth()
    large()
    memory()


if __name__ == "__main__":
    main()
