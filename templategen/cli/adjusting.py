"""After hanging: what to do about a hem that is off."""

from __future__ import annotations

import json
from dataclasses import replace
from pathlib import Path
from typing import TYPE_CHECKING

import click

from ..errors import Fault, Refusal
from ..lengths.counting import plural
from .group import commands, source

if TYPE_CHECKING:
    from ..spec import Job, Spec


@commands.command()
@click.argument("spec", type=click.Path(path_type=Path))
@click.option("--hangs", required=True, metavar="TEXT", help='"left 1/4 in low, middle good, right 1/8 in high".')
@click.option("--window", metavar="NAME", help="Which window of a job with several.")
@click.option("--stitched/--pinned", default=False, help="Whether the hem is stitched already; else it is only pinned.")
@click.option("--out", type=click.Path(path_type=Path), help="Folder to write the adjusting strips into.")
@click.option("--paper", metavar="NAME", help="letter, a4, roll-24in ...: instead of the spec's paper.")
@click.option("--json", "as_json", is_flag=True, help="Print the adjustment as JSON and nothing else.")
def adjust(
    spec: Path, hangs: str, window: str | None, stitched: bool, out: Path | None, paper: str | None, as_json: bool
) -> None:
    """Say what to do about a panel that has been hung and is off, with the least unpicking.

    SPEC is a spec, a job or a kit.pdf. Left, middle and right are as seen from the front.
    """
    from ..adjusting import adjusting_files
    from ..making import write_files
    from ..planning import make_plan
    from ..planning.adjusting import adjust as adjusted
    from ..planning.adjusting import adjustment_record, tell_adjustment
    from ..spec import read_spec_or_job
    from ..spec.hangs import read_hangs

    text, options = source(spec)
    plan = make_plan(_window(read_spec_or_job(text, name=spec.name), window))
    adjustment = adjusted(plan, read_hangs(hangs, plan.spec.units), stitched=stitched)
    if out is not None:
        options = replace(options, paper=options.paper if paper is None else paper, only=())
        kit, files = adjusting_files(plan, adjustment, options)
        write_files(files, out)
    if as_json:
        click.echo(json.dumps(adjustment_record(plan, adjustment), ensure_ascii=False, indent=1))
    else:
        click.echo(tell_adjustment(plan, adjustment), nl=False)
    if out is not None and not as_json:
        click.echo(f"\nWrote {', '.join(files)} to {out}.")
        click.echo(
            f"Print {plural(len(kit.sheets), 'sheet')} of {kit.paper.said} from {out / 'kit.pdf'}: actual size, 100 %, "
            "one-sided."
        )


def _window(asked: Spec | Job, name: str | None) -> Spec:
    """The spec itself, or that of one window of a job."""
    from ..spec import Spec

    if isinstance(asked, Spec):
        if name is not None:
            raise Refusal(Fault("--window", repr(name), "this is one spec, not a job of several windows; leave it out"))
        return asked
    if name is None and len(asked.windows) == 1:
        return asked.windows[0].spec
    found = [window for window in asked.windows if name and window.name.casefold() == name.strip().casefold()]
    if len(found) == 1:
        return found[0].spec
    there = ", ".join(repr(window.name) for window in asked.windows)
    right = "missing, and needed with a job of several windows" if name is None else "not one window of this job"
    raise Refusal(Fault("--window", "" if name is None else repr(name), f"{right}; write one of {there}"))
