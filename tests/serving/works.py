"""Works that go wrong in every way that there is, for workers to do."""

from __future__ import annotations

import os
import signal
import time
from typing import Any

from templategen.errors import Fault, MissingGlyph, Refusal, StoppedPlan


class Misread(Refusal):
    """A refusal that says what was understood as well."""

    def __init__(self, *faults: Fault) -> None:
        super().__init__(*faults)
        self.understood = {"panel.width": "54 in"}


def echo(*said: Any) -> dict[str, Any]:
    return {"said": list(said), "process": os.getpid()}


def sleep(seconds: float) -> dict[str, Any]:
    time.sleep(seconds)
    return {}


def spin() -> None:
    """Like a loop that never ends, deaf to whoever asks it to."""
    signal.signal(signal.SIGTERM, signal.SIG_IGN)
    while True:
        pass


def eat(gibibytes: int) -> dict[str, Any]:
    """Takes memory, without touching it, so that no machine suffers."""
    eaten = [bytes(2**30) for _ in range(gibibytes)]
    return {"eaten": len(eaten)}


def die() -> None:
    os.kill(os.getpid(), signal.SIGKILL)


def deep() -> Any:
    return deep()


def refuse() -> None:
    raise Misread(Fault("panel.width", "5 foo", "no unit"), Fault("", "", "and more"))


def stop() -> None:
    raise StoppedPlan(("the rod is too thick",))


def lack() -> None:
    raise MissingGlyph("no glyph for ☃")


def blunder() -> None:
    raise KeyError("a fault\nof our own \x1b[31m")


def picture() -> bytes:
    return b"\x89PNG" * 50_000


def file() -> tuple[str, str, bytes]:
    return "kit.pdf", "application/pdf", b"%PDF"


def nonsense() -> object:
    return 5


def half() -> dict[str, str]:
    return {"title": "\ud83e"}


def chatter() -> dict[str, Any]:
    print("this is not for the server")
    os.write(1, b"nor is this\n")
    return {}


WORKS = {
    work.__name__: work
    for work in (
        echo, sleep, spin, eat, die, deep, refuse, stop, lack, blunder, picture, file, nonsense, half, chatter,
    )
}  # fmt: skip


def warm(kits: bool) -> None:
    WORKS["kits"] = lambda: {"kits": kits}
