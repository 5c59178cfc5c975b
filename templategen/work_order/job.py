"""The work order of several windows: what is done once for all, then part by part; each caution once."""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence
from dataclasses import replace

from ..document.blocks import Block, Heading, Paragraph, Remark
from ..document.on_paper import OnPaper
from ..drawing import LARGE, capitalised
from ..lengths.counting import plural
from ..planning import JobPlan, Part
from ..planning.jobs.plan import listed
from ..templates import Choices
from ..templates.together import Served
from . import order
from .needs import job_needs
from .pictures.panel import overview
from .record import record
from .stages import common_steps, stages_of, step_count
from .step import Stage


def words(
    job: JobPlan, served: Sequence[Served], choices: Choices | None = None, carried: Mapping[str, str] | None = None,
    paper: OnPaper | None = None,
) -> list[Block]:  # fmt: skip
    """The whole work order, in the order in which it is read.

    ``served`` are the kit's drawings with the windows that they serve, ``choices`` those that it is made with,
    ``carried`` the texts that its PDF carries, and ``paper`` is what is known of its sheets.
    """
    choices = choices or Choices()
    needed = job_needs(job, [drawing for drawing, _ in served], paper)
    parts = list(_parts(job, served, choices))
    first = job.parts[0].plan
    what = _in_short(job) if job.named else f"{first.spec.title}: {order.in_short(first)}"
    opening: list[Block] = [
        Heading("Work order", first=True),
        Paragraph(f"{what} {order.reading(first)}"),
        *(order.remarks(job.job_notices) if job.named else ()),
    ]
    closing = [*_captions(served, choices), *record(job, carried or {})]
    if len(job.parts) == 1:  # what it looks like first, then what it takes
        shown, work = parts[0]
        return [*opening, *shown, *needed, *work, *closing]
    return [*opening, *needed, *(block for part in parts for blocks in part for block in blocks), *closing]


def _captions(served: Sequence[Served], choices: Choices) -> Iterator[Block]:
    """What the templates say of their use, where their own large print leaves no room for it."""
    if served and choices.look is LARGE:
        yield Heading("How each template is used")
        for drawing, _ in served:
            yield Paragraph(f"{capitalised(drawing.name)}: {' '.join(drawing.caption)}")


def _parts(job: JobPlan, served: Sequence[Served], choices: Choices) -> Iterator[tuple[list[Block], list[Block]]]:
    """Of each part what it is, and the work on it; what is done once for all comes before the first."""
    stages = [stages_of(part.plan, choices, len(job.windows) > 1) for part in job.parts]
    panels = {window.label: window.plan.panels for window in job.windows}
    if len(job.parts) == 1:
        yield _part(job.parts[0], 0 if job.named else None, panels, served, stages[0], 1)
        return
    once = Stage("Get ready, once for every window", tuple(common_steps(stages)))
    yield [], list(order.stage_blocks((once,), job.parts[0].plan))
    first, said = 1 + len(once.steps), frozenset[Remark]()
    for number, (part, each) in enumerate(zip(job.parts, stages, strict=True), 1):
        rest = tuple(_rest(each, len(once.steps), said))
        yield _part(part, number, panels, served, rest, first)
        first += step_count(rest)
        said |= {caution for stage in each for caution in stage.cautions}


def _rest(stages: Sequence[Stage], done: int, said: frozenset[Remark]) -> Iterator[Stage]:
    """The stages without the first steps, done once for all, and without cautions that were said before."""
    for stage in (replace(stages[0], steps=stages[0].steps[done:]), *stages[1:]):
        if stage.steps:
            yield replace(stage, cautions=tuple(each for each in stage.cautions if each not in said))


def _in_short(job: JobPlan) -> str:
    rooms: dict[str, list[str]] = {}
    for window in job.windows:
        rooms.setdefault(window.room, []).append(window.name)
    said = "; ".join(f"{room}: {listed(names, len(names))}" if room else listed(names, len(names))
                     for room, names in rooms.items())  # fmt: skip
    together = f" The work is in {len(job.parts)} parts, alike panels together." if len(job.parts) > 1 else ""
    windows, panels = plural(len(job.windows), "window"), plural(job.panels, "panel")
    return f"{job.spec.title}: {windows}, {panels}. {said}.{together}"


def _part(
    part: Part, number: int | None, panels: Mapping[str, int], served: Sequence[Served], stages: Sequence[Stage],
    first: int,
) -> tuple[list[Block], list[Block]]:  # fmt: skip
    """What one part is, and the work on it.

    ``number`` says which it is, under a title of its own; 0 where it is the only one, None where the job is one plan.
    """
    plan = part.plan
    names = [drawing.name for drawing, labels in served if number is None or part.labels[0] in labels]
    shown: list[Block] = [Heading(f"Part {number}: {listed(part.labels)}", first=True)] if number else []
    if number is not None:
        templates = f" Its templates: {'; '.join(names)}." if names else ""
        shown.append(Paragraph(f"{order.in_short(plan)}{_of_each(part, panels)}{templates}"))
    shown += [overview(plan), *order.remarks(plan.notices)]
    return shown, [*order.stage_blocks(stages, plan, names, first), *order.numbers(plan)]


def _of_each(part: Part, panels: Mapping[str, int]) -> str:
    """How many of the panels each window gets, where there are several windows."""
    said = [f"{panels[label]} for {label}" for label in part.labels]
    return f" Of these {listed(said, len(said))}." if len(said) > 1 else ""
