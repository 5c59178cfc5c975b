"""The server from its start to its end: a port, a word to whoever started it, and nothing left when it stops."""

from __future__ import annotations

import errno
import gc
import os
import signal
import socket
import threading
import webbrowser
from collections.abc import Callable, Iterator
from contextlib import contextmanager
from ipaddress import ip_address
from types import FrameType

from ..errors import Fault, Refusal
from . import limits
from .places import Place

ADDRESS, PORT = "127.0.0.1", 8630
"""Where the page is unless another place is named. The port is our choice: none that is registered with IANA."""
MOST_PORT = 65535
NEXT_PORTS = 100
"""So many ports after a taken one are tried where the next free one will do."""
_BACKLOG = 128


class PortTaken(Exception):
    """Another program listens where the page was to be. The message says what to do."""


def read_port(typed: str) -> int:
    """The port that somebody typed. Raises Refusal."""
    if typed.isascii() and typed.isdigit() and len(typed) < 10 and int(typed) <= MOST_PORT:
        return int(typed)
    right = f"a port is a whole number from 1 to {MOST_PORT}, or 0 for any that is free"
    raise Refusal(Fault("--port", repr(typed), right))


def listening(address: str, port: int, next_port: bool = False) -> socket.socket:
    """A socket that listens at ``address``, at ``port`` or, with ``next_port``, at the first free one from there on.

    Raises Refusal where this machine has no such address, PortTaken, and OSError where the system will not have it.
    """
    try:
        family, _, _, _, where = socket.getaddrinfo(address, 0, type=socket.SOCK_STREAM, flags=socket.AI_PASSIVE)[0]
    except (OSError, UnicodeError):
        raise _no_address(address) from None
    last = min(port + NEXT_PORTS, MOST_PORT) if next_port and port else port
    for each in range(port, last + 1):
        # Named as TCP, so that asyncio sends small answers at once and not 40 ms later (RFC 9293, 3.7.4, Nagle).
        opened = socket.socket(family, socket.SOCK_STREAM, socket.IPPROTO_TCP)
        try:
            # Elsewhere than on POSIX systems this would let two programs have one port.
            if os.name == "posix":
                opened.setsockopt(socket.SOL_SOCKET, socket.SO_REUSEADDR, 1)
            opened.bind((where[0], each, *where[2:]))
            opened.listen(_BACKLOG)
        except OSError as error:
            opened.close()
            if error.errno == errno.EADDRNOTAVAIL:
                raise _no_address(address) from None
            if error.errno != errno.EADDRINUSE:
                raise OSError(error.errno, error.strerror, f"port {each} at {address}") from None
        else:
            return opened
    if last > port:
        raise PortTaken(f"ports {port} to {last} are all taken by other programs; name another with --port")
    advice = "name another with --port, or say --next-port to take the next free one"
    raise PortTaken(f"port {port} is taken by another program; {advice}")


def _no_address(address: str) -> Refusal:
    right = f"this machine has no such address; write one that it has, or leave it out for {ADDRESS}"
    return Refusal(Fault("--address", repr(address[:100]), right))


def warning(place: Place) -> str:
    """What to know of a place that more than this machine can reach; "" of any other."""
    if place.loopback:
        return ""
    try:
        everywhere = ip_address(place.address).is_unspecified
    except ValueError:
        everywhere = False
    where = "any network that this machine is in" if everywhere else f"any machine that can reach {place.address}"
    return (
        f"the page has no password: anybody on {where}, port {place.port}, can open it and have kits made here, and "
        "what they and you type crosses that network unencrypted. Nothing that you type is kept here."
    ).replace("anybody on any machine", "anybody at a machine")


def serve(address: str, port: int, *, next_port: bool, browser: bool, say: Callable[[str], None],
          warn: Callable[[str], None]) -> None:  # fmt: skip
    """Serves the page until Ctrl-C or SIGTERM. ``say`` is told where it is, as soon as it is there.

    Raises what ``listening`` does.
    """
    with _stoppable() as stopping, listening(address, port, next_port) as opened:
        place = Place(address, opened.getsockname()[1])
        warn(warning(place))
        # The command that this is one of lives a moment and looks for no garbage; a server must.
        gc.enable()

        def ready() -> None:
            say(f"The page is at {place.url} – stop it with Ctrl-C.")
            if browser:
                threading.Thread(target=_open_browser, args=(place.url,), daemon=True).start()

        _run(place, opened, ready, stopping)


@contextmanager
def _stoppable() -> Iterator[list[Callable[[], None]]]:
    """Ctrl-C and SIGTERM call what is in the list; before there is anything in it they end the program as they should.

    Uvicorn would raise the signal once more after it has stopped, and so end with a status of failure.
    """
    stopping: list[Callable[[], None]] = []

    def stop(_number: int, _frame: FrameType | None) -> None:
        if not stopping:
            raise SystemExit(0)
        for each in stopping:
            each()

    before = {number: signal.signal(number, stop) for number in (signal.SIGINT, signal.SIGTERM)}
    try:
        yield stopping
    finally:
        for number, handler in before.items():
            signal.signal(number, handler)


def _run(place: Place, opened: socket.socket, ready: Callable[[], None], stopping: list[Callable[[], None]]) -> None:
    import uvicorn

    from .app import application
    from .protocol import Protocol

    class Server(uvicorn.Server):
        """Says when it answers, and leaves signals to whoever started it."""

        async def startup(self, sockets: list[socket.socket] | None = None) -> None:
            await super().startup(sockets)
            if self.started and not self.should_exit:
                ready()

        @contextmanager
        def capture_signals(self) -> Iterator[None]:
            yield

    server = Server(
        uvicorn.Config(
            application(place),
            http=Protocol,
            ws="none",
            loop="asyncio",
            lifespan="on",
            log_config=None,
            log_level="critical",
            access_log=False,
            server_header=False,
            proxy_headers=False,
            backlog=_BACKLOG,
            timeout_keep_alive=limits.IDLE_SECONDS,
            timeout_graceful_shutdown=limits.STOP_SECONDS,
            h11_max_incomplete_event_size=limits.MOST_HEAD,
        )
    )

    def stop() -> None:
        server.should_exit = True

    stopping.append(stop)
    server.run([opened])


def _open_browser(url: str) -> None:
    """Opens the page, where there is a browser with a window of its own: one in this terminal would take it over."""
    try:
        browser = webbrowser.get()
        if type(browser) is not webbrowser.GenericBrowser:
            browser.open(url)
    except webbrowser.Error:
        pass  # the address has been said
