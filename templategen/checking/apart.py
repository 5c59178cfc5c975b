"""The check in a process of its own: a file that makes a reader crash, hang or eat memory harms that process alone."""

from __future__ import annotations

import json
import os
import subprocess
import sys
from pathlib import Path

from ..errors import Fault, Refusal
from .findings import Verdict, verdict_of
from .limits import SECONDS

_HOME = Path(__file__).parents[2]


def check(path: Path, seconds: float = SECONDS) -> Verdict:
    """Whether the kit at ``path`` will still print true, from the file alone.

    Raises Refusal where the file cannot be judged, after ``seconds`` at the
    latest, and OSError where the system will not let it be read.
    """
    # "-P" and the path: the process runs this very copy of the program, wherever it is started from.
    command = [sys.executable, "-P", "-m", "templategen.checking", os.fspath(path)]
    search = os.pathsep.join(filter(None, [str(_HOME), os.environ.get("PYTHONPATH")]))
    try:
        done = subprocess.run(
            command,
            env=os.environ | {"PYTHONPATH": search},
            stdin=subprocess.DEVNULL,
            capture_output=True,
            timeout=seconds,
            check=False,
        )
    except subprocess.TimeoutExpired:
        right = f"cannot be read within {seconds:.0f} s, where a kit takes one or two: is this the file?"
        raise Refusal(Fault(str(path), "", right)) from None
    match _answer(done.stdout):
        case {"verdict": dict() as verdict}:
            return verdict_of(verdict)
        case {"refused": [*faults]}:
            raise Refusal(*(Fault(**fault) for fault in faults))
        case {"system": [number, words]}:
            raise OSError(number, words, str(path))
        case _:
            right = "this PDF is damaged so badly that reading it fails; get the file again, or make the kit again"
            raise Refusal(Fault(str(path), "", right))


def _answer(said: bytes) -> object:
    """What the process said; None where it ended before it could."""
    try:
        return json.loads(said)
    except ValueError:
        return None
