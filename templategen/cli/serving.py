"""The page, on the sewist's own machine."""

from __future__ import annotations

import click

from .group import commands, warn
from .running import FAILED


@commands.command()
@click.option("--port", metavar="N", default="8630", show_default=True, help="Where the page is; 0 for any free port.")
@click.option("--next-port", is_flag=True, help="Where the port is taken, the next free one of a hundred.")
@click.option("--address", metavar="ADDRESS", default="127.0.0.1", show_default=True,
              help="An address of this machine; any but the usual one lets others reach the page.")  # fmt: skip
@click.option("--no-browser", is_flag=True, help="Open no browser; say the address alone.")
def serve(port: str, next_port: bool, address: str, no_browser: bool) -> int:
    """Open a page to measure, see and print on, served by this machine for this machine, until Ctrl-C."""
    from ..serving.running import PortTaken, read_port
    from ..serving.running import serve as serve_page

    try:
        serve_page(address, read_port(port), next_port=next_port, browser=not no_browser, say=click.echo, warn=warn)
    except PortTaken as taken:
        click.echo(taken, err=True)
        return FAILED
    return 0
