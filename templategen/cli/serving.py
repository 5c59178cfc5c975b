"""The page, served on this machine."""

from __future__ import annotations

import click

from .group import commands, warn


@commands.command()
@click.option("--port", type=int, default=8630, show_default=True, help="The port; 0 for any that is free.")
@click.option("--next-port", is_flag=True, help="Take the next free port where this one is taken.")
@click.option("--address", default="127.0.0.1", metavar="ADDRESS",
              help="Serve it under another address than this machine's own, so that others can reach it.")
@click.option("--no-browser", is_flag=True, help="Do not open a browser.")  # fmt: skip
def serve(port: int, next_port: bool, address: str, no_browser: bool) -> None:
    """Open the page: measure, see, print. It is served on this machine, and to this machine alone."""
    from ..serving.running import serve as served

    served(port, address, next_port=next_port, browser=not no_browser, say=click.echo, warn=warn)
    click.echo("Stopped.")
