"""Who may ask, and how much: what every request passes before anything is made of it, and what every answer bears.

The page is for the person at this machine. Any other page in the same browser can send requests here too, so a
request is heard only where it calls this place by a name of its own and comes from this page or from nowhere.
"""

from __future__ import annotations

import asyncio
import sys
from http import HTTPStatus

from starlette.datastructures import Headers, MutableHeaders
from starlette.responses import Response
from starlette.types import ASGIApp, Message, Receive, Scope, Send

from . import limits
from .faults import JSON, one
from .outcome import unforeseen
from .places import Place

_NOTHING_OF = (
    "accelerometer autoplay camera clipboard-read display-capture encrypted-media fullscreen geolocation gyroscope hid "
    "idle-detection magnetometer microphone midi payment picture-in-picture publickey-credentials-get screen-wake-lock "
    "serial usb xr-spatial-tracking"
)
HEADERS = {
    "content-security-policy": (
        "default-src 'none'; script-src 'self'; style-src 'self'; img-src 'self' blob:; font-src 'self'; "
        "connect-src 'self'; base-uri 'none'; form-action 'none'; frame-ancestors 'none'; "
        "require-trusted-types-for 'script'; trusted-types 'none'"
    ),
    "x-content-type-options": "nosniff",
    "referrer-policy": "no-referrer",
    "cross-origin-opener-policy": "same-origin",
    "cross-origin-resource-policy": "same-origin",
    "permissions-policy": ", ".join(f"{feature}=()" for feature in _NOTHING_OF.split()),
}
"""What every answer bears. Whether and how long it may be kept, it says besides."""
NO_STORE = {"cache-control": "no-store"}


def guarded(app: ASGIApp, place: Place, body_seconds: float = limits.BODY_SECONDS) -> ASGIApp:
    """``app``, served at ``place``, behind every guard."""
    return Answered(Measured(Known(app, place), body_seconds))


class Answered:
    """Every answer bears the headers; a fault of the program's own is an answer too, and one line of its log."""

    def __init__(self, app: ASGIApp) -> None:
        self.app = app

    async def __call__(self, scope: Scope, receive: Receive, send: Send) -> None:
        if scope["type"] != "http":
            await self.app(scope, receive, send)
            return
        begun = False

        async def answer(message: Message) -> None:
            nonlocal begun
            if message["type"] == "http.response.start":
                begun = True
                headers = MutableHeaders(scope=message)
                headers.update(HEADERS)
                for name, value in NO_STORE.items():
                    headers.setdefault(name, value)
            await send(message)

        try:
            await self.app(scope, receive, answer)
        except Exception as error:
            made = unforeseen(f"{scope['method']} {scope['path'][:100]!r}: {type(error).__name__}: {error}")
            print(f"templategen: {made.remark}", file=sys.stderr, flush=True)
            if not begun:
                await Response(made.body, made.status, media_type=made.media_type)(scope, receive, answer)


class Measured:
    """A body is read before anything else is done, up to a limit of its size and of the time it takes to come."""

    def __init__(self, app: ASGIApp, seconds: float) -> None:
        self.app, self.seconds = app, seconds

    async def __call__(self, scope: Scope, receive: Receive, send: Send) -> None:
        if scope["type"] != "http":
            await self.app(scope, receive, send)
            return
        try:
            async with asyncio.timeout(self.seconds):
                body = await _body(receive, Headers(scope=scope))
        except TimeoutError:
            right = f"the request did not come in within {self.seconds:g} s"
            await refused(HTTPStatus.REQUEST_TIMEOUT, right, connection="close")(scope, receive, send)
            return
        except _TooLarge:
            right = f"this is more than {limits.MOST_BODY / 2**20:g} MiB, where a job takes a hundredth of that"
            await refused(HTTPStatus.REQUEST_ENTITY_TOO_LARGE, right, connection="close")(scope, receive, send)
            return
        if body is None:
            return  # the other side is gone
        waiting: list[Message] = [{"type": "http.request", "body": body, "more_body": False}]

        async def again() -> Message:
            return waiting.pop() if waiting else await receive()

        await self.app(scope, again, send)


class _TooLarge(Exception):
    """A body beyond the limit."""


async def _body(receive: Receive, headers: Headers) -> bytes | None:
    """The body; None where the other side went away before it was whole. Raises _TooLarge.

    More than may be is read and thrown away, within reason: who is cut off while still sending does not get to read
    the answer. Who asks beforehand, with "Expect", is told at once.
    """
    length = headers.get("content-length", "0")
    declared = int(length) if length.isascii() and length.isdigit() and len(length) < 20 else limits.MOST_DRAINED
    if declared > limits.MOST_BODY and "expect" in headers:
        raise _TooLarge
    parts, size, more = [], 0, True
    while more and size < limits.MOST_DRAINED:
        message = await receive()
        if message["type"] != "http.request":
            return None
        part = message.get("body", b"")
        size, more = size + len(part), message.get("more_body", False)
        if size <= limits.MOST_BODY:
            parts.append(part)
        else:
            parts.clear()
    if size > limits.MOST_BODY:
        raise _TooLarge
    return b"".join(parts)


class Known:
    """A request that calls this place by another's name, or comes from another's page, is not heard."""

    def __init__(self, app: ASGIApp, place: Place) -> None:
        self.app, self.place = app, place

    async def __call__(self, scope: Scope, receive: Receive, send: Send) -> None:
        if scope["type"] == "http" and (refusal := self._refusal(scope["method"], Headers(scope=scope))):
            await refusal(scope, receive, send)
        else:
            await self.app(scope, receive, send)

    def _refusal(self, method: str, headers: Headers) -> Response | None:
        hosts, origins = headers.getlist("host"), headers.getlist("origin")
        if len(hosts) != 1 or not self.place.answers_to(hosts[0]):
            right = f"this page goes by no such name; it is at {self.place.url}"
            return refused(HTTPStatus.MISDIRECTED_REQUEST, right)
        if any(origin.lower() != f"http://{hosts[0].lower()}" for origin in origins):
            return refused(HTTPStatus.FORBIDDEN, "another page may not ask this one for anything")
        if {"cross-site", "same-site"} & set(headers.getlist("sec-fetch-site")):
            right = f"another page may not ask this one for anything; type {self.place.url} yourself"
            return refused(HTTPStatus.FORBIDDEN, right)
        kind = headers.get("content-type", "").split(";")[0].strip().lower()
        if method == "POST" and kind != JSON:
            return refused(HTTPStatus.UNSUPPORTED_MEDIA_TYPE, f"a request is JSON; send it as Content-Type: {JSON}")
        return None


def refused(status: HTTPStatus, right: str, **headers: str) -> Response:
    """An answer that is a refusal, for one reason."""
    return Response(one(right), status, headers, JSON)


