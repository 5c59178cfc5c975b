"""After hanging: what to do about a hem that is off."""

from __future__ import annotations

import json
from dataclasses import replace
from pathlib import Path

import click

from ..lengths.counting import plural
from .group import commands, source


@commands.command()
@click.argument("spec", type=click.Path(path_type=Path))
@click.option("--hangs", required=True, metavar="TEXT", help='"left 1/4 in low, middle good, right 1/8 in high".')
@click.option("--stitched/--pinned", default=False, help="Whether the hem is stitched already; else it is only pinned.")
@click.option("--out", type=click.Path(path_type=Path), help="Folder to write the adjusting strips into.")
@click.option("--paper", metavar="NAME", help="letter, a4, roll-24in ...: instead of the spec's paper.")
@click.option("--json", "as_json", is_flag=True, help="Print the adjustment as JSON and nothing else.")
def adjust(
    spec: Path, hangs: str, stitched: bool, out: Path | None, paper: str | None, as_json: bool
) -> None:
    """Say what to do about a panel that has been hung and is off, with the least unpicking.

    SPEC is a spec or a kit.pdf. Left, middle and right are as seen from the front.
    """
    from ..adjusting import adjusting_files
    from ..making import write_files
    from ..planning import make_plan
    from ..planning.adjusting import adjust as adjusted
    from ..planning.adjusting import adjustment_record, tell_adjustment
    from ..spec import read_spec
    from ..spec.hangs import read_hangs

    text, options = source(spec)
    plan = make_plan(read_spec(text, name=spec.name))
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
