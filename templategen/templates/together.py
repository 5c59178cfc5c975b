"""The templates of several windows: what is alike comes once, and everything says for which windows it is."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import replace

from ..drawing import Drawing
from ..planning import JobPlan
from ..planning.jobs.plan import listed
from . import TEMPLATES, draw_templates
from .choices import Choices

MOST_NAMED = 2
"""Windows that a template's name holds: our choice, because it stands on every piece; the caption has more."""


Served = tuple[Drawing, tuple[str, ...]]
"""A drawing, and the labels of the windows that it serves."""


def draw_job(job: JobPlan, only: tuple[str, ...] = (), choices: Choices | None = None) -> list[Served]:
    """The drawings of all windows, template by template; those that are alike in everything come once."""
    if len(job.windows) == 1:
        return [(drawing, job.labels) for drawing in draw_templates(job.parts[0].plan, only, choices)]
    found = [served for name in TEMPLATES if not only or name in only for served in _alike(job, name, choices)]
    return list(_named(found, job.labels))


def _alike(job: JobPlan, name: str, choices: Choices | None) -> list[tuple[Drawing, list[str]]]:
    """Each drawing of one template that there is, with the labels of the windows that it serves."""
    found: list[tuple[Drawing, list[str]]] = []
    for part in job.parts:
        for drawing in draw_templates(part.plan, (name,), choices):
            served = next((labels for known, labels in found if known == drawing), None)
            if served is None:
                found.append((drawing, list(part.labels)))
            else:
                served += part.labels
    return found


def _named(found: Sequence[tuple[Drawing, list[str]]], everything: Sequence[str]) -> Iterator[Served]:
    """Each drawing with the windows that it serves in its name and its caption; no two of one name or one file."""
    taken: set[str] = set()
    for drawing, served in found:
        in_order = [label for label in everything if label in served]
        if len(in_order) == len(everything):
            yield replace(drawing, caption=("For every window.", *drawing.caption)), tuple(in_order)
            continue
        said = listed(in_order, MOST_NAMED)
        for number in range(1, len(found) + 2):
            serves = said if number == 1 else f"{number}, {said}"
            named = replace(
                drawing,
                name=f"{drawing.name}, {serves}",
                serves=serves,
                caption=(f"For {listed(in_order)}.", *drawing.caption),
            )
            if named.file_name not in taken:
                break
        taken.add(named.file_name)
        yield named, tuple(in_order)
