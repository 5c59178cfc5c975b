"""The page's server under its usual load, and what memory it keeps.

    python -m tests.bench.serving
"""

from __future__ import annotations

import asyncio
import json
import random
from collections.abc import Iterator
from contextlib import suppress
from itertools import islice
from statistics import median
from time import perf_counter, sleep
from typing import Any

import httpx
import psutil

from templategen.errors import Refusal
from templategen.serving import answers

from ..serving.asking import SPEC, Server

EDITORS, SECONDS, KEY = 20, 20.0, 0.25
"""People at once, for how long, and how far apart their keystrokes are."""
SETTLED = 8.0
"""Seconds in which all workers have warmed up."""
FEW, MANY = 100, 10_000
"""Plans after which memory is read."""
AT_ONCE = 4
ROUNDS = 60
"""Keys of each editor that are answered in this process."""


WRITTEN = {
    "panel.width": ("53 7/8 in", "54 in", "1372 mm"), "hem.depth": ("4 1/4 in", "4 in", "3 1/2 in"),
    "drop.clearance": ("1/2 in", "3/4 in"), "rod.length": ("61 1/2 in", "5 ft", "60 in"),
    "panel.length": ("95 3/4 in", "96 in"), "title": ("Reading room, east window", "Reading room"),
    "panel.casing": ("3 1/8 in", "3 in"), "panel.count": ("2", "4"),
}  # fmt: skip
"""What people write, field by field; every key of it is a question, and a half-written length is refused."""


def keys(seed: int) -> Iterator[dict[str, Any]]:
    """The form after every key of somebody who writes one field after another, in an order of their own."""
    rng = random.Random(seed)
    form = answers.form_in(SPEC)["form"]
    while True:
        path = rng.choice(list(WRITTEN))
        text = rng.choice(WRITTEN[path])
        for end in range(1, len(text) + 1):
            form = form | {"fields": form["fields"] | {path: text[:end]}}
            yield form


def varied(number: int) -> str:
    """A job that nobody had before."""
    rng = random.Random(number)
    width, length = rng.randrange(400, 700), rng.randrange(860, 1100)
    text = SPEC.replace('width = "54 in"', f'width = "{width / 10} in"')
    text = text.replace('length = "96 in"', f'length = "{length / 10} in"')
    return text.replace('title = "', f'title = "No. {number}: ')


def in_process() -> list[float]:
    """Seconds of reading, planning and drawing with nothing in between, for the keys that have a picture."""
    times = []
    for seed in range(EDITORS):
        for form in islice(keys(seed), ROUNDS):
            begun = perf_counter()
            with suppress(Refusal):
                answers.plan(SPEC, form)
                times.append(perf_counter() - begun)
    return sorted(times)


class Line:
    """A connection to the server, kept open, and nothing more: the time of a client's own is not what is measured."""

    def __init__(self, host: str, reader: asyncio.StreamReader, writer: asyncio.StreamWriter) -> None:
        self._host, self._reader, self._writer = host, reader, writer

    @classmethod
    async def to(cls, url: str) -> Line:
        place = url.removeprefix("http://").strip("/")
        host, _, port = place.partition(":")
        return cls(place, *await asyncio.open_connection(host, int(port)))

    async def plan(self, body: bytes) -> int:
        """Asks for a plan and reads all of the answer; its status."""
        kind, size = "Content-Type: application/json", f"Content-Length: {len(body)}"
        head = "\r\n".join(("POST /api/plan HTTP/1.1", f"Host: {self._host}", kind, size, "", ""))
        self._writer.write(head.encode() + body)
        head_said = (await self._reader.readuntil(b"\r\n\r\n")).decode("latin-1").lower()
        await self._reader.readexactly(int(head_said.partition("content-length:")[2].split()[0]))
        return int(head_said.split()[1])

    def close(self) -> None:
        self._writer.close()


async def editor(line: Line, number: int, latencies: list[float], statuses: dict[int, int]) -> None:
    """Types a key now and then; one question is under way at most, and of those that wait the newest is asked."""
    newest: list[tuple[float, dict[str, Any]]] = []
    under_way: set[asyncio.Task[None]] = set()

    async def ask() -> None:
        while newest:
            pressed, form = newest.pop()
            newest.clear()
            status = await line.plan(json.dumps({"spec": SPEC, "form": form}).encode())
            if status == 200:
                latencies.append(perf_counter() - pressed)
            statuses[status] = statuses.get(status, 0) + 1

    await asyncio.sleep(random.Random(number).random() * KEY)
    end = perf_counter() + SECONDS
    for form in keys(number):
        if perf_counter() > end:
            break
        newest.append((perf_counter(), form))
        if not under_way:
            task = asyncio.create_task(ask())
            under_way.add(task)
            task.add_done_callback(under_way.discard)
        await asyncio.sleep(KEY)
    await asyncio.gather(*under_way)


async def editors(url: str, count: int) -> tuple[list[float], dict[int, int]]:
    latencies: list[float] = []
    statuses: dict[int, int] = {}
    lines = [await Line.to(url) for _ in range(count)]
    await asyncio.gather(*(editor(line, number, latencies, statuses) for number, line in enumerate(lines)))
    for line in lines:
        line.close()
    return latencies, statuses


def memory(server: Server) -> tuple[float, list[float]]:
    """MiB of the server, and of each of its workers: what each has to itself (USS)."""
    root = psutil.Process(server.process.pid)
    workers = [worker.memory_full_info().uss / 2**20 for worker in root.children(recursive=True)]
    return root.memory_full_info().uss / 2**20, sorted(workers)


async def plans(url: str, first: int, count: int) -> None:
    """So many plans of as many different jobs."""
    waiting = list(range(first, first + count))
    async with httpx.AsyncClient(base_url=url, timeout=60) as client:

        async def some() -> None:
            while waiting:
                await client.post("/api/plan", json={"spec": varied(waiting.pop()), "form": None})

        await asyncio.gather(*(some() for _ in range(AT_ONCE)))


def main() -> None:
    alone = in_process()
    base, slow = median(alone), alone[int(len(alone) * 0.95)]
    print(
        f"{'reading, planning and drawing in this process':52} p50 {base * 1000:6.1f} ms          "
        f"p95 {slow * 1000:6.1f} ms"
    )
    server = Server("--port", "0")
    sleep(SETTLED)
    for count in (1, EDITORS):
        latencies, statuses = asyncio.run(editors(server.url, count))
        latencies.sort()
        half, late = latencies[len(latencies) // 2], latencies[int(len(latencies) * 0.95)]
        print(
            f"{f'{count} typing every {KEY * 1000:.0f} ms, from key to answer':52} "
            f"p50 {half * 1000:6.1f} ms = {half / base:5.2f}   p95 {late * 1000:6.1f} ms = {late / slow:5.2f}   "
            f"{len(latencies)} pictures, {json.dumps(statuses)}"
        )
    assert server.stop() == 0
    server = Server("--port", "0")
    sleep(SETTLED)
    done = 0
    sums: list[float] = []
    for count in (FEW, MANY):
        begun = perf_counter()
        asyncio.run(plans(server.url, done, count - done))
        each = (perf_counter() - begun) / (count - done)
        done = count
        own, workers = memory(server)
        said = ", ".join(f"{worker:.0f}" for worker in workers)
        what = f"memory after {count} plans"
        sums.append(own + sum(workers))
        print(f"{what:52} {own:.0f} MiB and workers of {said} MiB   {each * 1000:.1f} ms a plan")
    print(f"{'the second over the first':52} {sums[1] / sums[0]:.3f}")
    assert server.stop() == 0


if __name__ == "__main__":
    main()
