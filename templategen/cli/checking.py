"""A printed file held against what it says."""

from __future__ import annotations

import json
from pathlib import Path

import click

from .group import commands

UNTRUE = 3
"""Exit status for a kit that will not print true."""


@commands.command()
@click.argument("file", type=click.Path(path_type=Path))
@click.option("--json", "as_json", is_flag=True, help="Print the verdict as JSON and nothing else.")
def check(file: Path, as_json: bool) -> int:
    """Say whether the kit in FILE, a PDF, will still print true after mail, a viewer or a print queue had it.

    Exit status: 0 it will, 3 it will not, 2 that cannot be judged.
    """
    from ..checking import check, tell_verdict, verdict_record

    verdict = check(file)
    record = verdict_record(verdict)
    click.echo(json.dumps(record, ensure_ascii=False, indent=1) if as_json else tell_verdict(verdict, file.name))
    return 0 if verdict.true else UNTRUE
