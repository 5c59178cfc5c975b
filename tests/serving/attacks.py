"""Requests that are malformed or mean harm: thousands, the same ones every time."""

from __future__ import annotations

import json
import random
from collections.abc import Callable, Iterator
from dataclasses import dataclass
from typing import Any

import schemathesis
from hypothesis import HealthCheck, Phase, given, settings
from hypothesis import strategies as st
from schemathesis import GenerationMode

from .asking import SPEC, question, request

SEED = 8630
ANY = frozenset({200, 304, 400, 403, 404, 405, 408, 413, 415, 421, 422, 429})
"""What may be answered where a request may be right by chance; never a status of 500 or more."""
KITS = ("/api/sheets", "/api/sheet", "/api/kit")
POSTS = ("/api/form", "/api/spec", "/api/plan", *KITS)


@dataclass(frozen=True, slots=True)
class Attack:
    """Bytes to send, and what may come of them."""

    name: str
    data: bytes
    statuses: frozenset[int] = ANY
    silent: bool = False
    """Whether the connection may be closed without an answer, or before all was sent."""
    answers: int = 1


def _drawn(strategy: st.SearchStrategy[Any], count: int) -> list[Any]:
    """``count`` values of the strategy, the same every time."""
    values: list[Any] = []

    @settings(
        max_examples=count, derandomize=True, database=None, deadline=None, phases=[Phase.generate],
        suppress_health_check=list(HealthCheck),
    )  # fmt: skip
    @given(strategy)
    def keep(value: Any) -> None:
        values.append(value)

    keep()
    return values


_JSON = st.recursive(
    st.none() | st.booleans() | st.integers() | st.floats() | st.text(),
    lambda inner: st.lists(inner, max_size=4) | st.dictionaries(st.text(max_size=8), inner, max_size=4),
    max_leaves=8,
)


def _bodies(description: Any, mode: GenerationMode, count: int) -> Iterator[tuple[str, list[Any]]]:
    """Bodies for each path, from the interface's own description: as it says, or not as it says."""
    operations = schemathesis.openapi.from_dict(description)
    for path in POSTS:
        yield path, [case.body for case in _drawn(operations[path]["POST"].as_strategy(generation_mode=mode), count)]


def _whole(value: Any) -> Any:
    """The same with whole numbers as a browser writes them, never "7.0"."""
    if isinstance(value, dict):
        return {key: _whole(each) for key, each in value.items()}
    if isinstance(value, list):
        return [_whole(each) for each in value]
    return int(value) if isinstance(value, float) and value.is_integer() else value


def _places(value: Any) -> Iterator[Callable[[Any], None]]:
    """For every part of a JSON value, a way to put another in its place."""
    steps = value.items() if isinstance(value, dict) else enumerate(value) if isinstance(value, list) else ()
    for step, inner in list(steps):
        yield lambda new, step=step: value.__setitem__(step, new)
        yield from _places(inner)


def from_description(port: int, description: Any, count: int) -> Iterator[Attack]:
    """Bodies that fit the description, the same with one part of them wrong, and JSON of any shape."""
    chance = random.Random(SEED)
    odd = _drawn(_JSON, 200)
    for path, bodies in _bodies(description, GenerationMode.POSITIVE, count):
        for body in map(_whole, bodies):
            yield Attack("as described", question(port, path, body), ANY - {400, 415})
            for _ in range(14):
                near = json.loads(json.dumps(body))
                if places := list(_places(near)):
                    chance.choice(places)(chance.choice(odd))
                yield Attack("nearly as described", question(port, path, near), ANY - {415})
            text = json.dumps(body).encode()
            for cut in chance.choices(range(len(text)), k=5):
                yield Attack("cut short", request(port, "POST", path, text[:cut]), frozenset({400}))
                flipped = bytearray(text)
                flipped[cut] ^= 1 << chance.randrange(8)
                yield Attack("a bit wrong", request(port, "POST", path, bytes(flipped)), ANY - {415})
        for value in odd:
            yield Attack("any JSON", question(port, path, value), frozenset({400}))
    for path, bodies in _bodies(description, GenerationMode.NEGATIVE, count // 5):
        for body in bodies:
            text = body if isinstance(body, bytes) else json.dumps(body).encode()
            yield Attack("not as described", request(port, "POST", path, text), frozenset({400, 413}))


LENGTHS = [
    "300 m", "984 ft", "1e9 in", "1e999999 in", "-54 in", "−54 in", "0", "0 in", "1/0 in", "54 1/0 in",
    "9" * 90 + " in",
    "9" * 3_999, "0x36 in", "5 3/0 in", "½½ in", "NaN", "inf in", "1/" + "9" * 80 + " in", "in",
    "54 in in", "54 in 54 in",
    "５４ in", "54\u202ein", "54\x00in", "54 parsec", "54 in; rm -rf /", "{{54}} in", "%s%n", "\n",
    " " * 4_000, "1" + ",1" * 1_500,
    "54 in" * 700, "²⁄₃ in", "e" * 4_000, "54 in\r\nSet-Cookie: a=b", "__import__('os')",
    "9007199254740993 in", "1e-400 in",
]  # fmt: skip
COUNTS = ["1000000", "-1", "0", "1e9", "2.5", "9" * 4_000, "٣", "four", "0x4", " 4 ", "4\x00"]
TITLES = [
    "<script>alert(1)</script>", '"><img src=x onerror=alert(1)>', "</title><svg onload=alert(1)>", "\u202eoverride",
    "\x00", "a\x00b", "\x1b[31mred", "☃" * 40, "x" * 4_000, "${7*7}{{7*7}}", "'; DROP TABLE jobs; --",
    "..\\..\\", "../../",
    "\r\nSet-Cookie: a=b", "\ufffe", "\U0010ffff", "e\u0301" * 2_000, "\u200b", '"""', "'''", "\\",
    "\\u0000", "=HYPERLINK(1)",
]  # fmt: skip
FILES = [
    "../../etc/passwd", "/etc/passwd", "kit.pdf\x00.svg", "..\\..\\spec.toml", "kit.pdf/../spec.toml",
    "CON", "%2e%2e%2f", "",
    ".", "..", "kit.zip", "KIT.PDF", "kit.pdf ", "file:///etc/passwd", "http://rebound.example/",
    "<script>", "\r\nA: b", "*",
]  # fmt: skip
TEXTS = [
    "a = " + "[" * 50_000, "a = " + "[" * 400 + "]" * 400, "a = " + "{a=" * 400 + "1" + "}" * 400,
    "a" + ".a" * 9_000 + " = 1",
    "[" + "a." * 5_000 + "a]", "[[window]]\n" * 2_000, "a = " + "9" * 100_000, "a = 1e999999999", '"' * 100_000,
    "a = 'x\x00'", "\x00", "\ufeff\ufeff", "a = 9999-99-99", "panel = 5", "panel = []", "window = 5",
    "[[panel]]", "[window]",
    "drop = 1\n[drop]", "title = 1\ntitle = 2", "[panel]\nwidth = true", "[panel]\nwidth = 5e400", "=" * 50_000,
    '__proto__ = "x"\n[constructor]\nprototype = 1', "".join(f"k{n} = 1\n" for n in range(3_000)),
    "[" * 100_000, "\r", "# \x07",
    'a = """' + "x" * 50_000, "title = '" + "x" * 500_000 + "'", "<!doctype html><script>", "{}", "null",
    "PK\x03\x04", "%PDF-1.7",
]  # fmt: skip


def _forms() -> Iterator[tuple[str, dict[str, Any]]]:
    """The sample job with one thing in it that no job has."""
    paths = ("panel.width", "panel.length", "rod.diameter", "rod.length", "drop.floor_marks", "hem.depth",
        "paper.width")
    for path in paths:
        for text in LENGTHS:
            yield "an absurd length", {"fields": {path: text}}
    for path in ("panel.count", "heading.count", "paper.strips"):
        for text in COUNTS:
            yield "an absurd count", {"fields": {path: text}}
    for text in TITLES:
        yield "an odd title", {"fields": {"title": text}}
        yield "an odd name", {"windows": [{"from": None, "name": text, "room": text, "fields": {}}]}
        yield "an odd path", {"fields": {text[:100]: "54 in"}}
        yield "an odd path", {"together": {text[:100]: text}}
    for path in ("panel.width", "title", "drop.floor_marks", "paper.large_print", "heading.style", "panel.count"):
        for value in (True, False, [], ["13 in"] * 200, ["x" * 4_000] * 30, "", "back loops"):
            yield "another kind of value", {"fields": {path: value}}
    for count in (2, 50):
        yield "many windows", {"windows": [{"name": f"window {n}",
            "fields": {"panel.width": "50 m"}} for n in range(count)]}
        yield "windows alike", {"windows": [{"from": 0, "name": "east"}] * count}
        yield "windows from nowhere", {"windows": [{"from": n, "name": str(n)} for n in range(count)]}
    yield "thousands of windows", {"windows": [{}] * 5_000}
    yield "thousands of marks", {"fields": {"drop.floor_marks": ["13 in"] * 5_000}}
    yield "thousands of loops", {"fields": {"heading.style": "back loops", "heading.count": "1999",
        "panel.width": "60 m"}}
    yield "thousands of fields", {"fields": {f"panel.x{n}": "1 in" for n in range(5_000)}}


def by_hand(port: int) -> Iterator[Attack]:
    """What each field, text and name might be abused for."""
    refused = frozenset({400, 422})
    for number, (name, form) in enumerate(_forms()):
        path = ("/api/plan", "/api/plan", "/api/spec")[number % 3]
        yield Attack(name, question(port, path, {"spec": SPEC if number % 2 else "", "form": form}))
        if number % 8 == 0:
            path = KITS[number // 8 % 3]
            more = {"page": 1, "width": 64} if path == "/api/sheet" else {}
            yield Attack(name, question(port, path, {"spec": "", "form": form} | more), refused)
    for text in TEXTS:
        for path in POSTS:
            more = {"page": 1, "width": 64} if path == "/api/sheet" else {}
            yield Attack("an odd text", question(port, path, {"spec": text} | more))
    for file in FILES:
        for spec in ("", "a = ["):
            yield Attack("an odd file", question(port, "/api/kit", {"spec": spec, "file": file}), refused)
    for page, width in ((0, 64), (5_001, 64), (1, 10**9), (1, -1), (10**400, 64), (1.5, 64), (True, True)):
        yield Attack("an odd page", question(port, "/api/sheet", {"spec": SPEC, "page": page, "width": width}), refused)
    yield Attack("a page too many", question(port, "/api/sheet", {"spec": SPEC, "page": 4_999, "width": 64}), refused)
    yield Attack("a file too many", question(port, "/api/kit", {"spec": SPEC, "file": "../kit.pdf"}), refused)


def of_bodies(port: int) -> Iterator[Attack]:
    """Bodies that are no JSON, or far too much of it."""
    bad, large = frozenset({400}), frozenset({413})
    deep = [b"[" * 200_000, b'{"a":' * 100_000, b"[" * 900 + b"]" * 900, b'{"spec":' + b"[" * 990 + b"]" * 990 + b"}"]
    numbers = [b"1" * 5_000, b"-" + b"9" * 4_000, b"1e400", b"-1e-400", b"NaN", b"-Infinity", b"0.1e1e1",
        b"01", b"+1", b".5"]
    broken = [b"", b" ", b"\x00", b"\xff", b"\xc3\x28", b"\xed\xa0\x80", b"\xf4\x90\x80\x80",
    b"\xef\xbb\xbf", b"\xfe\xff\x00{",
              b"{", b"}", b'{"spec"', b'{"spec":}', b"{'spec':''}", b'{"spec":"",}', b'{"spec":"\x01"}',
              b"undefined", b"//", b'"',
              b'{"spec":"\\ud800"}', b'{"spec":"\\x"}', b'{"\\udead":""}', b"--boundary\r\n\r\n",
              b"spec=1&form=2"]  # fmt: skip
    for path in POSTS:
        for body in (*deep, *numbers, *broken):
            yield Attack("no JSON for a job", request(port, "POST", path, body), bad)
            yield Attack("wrapped", request(port, "POST", path, b'{"spec":%s}' % body), bad)
        yield Attack("keys twice", request(port, "POST", path, b'{"spec":1,"spec":2,"spec":{}}'), bad)
        yield Attack("too large", request(port, "POST", path, b"[" + b" " * 2_700_000), large)
    for size in (5_000_000, 10_000_000):
        yield Attack("far too large", request(port, "POST", "/api/plan", b" " * size), large)
    chunk = b"%x\r\n" % 1_000_000 + b" " * 1_000_000 + b"\r\n"
    head = request(port, "POST", "/api/plan", None, content_type="application/json", transfer_encoding="chunked")
    yield Attack("too large in chunks", head + chunk * 4 + b"0\r\n\r\n", large)
    yield Attack("in chunks", head + b'2\r\n{"\r\n7\r\nspec":5\r\n1\r\n}\r\n0\r\n\r\n', bad)
    yield Attack("in chunks, with trailers", head + b"2\r\n{}\r\n0\r\nHost: rebound.example\r\n\r\n", bad)


def of_senders(port: int) -> Iterator[Attack]:
    """Pages of others in the same browser: another Host, another Origin, another site, another media type."""
    body = json.dumps({"spec": SPEC}).encode()
    hosts = [
        "rebound.example", f"rebound.example:{port}", "127.0.0.1", "localhost", f"127.0.0.1:{port + 1}",
        "", f"0.0.0.0:{port}",
        f"127.0.0.1.rebound.example:{port}", f"localhost.:{port}", f"[::ffff:7f00:1]:{port}", f"2130706433:{port}",
        f"127.1:{port}", f"127.0.0.1:{port}@rebound.example", f"127.0.0.1:{port}, rebound.example",
        "x" * 5_000, "[", "]:",
        f"127.0.0.1:{port}#", f"192.168.1.20:{port}", "\xe9\xe9", f"127.0.0.1:0{port}" + "0" * 9,
    ]  # fmt: skip
    origins = ["null", "http://rebound.example", f"http://rebound.example:{port}", "https://127.0.0.1", "http://127.0.0.1",
               f"https://127.0.0.1:{port}", f"http://localhost:{port}", f"http://127.0.0.1:{port}/",
               "file://", "", "\xff",
               f"http://127.0.0.1:{port} http://rebound.example", "chrome-extension://aaaa"]  # fmt: skip
    kinds = [None, "", "text/plain", "application/x-www-form-urlencoded",
        "multipart/form-data; boundary=a", "application/xml",
             "text/json", "application/json5", "application/jsonp", "json", "*/*", "application/", ";",
             "\xff"]  # fmt: skip
    for path in ("/", "/page/main.js", "/api/fields", "/api/openapi.json", *POSTS, "/nothing"):
        method, sent = ("POST", body) if path in POSTS else ("GET", None)
        for host in hosts:
            yield Attack("another Host", request(port, method, path, sent, host=host), frozenset({400, 421}))
        for origin in origins:
            yield Attack("another Origin", request(port, method, path, sent, origin=origin), frozenset({403}))
        for site in ("cross-site", "same-site"):
            yield Attack("another site", request(port, method, path, sent, sec_fetch_site=site), frozenset({403}))
        for kind in kinds if sent else ():
            yield Attack("another media type", request(port, method, path, sent, content_type=kind), frozenset({415}))
        yield Attack("no Host", request(port, method, path, sent, host=None), frozenset({400}), silent=True)
        yield Attack("two Hosts", request(port, method, path, sent, x=f"y\r\nHost: 127.0.0.1:{port}"),
            frozenset({400, 421}))
        old = request(port, method, path, sent, "1.0", host=None)
        yield Attack("HTTP/1.0 without a Host", old, frozenset({421}), silent=False)


def of_paths(port: int) -> Iterator[Attack]:
    """Addresses that there are not, and ways to ask that there are not."""
    paths = [
        "/../../../etc/passwd", "/page/../../pyproject.toml", "/page/%2e%2e/%2e%2e/pyproject.toml",
        "/page/..%2f..%2fREADME.md",
        "/page/..\\..\\README.md", "/page/%00", "/page/main.js%00.css", "/page/main.js/", "/page//main.js",
        "//page/main.js",
        "/fonts/../page/main.js", "/fonts/OFL.txt", "/fonts/%2e%2e%2fpyproject.toml", "/page/.",
        "/page/..", "/.git/config",
        "/api", "/api/", "/api/plan/", "/api/plan/..", "/API/PLAN", "/api/plan%20", "/docs", "/redoc",
        "/openapi.json", "/%",
        "/%zz", "/%ff%fe", "/" + "a" * 9_000, "/" + "../" * 2_000, "/?" + "a=b&" * 2_000, "*", "http://rebound.example/",
        "/page/main.js;jsessionid=1", "/;/", "/~root", "/cgi-bin/", "/api/kit?file=../../etc/passwd",
        "/page/%u002e", "/page/index.html~",
    ]  # fmt: skip
    for path in paths:
        for method in ("GET", "HEAD", "POST", "DELETE"):
            body = b"{}" if method == "POST" else None
            statuses = frozenset({200, 404, 405} if path.startswith("/?") else {404, 405, 400})
            yield Attack("another address", request(port, method, path, body), statuses, silent=len(path) > 8_000)
    for path in ("/", "/page/main.js", "/fonts/Lato-Bold.ttf", "/api/fields", *POSTS):
        for method in ("PUT", "DELETE", "PATCH", "OPTIONS", "TRACE", "PROPFIND", "get", "G" * 40):
            yield Attack("another way to ask", request(port, method, path, b"{}"), frozenset({405}))
        right = "GET" if path in POSTS else "POST"
        yield Attack("another way to ask", request(port, right, path, b"{}"), frozenset({405}))


def of_http(port: int) -> Iterator[Attack]:
    """What is no HTTP, or no HTTP of one meaning."""
    bad = frozenset({400})
    good, home = request(port), f"Host: 127.0.0.1:{port}\r\n".encode()
    post = b"POST /api/plan HTTP/1.1\r\n" + home + b"Content-Type: application/json\r\n"
    for data in (
        b"\x00" * 100, b"\x16\x03\x01\x02\x00\x01\x00", b"GET\r\n\r\n", b"GET /\r\n\r\n",
       
        b"GET  / HTTP/1.1\r\n" + home + b"\r\n", b"GET / HTTP/1.1 x\r\n" + home + b"\r\n",
        b"GET / FTP/1.1\r\n" + home + b"\r\n",
        b"GET / HTTP/1.1\r\nHost 127.0.0.1\r\n\r\n",
        b"GET / HTTP/1.1\r\n : x\r\n\r\n",
        b"GET / HTTP/1.1\r\n" + home + b"A\x00: b\r\n\r\n", b"GET / HTTP/1.1\r\n" + home + b"A: b\x00\r\n\r\n",
        b"GET / HTTP/1.1\r\n" + home + b"A : b\r\n\r\n", b"GET /\x80 HTTP/1.1\r\n" + home + b"\r\n",
        b"\r\n" * 50 + b"?\r\n\r\n",
        b"GET / HTTP/1.1\r\n" + home + b"A: " + b"b" * 70_000, b"GET /" + b"a" * 70_000, b"A" * 70_000,
        b"GET / HTTP/1.1\r\n" + home + b"A: b\r\n" * 20_000,
        post + b"Content-Length: -1\r\n\r\n{}", post + b"Content-Length: x\r\n\r\n{}",
            post + b"Content-Length: 1e3\r\n\r\n{}",
        post + b"Content-Length: 2\r\nContent-Length: 3\r\n\r\n{}",
            post + b"Content-Length: " + b"9" * 300 + b"\r\n\r\n{}",
        post + b"Transfer-Encoding: gzip\r\n\r\n{}", post + b"Transfer-Encoding: chunked, chunked\r\n\r\n0\r\n\r\n",
        post + b"Transfer-Encoding: chunked\r\n\r\nxyz\r\n", post + b"Transfer-Encoding: chunked\r\n\r\n-1\r\n\r\n",
        post + b"Transfer-Encoding: chunked\r\n\r\n" + b"f" * 40 + b"\r\n",
            post + b"Transfer-Encoding: chunked\r\n\r\n2\r\n{}x\r\n",
        post + b"Transfer-Encoding: chunked\r\n\r\n" + b"1;" + b"a" * 70_000,
    ):  # fmt: skip
        yield Attack("no HTTP", data, bad, silent=True)
    yield Attack("HTTP of another version", b"PRI * HTTP/2.0\r\n\r\nSM\r\n\r\n", frozenset({421}), silent=True)
    yield Attack("HTTP of another version", request(port, version="9.9"), frozenset({200}), silent=True)
    both = post + b"Content-Length: 2\r\nTransfer-Encoding: chunked\r\n\r\n2\r\n{}\r\n0\r\n\r\n"
    yield Attack("a length and chunks", both, bad, silent=True)
    for upgrade in ("websocket", "h2c", "TLS/1.0"):
        yield Attack("an upgrade", request(port, upgrade=upgrade, connection="Upgrade"), frozenset({200}))
    headers = {f"x-{number}": "y" * 200 for number in range(100)}
    yield Attack("many headers", request(port, **headers), frozenset({200, 400}))
    for forged in ("X-Forwarded-Host", "X-Forwarded-For", "Forwarded", "X-Original-URL",
    "X-HTTP-Method-Override", "X-Rewrite-URL"):
        yield Attack("a forged header", request(port, **{forged: "rebound.example"}), frozenset({200}))
    for value in ("W/", '"', ",,,", "*", '"x"' * 2_000, "\xff"):
        yield Attack("an odd ETag", request(port, if_none_match=value), frozenset({200, 304}))
    for value in ("bytes=0-0", "bytes=-1", "bytes=0-,0-,0-", "bytes=9999999999-"):
        yield Attack("a range", request(port, path="/fonts/Lato-Bold.ttf", range=value), frozenset({200}))
    yield Attack("HTTP/1.0", request(port, version="1.0"), frozenset({200}))
    yield Attack("pipelined", good * 20, frozenset({200}), answers=20)
    wrong = request(port, "POST", "/api/plan", b"{")
    yield Attack("pipelined, wrong", wrong * 20, bad, answers=20)
    yield Attack("pipelined, with one inside the other", request(port, body=good) + good, frozenset({200}), answers=2)
    yield Attack("an early good-bye", request(port, connection="close") + good, frozenset({200}))
    too_large = request(port, "POST", "/api/plan", None, content_type="application/json", content_length="99999999",
                        expect="100-continue")  # fmt: skip
    yield Attack("asked beforehand", too_large, frozenset({413}))


def every_attack(port: int, description: Any) -> list[Attack]:
    """All of them, mixed."""
    attacks = [
        *from_description(port, description, 47), *by_hand(port), *of_bodies(port), *of_senders(port), *of_paths(port),
        *(attack for _ in range(5) for attack in of_http(port)),
    ]  # fmt: skip
    random.Random(SEED).shuffle(attacks)
    return attacks
