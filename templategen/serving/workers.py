"""Work done in processes of its own: what takes too long or too much memory harms one worker, and not the page."""

from __future__ import annotations

import json
import os
from collections.abc import Callable
from contextlib import suppress
from dataclasses import dataclass
from typing import Any

import anyio
from anyio import BrokenWorkerProcess, CapacityLimiter, to_process

from ..errors import Fault, MissingGlyph, Refusal, StoppedPlan
from .limits import MEMORY, MOST_WAITING

MOST_WORKERS = 4
"""However many cores there are: our choice, a page has few people before it."""


@dataclass(frozen=True, slots=True)
class Answer:
    """What became of a piece of work, ready to be sent."""

    status: int
    media_type: str
    content: bytes
    name: str = ""
    """Of a file, what it is called."""


class Busy(Exception):
    """More is waiting than will soon be done."""


def refused(status: int, *faults: Fault, **more: Any) -> Answer:
    """Faults, as the interface tells them."""
    told = [{"field": fault.field, "read": fault.read, "right": fault.right} for fault in faults]
    return Answer(status, "application/json", _json({"faults": told} | more))


def _json(value: Any) -> bytes:
    return json.dumps(value, ensure_ascii=False, separators=(",", ":")).encode("utf-8", "replace")


def worked(name: str, arguments: tuple[Any, ...]) -> Answer:
    """One of the plain functions of ``answers`` by name, run here; what it says is made ready to be sent."""
    _limited()
    from . import answers

    function: Callable[..., Any] = getattr(answers, name)
    try:
        made = function(*arguments)
    except StoppedPlan as stopped:
        return refused(422, stops=list(stopped.texts))
    except MissingGlyph as missing:
        return refused(422, Fault("", "", str(missing)))
    except Refusal as refusal:
        return refused(422, *refusal.faults, understood=getattr(refusal, "understood", {}))
    except MemoryError:
        return refused(422, Fault("", "", "it takes more memory than there is for it; ask for fewer panels or windows"))
    match made:
        case bytes():
            return Answer(200, "image/png", made)
        case (str() as file, str() as media_type, bytes() as content):
            return Answer(200, media_type, content, file)
    return Answer(200, "application/json", _json(made))


def _limited() -> None:
    """Keeps this process from eating more memory than is its due, where the system can."""
    with suppress(ImportError, ValueError, OSError):
        import resource

        least = resource.getrlimit(resource.RLIMIT_AS)[1]
        most = MEMORY if least == resource.RLIM_INFINITY else min(MEMORY, least)
        resource.setrlimit(resource.RLIMIT_AS, (most, least))


class Desk:
    """Where work of one kind waits for a worker."""

    def __init__(self, workers: int, seconds: float) -> None:
        self._places = anyio.Semaphore(workers)
        self._limiter = CapacityLimiter(workers)
        self._seconds = seconds
        self._waiting = 0

    async def do(self, name: str, *arguments: Any) -> Answer:
        """The answer of that name. Raises Busy where too much is waiting already."""
        if self._waiting >= MOST_WAITING:
            raise Busy
        self._waiting += 1
        try:
            async with self._places:
                return await self._done(name, arguments)
        finally:
            self._waiting -= 1

    async def _done(self, name: str, arguments: tuple[Any, ...]) -> Answer:
        try:
            with anyio.fail_after(self._seconds):
                return await to_process.run_sync(worked, name, arguments, cancellable=True, limiter=self._limiter)
        except TimeoutError:
            right = f"it takes more than {self._seconds:.0f} s, and was given up; ask for fewer panels, marks or windows"
        except BrokenWorkerProcess:
            right = "it was too much for one worker, which ended; ask for fewer panels, marks or windows"
        return refused(422, Fault("", "", right))


def cores() -> int:
    """How many workers are of use here."""
    with suppress(AttributeError):
        return min(MOST_WORKERS, len(os.sched_getaffinity(0)))
    return min(MOST_WORKERS, os.cpu_count() or 1)
