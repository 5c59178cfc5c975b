"""Ten thousand requests that are malformed or mean harm, to a server that runs: it answers all and stays as it was."""

from __future__ import annotations

import threading
from collections import Counter
from collections.abc import Iterator
from concurrent.futures import ThreadPoolExecutor
from pathlib import Path
from time import perf_counter, sleep
from typing import Any

import psutil
import pytest

from .asking import SPEC, WITHIN, Answer, Connection, Server, question, request
from .attacks import Attack, every_attack

AT_ONCE = 6
"""Connections, as a browser has."""
MOST_GROWTH = 200
"""MiB that the server and its workers may have grown by, all together."""


@pytest.fixture(scope="module")
def target(tmp_path_factory: pytest.TempPathFactory) -> Iterator[Server]:
    """A server of its own, which must have nothing to say of what is done to it."""
    errors = tmp_path_factory.mktemp("hostile") / "errors"
    with errors.open("w") as file:
        server = Server("--port", "0", errors=file)
        yield server
        assert server.stop() == 0
    assert Path(errors).read_text() == ""


def _memory(server: Server) -> float:
    """MiB that the server and its workers have to themselves."""
    root = psutil.Process(server.process.pid)
    total = 0
    for process in (root, *root.children(recursive=True)):
        total += process.memory_full_info().uss
    return total / 2**20


def _plan(server: Server) -> bytes:
    with Connection(server.port) as connection:
        answer = connection.ask(question(server.port, "/api/plan", {"spec": SPEC}))
        assert answer is not None and answer.status == 200
        return answer.body


class Attacker:
    """Sends attacks one after the other, over one connection for as long as that lasts."""

    def __init__(self, port: int) -> None:
        self.port = port
        self.connection: Connection | None = None
        self.wrong: list[str] = []
        self.statuses: Counter[int | None] = Counter()
        self.times: list[float] = []

    def attack(self, attack: Attack) -> None:
        begun = perf_counter()
        kept = self.connection is not None
        answers = self._send(attack)
        if answers == [None] and kept and not attack.silent:
            # A connection may be closed between two requests, after an answer that said it would be or not.
            answers = self._send(attack)
        taken = perf_counter() - begun
        self.times.append(taken)
        for answer in answers:
            self.statuses[answer.status if answer else None] += 1
            if fault := _fault(attack, answer):
                self.wrong.append(f"{attack.name}: {fault}: {attack.data[:300]!r}: {answer}"[:700])
        if taken > WITHIN:
            self.wrong.append(f"{attack.name}: {taken:.1f} s: {attack.data[:300]!r}")

    def _send(self, attack: Attack) -> list[Answer | None]:
        if self.connection is None:
            self.connection = Connection(self.port)
        head = attack.data.startswith(b"HEAD")
        try:
            self.connection.send(attack.data)
            answers = [self.connection.answer(head) for _ in range(attack.answers)]
        except TimeoutError:
            self.wrong.append(f"{attack.name}: no answer: {attack.data[:300]!r}")
            answers = [None]
        last = answers[-1]
        if last is None or attack.silent or "close" in last.headers.get("connection", "") or b"HTTP/1.0" in attack.data:
            self.close()
        return answers

    def close(self) -> None:
        if self.connection is not None:
            self.connection.close()
            self.connection = None


def _fault(attack: Attack, answer: Answer | None) -> str:
    """What is wrong with an answer; "" if nothing."""
    if answer is None:
        return "" if attack.silent else "the connection was closed without an answer"
    if answer.status not in attack.statuses:
        return f"status {answer.status}"
    for name in ("content-security-policy", "x-content-type-options", "cross-origin-resource-policy", "cache-control"):
        if name not in answer.headers:
            return f"no {name}"
    if answer.status >= 400 and answer.body:
        told = answer.json
        if not (told["faults"] or told.get("stops")):
            return "a refusal that gives no reason"
        if any(part in answer.body for part in (b"Traceback", b".py", b"Error:", b"site-packages")):
            return "a refusal that tells of the inside"
    return ""


def _slow(port: int, first: bytes, then: bytes, pause: float) -> tuple[float, Answer | None]:
    """A request that begins and then dribbles in: after how long the answer came, and the answer."""
    with Connection(port) as connection:
        begun = perf_counter()
        connection.send(first)
        done = threading.Event()

        def dribble() -> None:
            while not done.wait(pause):
                connection.send(then)

        thread = threading.Thread(target=dribble)
        thread.start()
        try:
            return (connection.answer(), perf_counter() - begun)[::-1]
        finally:
            done.set()
            thread.join()


def test_ten_thousand_hostile_requests(target: Server) -> None:
    with Connection(target.port) as connection:
        answer = connection.ask(request(target.port, path="/api/openapi.json"))
        assert answer is not None
        description: Any = answer.json
    attacks = every_attack(target.port, description)
    assert len(attacks) >= 10_000
    before = _plan(target)
    _warm(target)
    memory = _memory(target)

    attackers = [Attacker(target.port) for _ in range(AT_ONCE)]
    post = request(target.port, "POST", "/api/plan", b" " * 900_000)
    head = f"GET / HTTP/1.1\r\nHost: 127.0.0.1:{target.port}\r\n".encode()
    with ThreadPoolExecutor(AT_ONCE + 4) as pool:
        slow = [
            pool.submit(_slow, target.port, post[:400], b" ", 0.2),
            pool.submit(_slow, target.port, head, b"A: b\r\n", 0.2),
            pool.submit(_slow, target.port, b"G", b"", 1.0),
        ]
        long = pool.submit(_too_long, target.port)
        for number, attacker in enumerate(attackers):
            pool.submit(_all, attacker, attacks[number::AT_ONCE])

    wrong = [each for attacker in attackers for each in attacker.wrong]
    assert not wrong, f"{len(wrong)}:\n" + "\n".join(wrong[:10])
    statuses = sum((attacker.statuses for attacker in attackers), Counter())
    assert {200, 400, 403, 404, 405, 413, 415, 421, 422} <= set(statuses)
    assert sum(statuses.values()) >= 10_000
    for seconds, late in (each.result() for each in slow):
        assert late is not None and late.status == 408 and "content-security-policy" in late.headers
        assert 8 < seconds < 15
    given_up = long.result()
    assert given_up is not None and given_up.status == 422 and b"was not worked out within" in given_up.body
    assert _plan(target) == before
    grown = _memory(target) - memory
    print(f"\n{dict(statuses)}; grown by {grown:.0f} MiB from {memory:.0f}")
    assert grown < MOST_GROWTH


def _too_long(port: int) -> Answer | None:
    """A text that takes very long to be read is given up; all the while, the others are answered."""
    form = {"fields": {"title": "Reading room"}}
    with Connection(port) as connection:
        return connection.ask(question(port, "/api/spec", {"spec": "\n" * 1_000_000, "form": form}))


def _warm(server: Server) -> None:
    """Everything once, so that what is measured afterwards is growth."""
    for path, more in (("/api/sheets", {}), ("/api/sheet", {"page": 1, "width": 64}), ("/api/kit", {"file": None})):
        with Connection(server.port) as connection:
            answer = connection.ask(question(server.port, path, {"spec": SPEC} | more))
            assert answer is not None and answer.status == 200


def _all(attacker: Attacker, attacks: list[Attack]) -> None:
    for attack in attacks:
        try:
            attacker.attack(attack)
        except Exception as error:
            attacker.wrong.append(f"{attack.name}: {type(error).__name__}: {error}: {attack.data[:300]!r}")
            attacker.close()
    attacker.close()


def test_a_body_shorter_than_it_says_and_then_gone_does_no_harm(target: Server) -> None:
    for _ in range(50):
        with Connection(target.port) as connection:
            connection.send(request(target.port, "POST", "/api/plan", b"{" * 1_000)[:-500])
    with Connection(target.port) as connection:
        connection.send(request(target.port, "POST", "/api/plan", b"{" * 1_000)[:-500])
        connection.end()
        assert connection.answer() is None
    assert _plan(target)


def test_who_asks_for_much_and_does_not_read_it_is_let_go(target: Server) -> None:
    """A font, four hundred times, and not one of them read."""
    with Connection(target.port) as connection:
        connection.send(request(target.port, path="/fonts/Lato-Bold.ttf") * 400)
        sleep(0.5)
        memory = _memory(target)
        sleep(0.5)
        assert _memory(target) < memory + 50
        assert _plan(target)
