"""Papers by name."""

from __future__ import annotations

import click

from ..lengths.showing import Units
from .group import commands


@commands.command()
@click.option("--units", type=click.Choice(["inch", "metric"]), default="inch", help="How sizes are shown.")
def papers(units: Units) -> None:
    """List the papers that are known by name, with their sizes and where these come from."""
    from ..papers.listing import tell_papers

    click.echo(tell_papers(units).rstrip())
