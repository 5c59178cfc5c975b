"""The process that a command runs in: how it starts, and how every fault ends."""

from __future__ import annotations

import gc
import os
import sys
from collections.abc import Callable
from io import TextIOWrapper

import click

from ..errors import MissingGlyph, Refusal, StoppedPlan
from .group import commands

WRONG, FAILED = 2, 1
"""Exit statuses: what was asked is wrong; the world outside failed."""


def start() -> None:
    """The command in a process of its own, which lives a moment and need not look for garbage."""
    gc.disable()
    # Pydantic looks through every installed package for plug-ins, which this command has no use for.
    os.environ.setdefault("PYDANTIC_DISABLE_PLUGINS", "__all__")
    try:
        main()
    finally:
        gc.freeze()


def main() -> None:
    """The command; every fault ends in a message and an exit status, none in a traceback."""
    # A terminal that cannot show a character shows a question mark instead.
    for stream in (sys.stdout, sys.stderr):
        if isinstance(stream, TextIOWrapper):
            stream.reconfigure(errors="replace")
    sys.exit(_guarded(lambda: commands.main(prog_name="templategen", standalone_mode=False)))


def _guarded(run: Callable[[], object]) -> int:
    """Runs ``run``; 0 done or the status it gives, 2 what was asked is wrong, 1 the world outside failed."""
    try:
        status = run()
    except Refusal as refusal:
        for fault in refusal.faults:
            click.echo(fault, err=True)
        return WRONG
    except StoppedPlan as stopped:
        for text in stopped.texts:
            click.echo(f"stop: {text}", err=True)
        click.echo("Nothing was written. Put it right, or say --despite-stops.", err=True)
        return WRONG
    except MissingGlyph as missing:
        click.echo(missing, err=True)
        return WRONG
    except click.UsageError as error:
        error.show()
        return WRONG
    except (click.Abort, KeyboardInterrupt):
        click.echo("Stopped; nothing was written.", err=True)
        return FAILED
    except BrokenPipeError:
        sys.stderr.close()
        return FAILED
    except OSError as error:
        click.echo(f"{error.filename or 'the system'}: {error.strerror or error}", err=True)
        return FAILED
    return status if isinstance(status, int) else 0
