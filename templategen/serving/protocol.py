"""HTTP as the server speaks it: what is no request is answered too, and nobody holds a connection for nothing."""

from __future__ import annotations

import asyncio
from http import HTTPStatus

import h11
from uvicorn.protocols.http.h11_impl import H11Protocol

from . import limits
from .faults import raw
from .guards import HEADERS, NO_STORE


class Protocol(H11Protocol):
    """Uvicorn's own, with a limit to connections and to the time that a request's head may take.

    Its ``limit_concurrency`` would answer with a 503 that bears none of the headers.
    """

    _deadline: asyncio.TimerHandle | None = None

    def connection_made(self, transport: asyncio.Transport) -> None:  # type: ignore[override]
        super().connection_made(transport)
        if len(self.connections) > limits.MOST_CONNECTIONS:
            retry = {"retry-after": str(limits.RETRY_SECONDS)}
            self._end(HTTPStatus.TOO_MANY_REQUESTS, "too many connections are open already; try again", retry)
        else:
            self._set_deadline()

    def data_received(self, data: bytes) -> None:
        super().data_received(data)
        if self.conn.their_state is not h11.IDLE:
            self._clear_deadline()
        elif self._deadline is None and not self.transport.is_closing():
            self._set_deadline()

    def connection_lost(self, exc: Exception | None) -> None:
        self._clear_deadline()
        super().connection_lost(exc)

    def send_400_response(self, msg: str) -> None:
        """What came in is no HTTP. Nothing can be said where an answer is under way already."""
        if self.conn.our_state in (h11.IDLE, h11.SEND_RESPONSE):
            self._end(HTTPStatus.BAD_REQUEST, "this is no request in HTTP, or its headers are too long")
        else:
            self.transport.close()

    def _end(self, status: HTTPStatus, right: str, headers: dict[str, str] | None = None) -> None:
        self.transport.write(raw(status, right, HEADERS | NO_STORE | (headers or {})))
        self.transport.close()

    def _set_deadline(self) -> None:
        self._deadline = self.loop.call_later(limits.HEAD_SECONDS, self._too_slow)

    def _clear_deadline(self) -> None:
        if self._deadline is not None:
            self._deadline.cancel()
            self._deadline = None

    def _too_slow(self) -> None:
        if self.conn.their_state is not h11.IDLE or self.transport.is_closing():
            return
        begun, _ = self.conn.trailing_data
        if not begun:  # a browser opens connections beforehand, and expects no answer to nothing
            self.transport.close()
        else:
            self._end(HTTPStatus.REQUEST_TIMEOUT, f"the request did not come in within {limits.HEAD_SECONDS:g} s")
