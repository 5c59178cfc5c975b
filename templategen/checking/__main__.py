"""The process that reads the file, within limits, and hands its verdict over."""

from __future__ import annotations

import gc
import json
import sys
from dataclasses import asdict
from pathlib import Path

from ..errors import Refusal
from .limits import MEMORY, SECONDS


def _limit() -> None:
    """No more memory and time than a check needs, where the system can hold a process to it."""
    try:
        import resource
    except ImportError:  # not on Windows, where the clock of the waiting process alone counts
        return
    for kind, most in ((resource.RLIMIT_AS, MEMORY), (resource.RLIMIT_CPU, int(SECONDS) + 5)):
        _, hard = resource.getrlimit(kind)
        if hard == resource.RLIM_INFINITY or most <= hard:
            resource.setrlimit(kind, (most, hard))


def main() -> None:
    """Judge the file named as the one argument."""
    gc.disable()
    _limit()
    from .judging import judge

    try:
        answer: dict[str, object] = {"verdict": asdict(judge(Path(sys.argv[1])))}
    except Refusal as refusal:
        answer = {"refused": [asdict(fault) for fault in refusal.faults]}
    except OSError as error:
        answer = {"system": [error.errno, error.strerror]}
    print(json.dumps(answer))


main()
