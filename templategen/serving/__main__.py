"""A worker: a process that does pieces of work, one after the other, for as long as the server lives.

    python -P -m templategen.serving MODULE plans|kits

MODULE has ``WORKS``, functions by name, and ``warm``. The worker reads a piece of work from its standard input, a name
and arguments, and writes what became of it to its standard output, until there is nothing to read any more.
"""

from __future__ import annotations

import gc
import os
import sys
from dataclasses import replace
from importlib import import_module

from .limits import MEMORY
from .outcome import outcome_of
from .parcels import read_work, write_outcome


def _limit() -> None:
    """No more memory than work needs, where the system can hold a process to it."""
    try:
        import resource
    except ImportError:  # not on Windows
        return
    _, hard = resource.getrlimit(resource.RLIMIT_AS)
    if hard == resource.RLIM_INFINITY or hard >= MEMORY:
        resource.setrlimit(resource.RLIMIT_AS, (MEMORY, hard))


def _warmed(module: str, crew: str) -> dict[str, object]:
    """Loads what there is to do, and tries it."""
    import_module(module).warm(crew == "kits")
    return {}


def main() -> None:
    """Does what is asked, until the server is gone."""
    work_in, words_out = sys.stdin.buffer, os.fdopen(os.dup(1), "wb")
    # Whatever prints must not print into the answers.
    os.dup2(2, 1)
    _limit()
    ready = outcome_of(_warmed, sys.argv[1:])
    module = sys.modules.get(sys.argv[1])
    write_outcome(words_out, replace(ready, spent=module is None))
    if module is None:
        return
    works = module.WORKS
    # What is loaded stays; looking through it for garbage again and again would take time from every answer.
    gc.collect()
    gc.freeze()
    while (asked := read_work(work_in)) is not None:
        name, arguments = asked
        write_outcome(words_out, outcome_of(works[name], arguments))


main()
