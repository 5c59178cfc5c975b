"""From a spec to its numbers, and to a kit."""

from __future__ import annotations

import json
from collections.abc import Callable
from dataclasses import replace
from functools import cache, partial
from pathlib import Path
from typing import TYPE_CHECKING

import click

from ..errors import Fault, Refusal
from ..lengths.counting import plural
from .group import commands, source, warn

if TYPE_CHECKING:
    from ..bars import Readings
    from ..lengths.showing import Units
    from ..spec import Job, Spec

Told = tuple[str | None, str | None, str | None, str | None]
"""--printer, --printer-across, --printer-along and --printer-bar, as they were typed."""


@commands.command()
@click.argument("spec", type=click.Path(path_type=Path))
@click.option("--json", "as_json", is_flag=True, help="Print plan.json and nothing else.")
def plan(spec: Path, as_json: bool) -> None:
    """Work the job in SPEC out and show every number with how it came about, and what it takes of paper.

    SPEC is a spec, or a job: several windows in one file.
    """
    from ..layout import tell_on_paper
    from ..making import make_kit
    from ..planning import plan_for, record_of, tell
    from ..spec import read_spec_or_job
    from ..writers.kit_json import paper_record

    text, options = source(spec)
    made = plan_for(read_spec_or_job(text, name=spec.name))
    try:
        kit = make_kit(made, replace(options, despite_stops=True))
    except Refusal as refusal:
        # The numbers are right on any paper, and the paper can be another.
        on_paper, told = None, f"On paper\n  {refusal}"
    else:
        on_paper, told = paper_record(kit), tell_on_paper(kit)
    if as_json:
        click.echo(json.dumps(record_of(made) | {"on_paper": on_paper}, ensure_ascii=False, indent=1))
    else:
        click.echo(f"{tell(made).rstrip()}\n\n{told}")


@commands.command()
@click.argument("spec", type=click.Path(path_type=Path))
@click.option("--out", required=True, type=click.Path(path_type=Path), help="Folder to write the kit into.")
@click.option("--paper", metavar="NAME", help="letter, a4, roll-24in ...: instead of the spec's paper.")
@click.option("--only", metavar="TEMPLATE", multiple=True, help="Only this template; can be given several times.")
@click.option("--orientation", metavar="WAY", help="portrait, landscape, or least for whichever takes fewer sheets.")
@click.option("--half-strip/--whole-strip", default=None, help="A spacing strip to the centre, turned for the rest.")
@click.option("--strips", metavar="N", help="How many spacing strips to print, from 1 to 20.")
@click.option("--large-print/--no-large-print", default=None, help="Type of 18 points at least, lines twice as heavy.")
@click.option("--printer", metavar="NAME", help='A printer kept by name; "none" for one that needs no correction.')
@click.option("--printer-across", metavar="LENGTH", help="What the bar across an uncorrected sheet measured.")
@click.option("--printer-along", metavar="LENGTH", help="What the bar along an uncorrected sheet measured.")
@click.option("--printer-bar", metavar="BAR", help='Which bar was measured: "100 mm", as usual, or "4 in".')
@click.option("--fingerprint", metavar="XXXX-XXXX", help="Make it only if it is the very kit of this fingerprint.")
@click.option("--despite-stops", is_flag=True, help="Make the kit even where the plan says stop.")
def make(
    spec: Path, out: Path, paper: str | None, only: tuple[str, ...], despite_stops: bool,
    orientation: str | None, half_strip: bool | None, strips: str | None, large_print: bool | None,
    printer: str | None, printer_across: str | None, printer_along: str | None, printer_bar: str | None,
    fingerprint: str | None,
) -> None:  # fmt: skip
    """Make the kit for SPEC: templates and work order as PDF and SVG.

    SPEC is a spec, or a job of several windows, or the kit.pdf of an earlier kit, which is made again from what it
    carries.
    """
    from ..bars import compounded, doubts
    from ..fingerprint import faults_in_fingerprint, refuse_another
    from ..layout import tell_sheets
    from ..making import kit_files, write_kit
    from ..options import faults_of
    from ..planning import plan_for

    text, options = source(spec)
    options = replace(
        options,
        paper=options.paper if paper is None else paper,
        only=only or options.only,
        despite_stops=despite_stops,
        orientation=options.orientation if orientation is None else orientation,
        half_strip=options.half_strip if half_strip is None else half_strip,
        strips=options.strips if strips is None else _number(strips),
        large_print=options.large_print if large_print is None else large_print,
    )
    # Asked for its faults first, and then for what was read.
    readings_in = cache(partial(_readings, (printer, printer_across, printer_along, printer_bar)))

    def faults_with(read: Spec | None) -> list[Fault]:
        readings = readings_in(read.units if read else None)[2]
        return [*faults_of(options, read), *readings, *faults_in_fingerprint(fingerprint)]

    made = plan_for(_read(text, spec.name, faults_with))
    measured, kept, _ = readings_in(made.spec.units)
    before = kept.over(options.printer).over(made.spec.printer.readings)
    options = replace(options, printer=measured.over(kept).over(options.printer))
    kit, files = kit_files(made, options)
    refuse_another(fingerprint, kit.fingerprint)
    write_kit(kit, files, out)
    readings = measured.over(before)
    warn(compounded(measured, before), *doubts(readings, "--printer-bar, or bar in the spec:"))
    for notice in made.notices:
        if notice.level != "note":
            click.echo(f"{notice.level}: {notice.text}")
    if kit.correction.remark:
        click.echo(f"Corrected for a printer whose bars measured {readings.text}.")
    first = "Print page 1 by itself and measure its two bars before the others. " if kit.check else ""
    way = ", landscape," if kit.paper.width > kit.paper.height else ""
    click.echo(f"Wrote {', '.join(files)} to {out}.")
    click.echo(f"Fingerprint {kit.fingerprint}")
    click.echo(tell_sheets(kit))
    click.echo(
        f"Print {plural(len(kit.sheets), 'sheet')} of {kit.paper.said}{way} from {out / 'kit.pdf'}: "
        f"actual size, 100 %, one-sided. {first}Measure both bars on every sheet."
    )


def _read(text: str, name: str, faults_with: Callable[[Spec | None], list[Fault]]) -> Spec | Job:
    """The spec or the job; its faults and those of the arguments are told together."""
    from ..spec import Job, read_spec_or_job

    try:
        spec = read_spec_or_job(text, name=name)
    except Refusal as refusal:
        raise Refusal(*refusal.faults, *faults_with(None)) from None
    if faults := faults_with(spec.shared if isinstance(spec, Job) else spec):
        raise Refusal(*faults)
    return spec


def _number(typed: str) -> int | str:
    """A whole number where one was typed; anything else as it is, to be refused with the rest."""
    return int(typed) if typed.isascii() and typed.isdigit() and len(typed) < 10 else typed


def _readings(told: Told, units: Units | None) -> tuple[Readings, Readings, list[Fault]]:
    """What was read off the bars, what is kept of the printer that was named, and everything wrong with both."""
    from ..bars import NOTHING_READ

    if told == (None,) * 4:
        return NOTHING_READ, NOTHING_READ, []
    from ..printers import readings_asked
    from ..spec.bar_readings import TypedReadings

    name, across, along, bar = told
    return readings_asked(name, TypedReadings(across, along, bar), units)
