"""A server as people start it, and requests to it byte by byte, right or wrong."""

from __future__ import annotations

import json
import re
import socket
import subprocess
import sys
from contextlib import suppress
from dataclasses import dataclass
from pathlib import Path
from typing import IO, Any

ROOT = Path(__file__).parents[2]
SPEC = (ROOT / "out_examples" / "east-window" / "spec.toml").read_text()
WITHIN = 20.0
"""Seconds within which every answer must have come."""


class Server:
    """``templategen serve``, started; ``port`` and ``url`` as it says them."""

    def __init__(self, *arguments: str, errors: IO[str] | None = None) -> None:
        self.process = subprocess.Popen(
            [sys.executable, "-m", "templategen", "serve", "--no-browser", *arguments],
            stdout=subprocess.PIPE,
            stderr=errors or subprocess.STDOUT,
            text=True,
            cwd=ROOT,
        )
        assert self.process.stdout is not None
        self.said = ""
        for line in self.process.stdout:
            self.said += line
            if found := re.search(r"http://\S+:(\d+)/", line):
                self.url, self.port = found[0], int(found[1])
                return
        raise AssertionError(f"no address was said, but: {self.said}")

    def stop(self) -> int:
        """Asks it to stop; its exit status."""
        self.process.terminate()
        status = self.process.wait(WITHIN)
        assert self.process.stdout is not None
        self.said += self.process.stdout.read()
        self.process.stdout.close()
        return status


@dataclass(frozen=True, slots=True)
class Answer:
    status: int
    headers: dict[str, str]
    body: bytes

    @property
    def json(self) -> Any:
        return json.loads(self.body)


class Connection:
    """A socket to the server, and the answers that come from it."""

    def __init__(self, port: int, within: float = WITHIN) -> None:
        self._socket = socket.create_connection(("127.0.0.1", port), timeout=within)
        self._socket.setsockopt(socket.IPPROTO_TCP, socket.TCP_NODELAY, 1)
        self._file = self._socket.makefile("rb")

    def send(self, data: bytes) -> None:
        """Sends as much as the other side will take."""
        with suppress(BrokenPipeError, ConnectionResetError):
            self._socket.sendall(data)

    def answer(self, head: bool = False) -> Answer | None:
        """The next answer; None where the connection was closed without one. Raises TimeoutError."""
        try:
            line = self._file.readline()
            if not line:
                return None
            headers = {}
            while (field := self._file.readline().strip()) != b"":
                name, _, value = field.decode("latin-1").partition(":")
                headers[name.lower()] = value.strip()
            status = int(line.split()[1])
            length = 0 if head or status in (204, 304) else int(headers.get("content-length", 0))
            return Answer(status, headers, self._file.read(length))
        except ConnectionResetError:
            return None

    def ask(self, request: bytes) -> Answer | None:
        self.send(request)
        return self.answer()

    def end(self) -> None:
        """Says that nothing more will be sent."""
        self._socket.shutdown(socket.SHUT_WR)

    def close(self) -> None:
        self._file.close()
        self._socket.close()

    def __enter__(self) -> Connection:
        return self

    def __exit__(self, *_: object) -> None:
        self.close()


def request(
    port: int, method: str = "GET", path: str = "/", body: bytes | None = None, version: str = "1.1", **more: str | None
) -> bytes:
    """A request that is right, but for what ``more`` says of its headers: a value of None leaves one out."""
    headers: dict[str, str | None] = {"host": f"127.0.0.1:{port}"}
    if body is not None:
        headers |= {"content-type": "application/json", "content-length": str(len(body))}
    headers |= {name.replace("_", "-"): value for name, value in more.items()}
    lines = [f"{name}: {value}" for name, value in headers.items() if value is not None]
    return "\r\n".join([f"{method} {path} HTTP/{version}", *lines, "", ""]).encode("latin-1") + (body or b"")


def question(port: int, path: str, asked: object, **more: str | None) -> bytes:
    """A request of the interface."""
    return request(port, "POST", path, json.dumps(asked).encode(), **more)
