"""The page's server under its usual load, and what memory it keeps.

    python -m tests.bench.serving
"""

from __future__ import annotations

import asyncio
import json
import random
from statistics import median
from time import perf_counter, sleep

import httpx
import psutil

from templategen.serving import answers

from ..serving.asking import SPEC, Server

EDITORS, SECONDS, KEY = 20, 20.0, 0.25
"""People at once, for how long, and how far apart their keystrokes are."""
SETTLED = 8.0
"""Seconds in which all workers have warmed up."""
FEW, MANY = 100, 10_000
"""Plans after which memory is read."""
AT_ONCE = 4
ROUNDS = 40


def typed(number: int, rng: random.Random) -> str:
    """The sample job as it is after a keystroke: some numbers of it changed, most of them to what a panel can be."""
    width, length = rng.randrange(400, 700), rng.randrange(860, 1100)
    text = SPEC.replace('width = "54 in"', f'width = "{width / 10} in"')
    text = text.replace('length = "96 in"', f'length = "{length / 10} in"')
    return text.replace('title = "', f'title = "No. {number}: ')


def in_process() -> float:
    """Median seconds of reading, planning and pictures with nothing in between, and never the same job twice."""
    rng, times = random.Random(1), []
    for number in range(ROUNDS + 5):
        text = typed(number, rng)
        begun = perf_counter()
        answers.plan(text, None)
        times.append(perf_counter() - begun)
    return median(times[5:])


async def editor(client: httpx.AsyncClient, number: int, latencies: list[float], statuses: dict[int, int]) -> None:
    """Types a key now and then; one question is under way at most, and of those that wait the newest is asked."""
    rng = random.Random(number)
    newest: list[tuple[float, str]] = []
    under_way: set[asyncio.Task[None]] = set()

    async def ask() -> None:
        while newest:
            pressed, text = newest.pop()
            newest.clear()
            answer = await client.post("/api/plan", json={"spec": text, "form": None})
            latencies.append(perf_counter() - pressed)
            statuses[answer.status_code] = statuses.get(answer.status_code, 0) + 1

    await asyncio.sleep(rng.random() * KEY)
    end = perf_counter() + SECONDS
    keys = number * 10_000
    while perf_counter() < end:
        keys += 1
        newest.append((perf_counter(), typed(keys, rng)))
        if not under_way:
            task = asyncio.create_task(ask())
            under_way.add(task)
            task.add_done_callback(under_way.discard)
        await asyncio.sleep(KEY)
    await asyncio.gather(*under_way)


async def editors(url: str, count: int) -> tuple[list[float], dict[int, int]]:
    latencies: list[float] = []
    statuses: dict[int, int] = {}
    async with httpx.AsyncClient(base_url=url, timeout=60) as client:
        await client.get("/api/fields")
        await asyncio.gather(*(editor(client, number, latencies, statuses) for number in range(count)))
    return latencies, statuses


def memory(server: Server) -> tuple[float, list[float]]:
    """MiB of the server, and of each of its workers: what each has to itself (USS)."""
    root = psutil.Process(server.process.pid)
    workers = [worker.memory_full_info().uss / 2**20 for worker in root.children(recursive=True)]
    return root.memory_full_info().uss / 2**20, sorted(workers)


async def plans(url: str, first: int, count: int) -> None:
    """So many plans of as many different jobs."""
    rng, waiting = random.Random(first), list(range(first, first + count))
    async with httpx.AsyncClient(base_url=url, timeout=60) as client:

        async def some() -> None:
            while waiting:
                await client.post("/api/plan", json={"spec": typed(waiting.pop(), rng), "form": None})

        await asyncio.gather(*(some() for _ in range(AT_ONCE)))


def main() -> None:
    base = in_process()
    print(f"{'reading, planning and pictures in this process':52} {base * 1000:7.1f} ms")
    server = Server("--port", "0")
    for count in (1, EDITORS):
        latencies, statuses = asyncio.run(editors(server.url, count))
        latencies.sort()
        half, late = latencies[len(latencies) // 2], latencies[int(len(latencies) * 0.95)]
        print(
            f"{f'{count} typing every {KEY * 1000:.0f} ms, from key to answer':52} "
            f"p50 {half * 1000:6.1f} ms = {half / base:5.2f}   p95 {late * 1000:6.1f} ms = {late / base:5.2f}   "
            f"{len(latencies)} answers, {json.dumps(statuses)}"
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
