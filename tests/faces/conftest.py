"""The command, run in this process with a configuration of its own."""

from __future__ import annotations

import sys
from pathlib import Path

import pytest

from templategen.cli import main

from .running import Run


@pytest.fixture
def configuration(tmp_path_factory: pytest.TempPathFactory, monkeypatch: pytest.MonkeyPatch) -> Path:
    """An empty folder for the user's configuration, so that no test meets anybody's own."""
    folder = tmp_path_factory.mktemp("configuration")
    monkeypatch.setenv("XDG_CONFIG_HOME", str(folder))
    return folder


@pytest.fixture
def run(configuration: Path, monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str]) -> Run:
    """Runs the command with arguments; returns exit status, stdout and stderr."""

    def run(*arguments: str | Path) -> tuple[int, str, str]:
        monkeypatch.setattr(sys, "argv", ["templategen", *map(str, arguments)])
        with pytest.raises(SystemExit) as stopped:
            main()
        out, err = capsys.readouterr()
        assert "Traceback" not in err
        return int(stopped.value.code or 0), out, err

    return run
