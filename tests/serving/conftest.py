"""One server for all the tests that need one that runs."""

from __future__ import annotations

from collections.abc import Iterator

import pytest

from .asking import Connection, Server


@pytest.fixture(scope="session")
def server() -> Iterator[Server]:
    """It must stop as it should, and have nothing to say of what it was asked."""
    started = Server("--port", "0")
    yield started
    assert started.stop() == 0
    assert started.said.count("\n") == 1, started.said


@pytest.fixture
def connection(server: Server) -> Iterator[Connection]:
    with Connection(server.port) as opened:
        yield opened
