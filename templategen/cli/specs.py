"""A spec to start from, and completion for the shell."""

from __future__ import annotations

from collections.abc import Iterator
from pathlib import Path

import click

from ..errors import Fault, Refusal
from ..lengths.showing import Units
from .group import commands


@commands.command()
@click.argument("file", required=False, type=click.Path(path_type=Path))
@click.option("--units", type=click.Choice(["inch", "metric"]), default="inch", help="How numbers are shown.")
@click.option("--heading", metavar="STYLE", help="Kind of heading of the starting spec, such as eyelets.")
@click.option("--hem", metavar="STYLE", help="Kind of hem of the starting spec.")
@click.option("--job", is_flag=True, help="A job of several windows, made as one kit.")
@click.option("--force", is_flag=True, help="Replace FILE where it exists.")
def new(file: Path | None, units: Units, heading: str | None, hem: str | None, job: bool, force: bool) -> None:
    """Write a commented starting spec to FILE; without FILE, ask for the measurements one by one."""
    from ..making import write_files
    from ..spec.interview import interview
    from ..spec.jobs import starting_job
    from ..spec.starting import starting_spec

    styles = {path: style for path, style in (("heading.style", heading), ("hem.style", hem)) if style is not None}
    if faults := [fault for path, style in styles.items() for fault in _unknown_style(path, style)]:
        raise Refusal(*faults)
    if job and file is None:
        raise Refusal(Fault("FILE", "", "missing; with --job write the name of a file for the job to start from"))
    if file is not None:
        text, then = (starting_job if job else starting_spec)(units, styles), "put your measurements in, then"
    else:
        text, then = interview(_asking, lambda line: click.echo(line, err=True)), "see the numbers with"
        click.echo("", err=True)
        file = Path(_asking("Write the spec to which file", "spec.toml"))
    if file.exists() and not force:
        raise Refusal(Fault("FILE", str(file), "it exists; name another file, or say --force to replace it"))
    write_files({file.name: text.encode()}, file.parent, "FILE")
    click.echo(f"Wrote {file}; {then}: templategen plan {file}")


def _unknown_style(path: str, style: str) -> Iterator[Fault]:
    from ..spec import FIELDS
    from ..spec.values import Wrong, read_value

    try:
        read_value(FIELDS[path], style, None)
    except Wrong as wrong:
        for fault in wrong.faults:
            yield Fault(f"--{path.partition('.')[0]}", fault.read, fault.right)


@commands.command()
@click.argument("shell", type=click.Choice(["bash", "zsh", "fish"]))
def completion(shell: str) -> None:
    """Print what makes SHELL complete templategen's commands: for bash, eval "$(templategen completion bash)"."""
    from click.shell_completion import get_completion_class

    completer = get_completion_class(shell)
    assert completer is not None
    click.echo(completer(commands, {}, "templategen", "_TEMPLATEGEN_COMPLETE").source())


def _asking(prompt: str, default: str) -> str:
    answer: str = click.prompt(prompt, default=default, show_default=bool(default), err=True)
    return answer
