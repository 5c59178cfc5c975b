"""Who may ask, and how much: everything that is settled before a request is read, and what every answer carries.

The page is for whoever sits at this machine. A site that the same browser has open must not reach it: not by asking
across sites (Fetch Metadata, W3C; Origin, RFC 6454), nor by a name of its own that it points at this address (the Host
header, RFC 9110, 7.2, is held against a list).
"""

from __future__ import annotations

import ipaddress
import re
import sys
from collections.abc import Iterable, MutableMapping
from typing import Any

import anyio
from starlette.types import ASGIApp, Message, Receive, Scope, Send

from ..errors import Fault
from .limits import COME_BACK, MOST_BODY, MOST_DRAINED, SECONDS_TO_SEND
from .workers import Answer, Busy, refused

POLICY = (
    "default-src 'none'; script-src 'self'; style-src 'self'; img-src 'self' blob:; font-src 'self'; "
    "connect-src 'self'; base-uri 'none'; form-action 'none'; frame-ancestors 'none'; "
    "require-trusted-types-for 'script'; trusted-types 'none'"
)
"""Content Security Policy Level 3 and Trusted Types (W3C): nothing from elsewhere, and no text is ever made a script."""
HEADERS = {
    "content-security-policy": POLICY,
    "x-content-type-options": "nosniff",
    "referrer-policy": "no-referrer",
    "cross-origin-opener-policy": "same-origin",
    "cross-origin-resource-policy": "same-origin",
    "permissions-policy": "camera=(), display-capture=(), geolocation=(), microphone=(), payment=(), usb=()",
}
_LOOPBACK = ("localhost", "127.0.0.1", "[::1]")
_HOST = re.compile(r"(?P<name>\[[0-9a-fA-F:.]+\]|[A-Za-z0-9.-]+)(:\d{1,5})?")


class Guards:
    """Around the application: refuses what must not reach it, and adds to every answer what it must carry."""

    def __init__(self, app: ASGIApp, addresses: Iterable[str] = ()) -> None:
        """``addresses`` are those besides loopback on which the page was asked to be served."""
        self._app = app
        self._any = any(ipaddress.ip_address(address).is_unspecified for address in addresses)
        self._names = {*_LOOPBACK, *map(_in_url, addresses)}

    async def __call__(self, scope: Scope, receive: Receive, send: Send) -> None:
        if scope["type"] != "http":
            await self._app(scope, receive, send)
            return
        answering = _Answering(send, scope["path"].startswith("/api/"))
        try:
            refusal = self._refusal(scope)
            body = b""
            if refusal is None:
                body, refusal = await _body(receive)
            if refusal is not None:
                await answering.answer(refusal, close=True)
                return
            await self._app(scope, _replay(body, receive), answering.send)
        except Busy:
            await answering.answer(refused(429, Fault("", "", "too much is asked at once; ask again in a moment")))
        except ConnectionError:
            pass  # whoever asked has gone
        except Exception as error:
            print(f"templategen serve: {type(error).__name__} at {scope['path'][:80]!r}", file=sys.stderr)
            if not answering.begun:
                await answering.answer(refused(500, Fault("", "", "the program failed at this; what is typed is kept")))

    def _refusal(self, scope: Scope) -> Answer | None:
        headers: dict[str, list[str]] = {}
        for name, value in scope["headers"]:
            headers.setdefault(name.decode("latin-1"), []).append(value.decode("latin-1"))
        hosts = headers.get("host", [])
        if len(hosts) != 1 or not self._ours(hosts[0]):
            return refused(421, Fault("Host", repr(hosts[0][:60]) if hosts else "", "this page is not served there"))
        if headers.get("sec-fetch-site", ["none"])[0] not in ("none", "same-origin"):
            return refused(403, Fault("", "", "other sites must not ask this page anything"))
        origin = headers.get("origin")
        if origin and origin != [f"http://{hosts[0]}"]:
            return refused(403, Fault("Origin", repr(origin[0][:60]), "other sites must not ask this page anything"))
        if scope["method"] == "POST":
            kind = headers.get("content-type", [""])[0].partition(";")[0].strip().lower()
            if kind != "application/json":
                return refused(415, Fault("Content-Type", repr(kind[:60]), "write application/json"))
        return None

    def _ours(self, host: str) -> bool:
        """Whether it is a name of this machine; its port may be another, where somebody forwards one."""
        found = _HOST.fullmatch(host)
        if found is None:
            return False
        name = found["name"].lower()
        return name in self._names or (self._any and _is_address(name))


class _Answering:
    """An answer on its way, with what every answer carries."""

    def __init__(self, send: Send, data: bool) -> None:
        self._send, self._data = send, data
        self.begun = False

    async def send(self, message: Message) -> None:
        if message["type"] == "http.response.start":
            self.begun = True
            message = {**message, "headers": self._headers(message.get("headers", ()))}
        await self._send(message)

    async def answer(self, answer: Answer, *, close: bool = False) -> None:
        headers = [
            (b"content-type", answer.media_type.encode()), (b"content-length", str(len(answer.content)).encode()),
        ]  # fmt: skip
        if close:
            headers.append((b"connection", b"close"))
        if answer.status == 429:
            headers.append((b"retry-after", str(COME_BACK).encode()))
        await self.send({"type": "http.response.start", "status": answer.status, "headers": headers})
        await self.send({"type": "http.response.body", "body": answer.content})

    def _headers(self, given: Iterable[tuple[bytes, bytes]]) -> list[tuple[bytes, bytes]]:
        headers = list(given)
        names = {name.lower() for name, _ in headers}
        always = HEADERS | {"cache-control": "no-store" if self._data else "no-cache"}
        return headers + [(n.encode(), v.encode()) for n, v in always.items() if n.encode() not in names]


async def _body(receive: Receive) -> tuple[bytes, Answer | None]:
    """What was sent with the request; or why it is not taken."""
    parts: list[bytes] = []
    size, more = 0, True
    try:
        with anyio.fail_after(SECONDS_TO_SEND):
            while more and size <= MOST_DRAINED:
                message = await receive()
                if message["type"] == "http.disconnect":
                    raise ConnectionError
                part = message.get("body", b"")
                size += len(part)
                more = message.get("more_body", False)
                if size <= MOST_BODY:
                    parts.append(part)
    except TimeoutError:
        return b"", refused(408, Fault("", "", f"what was sent took more than {SECONDS_TO_SEND:.0f} s to arrive"))
    if size > MOST_BODY:
        right = f"more than {MOST_BODY // 2**10} KiB; a spec is a page or two: is this the file?"
        return b"", refused(413, Fault("", "", right))
    return b"".join(parts), None


def _replay(body: bytes, receive: Receive) -> Receive:
    """The body once more, for the application; then whatever comes after it."""
    sent = False

    async def replayed() -> MutableMapping[str, Any]:
        nonlocal sent
        if sent:
            return await receive()
        sent = True
        return {"type": "http.request", "body": body, "more_body": False}

    return replayed


def _in_url(address: str) -> str:
    """An address as it stands in a URL."""
    return f"[{address}]" if ":" in address else address


def _is_address(name: str) -> bool:
    try:
        ipaddress.ip_address(name.strip("[]"))
    except ValueError:
        return False
    return True
