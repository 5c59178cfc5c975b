"""The server's process: its socket, its start, its end."""

from __future__ import annotations

import errno
import gc
import ipaddress
import signal
import socket
import webbrowser
from collections.abc import Callable, Iterator
from contextlib import contextmanager

import uvicorn

from ..errors import Fault, Refusal

PORT = 8630
"""Our choice: none that IANA has given to a service."""
LOOPBACK = "127.0.0.1"
NEXT = 100
"""Ports that are tried after one that is taken."""
SECONDS_TO_END = 2
"""For what is being answered when the server is told to stop."""


class PortTaken(OSError):
    """Another program has the port."""

    def __init__(self, port: int, last: int | None = None) -> None:
        which = f"port {port} is" if last is None else f"ports {port} to {last} are"
        super().__init__(
            errno.EADDRINUSE,
            "taken by another program; name another with --port"
            + ("" if last else ", or say --next-port to take the next free one"),
        )
        self.filename = f"{which.removesuffix(' is').removesuffix(' are')}"


def faults_in(port: int, address: str) -> list[Fault]:
    """What is wrong with where the page is to be served."""
    faults = []
    if not 0 <= port <= 65535:
        faults.append(Fault("--port", str(port), "no such port; write one from 1 to 65535, or 0 for any that is free"))
    try:
        ipaddress.ip_address(address)
    except ValueError:
        faults.append(Fault("--address", repr(address[:60]), "no address; write one in figures, such as 192.168.1.20"))
    return faults


def serve(
    port: int = PORT, address: str = LOOPBACK, *, next_port: bool = False, browser: bool = True,
    say: Callable[[str], None] = print, warn: Callable[[str], None] = print,
) -> None:  # fmt: skip
    """Serves the page until it is told to stop.

    ``say`` tells where it is, once it is there; ``warn`` who can reach it besides this machine. Raises Refusal for a
    port or an address that there is none of, PortTaken, and OSError where the system refuses.
    """
    if faults := faults_in(port, address):
        raise Refusal(*faults)
    from .app import application

    at = ipaddress.ip_address(address)
    listening = _listening(port, str(at), NEXT if next_port else 0)
    port = listening.getsockname()[1]
    if not at.is_loopback:
        warn(
            f"anybody who reaches {at} can open this page and make kits on this machine; "
            "what you type goes over the network unencrypted. Leave --address out to serve this machine alone."
        )
    host = LOOPBACK if at.is_unspecified else f"[{at}]" if at.version == 6 else str(at)
    url = f"http://{host}:{port}/"
    gc.enable()  # which a command that lives a moment has no use for
    config = uvicorn.Config(
        application(() if at.is_loopback else (str(at),)), http="h11", loop="asyncio", lifespan="on", log_config=None,
        access_log=False, server_header=False, date_header=True, proxy_headers=False, limit_concurrency=400,
        backlog=256, timeout_keep_alive=20, timeout_graceful_shutdown=SECONDS_TO_END,
        h11_max_incomplete_event_size=16 * 1024,
    )  # fmt: skip
    server = _Server(config, lambda: _ready(url, browser, say))
    server.run(sockets=[listening])


def _ready(url: str, browser: bool, say: Callable[[str], None]) -> None:
    say(f"The page is at {url}")
    say("It is for this machine alone and keeps nothing; press Ctrl and C to stop it." if "127.0.0.1" in url
        else "Press Ctrl and C to stop it.")  # fmt: skip
    if browser:
        webbrowser.open(url)


class _Server(uvicorn.Server):
    """Says when it is there."""

    def __init__(self, config: uvicorn.Config, ready: Callable[[], None]) -> None:
        super().__init__(config)
        self._ready = ready

    @contextmanager
    def capture_signals(self) -> Iterator[None]:
        """Ctrl and C, or being told to stop, is how it is meant to end: nothing is raised once it has ended."""
        before = {each: signal.signal(each, self.handle_exit) for each in (signal.SIGINT, signal.SIGTERM)}
        try:
            yield
        finally:
            for each, handler in before.items():
                signal.signal(each, handler)

    async def startup(self, sockets: list[socket.socket] | None = None) -> None:
        await super().startup(sockets)
        if self.started:
            self._ready()


def _listening(port: int, address: str, more: int) -> socket.socket:
    """A socket at ``port``, or at the first free one of as many ``more`` after it."""
    family = socket.AF_INET6 if ":" in address else socket.AF_INET
    for each in range(port, min(port + more, 65535) + 1):
        made = socket.socket(family, socket.SOCK_STREAM)
        made.setsockopt(socket.SOL_SOCKET, socket.SO_REUSEADDR, 1)
        try:
            made.bind((address, each))
            made.listen(256)
        except OSError as error:
            made.close()
            if error.errno != errno.EADDRINUSE:
                raise
        else:
            return made
    raise PortTaken(port, port + more if more else None)
