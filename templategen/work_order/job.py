"""The work order of several windows: what is done once for all, then part by part; each caution once."""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence
from dataclasses import replace

from ..document.blocks import Block, Heading, Paragraph, Remark
from ..lengths.counting import plural
from ..planning import JobPlan, Part
from ..planning.jobs.plan import listed
from ..templates import Choices
from ..templates.together import Served
from . import order
from .pictures.panel import overview
from .stages import common_steps, stages_of, step_count
from .step import Stage


def words(job: JobPlan, served: Sequence[Served], choices: Choices | None = None) -> list[Block]:
    """The whole work order; ``served`` are the kit's drawings with the windows that they serve."""
    choices = choices or Choices()
    if not job.named:
        return order.words(job.parts[0].plan, choices, [drawing.name for drawing, _ in served])
    stages = [stages_of(part.plan, choices, len(job.windows) > 1) for part in job.parts]
    panels = {window.label: window.plan.panels for window in job.windows}
    blocks: list[Block] = [
        Heading("Work order", first=True),
        Paragraph(f"{_in_short(job)} {order.reading(job.parts[0].plan)}"),
        *order.remarks(job.job_notices),
    ]
    if len(job.parts) == 1:
        return [*blocks, *_part(job.parts[0], 0, panels, served, stages[0], 1)]
    once = Stage("Get ready, once for every window", tuple(common_steps(stages)))
    blocks += order.stage_blocks((once,), job.parts[0].plan)
    first, said = 1 + len(once.steps), frozenset[Remark]()
    for number, (part, each) in enumerate(zip(job.parts, stages, strict=True), 1):
        rest = tuple(_rest(each, len(once.steps), said))
        blocks += _part(part, number, panels, served, rest, first)
        first += step_count(rest)
        said |= {caution for stage in each for caution in stage.cautions}
    return blocks


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
    part: Part, number: int, panels: Mapping[str, int], served: Sequence[Served], stages: Sequence[Stage], first: int
) -> Iterator[Block]:
    """One part; with its own title where there are several, and ``number`` says which it is."""
    plan = part.plan
    if number:
        yield Heading(f"Part {number}: {listed(part.labels)}", first=True)
    names = [drawing.name for drawing, labels in served if part.labels[0] in labels]
    templates = f" Its templates: {'; '.join(names)}." if names else ""
    yield Paragraph(f"{order.in_short(plan)}{_of_each(part, panels)}{templates}")
    yield overview(plan)
    yield from order.remarks(plan.notices)
    yield from order.stage_blocks(stages, plan, names, first)
    yield from order.numbers(plan)


def _of_each(part: Part, panels: Mapping[str, int]) -> str:
    """How many of the panels each window gets, where there are several windows."""
    said = [f"{panels[label]} for {label}" for label in part.labels]
    return f" Of these {listed(said, len(said))}." if len(said) > 1 else ""
