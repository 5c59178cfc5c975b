"""The page as people have it: the command started, Debian's Chromium in front of it."""

from __future__ import annotations

import re
import subprocess
import sys
from collections.abc import Iterator
from contextlib import contextmanager
from pathlib import Path

import pytest
from playwright.sync_api import Browser, BrowserContext

from ..proof.chromium import browser

WAIT = 30.0
"""Seconds in which a server has said where it is."""


class Served:
    """A server that runs: where it is, and a way to stop it."""

    def __init__(self, port: int = 0) -> None:
        self.process = subprocess.Popen(
            [sys.executable, "-m", "templategen", "serve", "--no-browser", "--port", str(port)],
            stdout=subprocess.PIPE, stderr=subprocess.STDOUT, text=True, cwd=Path(__file__).parents[2],
        )  # fmt: skip
        assert self.process.stdout
        for line in self.process.stdout:
            if found := re.search(r"http://127\.0\.0\.1:(\d+)/", line):
                self.url, self.port = found[0], int(found[1])
                return
        raise AssertionError("the server did not say where it is")

    def stop(self) -> int:
        self.process.terminate()
        status = self.process.wait(WAIT)
        assert self.process.stdout
        self.process.stdout.close()
        return status


@pytest.fixture(scope="session")
def served() -> Iterator[Served]:
    server = Served()
    yield server
    assert server.stop() == 0


@pytest.fixture(scope="module")
def chromium() -> Iterator[Browser]:
    with browser() as opened:
        yield opened


@contextmanager
def visiting(chromium: Browser, width: int = 1280, height: int = 900, **look: object) -> Iterator[BrowserContext]:
    """A browser of somebody who was never there before; whatever the page's scripts throw fails the test."""
    context = chromium.new_context(
        viewport={"width": width, "height": height}, accept_downloads=True, **look  # type: ignore[arg-type]
    )  # fmt: skip
    thrown: list[str] = []
    context.on("weberror", lambda error: thrown.append(str(error.error)))
    context.on(
        "console",
        lambda message: thrown.append(message.text)
        if message.type == "error" and "Failed to load resource" not in message.text
        else None,
    )
    yield context
    context.close()
    assert not thrown
