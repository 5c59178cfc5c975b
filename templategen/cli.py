"""The command line: arguments in, the public steps, words out."""

from __future__ import annotations

import gc
import json
import os
import sys
from collections.abc import Callable
from dataclasses import replace
from io import TextIOWrapper
from pathlib import Path
from typing import TYPE_CHECKING

import click

from . import __version__
from .errors import Fault, MissingGlyph, Refusal, StoppedPlan
from .lengths.showing import Units

if TYPE_CHECKING:
    from .bars import Readings
    from .making import Options
    from .spec import Spec

WRONG, FAILED, UNTRUE = 2, 1, 3
Told = tuple[str | None, str | None, str | None, str | None]
"""--printer, --printer-across, --printer-along and --printer-bar, as they were typed."""


@click.group(context_settings={"help_option_names": ["-h", "--help"], "max_content_width": 96})
@click.version_option(__version__, prog_name="templategen")
def commands() -> None:
    """Work out and print what it takes to alter curtain panels: cut line, hem, loops, full-scale templates."""


@commands.command()
@click.argument("spec", type=click.Path(path_type=Path))
@click.option("--json", "as_json", is_flag=True, help="Print plan.json and nothing else.")
def plan(spec: Path, as_json: bool) -> None:
    """Work the job in SPEC out and show every number with how it came about."""
    from .planning import make_plan, plan_record, tell_plan
    from .spec import read_spec

    text, _ = _source(spec)
    made = make_plan(read_spec(text, name=spec.name))
    click.echo(json.dumps(plan_record(made), ensure_ascii=False, indent=1) if as_json else tell_plan(made).rstrip())


@commands.command()
@click.argument("spec", type=click.Path(path_type=Path))
@click.option("--out", required=True, type=click.Path(path_type=Path), help="Folder to write the kit into.")
@click.option("--paper", metavar="NAME", help="letter, a4, roll-24in ...: instead of the spec's paper.")
@click.option("--only", metavar="TEMPLATE", multiple=True, help="Only this template; can be given several times.")
@click.option("--orientation", metavar="WAY", help="portrait, landscape, or least for whichever takes fewer sheets.")
@click.option("--half-strip/--whole-strip", default=None, help="A spacing strip to the centre, turned for the rest.")
@click.option("--strips", metavar="N", help="How many spacing strips to print, from 1 to 20.")
@click.option("--printer", metavar="NAME", help='A printer kept by name; "none" for one that needs no correction.')
@click.option("--printer-across", metavar="LENGTH", help="What the bar across an uncorrected sheet measured.")
@click.option("--printer-along", metavar="LENGTH", help="What the bar along an uncorrected sheet measured.")
@click.option("--printer-bar", metavar="BAR", help='Which bar was measured: "100 mm", as usual, or "4 in".')
@click.option("--despite-stops", is_flag=True, help="Make the kit even where the plan says stop.")
def make(
    spec: Path, out: Path, paper: str | None, only: tuple[str, ...], despite_stops: bool,
    orientation: str | None, half_strip: bool | None, strips: str | None,
    printer: str | None, printer_across: str | None, printer_along: str | None, printer_bar: str | None,
) -> None:  # fmt: skip
    """Make the kit for SPEC: templates and work order as PDF and SVG.

    SPEC is a spec, or the kit.pdf of an earlier kit, which is made again from what it carries.
    """
    from .bars import compounded, doubts
    from .making import faults_of, kit_files, write_kit
    from .planning import make_plan

    text, options = _source(spec)
    options = replace(
        options,
        paper=options.paper if paper is None else paper,
        only=only or options.only,
        despite_stops=despite_stops,
        orientation=options.orientation if orientation is None else orientation,
        half_strip=options.half_strip if half_strip is None else half_strip,
        strips=options.strips if strips is None else _number(strips),
    )
    told = printer, printer_across, printer_along, printer_bar

    def faults_with(read: Spec | None) -> list[Fault]:
        return [*faults_of(options, read), *_readings(told, read)[2]]

    made = make_plan(_read(text, spec.name, faults_with))
    measured, kept, _ = _readings(told, made.spec)
    before = kept.over(options.printer).over(made.spec.printer.readings)
    options = replace(options, printer=measured.over(kept).over(options.printer))
    kit, files = kit_files(made, options)
    write_kit(kit, files, out)
    readings = measured.over(before)
    _warn(compounded(measured, before), *doubts(readings, "--printer-bar, or bar in the spec:"))
    for notice in made.notices:
        if notice.level != "note":
            click.echo(f"{notice.level}: {notice.text}")
    if kit.correction.remark:
        click.echo(f"Corrected for a printer whose bars measured {readings.text}.")
    sheets = len(kit.sheets)
    first = "Print page 1 by itself and measure its two bars before the others. " if kit.check else ""
    way = ", landscape," if kit.paper.width > kit.paper.height else ""
    click.echo(f"Wrote {', '.join(files)} to {out}.")
    count = f"{sheets} {'sheet' if sheets == 1 else 'sheets'}"
    click.echo(
        f"Print {count} of {kit.paper.said}{way} from {out / 'kit.pdf'}: "
        f"actual size, 100 %, one-sided. {first}Then measure both bars on every sheet."
    )


@commands.command()
@click.argument("file", type=click.Path(path_type=Path))
@click.option("--json", "as_json", is_flag=True, help="Print the verdict as JSON and nothing else.")
def check(file: Path, as_json: bool) -> int:
    """Say whether the kit in FILE, a PDF, will still print true after mail, a viewer or a print queue had it.

    Exit status: 0 it will, 3 it will not, 2 that cannot be judged.
    """
    from .checking import check, tell_verdict, verdict_record

    verdict = check(file)
    record = verdict_record(verdict)
    click.echo(json.dumps(record, ensure_ascii=False, indent=1) if as_json else tell_verdict(verdict, file.name))
    return 0 if verdict.true else UNTRUE


@commands.command()
@click.argument("file", required=False, type=click.Path(path_type=Path))
@click.option("--units", type=click.Choice(["inch", "metric"]), default="inch", help="How numbers are shown.")
@click.option("--force", is_flag=True, help="Replace FILE where it exists.")
def new(file: Path | None, units: Units, force: bool) -> None:
    """Write a commented starting spec to FILE; without FILE, ask for the measurements one by one."""
    from .making import write_files
    from .spec.interview import interview
    from .spec.starting import starting_spec

    if file is not None:
        text, then = starting_spec(units), "put your measurements in, then"
    else:
        text, then = interview(_asking, lambda line: click.echo(line, err=True)), "see the numbers with"
        click.echo("", err=True)
        file = Path(_asking("Write the spec to which file", "spec.toml"))
    if file.exists() and not force:
        raise Refusal(Fault("FILE", str(file), "it exists; name another file, or say --force to replace it"))
    write_files({file.name: text.encode()}, file.parent, "FILE")
    click.echo(f"Wrote {file}; {then}: templategen plan {file}")


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
    from . import printers
    from .bars import compounded, doubts
    from .spec.bar_readings import TypedReadings

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
        _warn(compounded(readings, before), *doubts(now, "--bar"))
    else:
        click.echo(f"{name}: {printers.printer_named(name).text}")


@commands.command()
@click.option("--units", type=click.Choice(["inch", "metric"]), default="inch", help="How sizes are shown.")
def papers(units: Units) -> None:
    """List the papers that are known by name, with their sizes and where these come from."""
    from .papers.listing import tell_papers

    click.echo(tell_papers(units).rstrip())


@commands.command()
@click.argument("shell", type=click.Choice(["bash", "zsh", "fish"]))
def completion(shell: str) -> None:
    """Print what makes SHELL complete templategen's commands: for bash, eval "$(templategen completion bash)"."""
    from click.shell_completion import get_completion_class

    completer = get_completion_class(shell)
    assert completer is not None
    click.echo(completer(commands, {}, "templategen", "_TEMPLATEGEN_COMPLETE").source())


def _read(text: str, name: str, faults_with: Callable[[Spec | None], list[Fault]]) -> Spec:
    """The spec; its faults and those of the arguments are told together."""
    from .spec import read_spec

    try:
        spec = read_spec(text, name=name)
    except Refusal as refusal:
        raise Refusal(*refusal.faults, *faults_with(None)) from None
    if faults := faults_with(spec):
        raise Refusal(*faults)
    return spec


def _number(typed: str) -> int | str:
    """A whole number where one was typed; anything else as it is, to be refused with the rest."""
    return int(typed) if typed.isascii() and typed.isdigit() and len(typed) < 10 else typed


def _readings(told: Told, spec: Spec | None) -> tuple[Readings, Readings, list[Fault]]:
    """What was read off the bars, what is kept of the printer that was named, and everything wrong with both."""
    from .bars import NOTHING_READ

    if told == (None,) * 4:
        return NOTHING_READ, NOTHING_READ, []
    from .printers import readings_asked
    from .spec.bar_readings import TypedReadings

    name, across, along, bar = told
    return readings_asked(name, TypedReadings(across, along, bar), spec.units if spec else None)


def _warn(*texts: str) -> None:
    for text in filter(None, texts):
        click.echo(f"warning: {text}", err=True)


def _asking(prompt: str, default: str) -> str:
    answer: str = click.prompt(prompt, default=default, show_default=bool(default), err=True)
    return answer


def _source(path: Path) -> tuple[str, Options]:
    """The spec's text and the options that go with it, from a spec or from a kit that carries one."""
    from .making import Options
    from .remaking import carried_by
    from .spec.files import read_text

    if path.suffix.lower() == ".pdf" and path.is_file():
        return carried_by(path)
    return read_text(path), Options()


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
