"""The work order of several windows: what is done once for all, then each part, then the cautions, once."""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence

from ..document.blocks import Block, Heading, Paragraph, Remark
from ..lengths.counting import plural
from ..planning import JobPlan, Part
from ..planning.jobs.plan import listed
from . import work_order
from .cautions import cautions
from .choices import Choices
from .said import Step
from .together import Served


def words(job: JobPlan, served: Sequence[Served], choices: Choices | None = None) -> list[Block]:
    """The whole work order; ``served`` are the kit's drawings with the windows that they serve."""
    choices = choices or Choices()
    if not job.named:
        return work_order.words(job.parts[0].plan, choices)
    steps = [work_order.steps_of(part.plan, choices) for part in job.parts]
    common = _common(steps)
    panels = {window.label: window.plan.panels for window in job.windows}
    blocks: list[Block] = [
        Heading("Work order", first=True),
        Paragraph(f"{_in_short(job)} {work_order.reading(job.parts[0].plan)}"),
        *work_order.remarks(job.job_notices),
    ]
    if len(job.parts) == 1:
        blocks += _part(job.parts[0], 0, panels, served, steps[0], 1)
    else:
        blocks += [Heading("First, once for every window"), *work_order.step_blocks(common, 0)]
        for number, (part, each) in enumerate(zip(job.parts, steps, strict=True), 1):
            blocks += _part(part, number, panels, served, each[len(common) :], len(common) + 1)
    return [*blocks, Heading("Take care"), *(Remark(word, text) for word, text in _cautions(job))]


def _in_short(job: JobPlan) -> str:
    rooms: dict[str, list[str]] = {}
    for window in job.windows:
        rooms.setdefault(window.room, []).append(window.name)
    said = "; ".join(f"{room}: {listed(names, len(names))}" if room else listed(names, len(names))
                     for room, names in rooms.items())  # fmt: skip
    together = f" The work is in {len(job.parts)} parts, alike panels together." if len(job.parts) > 1 else ""
    windows, panels = plural(len(job.windows), "window"), plural(job.panels, "panel")
    return f"{job.spec.title}: {windows}, {panels}. {said}.{together}"


def _common(steps: Sequence[Sequence[Step]]) -> list[Step]:
    """The steps with which every part begins, word for word, and that are not done panel by panel."""
    common: list[Step] = []
    for each in zip(*steps, strict=False):
        if each[0][1] or any(step != each[0] for step in each):
            break
        common.append(each[0])
    return common


def _part(
    part: Part, number: int, panels: Mapping[str, int], served: Sequence[Served], steps: Sequence[Step], first: int
) -> Iterator[Block]:
    """One part; with its own title where there are several, and ``number`` says which it is."""
    plan = part.plan
    if number:
        yield Heading(f"Part {number}: {listed(part.labels)}", first=True)
    yield Paragraph(f"{work_order.in_short(plan)}{_of_each(part, panels)}{_templates(part, served)}")
    yield from work_order.remarks(plan.notices)
    yield from work_order.checks(plan)
    yield Heading("The order of work")
    yield from work_order.step_blocks(steps, plan.panels, first, plan.spec.panel.count)
    yield from work_order.numbers(plan)


def _of_each(part: Part, panels: Mapping[str, int]) -> str:
    """How many of the panels each window gets, where there are several windows."""
    said = [f"{panels[label]} for {label}" for label in part.labels]
    return f" Of these {listed(said, len(said))}." if len(said) > 1 else ""


def _templates(part: Part, served: Sequence[Served]) -> str:
    """Which templates the part needs, as they are called on paper."""
    names = [drawing.name for drawing, labels in served if part.labels[0] in labels]
    return f" Its templates: {'; '.join(names)}." if names else ""


def _cautions(job: JobPlan) -> Iterator[tuple[str, str]]:
    """The cautions of all parts, each once; in the order of the part that has most."""
    said = sorted((list(cautions(part.plan)) for part in job.parts), key=len, reverse=True)
    return iter(dict.fromkeys(caution for each in said for caution in each))
