"""What is needed for a job, worked out: things to have at hand, every seam with its thread, and tools.

Alike things of several windows are added up and stand once, with each window's working.
"""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence

from ...document.blocks import Block, Heading, NumberRow, Numbers, Points
from ...document.on_paper import OnPaper
from ...drawing import Drawing
from ...lengths import Tape
from ...planning import JobPlan, Plan, as_job
from ...planning.jobs.plan import listed
from ...planning.wording import say
from .amounts import Of, Seam, Thing, enough, seams_with, times, together
from .seams import seams_of
from .things import paper_rows, thing_rows, things_of
from .thread import FACTORS, WASTE, bought, reel, thread_for
from .tools import template_tools, tools_of

TITLE = "What is needed"
WAYS = {"machine": "by machine", "zigzag": "zigzag", "hand": "by hand"}
_THREAD: Mapping[Of, str] = {"panels": "thread to match the panels", "lining": "thread to match the lining"}


def needs(plan: Plan, drawings: Sequence[Drawing], printed: OnPaper | None = None) -> list[Block]:
    """What a plan needs.

    ``drawings`` are the templates that are printed for it; ``printed`` is what is known of the sheets.
    """
    return job_needs(as_job(plan), drawings, printed)


def job_needs(job: JobPlan, drawings: Sequence[Drawing], printed: OnPaper | None = None) -> list[Block]:
    """The same of several windows, alike panels together."""
    tape = job.tape
    seams = [seam for part in job.parts for seam in seams_of(part.plan)]
    things = together({listed(part.labels): list(things_of(part.plan)) for part in job.parts})
    tools = [tool for part in job.parts for tool in tools_of(part.plan, seams_of(part.plan))]
    rows = (*thread_rows(tape, seams), *thing_rows(tape, things), *paper_rows(tape, drawings, printed))
    blocks: list[Block] = [Heading(TITLE), Numbers(rows, "To have at hand")]
    if seams:
        blocks.append(Numbers(tuple(seam_rows(tape, seams)), "Every seam that is sewn"))
    return [*blocks, Points(tuple(dict.fromkeys([*tools, *template_tools(drawings)])), "Tools")]


def seam_rows(tape: Tape, seams: Sequence[Seam]) -> Iterator[NumberRow]:
    """Each seam once, with its whole length."""
    for (name, way, _), alike in seams_with(seams).items():
        known = [times(tape, seam.times, seam.each) for seam in alike if seam.each is not None]
        unknown = sum(seam.times for seam in alike if seam.each is None)
        if unknown:
            known.append(f"{unknown} as long as a panel: write panel.length, and they are reckoned")
        total = sum((seam.total for seam in alike[1:]), alike[0].total)
        shown = enough(tape, total) if total else "not known"
        yield NumberRow(f"{name}, {WAYS[way]}" if way != "machine" else name, shown, " + ".join(known))


def thread_rows(tape: Tape, seams: Sequence[Seam]) -> Iterator[NumberRow]:
    """Thread for each cloth: the length of its seams by the factor of their stitch, and what is lost."""
    for of, label in _THREAD.items():
        alike = [seam for seam in seams if seam.of == of]
        if not alike:
            continue
        terms = []
        for way, factor in FACTORS.items():
            sewn = [seam for seam in alike if seam.way == way and seam.total]
            if sewn:
                total = sum((seam.total for seam in sewn[1:]), sewn[0].total)
                terms.append(f"{WAYS[way]} {say(tape, total)} × {float(factor):g}")
        unknown = dict.fromkeys(seam.name for seam in alike if seam.each is None)
        without = f"; without {listed(list(unknown))}, whose length is not known" if unknown else ""
        lost = f"{float(100 * WASTE):g} %"
        sums = f"({' + '.join(terms)}) + {lost} for ends and trials, rounded up" if terms else "nothing that is known"
        yield NumberRow(label, bought(tape, thread_for(alike)), f"{sums}{without}; a reel holds {reel(tape)}")


__all__ = ["Seam", "Thing", "job_needs", "needs"]
