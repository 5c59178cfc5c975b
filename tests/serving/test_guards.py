"""Guards: each rule, each status, and the headers on every answer."""

from __future__ import annotations

import asyncio
from collections.abc import AsyncIterator, Callable
from pathlib import Path
from typing import Any

import httpx
import pytest
from starlette.types import ASGIApp, Receive, Scope, Send

from templategen.serving import limits
from templategen.serving.guards import HEADERS, guarded
from templategen.serving.places import Place

PLACE = Place("127.0.0.1", 8630)
JSON = {"content-type": "application/json"}
DESIGN = (
    "default-src 'none'; script-src 'self'; style-src 'self'; img-src 'self' blob:; font-src 'self'; "
    "connect-src 'self'; base-uri 'none'; form-action 'none'; frame-ancestors 'none'; "
    "require-trusted-types-for 'script'; trusted-types 'none'"
)


async def echo(scope: Scope, receive: Receive, send: Send) -> None:
    """Answers with the body's length; fails where it is asked to, before or after it has begun to answer."""
    if scope["path"] == "/fail":
        raise KeyError("a fault\nof our own")
    size = len((await receive())["body"])
    kept = [(b"cache-control", b"no-cache")] if scope["path"] == "/file" else []
    await send({"type": "http.response.start", "status": 200, "headers": kept})
    if scope["path"] == "/late":
        raise KeyError("too late to say so")
    await send({"type": "http.response.body", "body": str(size).encode()})


def ask(
    method: str = "GET", path: str = "/", headers: dict[str, str] | list[tuple[str, str]] | None = None,
    content: Any = None, app: ASGIApp | None = None,
) -> httpx.Response:  # fmt: skip
    async def run() -> httpx.Response:
        transport = httpx.ASGITransport(app or guarded(echo, PLACE, 0.3))
        async with httpx.AsyncClient(transport=transport, base_url="http://127.0.0.1:8630") as client:
            return await client.request(method, path, headers=headers, content=content)

    answer = asyncio.run(run())
    assert HEADERS.items() <= dict(answer.headers).items() and "cache-control" in answer.headers
    return answer


def told(answer: httpx.Response) -> str:
    (fault,) = answer.json()["faults"]
    assert set(fault) == {"field", "read", "right"} and answer.headers["content-type"] == "application/json"
    return str(fault["right"])


def test_what_is_right_gets_through() -> None:
    assert ask().text == "0"
    assert ask("POST", headers=JSON, content=b"{}").text == "2"
    same = {"origin": "http://127.0.0.1:8630", "sec-fetch-site": "same-origin"}
    assert ask("POST", headers=JSON | same, content=b"{}").text == "2"
    assert ask(headers={"sec-fetch-site": "none"}).text == "0"
    utf = {"content-type": "Application/JSON; charset=utf-8"}
    assert ask("POST", headers=utf, content=b"{}").text == "2"


def test_the_headers_are_those_of_the_design() -> None:
    assert HEADERS["content-security-policy"] == DESIGN
    assert HEADERS["x-content-type-options"] == "nosniff" and HEADERS["referrer-policy"] == "no-referrer"
    assert HEADERS["cross-origin-opener-policy"] == HEADERS["cross-origin-resource-policy"] == "same-origin"
    allowed = [each.strip().split("=") for each in HEADERS["permissions-policy"].split(",")]
    assert len(allowed) > 15 and all(to == "()" for _, to in allowed)


def test_nothing_is_kept_but_where_an_answer_says_so() -> None:
    assert ask().headers["cache-control"] == "no-store"
    assert ask(path="/file").headers["cache-control"] == "no-cache"


@pytest.mark.parametrize("host", ["rebound.example:8630", "127.0.0.1", "127.0.0.1:80", "localhost:8631", ""])
@pytest.mark.parametrize("method", ["GET", "POST", "OPTIONS"])
def test_another_host(host: str, method: str) -> None:
    answer = ask(method, headers=JSON | {"host": host}, content=b"{}" if method == "POST" else None)
    assert answer.status_code == 421 and PLACE.url in told(answer)


def test_two_hosts() -> None:
    hosts = [("host", "127.0.0.1:8630"), ("host", "127.0.0.1:8630")]
    assert ask(headers=hosts).status_code == 421


@pytest.mark.parametrize(
    "origin",
    ["http://rebound.example", "null", "https://127.0.0.1:8630", "http://127.0.0.1", "http://localhost:8630", "", "file://"],
)
@pytest.mark.parametrize("method", ["GET", "POST", "OPTIONS"])
def test_another_origin(origin: str, method: str) -> None:
    answer = ask(method, headers=JSON | {"origin": origin}, content=b"{}")
    assert answer.status_code == 403 and "another page" in told(answer)


@pytest.mark.parametrize("site", ["cross-site", "same-site"])
def test_another_site(site: str) -> None:
    answer = ask(headers={"sec-fetch-site": site})
    assert answer.status_code == 403 and "another page" in told(answer)


@pytest.mark.parametrize(
    "kind", [None, "", "text/plain", "application/x-www-form-urlencoded", "multipart/form-data; boundary=x",
             "application/jsonp", "text/plain; application/json", "application/json, text/plain"],
)  # fmt: skip
def test_another_media_type(kind: str | None) -> None:
    """Those that a form on another page can send without asking first are among them (Fetch, CORS-safelisted)."""
    answer = ask("POST", headers={} if kind is None else {"content-type": kind}, content=b"{}")
    assert answer.status_code == 415 and "application/json" in told(answer)


async def _chunks(size: int, pause: float = 0.0) -> AsyncIterator[bytes]:
    for _ in range(0, size, 2**16):
        await asyncio.sleep(pause)
        yield b"x" * min(2**16, size)


def _at_once(size: int) -> Any:
    return b"x" * size


@pytest.mark.parametrize("body", [_at_once, _chunks], ids=["with its length", "in chunks"])
def test_a_body_has_a_limit(body: Callable[[int], Any]) -> None:
    most = limits.MOST_BODY
    assert most == 2.5 * 2**20
    assert ask("POST", headers=JSON, content=body(most)).text == str(most)
    for size in (most + 2**16, 10 * 2**20, 20 * 2**20):
        answer = ask("POST", headers=JSON, content=body(size))
        assert answer.status_code == 413 and "2.5 MiB" in told(answer)
        assert answer.headers["connection"] == "close"


def test_a_body_has_a_limit_whatever_it_is_sent_with() -> None:
    assert ask("GET", content=b"x" * 3 * 2**20).status_code == 413
    assert ask("POST", headers={"host": "rebound.example"}, content=b"x" * 3 * 2**20).status_code == 413


def test_who_asks_before_sending_too_much_is_told_before_sending() -> None:
    async def nothing() -> Any:
        raise AssertionError("the body was read")

    async def run() -> list[Any]:
        sent: list[Any] = []

        async def send(message: Any) -> None:
            sent.append(message)

        headers = [(b"host", b"127.0.0.1:8630"), (b"expect", b"100-continue"), (b"content-length", b"99999999")]
        scope = {"type": "http", "method": "POST", "path": "/", "headers": headers}
        await guarded(echo, PLACE)(scope, nothing, send)
        return sent

    assert asyncio.run(run())[0]["status"] == 413


def test_a_body_that_dribbles_in() -> None:
    answer = ask("POST", headers=JSON, content=_chunks(2**20, 0.05))
    assert answer.status_code == 408 and "0.3 s" in told(answer)


def test_a_body_that_never_comes_whole_gets_no_answer() -> None:
    async def gone() -> Any:
        return {"type": "http.disconnect"}

    async def send(message: Any) -> None:
        raise AssertionError("nobody is there")

    scope = {"type": "http", "method": "POST", "path": "/", "headers": [(b"host", b"127.0.0.1:8630")]}
    asyncio.run(guarded(echo, PLACE)(scope, gone, send))


def test_a_fault_of_our_own_is_told_plainly_and_logged_in_one_line(capsys: pytest.CaptureFixture[str]) -> None:
    answer = ask(path="/fail")
    assert answer.status_code == 500 and "templategen itself" in told(answer)
    assert "KeyError" not in answer.text
    (line,) = capsys.readouterr().err.splitlines()
    assert line.startswith("templategen: GET '/fail': KeyError: ")


def test_a_fault_after_an_answer_has_begun_begins_no_other(capsys: pytest.CaptureFixture[str]) -> None:
    sent: list[Any] = []

    async def empty() -> Any:
        return {"type": "http.request", "body": b""}

    async def send(message: Any) -> None:
        sent.append(message)

    scope = {"type": "http", "method": "GET", "path": "/late", "headers": [(b"host", b"127.0.0.1:8630")]}
    asyncio.run(guarded(echo, PLACE)(scope, empty, send))
    assert [message["status"] for message in sent] == [200]
    assert "too late to say so" in capsys.readouterr().err


def test_the_page_asks_for_nothing_that_its_policy_forbids() -> None:
    page = (Path(__file__).parents[2] / "templategen" / "page" / "index.html").read_text()
    for forbidden in ("<style", " style=", "javascript:", " onclick", " onload", "<base", "<iframe", "http://", "https://"):
        assert forbidden not in page
