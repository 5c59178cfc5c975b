"""The group that all commands belong to, and what several of them do."""

from __future__ import annotations

from pathlib import Path
from typing import TYPE_CHECKING

import click

from ..version import __version__

if TYPE_CHECKING:
    from ..options import Options


@click.group(context_settings={"help_option_names": ["-h", "--help"], "max_content_width": 96})
@click.version_option(__version__, prog_name="templategen")
def commands() -> None:
    """Work out and print what it takes to alter curtain panels: cut line, hem, loops, full-scale templates."""


def source(path: Path) -> tuple[str, Options]:
    """The spec's text and the options that go with it, from a spec or from a kit that carries one."""
    from ..options import Options
    from ..remaking import carried_by
    from ..spec.files import read_text

    if path.suffix.lower() == ".pdf" and path.is_file():
        return carried_by(path)
    return read_text(path), Options()


def warn(*texts: str) -> None:
    for text in filter(None, texts):
        click.echo(f"warning: {text}", err=True)
