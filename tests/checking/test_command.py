"""The command: exit status, JSON, and words as the contract has them."""

from __future__ import annotations

import json
import subprocess
import sys
from collections.abc import Callable
from pathlib import Path

import pytest

from templategen.cli import main

from . import handling as by
from .kits import SHEETS, kit

Run = Callable[..., tuple[int, str, str]]


@pytest.fixture
def run(monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str], tmp_path: Path) -> Run:
    """Writes a file and checks it; returns exit status, stdout and stderr."""

    def run(pdf: bytes | Path, *options: str) -> tuple[int, str, str]:
        path = tmp_path / "from the post.pdf"
        if isinstance(pdf, bytes):
            path.write_bytes(pdf)
        else:
            path = pdf
        monkeypatch.setattr(sys, "argv", ["templategen", "check", str(path), *options])
        with pytest.raises(SystemExit) as stopped:
            main()
        out, err = capsys.readouterr()
        assert "Traceback" not in err
        return int(stopped.value.code or 0), out, err

    return run


def test_a_kit_as_it_was_made_is_0_and_two_lines(run: Run) -> None:
    status, out, err = run(kit())
    assert (status, err) == (0, "")
    assert out.splitlines() == [
        f"from the post.pdf will print true: {SHEETS} sheets, bars as long as they say.",
        "The bars measure 100.00 % across and 100.00 % along of what they say.",
    ]


def test_a_kit_that_was_fitted_is_3_with_the_verdict_first_and_what_to_do(run: Run) -> None:
    on_a4 = ("-sPAPERSIZE=a4", "-dFIXEDMEDIA", "-dPDFFitPage", "-dAutoRotatePages=/None")
    status, out, err = run(by.ghostscript(kit(), *on_a4))
    assert (status, err) == (3, "")
    first, second, *rest = out.splitlines()
    assert first == "from the post.pdf will not print true: it comes out at 97.22 % of its size."
    assert "97.22 % across and 97.22 % along" in second
    said = " ".join(" ".join(rest).split())
    assert "wrong: Every sheet: it comes out at 97.22 % of its size; that is a letter page fitted on A4 paper." in said
    assert "Print the kit's own file" in said and "make kit.pdf --out again --paper a4" in said
    assert said.index("wrong:") < said.index("note:")
    assert max(map(len, out.splitlines())) <= 96


def test_json_is_what_the_contract_says_and_nothing_else(run: Run) -> None:
    status, out, err = run(by.cairo(kit("a4"), "-paper", "letter"), "--json")
    record = json.loads(out)
    assert (status, err) == (3, "")
    assert record["true"] is False
    # Geometry: an A4 page fitted on letter paper comes out at 94.07 %; poppler's A4 is 842 points high, its page 792.
    assert record["across"] == record["along"] == pytest.approx(0.9407, abs=5e-4)
    assert {"code", "text"} <= set(record["findings"][0])
    assert record["findings"][0]["code"] == "scaled" and "A4 page fitted on letter" in record["findings"][0]["text"]
    assert record["sheets"][2]["number"] == 3 and record["pages"] == len(record["sheets"])
    status, out, _ = run(kit(), "--json")
    record = json.loads(out)
    assert (status, record["true"], record["across"], record["along"]) == (0, True, 1.0, 1.0)
    assert record["findings"] == []


@pytest.mark.parametrize("options", [(), ("--json",)])
def test_what_cannot_be_judged_is_2_with_one_message_on_stderr(
    run: Run, tmp_path: Path, options: tuple[str, ...]
) -> None:
    """As data too, whether it is refused before anything reads it, or by the process that reads it."""
    unread, refused = (tmp_path, tmp_path / "none.pdf"), (b"", b"no PDF", kit()[:9000], by.encrypted(kit(), "shelf"))
    for pdf in (*unread, *(refused[2:3] if options else refused)):
        status, out, err = run(pdf, *options)
        assert (status, out) == (2, "") and err.count("\n") == 1 and ": " in err


def test_what_the_system_refuses_is_1_in_one_line(run: Run, tmp_path: Path) -> None:
    """A name longer than any file system takes."""
    status, out, err = run(tmp_path / f"{'k' * 300}.pdf")
    assert (status, out) == (1, "") and err.count("\n") == 1 and "kkk" in err


def test_it_runs_from_anywhere_and_under_any_name_of_file(tmp_path: Path) -> None:
    """The process that reads the file is this very copy of the program, and needs no file of that name in sight."""
    (tmp_path / "templategen.py").write_text("raise SystemExit('the wrong one')")
    path = tmp_path / "-Ünïcode 5⅜ in.pdf"
    path.write_bytes(kit())
    root = Path(__file__).parents[2]
    code = f"import sys; sys.path.insert(0, {str(root)!r}); from templategen.cli import main; main()"
    done = subprocess.run(
        [sys.executable, "-P", "-c", code, "check", "--", path.name], cwd=tmp_path, capture_output=True, check=False
    )
    assert (done.returncode, done.stderr) == (0, b"")


def test_nothing_but_the_check_loads_pdfium() -> None:
    code = "import sys, templategen.cli, templategen.making, templategen.writers.pdf; print('pypdfium2' in sys.modules)"
    done = subprocess.run([sys.executable, "-c", code], capture_output=True, text=True, check=True)
    assert done.stdout == "False\n"
