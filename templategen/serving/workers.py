"""Processes that do the work, so that whatever a spec makes of it harms one of them alone, and can be stopped.

Our own few lines, in the way of ``checking/apart``, because what there is ready-made does not do: ``anyio.to_process``
runs the program's main module again in every worker, which for ``python -m templategen`` is the command itself, and
hands exceptions over by pickling, which the house's own do not survive; an executor of the standard library cannot
stop one piece of work, and breaks as a whole where one process dies.
"""

from __future__ import annotations

import asyncio
import os
import sys
from asyncio.subprocess import PIPE, Process
from collections.abc import Coroutine
from contextlib import suppress
from dataclasses import dataclass, field, replace
from pathlib import Path
from typing import Literal

from . import limits
from .outcome import Outcome, busy, ended, too_long
from .parcels import read_outcome, work_parcel

_HOME = Path(__file__).parents[2]
WORKS = "templategen.serving.works"
_TRIES = 3
"""Workers that may turn out to have ended while they had nothing to do, before a piece of work is given up."""


class _Gone(Exception):
    """The worker had ended before it was given anything to do."""


@dataclass(frozen=True, slots=True, eq=False)
class _Worker:
    process: Process

    async def do(self, work: str, arguments: tuple[object, ...]) -> Outcome:
        """Raises _Gone, or EOFError where the worker ends in the middle of it."""
        assert self.process.stdin is not None and self.process.stdout is not None
        if self.process.stdout.at_eof():
            raise _Gone
        try:
            self.process.stdin.write(work_parcel(work, arguments))
            await self.process.stdin.drain()
        except OSError:
            raise _Gone from None
        return await read_outcome(self.process.stdout)

    async def stop(self) -> None:
        """Ends it, whatever it is doing."""
        if self.process.returncode is None:
            with suppress(ProcessLookupError):
                self.process.kill()
        if self.process.stdin is not None:
            self.process.stdin.close()
        await self.process.wait()


@dataclass(slots=True, eq=False)
class Crew:
    """Workers of one kind: how many there are, how long they may take, how much may wait for them."""

    kind: Literal["plans", "kits"]
    size: int
    seconds: float
    most_waiting: int
    works: str = WORKS
    _free: asyncio.LifoQueue[_Worker | None] = field(default_factory=asyncio.LifoQueue)
    """Workers with nothing to do; None for one that must be started first."""
    _workers: set[_Worker] = field(default_factory=set)
    _tasks: set[asyncio.Task[None]] = field(default_factory=set)
    _waiting: int = 0

    async def do(self, work: str, *arguments: object) -> Outcome:
        """What becomes of ``work`` done with ``arguments``, which are what JSON can say. Raises nothing of its own."""
        if self._waiting >= self.most_waiting:
            return busy()
        for _ in range(_TRIES):
            worker = await self._one()
            if worker is None:
                return busy()
            try:
                async with asyncio.timeout(self.seconds):
                    made = await worker.do(work, arguments)
            except _Gone:
                self._part_with(worker)
                continue
            except TimeoutError:
                self._part_with(worker)
                return too_long(self.seconds)
            except EOFError:
                self._part_with(worker)
                return ended()
            except BaseException:
                # Nobody waits for this any more, and what the worker would say would answer the next question.
                self._part_with(worker)
                raise
            if made.spent:
                self._part_with(worker)
            else:
                self._free.put_nowait(worker)
            return made
        return ended()

    async def start(self) -> None:
        """Starts all workers, and returns when they are ready."""
        await asyncio.gather(*(self._replenish() for _ in range(self.size)))

    async def stop(self) -> None:
        """Ends all workers, whatever they are doing."""
        for task in self._tasks:
            task.cancel()
        await asyncio.gather(*self._tasks, *(worker.stop() for worker in self._workers), return_exceptions=True)

    async def _one(self) -> _Worker | None:
        """A worker with nothing to do, as soon as there is one; None where none can be started."""
        self._waiting += 1
        try:
            worker = await self._free.get()
        finally:
            self._waiting -= 1
        if worker is None:
            await self._replenish()
            worker = self._free.get_nowait()
            if worker is None:
                self._free.put_nowait(None)
        return worker

    def _part_with(self, worker: _Worker) -> None:
        """Ends a worker, and has another started in its place."""

        async def change() -> None:
            await worker.stop()
            self._workers.discard(worker)
            await self._replenish()

        self._in_background(change())

    async def _replenish(self) -> None:
        """One worker more; where it cannot be started, the place for one."""
        started: _Worker | None = None
        try:
            started = await self._started()
        finally:
            self._free.put_nowait(started)

    async def _started(self) -> _Worker | None:
        # "-P" and the path: the process runs this very copy of the program, wherever it is started from. Pydantic
        # would look through every installed package for plug-ins. A session of its own: Ctrl-C is for the server.
        search = os.pathsep.join(filter(None, [str(_HOME), os.environ.get("PYTHONPATH")]))
        try:
            process = await asyncio.create_subprocess_exec(
                *(sys.executable, "-P", "-m", "templategen.serving", self.works, self.kind),
                env=os.environ | {"PYTHONPATH": search, "PYDANTIC_DISABLE_PLUGINS": "__all__"},
                stdin=PIPE,
                stdout=PIPE,
                limit=2**20,
                start_new_session=True,
            )
        except OSError as error:
            _say(f"a worker cannot be started: {error}")
            return None
        worker = _Worker(process)
        self._workers.add(worker)
        assert process.stdout is not None
        try:
            async with asyncio.timeout(limits.START_SECONDS):
                ready = await read_outcome(process.stdout)
        except (TimeoutError, EOFError):
            ready = replace(ended(), remark="a worker ended before it was ready", spent=True)
        if ready.remark:
            _say(ready.remark)
        if ready.spent:
            await worker.stop()
            self._workers.discard(worker)
            return None
        return worker

    def _in_background(self, work: Coroutine[object, object, None]) -> None:
        task = asyncio.create_task(work)
        self._tasks.add(task)
        task.add_done_callback(self._tasks.discard)


def crews(works: str = WORKS) -> tuple[Crew, Crew]:
    """Those who plan, and those who make kits: apart, so that nobody's keystroke waits for a kit."""
    cores = os.cpu_count() or 1
    plans = Crew("plans", min(cores, limits.MOST_PLANNERS), limits.PLAN_SECONDS, limits.PLANS_WAITING, works)
    kits = Crew("kits", max(1, plans.size - 1), limits.KIT_SECONDS, limits.KITS_WAITING, works)
    return plans, kits


def _say(remark: str) -> None:
    print(f"templategen: {remark}", file=sys.stderr, flush=True)
