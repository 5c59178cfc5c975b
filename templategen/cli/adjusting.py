"""After hanging: what to do about a hem that is off."""

from __future__ import annotations

import json
from pathlib import Path

import click

from .group import commands, source


@commands.command()
@click.argument("spec", type=click.Path(path_type=Path))
@click.option("--hangs", required=True, metavar="TEXT", help='"left 1/4 in low, middle good, right 1/8 in high".')
@click.option("--stitched/--pinned", default=False, help="Whether the hem is stitched already; else it is only pinned.")
@click.option("--json", "as_json", is_flag=True, help="Print the adjustment as JSON and nothing else.")
def adjust(spec: Path, hangs: str, stitched: bool, as_json: bool) -> None:
    """Say what to do about a panel that has been hung and is off, with the least unpicking.

    SPEC is a spec or a kit.pdf. Left, middle and right are as seen from the front.
    """
    from ..planning import make_plan
    from ..planning.adjusting import adjust as adjusted
    from ..planning.adjusting import adjustment_record, tell_adjustment
    from ..spec import read_spec
    from ..spec.hangs import read_hangs

    text, _ = source(spec)
    plan = make_plan(read_spec(text, name=spec.name))
    adjustment = adjusted(plan, read_hangs(hangs, plan.spec.units), stitched=stitched)
    if as_json:
        click.echo(json.dumps(adjustment_record(plan, adjustment), ensure_ascii=False, indent=1))
    else:
        click.echo(tell_adjustment(plan, adjustment), nl=False)
