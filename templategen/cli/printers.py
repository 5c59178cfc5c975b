"""Printers by name: what their bars measured."""

from __future__ import annotations

import click

from ..errors import Fault, Refusal
from .group import commands, warn


@commands.command()
@click.argument("name", required=False)
@click.option("--across", metavar="LENGTH", help="What the bar across an uncorrected sheet measured.")
@click.option("--along", metavar="LENGTH", help="What the bar along an uncorrected sheet measured.")
@click.option("--bar", metavar="BAR", help='Which bar was measured: "100 mm", as usual, or "4 in".')
@click.option("--forget", is_flag=True, help="Forget the printer.")
def printer(name: str | None, across: str | None, along: str | None, bar: str | None, forget: bool) -> None:
    """Keep what a printer's bars measured under NAME, for make --printer NAME; without NAME, show all that are kept.

    NAME alone shows what is kept of that printer.
    """
    from .. import printers
    from ..bars import compounded, doubts
    from ..spec.bar_readings import TypedReadings

    given = TypedReadings(across, along, bar, ("--across", "--along", "--bar"))
    readings, faults = given.read()
    measured = (across, along, bar) != (None, None, None)
    if name is None and (measured or forget):
        faults.insert(0, Fault("NAME", "", "missing; write the name of the printer"))
    elif name is not None and measured:
        faults = [*printers.faults_in_name(name), *faults]
    if measured and forget:
        faults.append(Fault("--forget", "", "a printer is given readings or is forgotten; say one of the two"))
    if faults:
        raise Refusal(*faults)
    if name is None:
        kept = printers.known_printers()
        for known, its in kept.items():
            click.echo(f"{known}: {its.text}")
        click.echo(f"Kept in {printers.printers_file()}." if kept else "No printer is kept yet.")
    elif forget:
        click.echo(f"Forgotten: {name}, {printers.forget_printer(name).text}.")
    elif measured:
        now, before = printers.keep_printer(name, readings)
        click.echo(f"Kept: {name}, {now.text}, in {printers.printers_file()}.")
        warn(compounded(readings, before), *doubts(now, "--bar"))
    else:
        click.echo(f"{name}: {printers.printer_named(name).text}")
