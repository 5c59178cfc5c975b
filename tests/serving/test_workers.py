"""Workers: whatever becomes of a piece of work, there is an answer, and the next piece is done."""

from __future__ import annotations

import asyncio
import json
import os
import signal
import subprocess
import sys
from collections.abc import Awaitable, Callable
from contextlib import suppress
from pathlib import Path
from time import perf_counter
from typing import Any

import psutil
import pytest

from templategen.serving.outcome import Outcome
from templategen.serving.workers import Crew, crews

WORKS = "tests.serving.works"


def _with_crew(use: Callable[[Crew], Awaitable[Any]], size: int = 1, seconds: float = 20, waiting: int = 50) -> Any:
    """What ``use`` makes of a crew; afterwards none of its workers is left."""

    async def run() -> Any:
        crew = Crew("plans", size, seconds, waiting, WORKS)
        await crew.start()
        processes = [worker.process.pid for worker in crew._workers]
        try:
            return await use(crew)
        finally:
            processes += [worker.process.pid for worker in crew._workers]
            await crew.stop()
            assert not any(psutil.pid_exists(process) for process in processes)

    return asyncio.run(run())


def _all(*works: tuple[Any, ...]) -> list[Outcome]:
    """What one worker makes of ``works``, one after the other."""

    async def use(crew: Crew) -> list[Outcome]:
        return [await crew.do(*work) for work in works]

    made: list[Outcome] = _with_crew(use)
    return made


def _faults(made: Outcome) -> list[str]:
    return [fault["right"] for fault in json.loads(made.body)["faults"]]


def test_what_is_returned_comes_back() -> None:
    told, picture, file, half = _all(("echo", "½", None, [True, {"a": 1}]), ("picture",), ("file",), ("half",))
    assert (told.status, told.media_type) == (200, "application/json")
    assert json.loads(told.body)["said"] == ["½", None, [True, {"a": 1}]]
    assert (picture.media_type, len(picture.body)) == ("image/png", 200_000)
    assert (file.file_name, file.media_type, file.body) == ("kit.pdf", "application/pdf", b"%PDF")
    assert json.loads(half.body) == {"title": "?"}


def test_what_is_raised_comes_back_as_a_refusal() -> None:
    refused, stopped, lacking, deep = _all(("refuse",), ("stop",), ("lack",), ("deep",))
    assert {made.status for made in (refused, stopped, lacking, deep)} == {422}
    assert json.loads(refused.body) == {
        "faults": [
            {"field": "panel.width", "read": "5 foo", "right": "no unit"},
            {"field": "", "read": "", "right": "and more"},
        ],
        "understood": {"panel.width": "54 in"},
    }
    assert json.loads(stopped.body) == {"stops": ["the rod is too thick"], "faults": []}
    assert _faults(lacking) == ["no glyph for ☃"]
    assert "nested" in _faults(deep)[0]


@pytest.mark.parametrize("work", ["blunder", "nonsense"])
def test_a_fault_of_our_own_is_told_plainly_and_logged_in_one_line(work: str) -> None:
    (made,) = _all((work,))
    assert made.status == 500 and len(_faults(made)) == 1
    assert b"Error" not in made.body and b"Traceback" not in made.body
    assert made.remark.startswith(work) or "TypeError" in made.remark
    assert made.remark.isprintable()


def test_one_worker_does_all_of_it_and_what_it_prints_is_nobodys_answer() -> None:
    first, printed, last = _all(("echo",), ("chatter",), ("echo",))
    assert json.loads(printed.body) == {}
    assert json.loads(first.body)["process"] == json.loads(last.body)["process"]


@pytest.mark.parametrize("work", [("sleep", 60), ("spin",)])
def test_work_that_takes_too_long_is_stopped_and_the_next_is_done(work: tuple[Any, ...]) -> None:
    async def use(crew: Crew) -> tuple[Outcome, float, Outcome]:
        begun = perf_counter()
        late = await crew.do(*work)
        return late, perf_counter() - begun, await crew.do("echo")

    late, taken, then = _with_crew(use, seconds=0.5)
    assert late.status == 422 and "was not worked out within" in _faults(late)[0]
    assert 0.5 <= taken < 2
    assert then.status == 200


def test_work_within_its_time_is_not_stopped() -> None:
    async def use(crew: Crew) -> Outcome:
        return await crew.do("sleep", 0.3)

    assert _with_crew(use, seconds=5).status == 200


def test_a_worker_that_dies_at_work_is_told_of_and_replaced() -> None:
    died, then = _all(("die",), ("echo",))
    assert died.status == 422 and "ended from outside" in _faults(died)[0]
    assert then.status == 200


def test_a_worker_that_was_ended_while_idle_is_nobodys_trouble() -> None:
    async def use(crew: Crew) -> Outcome:
        (worker,) = crew._workers
        os.kill(worker.process.pid, signal.SIGKILL)
        await worker.process.wait()
        return await crew.do("echo", "still here")

    assert json.loads(_with_crew(use).body)["said"] == ["still here"]


def test_more_memory_than_there_is_for_it_is_refused_and_the_next_work_done() -> None:
    little, much, then = _all(("eat", 1), ("eat", 4), ("echo",))
    assert json.loads(little.body) == {"eaten": 1}
    assert much.status == 422 and "3 GiB" in _faults(much)[0]
    assert then.status == 200


def test_more_work_than_can_wait_is_sent_away_at_once() -> None:
    async def use(crew: Crew) -> list[Outcome]:
        return await asyncio.gather(*(crew.do("sleep", 0.2) for _ in range(5)))

    made = _with_crew(use, waiting=2)
    assert sorted(each.status for each in made) == [200, 200, 200, 429, 429]


def test_several_work_at_once() -> None:
    async def use(crew: Crew) -> float:
        begun = perf_counter()
        await asyncio.gather(*(crew.do("sleep", 0.5) for _ in range(3)))
        return perf_counter() - begun

    assert _with_crew(use, size=3) < 1.2


def test_work_that_nobody_waits_for_any_more_answers_no_other_question() -> None:
    async def use(crew: Crew) -> Outcome:
        waiting = asyncio.create_task(crew.do("sleep", 1))
        await asyncio.sleep(0.1)
        waiting.cancel()
        return await crew.do("echo", "mine")

    assert json.loads(_with_crew(use).body)["said"] == ["mine"]


def test_stopping_ends_workers_that_are_busy_at_once() -> None:
    async def run() -> float:
        crew = Crew("plans", 2, 60, 10, WORKS)
        await crew.start()
        busy = [asyncio.create_task(crew.do("spin")) for _ in range(2)]
        await asyncio.sleep(0.2)
        begun = perf_counter()
        await crew.stop()
        taken = perf_counter() - begun
        for each in busy:
            each.cancel()
        await asyncio.gather(*busy, return_exceptions=True)
        await crew.stop()
        return taken

    assert asyncio.run(run()) < 1


def test_a_worker_that_cannot_start_is_an_answer_too(capfd: pytest.CaptureFixture[str]) -> None:
    async def run() -> Outcome:
        crew = Crew("plans", 1, 5, 5, "tests.serving.no_such_works")
        await crew.start()
        try:
            return await crew.do("echo")
        finally:
            await crew.stop()

    assert asyncio.run(run()).status == 429
    said = capfd.readouterr().err.splitlines()
    assert said and all("no_such_works" in line for line in said)


def test_a_worker_ends_with_its_server() -> None:
    """Even where the server is ended so that it can do nothing about it."""
    code = (
        "import asyncio, os, signal\nfrom templategen.serving.workers import Crew\n"
        "async def run():\n"
        f"    crew = Crew('plans', 1, 5, 5, {WORKS!r})\n"
        "    await crew.start()\n"
        "    print(*(worker.process.pid for worker in crew._workers), flush=True)\n"
        "    os.kill(os.getpid(), signal.SIGKILL)\n"
        "asyncio.run(run())"
    )
    root = Path(__file__).parents[2]
    done = subprocess.run([sys.executable, "-c", code], cwd=root, capture_output=True, text=True, timeout=60)
    worker = int(done.stdout)
    with suppress(psutil.NoSuchProcess):
        psutil.Process(worker).wait(5)
    assert not psutil.pid_exists(worker)


def test_plans_have_as_many_workers_as_there_are_cores_and_kits_fewer(monkeypatch: pytest.MonkeyPatch) -> None:
    sizes = []
    for cores in (1, 2, 3, 4, 16, None):
        monkeypatch.setattr(os, "cpu_count", lambda cores=cores: cores)
        sizes.append(tuple(crew.size for crew in crews()))
    assert sizes == [(1, 1), (2, 1), (3, 2), (4, 3), (4, 3), (1, 1)]
    plans, kits = crews()
    assert (plans.seconds, kits.seconds) == (10, 60)
